import { BREAK, type Desk, type PaperBox } from '../desk.js';
import { paintText } from '../rows.js';
import { mm } from '../tokens.js';

const BEFORE = mm(2.2);

/** Local notices over the whole measure, each whole on its page, a step smaller than cautions and with a word none has. */
export function noticeBoxes(desk: Desk): PaperBox[] {
  const { tree, set, type, grid, pen, sheet } = desk;
  return (sheet.notices ?? []).map((inlines, index): PaperBox => {
    const node = tree.add(tree.root, 'P');
    const text = set.inlines(node, inlines, { width: grid.measure, role: type.table });
    return {
      height: text.height,
      before: index === 0 ? BEFORE : 0,
      keep: false,
      cost: BREAK.section,
      railFrom: 0,
      paint(page, top) {
        paintText(page, pen, text, grid.side, top);
      },
    };
  });
}
