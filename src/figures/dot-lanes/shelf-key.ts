import type { Paragraph } from '../../text/index.js';
import { letterDot } from '../disc.js';
import type { TextInk } from '../drawing.js';
import type { DotLanes } from '../spec.js';
import type { Stage } from '../stage.js';
import { CAP_HEIGHT, screenLines, screenType } from '../tokens.js';
import { shelfMarks } from '../vessels.js';

/** Sides of the vessels, best first. */
const SIDES: readonly number[] = [124, 110, 96, 84];
const LEADING = 38;
const RADIUS = 26;
const MOST_LINES = 4;
/** From a vessel to its words; from the words to the next cell. */
const AFTER = 24;
const SPARE = 6;

/** The vessels' side, their words as set, and the height that both take above the shelf. */
export interface ShelfKey {
  readonly side: number;
  readonly words: readonly Paragraph<TextInk>[];
  readonly height: number;
}

const isWhole = (p: Paragraph<TextInk>) => !p.overflow && p.lines.length <= MOST_LINES;

/** The largest vessels that leave room above them and for their words beside them. */
export function planShelfKey({ rows }: DotLanes, { pen, width, height }: Stage, above: number): ShelfKey {
  const cell = width / Math.max(1, rows.length);
  const keys = SIDES.map((side): ShelfKey => {
    const measure = cell - side - AFTER - SPARE;
    const words = rows.map((row) => pen.paragraph(row.words, screenType.label, measure, { balance: true }));
    const lines = Math.max(0, ...words.map((p) => p.lines.length));
    return { side, words, height: Math.max(side + 12, lines * LEADING + 10) };
  });
  const whole = keys.filter((key) => key.words.every(isWhole));
  const lowest = (whole.length > 0 ? whole : keys).reduce((a, b) => (b.height < a.height ? b : a));
  return whole.find((key) => key.height + above <= height) ?? lowest;
}

/** Which letter is which row: vessels on the shelf, each with its letter and words. */
export function drawShelfKey(
  { rows }: DotLanes,
  { pen, width, height }: Stage,
  { side, words }: ShelfKey,
  reject: (words: string) => void,
): void {
  const cell = width / Math.max(1, rows.length);
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
    if (!isWhole(paragraph)) reject(row.words);
    const lines = paragraph.lines.length;
    const middle = height - Math.max(side * 0.42, (lines * LEADING) / 2 + 2);
    const first = middle - ((lines - 1) * LEADING) / 2 + (screenType.label.size * CAP_HEIGHT) / 2;
    pen.putParagraph(paragraph, x + side + AFTER, cell - side - AFTER - SPARE, first, LEADING);
  }
}
