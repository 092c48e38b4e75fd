import { letterDot } from '../disc.js';
import type { DotLanes } from '../spec.js';
import type { Stage } from '../stage.js';
import { CAP_HEIGHT, screenLines, screenType } from '../tokens.js';
import { shelfMarks } from '../vessels.js';

/** Sides of the vessels, best first. */
export const SHELF_SIZES: readonly number[] = [124, 110, 96, 84];
const LEADING = 38;
const RADIUS = 26;

/**
 * Which letter is which row: vessels on the shelf, each with its letter and words. Vessels are at most
 * `size` wide and become smaller for long words. Returns the height used above the shelf.
 */
export function drawShelfKey(
  { rows }: Pick<DotLanes, 'rows'>,
  { pen, width, height }: Stage,
  size: number,
  reject: (words: string) => void,
): number {
  const cell = width / Math.max(1, rows.length);
  const set = (side: number) =>
    rows.map((row) => pen.paragraph(row.words, screenType.label, cell - side - 30, { balance: true }));
  const fits = (words: ReturnType<typeof set>, side: number) =>
    words.every((p) => !p.overflow && p.lines.length * LEADING <= Math.max(side, 2 * LEADING) + 8);
  const smaller = SHELF_SIZES.filter((s) => s <= size);
  const side = smaller.find((s) => fits(set(s), s)) ?? smaller.at(-1) ?? size;
  const words = set(side);
  for (const [i, row] of rows.entries()) {
    const x = i * cell;
    pen.placeWide(x + 10, side, height, shelfMarks(row.sign, side, pen.ink));
    letterDot(pen, {
      x: x + 24,
      y: height - side + 14,
      radius: RADIUS - screenLines.disc / 2,
      letter: row.letter,
      size: 34,
      fill: pen.palette.paper,
      edge: { edge: pen.palette.ink, width: screenLines.disc },
    });
    const paragraph = words[i];
    if (!paragraph) continue;
    if (paragraph.overflow || !fits([paragraph], side)) reject(row.words);
    const lines = paragraph.lines.length;
    const middle = height - Math.max(side * 0.42, (lines * LEADING) / 2 + 6);
    const first = middle - ((lines - 1) * LEADING) / 2 + (screenType.label.size * CAP_HEIGHT) / 2;
    pen.putParagraph(paragraph, x + side + 24, cell - side - 30, first, LEADING);
  }
  return side + 12;
}
