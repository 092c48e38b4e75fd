import type { Pen } from './pen.js';

export interface Arrow {
  readonly from: number;
  /** Where its point stands. */
  readonly to: number;
  readonly y: number;
  /** Length of the head. */
  readonly head: number;
  readonly width: number;
}

/** A level arrow with a solid head, in the accent: look here. */
export function drawArrow(pen: Pen, { from, to, y, head, width }: Arrow): void {
  const d = to > from ? 1 : -1;
  const color = pen.palette.accent;
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
