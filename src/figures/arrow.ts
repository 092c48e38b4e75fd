import type { Color } from './drawing.js';
import type { Pen } from './pen.js';

export interface Arrow {
  readonly from: number;
  /** Where its point stands. */
  readonly to: number;
  readonly y: number;
  /** Length of the head. */
  readonly head: number;
  readonly width: number;
  /** Default the accent: look here. */
  readonly color?: Color;
}

/** A level arrow with a solid head. */
export function drawArrow(pen: Pen, { from, to, y, head, width, color = pen.palette.accent }: Arrow): void {
  const d = to > from ? 1 : -1;
  pen.line(from, y, to - d * head * 0.8, y, { edge: color, width });
  pen.poly(
    [
      [to, y],
      [to - d * head, y - head * 0.62],
      [to - d * head, y + head * 0.62],
    ],
    { fill: color },
    true,
  );
}
