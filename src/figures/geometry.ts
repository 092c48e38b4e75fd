import type { Matrix } from './drawing.js';

export type Point = readonly [x: number, y: number];

/** Left, top, right, bottom; y down. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Millimeters of paper in points (1 pt = 1/72 in, 1 in = 25.4 mm). */
export const mm = (length: number): number => (length * 72) / 25.4;

export const IDENTITY: Matrix = [1, 0, 0, 1, 0, 0];

/** The matrix that does `inner` first and `outer` after it. */
export function multiply(outer: Matrix, inner: Matrix): Matrix {
  const [a, b, c, d, e, f] = outer;
  const [g, h, i, j, k, l] = inner;
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

export function transform([a, b, c, d, e, f]: Matrix, [x, y]: Point): Point {
  return [a * x + c * y + e, b * x + d * y + f];
}

/** `undefined` when the matrix flattens everything to a line or point. */
export function invert([a, b, c, d, e, f]: Matrix): Matrix | undefined {
  const det = a * d - b * c;
  if (!Number.isFinite(det) || Math.abs(det) < 1e-12) return undefined;
  return [d / det, -b / det, -c / det, a / det, (c * f - d * e) / det, (b * e - a * f) / det];
}

/** The smallest box around both; a missing box counts as nothing. */
export function union(a: Box | undefined, b: Box | undefined): Box | undefined {
  if (!a || !b) return a ?? b;
  return {
    left: Math.min(a.left, b.left),
    top: Math.min(a.top, b.top),
    right: Math.max(a.right, b.right),
    bottom: Math.max(a.bottom, b.bottom),
  };
}

/** The smallest upright box around the box after the matrix. */
export function transformBox(matrix: Matrix, box: Box): Box {
  const corners = [
    transform(matrix, [box.left, box.top]),
    transform(matrix, [box.right, box.top]),
    transform(matrix, [box.right, box.bottom]),
    transform(matrix, [box.left, box.bottom]),
  ];
  const xs = corners.map(([x]) => x);
  const ys = corners.map(([, y]) => y);
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

export function grow(box: Box, by: number): Box {
  return { left: box.left - by, top: box.top - by, right: box.right + by, bottom: box.bottom + by };
}

/** How deep two boxes lie in each other: the smaller of the two overlaps; 0 or less when they are apart. */
export function overlap(a: Box, b: Box): number {
  return Math.min(
    Math.min(a.right, b.right) - Math.max(a.left, b.left),
    Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top),
  );
}
