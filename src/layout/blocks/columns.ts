import { mm } from '../tokens.js';

/** More air than this between columns makes the eye lose the row. */
const AIR = mm(6);

/** What a column of a table asks for: its longest word, and its longest cell on one line. */
export interface ColumnNeed {
  readonly least: number;
  readonly most: number;
}

/**
 * Widths of a table's columns. Where all cells fit on one line, the first column takes what is left
 * over; else each column gets its longest word and a share of the rest by how much more it could use.
 * When not even the words fit, all columns shrink alike and the words that stick out are reported
 * where they are set.
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
  const rest = width - least;
  // A long text can use any width; past a limit it must not starve the columns beside it.
  const wish = needs.map((n) => Math.min(n.most, Math.max(n.least, 3 * (width / needs.length))) - n.least);
  const wished = sum(wish);
  if (wished <= 0) return needs.map((n) => n.least + rest / needs.length);
  return needs.map((n, index) => n.least + (rest * (wish[index] ?? 0)) / wished);
}

function sum(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0);
}
