import type { Block } from '../../document/index.js';
import { BREAK, type Desk, type LayBlocks, type PaperBox, type Slot, under } from '../desk.js';
import { addArtifact } from '../pen.js';
import { paintText } from '../rows.js';
import type { Draft } from '../structure.js';
import { mm, SPACE } from '../tokens.js';

const BULLET = mm(2);
const LABEL_GAP = mm(1.6);

/** Items with a square bullet or a number. Numbers widen the indent when they need it. */
export function listBoxes(
  desk: Desk,
  block: Block & { readonly kind: 'list' },
  at: Slot,
  parent: Draft,
  lay: LayBlocks,
): PaperBox[] {
  const { tree, set, type, pen } = desk;
  const list = tree.add(parent, 'L', { numbering: block.ordered ? 'Decimal' : 'Disc' });
  const labels = block.items.map((_, index) => `${(block.start ?? 1) + index}.`);
  const widest = Math.max(0, ...labels.map((text) => set.measure([{ text }], type.body)));
  const indent = block.ordered ? Math.max(SPACE.listIndent, widest + LABEL_GAP) : SPACE.listIndent;

  return block.items.flatMap((blocks, index) => {
    const item = tree.add(list, 'LI');
    const label = block.ordered ? tree.add(item, 'Lbl') : undefined;
    const body = tree.add(item, 'LBody');
    const boxes = lay(desk, blocks, { x: at.x + indent, width: at.width - indent }, body);
    const mark = label
      ? set.words(label, labels[index] ?? '', { width: at.width, role: type.body })
      : undefined;
    return boxes.map((box, inner) => {
      if (inner > 0) return box;
      const first = {
        ...box,
        before: index === 0 ? SPACE.paragraph : SPACE.listItem,
        cost: index === 0 ? BREAK.paragraph : BREAK.item,
      };
      return under(first, (page, top) => {
        if (mark) paintText(page, pen, mark, at.x, top);
        else {
          // The bullet stands on the middle of small letters of the first line.
          const middle = top + type.body.leading / 2 + 0.06 * type.body.size;
          const square = pen.rect(at.x, middle - BULLET / 2, BULLET, BULLET, { fill: pen.colors.ink });
          addArtifact(page, 'layout', [square]);
        }
      });
    });
  });
}
