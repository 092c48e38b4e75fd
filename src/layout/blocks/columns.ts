import { mm } from '../tokens.js';

/** More air than this between columns makes the eye lose the row. */
const AIR = mm(6);

/** What a column of a table asks for: its longest word, its widest line, and how much text its cells hold. */
export interface ColumnNeed {
  readonly least: number;
  readonly most: number;
  /** Mean width of a cell's lines all in one. */
  readonly text: number;
}

/**
 * Widths of a table's columns. Where all cells fit on one line, the first column takes what is left
 * over; else widths follow how much text the columns hold, so that their cells come out about equally
 * high, but none is narrower than its longest word or wider than its widest line. When not even the
 * words fit, all columns shrink alike and the words that stick out are reported where they are set.
 */
export function columnWidths(needs: readonly ColumnNeed[], width: number): number[] {
  const most = sum(needs.map((n) => n.most));
  if (most <= width) {
    // Air between the columns first; what is left then goes to the first, which heads the rows.
    const air = Math.min(AIR, (width - most) / needs.length);
    const left = width - most - air * (needs.length - 1);
    return needs.map((n, index) => n.most + (index === 0 ? left : air));
  }
  const least = sum(needs.map((n) => n.least));
  if (least >= width) return needs.map((n) => (n.least * width) / least);
  const widthsAt = (share: number) => needs.map((n) => Math.max(n.least, Math.min(n.most, share * n.text)));
  let low = 0;
  let high = 1;
  for (let step = 0; step < 40; step += 1) {
    const middle = (low + high) / 2;
    if (sum(widthsAt(middle)) > width) high = middle;
    else low = middle;
  }
  const widths = widthsAt(low);
  const rest = (width - sum(widths)) / widths.length;
  return widths.map((w) => w + rest);
}

function sum(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0);
}
