import type { CardCaution, Field, GoalCard, Inline } from '../../document/index.js';
import type { Desk } from '../desk.js';
import { addArtifact, addContent, type PageDraft } from '../pen.js';
import { paintText } from '../rows.js';
import type { Draft } from '../structure.js';
import { mm } from '../tokens.js';
import type { Card } from './goal-card.js';
import { layRings } from './goal-card-rings.js';
import { answerLook } from './text.js';

/** A part of a card, laid out for its width. */
export interface CardPart {
  readonly height: number;
  paint(page: PageDraft, x: number, top: number): void;
}

/** From line to line; a quarter of a sheet has less room. */
const PITCH = { usual: mm(10.5), narrow: mm(8.6) } as const;
const NARROW = mm(95);
const LABEL_GAP = mm(3);
const COLUMN_GAP = mm(6);
/** From this width on the cautions may stand beside the lines. */
const WIDE = mm(115);
/** Shares of the width that lines may take with the cautions beside them. */
const BESIDE = [0.58, 0.54, 0.5, 0.46, 0.42] as const;
/** So much height must be saved by it. */
const WORTH = { column: mm(18), cut: mm(8) } as const;
const CAUTION = { bar: mm(1.6), gap: mm(2.4), between: mm(1.4) } as const;
const PENCIL = mm(9);

/** Title, lines and rings; the cautions below them, or beside them where that saves much height. */
export function layCardBody(desk: Desk, block: Card, width: number, parent: Draft): CardPart {
  const shares = width < WIDE || block.cautions.length === 0 ? [] : BESIDE;
  // Tried out beside the tree, so that what is tried leaves nothing in it.
  const tried = shares.map((share) => ({
    share,
    height: besideEachOther(desk, block, width, share, { ...parent, children: [] }).height,
  }));
  const best = tried.toSorted((a, b) => a.height - b.height)[0];
  const below = belowEachOther(desk, block, width, { ...parent, children: [] }).height;
  return best && best.height + (block.cut ? WORTH.cut : WORTH.column) < below
    ? besideEachOther(desk, block, width, best.share, parent)
    : belowEachOther(desk, block, width, parent);
}

function belowEachOther(desk: Desk, block: Card, width: number, parent: Draft): CardPart {
  const lines = layLines(desk, block, width, parent);
  if (block.cautions.length === 0) return lines;
  return stacked([lines, gap(mm(3)), layCautions(desk, block, width, parent)]);
}

function besideEachOther(desk: Desk, block: Card, width: number, share: number, parent: Draft): CardPart {
  const first = (width - COLUMN_GAP) * share;
  const lines = layLines(desk, block, first, parent);
  const cautions = layCautions(desk, block, width - COLUMN_GAP - first, parent);
  return {
    height: Math.max(lines.height, cautions.height),
    paint(page, x, top) {
      lines.paint(page, x, top);
      cautions.paint(page, x + first + COLUMN_GAP, top);
    },
  };
}

function layLines(desk: Desk, block: Card, width: number, parent: Draft): CardPart {
  return stacked([
    layTitle(desk, block, width, parent),
    ...layFields(desk, block.card.fields, width, parent),
    ...(block.card.sure ? [layRings(desk, block.card.sure, width, parent)] : []),
  ]);
}

/** Each box on its own; what is for everybody runs on below, as it does under a sheet's block. */
function layCautions(desk: Desk, { cautions }: Card, width: number, parent: Draft): CardPart {
  const boxes = cautions.filter(({ word }) => word !== undefined);
  const lines = cautions.filter(({ word }) => word === undefined);
  const inlines = lines.flatMap((line, index) => [...(index > 0 ? [{ text: ' ' }] : []), ...line.inlines]);
  const runOn: CardCaution[] = lines.length > 0 ? [{ id: '', inlines }] : [];
  return stacked([...boxes, ...runOn].map((one) => layCaution(desk, one, width, parent)));
}

function stacked(parts: readonly CardPart[]): CardPart {
  return {
    height: parts.reduce((sum, part) => sum + part.height, 0),
    paint(page, x, top) {
      let y = top;
      for (const part of parts) {
        part.paint(page, x, y);
        y += part.height;
      }
    },
  };
}

function gap(height: number): CardPart {
  return { height, paint: () => {} };
}

function layTitle(desk: Desk, { card, pictures }: Card, width: number, parent: Draft): CardPart {
  const { pen, set, tree, type, figures } = desk;
  const pencil = pictures ? figures.picture('pencil', pen.ink) : undefined;
  const title = set.words(tree.add(parent, 'P'), card.title, {
    width: width - (pencil ? PENCIL + mm(3) : 0),
    role: type.head,
  });
  return {
    height: Math.max(title.height, pencil ? PENCIL : 0),
    paint(page, x, top) {
      paintText(page, pen, title, x, top);
      if (pencil)
        addArtifact(page, 'layout', [
          pen.drawing(pencil.marks, x + width - PENCIL, top, PENCIL, PENCIL / pencil.width),
        ]);
    },
  };
}

/** Labels in one column, each with a line after it; on a sample its words stand on the line. */
function layFields(desk: Desk, fields: readonly Field[], width: number, parent: Draft): CardPart[] {
  const { pen, set, tree, type } = desk;
  const role = { ...type.body, weight: 700 } as const;
  const start = Math.max(0, ...fields.map(({ label }) => set.measure([{ text: label }], role))) + LABEL_GAP;
  return fields.map(({ label, answer }): CardPart => {
    const name = set.words(tree.add(parent, 'P'), label, { width, role });
    const form = tree.add(parent, 'Form', { alt: answer === undefined ? label : `${label}: ${answer}` });
    const words =
      answer === undefined
        ? undefined
        : set.words(form, answer, { width: width - start - mm(3), role: type.answer });
    const more = words ? words.height - type.answer.leading : 0;
    const height = (width < NARROW ? PITCH.narrow : PITCH.usual) + more;
    return {
      height,
      paint(page, x, top) {
        const foot = top + height;
        paintText(page, pen, name, x, foot - mm(0.6) - name.height);
        const stroke = { color: pen.colors.ink, width: pen.strokes.hair };
        const line = pen.line(x + start, foot, x + width, foot, stroke);
        if (!words) return addContent(page, form, [line]);
        const ground = pen.rect(
          x + start,
          foot - words.height - mm(1.8),
          width - start,
          words.height + mm(1.8),
          answerLook(desk),
        );
        addArtifact(page, 'background', [ground, line]);
        paintText(page, pen, words, x + start + mm(1.5), foot - mm(0.9) - words.height);
      },
    };
  });
}

/** A caution whole, the word of its heading before it and a bar at its start. */
function layCaution(desk: Desk, caution: CardCaution, width: number, parent: Draft): CardPart {
  const { pen, set, tree, type } = desk;
  const word: Inline[] = caution.word ? [{ text: `${caution.word}: `, strong: true }] : [];
  const inset = caution.word ? CAUTION.bar + CAUTION.gap : 0;
  const text = set.inlines(tree.add(parent, 'P'), [...word, ...caution.inlines], {
    width: width - inset,
    role: type.caution,
  });
  return {
    height: text.height + CAUTION.between,
    paint(page, x, top) {
      if (caution.word)
        addArtifact(page, 'layout', [pen.rect(x, top, CAUTION.bar, text.height, { fill: pen.colors.ink })]);
      paintText(page, pen, text, x + inset, top);
    },
  };
}

export type Sure = NonNullable<GoalCard['sure']>;
