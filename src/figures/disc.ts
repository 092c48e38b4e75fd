import { contrast } from './color.js';
import type { Color } from './drawing.js';
import type { Look, Pen } from './pen.js';
import { lineBox } from './text-boxes.js';
import { DISC_BASELINE } from './tokens.js';

export interface Disc {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly letter: string;
  /** Of the letter. */
  readonly size: number;
  /** Default ink. */
  readonly fill?: Color;
  readonly edge?: Look;
}

/** A disc with a letter or number in the middle, white on dark or ink on white; words keep clear of it. */
export function letterDot(
  pen: Pen,
  { x, y, radius, letter, size, fill = pen.palette.ink, edge = {} }: Disc,
): void {
  pen.circle(x, y, radius, { fill, ...edge });
  const { paper, ink } = pen.palette;
  const color = contrast(fill, paper) >= contrast(fill, ink) ? paper : ink;
  const line = pen.set(letter, { size, weight: 800, color });
  // Capitals and digits stand by their height; letters with tails by the middle of their ink.
  const box = /^[A-Z0-9]+$/.test(letter) ? undefined : lineBox(line, 0, 0);
  pen.put(line, x, y + (box ? -(box.top + box.bottom) / 2 : size * DISC_BASELINE), 'middle');
  pen.take(x - radius, y - radius, 2 * radius, 2 * radius, letter);
}
