import type { Matrix } from '../../../figures/index.js';
import { operands } from './number.js';

/** The matrix that first applies `inner`, then `outer`. */
export function multiply(outer: Matrix, inner: Matrix): Matrix {
  const [a, b, c, d, e, f] = outer;
  const [g, h, i, j, k, l] = inner;
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

/** How much the matrix enlarges lengths at most; 0 for a degenerate one. */
export function scaleOf([a, b, c, d]: Matrix): number {
  return Math.max(Math.hypot(a, b), Math.hypot(c, d));
}

/** The box, as `[left, low, right, high]`, that holds the page rectangle seen from inside `matrix`. */
export function pageBoxIn(
  [a, b, c, d, e, f]: Matrix,
  width: number,
  height: number,
): [number, number, number, number] {
  const det = a * d - b * c;
  // Nothing shows through a flat matrix, so an empty box is right.
  if (det === 0) return [0, 0, 0, 0];
  const corners = [
    [0, 0],
    [width, 0],
    [0, height],
    [width, height],
  ].map(([x = 0, y = 0]) => [(d * (x - e) - c * (y - f)) / det, (a * (y - f) - b * (x - e)) / det]);
  const xs = corners.map(([x = 0]) => x);
  const ys = corners.map(([, y = 0]) => y);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/** The `cm` operator. */
export function concat(matrix: Matrix): string {
  return `${operands(matrix, 6)} cm\n`;
}
