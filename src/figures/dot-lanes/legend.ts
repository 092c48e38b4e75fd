import type { Paragraph } from '../../text/index.js';
import { letterDot } from '../disc.js';
import type { TextInk } from '../drawing.js';
import { mm } from '../geometry.js';
import type { Sheet } from '../sheet.js';
import { signMarks } from '../signs.js';
import type { DotLanes } from '../spec.js';
import { CAP_HEIGHT } from '../tokens.js';

const SIGN = { usual: mm(8.4), big: mm(12) } as const;
const MOST_COLUMNS = 3;
const MOST_LINES = 3;
const LEADING = 1.2;

/**
 * Which letter is which row: dot, sign and words, side by side in the column. Columns become fewer
 * until all words fit into three lines. Returns the y of its lower edge.
 */
export function drawLegend(
  sheet: Sheet,
  rows: DotLanes['rows'],
  radius: number,
  top: number,
  reject: (words: string) => void,
): number {
  const { pen, type, axis, big } = sheet;
  const sign = big ? SIGN.big : SIGN.usual;
  const before = 2 * radius + mm(1.4) + sign + mm(0.8);
  const label = type.label;
  const leading = label.size * LEADING;
  const column = (pen.width - axis) / 1;
  // Words never touch the next letter; Arabic letters reach past their advance, too.
  const spare = mm(2.6);
  const set = (columns: number) =>
    rows.map((row) => pen.paragraph(row.words, label, column / columns - before - spare, { balance: true }));
  const fits = (words: readonly Paragraph<TextInk>[]) =>
    words.every((p) => !p.overflow && p.lines.length <= MOST_LINES);
  // Four stand better as two and two than as three and one.
  const most = rows.length === 4 ? 2 : Math.min(MOST_COLUMNS, rows.length);
  let columns = most;
  let words = set(columns);
  while (columns > 1 && !fits(words)) words = set(--columns);
  if (!fits(words))
    for (const [i, p] of words.entries())
      if (p.overflow || p.lines.length > MOST_LINES) reject(rows[i]?.words ?? '');
  let y = top;
  for (let first = 0; first < rows.length; first += columns) {
    const inRow = rows.slice(first, first + columns);
    const lines = Math.max(...inRow.map((_, k) => words[first + k]?.lines.length ?? 1));
    const height = Math.max(sign, 2 * radius, lines * leading);
    const middle = y + height / 2;
    for (const [k, row] of inRow.entries()) {
      const x = axis + (k * column) / columns;
      letterDot(pen, { x: x + radius, y: middle, radius, letter: row.letter, size: type.value.size });
      pen.place(
        x + 2 * radius + mm(1.4) + sign / 2,
        middle,
        signMarks(row.sign, pen.palette, { size: sign }),
      );
      const paragraph = words[first + k];
      if (!paragraph) continue;
      const up = ((paragraph.lines.length - 1) * leading) / 2;
      const baseline = middle - up + (label.size * CAP_HEIGHT) / 2;
      pen.putParagraph(paragraph, x + before, column / columns - before - spare, baseline, leading);
    }
    y += height + (first + columns < rows.length ? mm(2) : 0);
  }
  return y;
}
