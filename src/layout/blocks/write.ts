import type { Block } from '../../document/index.js';
import { BREAK, type Desk, type PaperBox, type Slot } from '../desk.js';
import { addContent } from '../pen.js';
import { paintText } from '../rows.js';
import type { Draft } from '../structure.js';
import { mm } from '../tokens.js';

const PITCH = mm(10.5);
const GAP = mm(2.4);
/** A longer label stands above its lines. */
const LABEL_SHARE = 0.45;

/** Lines to write on. A short label stands at the start of the first. */
export function writeBoxes(
  desk: Desk,
  block: Block & { readonly kind: 'write' },
  at: Slot,
  parent: Draft,
): PaperBox[] {
  const { tree, set, pen, type } = desk;
  const label = set.words(tree.add(parent, 'P'), block.label, {
    width: at.width,
    role: type.body,
    place: block.place,
  });
  const form = tree.add(parent, 'Form', { alt: block.label });
  const beside = label.rows.length <= 1 && label.width <= LABEL_SHARE * at.width;
  const above = beside ? 0 : label.height - mm(3);
  const stroke = { color: pen.colors.ink, width: pen.strokes.hair };
  return [
    {
      height: above + block.lines * PITCH,
      before: mm(0.5),
      keep: false,
      cost: BREAK.item,
      paint(page, top) {
        paintText(page, pen, label, at.x, beside ? top + PITCH - label.height : top);
        const lines = Array.from({ length: block.lines }, (_, index) => {
          const y = top + above + (index + 1) * PITCH;
          const start = index === 0 && beside && label.width > 0 ? at.x + label.width + GAP : at.x;
          return pen.line(start, y, at.x + at.width, y, stroke);
        });
        addContent(page, form, lines);
      },
    },
  ];
}
