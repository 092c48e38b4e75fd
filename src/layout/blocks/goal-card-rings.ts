import type { Desk } from '../desk.js';
import { addContent } from '../pen.js';
import { paintText } from '../rows.js';
import type { Draft } from '../structure.js';
import { mm } from '../tokens.js';
import type { CardPart, Sure } from './goal-card-body.js';
import { answerLook } from './text.js';

const RING = { height: mm(7.4), inside: mm(2), gap: mm(1.6), rowGap: mm(1.6) } as const;
const ABOVE = mm(3.4);
const HINT = mm(3);

/** The question, then its words, each in an open ring to mark, and what to do when one is not sure. */
export function layRings(desk: Desk, { label, words, hint }: Sure, width: number, parent: Draft): CardPart {
  const { pen, set, tree, type } = desk;
  const name = set.words(tree.add(parent, 'P'), label, { width, role: { ...type.body, weight: 700 } });
  const list = tree.add(parent, 'L', { numbering: 'None' });
  const rings = words.map(({ text, picked }) => {
    const item = tree.add(list, 'LI');
    // The signs are read aloud as what they are, in any language.
    const form = tree.add(tree.add(item, 'Lbl'), 'Form', { alt: `${picked ? '☑' : '☐'} ${text}` });
    const role = picked ? type.answer : type.body;
    const word = set.words(tree.add(item, 'LBody'), text, { width, role });
    return { form, word, picked, width: word.width + 2 * RING.inside };
  });
  const all = rings.reduce((sum, ring) => sum + ring.width + RING.gap, -RING.gap);
  const columns = all <= width ? rings.length : 2;
  const rows = Math.ceil(rings.length / columns);
  const ringsHeight = rows * RING.height + (rows - 1) * RING.rowGap;
  const after = set.words(tree.add(parent, 'P'), hint, { width, role: type.basis, color: pen.colors.slate });
  // What to do stands after the question where there is room, else below the rings.
  const beside = after.rows.length === 1 && name.width + HINT + after.width <= width;
  const below = beside ? 0 : mm(1.6) + after.height;
  return {
    height: ABOVE + name.height + mm(0.8) + ringsHeight + below,
    paint(page, x, top) {
      let y = paintText(page, pen, name, x, top + ABOVE) + mm(0.8);
      const hintTop = y - mm(0.8) - after.height - mm(0.7);
      for (let row = 0; row < rows; row += 1) {
        let at = x;
        for (const ring of rings.slice(row * columns, (row + 1) * columns)) {
          const stroke = {
            color: pen.colors.ink,
            width: ring.picked ? pen.strokes.bold : pen.strokes.line,
          };
          const fill = ring.picked ? { ...answerLook(desk), stroke } : { fill: pen.colors.paper, stroke };
          const look = { ...fill, radius: RING.height / 2 };
          addContent(page, ring.form, [pen.rect(at, y, ring.width, RING.height, look)]);
          paintText(page, pen, ring.word, at + RING.inside, y + (RING.height - ring.word.height) / 2);
          at += ring.width + RING.gap;
        }
        y += RING.height + RING.rowGap;
      }
      paintText(page, pen, after, beside ? x + name.width + HINT : x, beside ? hintTop : y);
    },
  };
}
