import type { Field } from '../../document/index.js';
import type { Desk } from '../desk.js';
import { addArtifact, addContent, type PageDraft } from '../pen.js';
import { paintRow } from '../rows.js';
import type { Draft } from '../structure.js';
import { mm } from '../tokens.js';
import type { TypeRole } from '../type.js';
import { answerLook } from './text.js';

/** Boxes to write in are a little lower in a table. */
export const FIELD_HEIGHT = { table: mm(8), text: mm(8.6) } as const;
const FIELD_WIDTH = mm(24);
const NARROW_WIDTH = mm(19);
const RADIUS = mm(0.8);
const UNIT_GAP = mm(1.8);

export interface PaintField {
  readonly width: number;
  paint(page: PageDraft, x: number, top: number, height: number): void;
}

/** Box and unit side by side. The box grows when the answer needs more room. */
export function fieldWidth(desk: Desk, field: Field, role: TypeRole): number {
  const unit = field.unit ? desk.set.measure([{ text: field.unit }], role) + UNIT_GAP : 0;
  return boxWidth(desk, field) + unit;
}

function boxWidth(desk: Desk, field: Field): number {
  const answer = field.answer ? desk.set.measure([{ text: field.answer }], desk.type.answer) + mm(4) : 0;
  return Math.max(field.narrow ? NARROW_WIDTH : FIELD_WIDTH, answer);
}

/** A box to write in, its unit outside; on the key the answer stands inside on tint. */
export function layField(
  desk: Desk,
  field: Field,
  parent: Draft,
  { role }: { readonly role: TypeRole },
): PaintField {
  const { pen, tree, set, type } = desk;
  const width = boxWidth(desk, field);
  const form = tree.add(parent, 'Form', {
    alt: field.answer === undefined ? field.label : `${field.label}: ${field.answer}`,
  });
  const unitNode = field.unit ? tree.add(parent, 'Span') : undefined;
  const answer = field.answer
    ? set.words(form, field.answer, { width: width - mm(2), role: type.answer }).rows[0]
    : undefined;
  const unit =
    field.unit && unitNode ? set.words(unitNode, field.unit, { width: 1e6, role }).rows[0] : undefined;
  return {
    width: fieldWidth(desk, field, role),
    paint(page, x, top, height) {
      const stroke = { color: pen.colors.ink, width: pen.strokes.line };
      const fill = answer ? (answerLook(desk).fill ?? pen.colors.paper) : pen.colors.paper;
      const box = pen.rect(x, top, width, height, { fill, stroke, radius: RADIUS });
      if (answer) {
        addArtifact(page, 'layout', [box]);
        paintRow(page, pen, answer, x + width / 2, top + (height - answer.height) / 2, 'center');
      } else {
        addContent(page, form, [box]);
      }
      if (unit) paintRow(page, pen, unit, x + width + UNIT_GAP, top + (height - unit.height) / 2);
    },
  };
}
