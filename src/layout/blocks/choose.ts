import type { Block } from '../../document/index.js';
import { BREAK, type Desk, type PaperBox, type Slot } from '../desk.js';
import { paintText } from '../rows.js';
import type { Draft } from '../structure.js';
import { mm, SPACE } from '../tokens.js';

const END_SPACE = mm(4);

/** "A when you have time": as many columns as there are forms. */
export function chooseBoxes(
  desk: Desk,
  block: Block & { readonly kind: 'choose' },
  at: Slot,
  parent: Draft,
): PaperBox[] {
  const { tree, set, pen, type } = desk;
  if (block.items.length === 0) return [];
  const list = tree.add(parent, 'L', { numbering: 'UpperAlpha' });
  const width = at.width / block.items.length;
  const texts = block.items.map((item) => {
    const line = tree.add(list, 'LI');
    const letter = {
      node: tree.add(line, 'Lbl'),
      inlines: [{ text: `${item.letter} ` }],
      weight: 800 as const,
    };
    const words = { node: tree.add(line, 'LBody'), inlines: item.inlines };
    return set.parts([letter, words], { width: width - END_SPACE, role: type.choose, place: block.place });
  });
  return [
    {
      height: Math.max(...texts.map((t) => t.height)),
      before: SPACE.figureToChoose,
      keep: false,
      cost: BREAK.part,
      paint(page, top) {
        texts.forEach((text, index) => {
          paintText(page, pen, text, at.x + index * width, top);
        });
      },
    },
  ];
}
