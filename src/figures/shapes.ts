// Builders of path data with only M, L, C and Z, the form in which drawings hold shapes.
import type { Matrix } from './drawing.js';
import { type Box, type Point, transform } from './geometry.js';

/** How far a cubic's handle reaches for a quarter circle of radius 1: 4/3 (√2 − 1), off by 0.03%. */
const QUARTER = (4 / 3) * (Math.SQRT2 - 1);

/**
 * A coordinate as path data has it: at most `digits` decimals, never an exponent, never -0. A
 * thousandth of a point is finer than any printer sets.
 */
export function coordinate(value: number, digits = 3): string {
  const rounded = Number(value.toFixed(digits));
  return rounded === 0 ? '0' : String(rounded);
}

const pair = (x: number, y: number) => `${coordinate(x)} ${coordinate(y)}`;

export function linePath(x1: number, y1: number, x2: number, y2: number): string {
  return `M${pair(x1, y1)}L${pair(x2, y2)}`;
}

export function polyPath(points: readonly Point[], closed = false): string {
  if (points.length === 0) return '';
  return `M${points.map(([x, y]) => pair(x, y)).join('L')}${closed ? 'Z' : ''}`;
}

/** A rectangle, its corners rounded by `radius` (at most half the shorter side). */
export function rectPath(x: number, y: number, width: number, height: number, radius = 0): string {
  const r = Math.min(radius, width / 2, height / 2);
  const [right, bottom] = [x + width, y + height];
  if (!(r > 0))
    return polyPath(
      [
        [x, y],
        [right, y],
        [right, bottom],
        [x, bottom],
      ],
      true,
    );
  const h = r * (1 - QUARTER);
  return [
    `M${pair(x + r, y)}L${pair(right - r, y)}C${pair(right - h, y)} ${pair(right, y + h)} ${pair(right, y + r)}`,
    `L${pair(right, bottom - r)}C${pair(right, bottom - h)} ${pair(right - h, bottom)} ${pair(right - r, bottom)}`,
    `L${pair(x + r, bottom)}C${pair(x + h, bottom)} ${pair(x, bottom - h)} ${pair(x, bottom - r)}`,
    `L${pair(x, y + r)}C${pair(x, y + h)} ${pair(x + h, y)} ${pair(x + r, y)}Z`,
  ].join('');
}

export function ellipsePath(cx: number, cy: number, rx: number, ry: number): string {
  const [hx, hy] = [rx * QUARTER, ry * QUARTER];
  return [
    `M${pair(cx + rx, cy)}`,
    `C${pair(cx + rx, cy + hy)} ${pair(cx + hx, cy + ry)} ${pair(cx, cy + ry)}`,
    `C${pair(cx - hx, cy + ry)} ${pair(cx - rx, cy + hy)} ${pair(cx - rx, cy)}`,
    `C${pair(cx - rx, cy - hy)} ${pair(cx - hx, cy - ry)} ${pair(cx, cy - ry)}`,
    `C${pair(cx + hx, cy - ry)} ${pair(cx + rx, cy - hy)} ${pair(cx + rx, cy)}Z`,
  ].join('');
}

export function circlePath(cx: number, cy: number, r: number): string {
  return ellipsePath(cx, cy, r, r);
}

/** One step of a path: its letter and its points. */
export interface Step {
  readonly command: 'M' | 'L' | 'C' | 'Z';
  readonly points: readonly Point[];
}

const SIZE = { M: 1, L: 1, C: 3, Z: 0 } as const;

/** The steps of path data that holds only M, L, C and Z, as drawings do. Throws on anything else. */
export function stepsOf(path: string): Step[] {
  const steps: Step[] = [];
  for (const [, letter = '', rest = ''] of path.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    if (letter !== 'M' && letter !== 'L' && letter !== 'C' && letter !== 'Z')
      throw new Error(`Path data of a drawing holds the command ${letter}.`);
    const numbers = (rest.match(/-?[\d.]+/g) ?? []).map(Number);
    const size = SIZE[letter];
    if (size === 0) steps.push({ command: letter, points: [] });
    for (let i = 0; size > 0 && i + 2 * size <= numbers.length; i += 2 * size) {
      const points: Point[] = [];
      for (let k = i; k < i + 2 * size; k += 2) points.push([numbers[k] ?? 0, numbers[k + 1] ?? 0]);
      steps.push({ command: letter === 'M' && i > 0 ? 'L' : letter, points });
    }
  }
  return steps;
}

export function pathOf(steps: readonly Step[], digits = 3): string {
  return steps
    .map(
      ({ command, points }) =>
        command + points.map(([x, y]) => `${coordinate(x, digits)} ${coordinate(y, digits)}`).join(' '),
    )
    .join('');
}

export function transformPath(matrix: Matrix, path: string, digits = 3): string {
  return pathOf(
    stepsOf(path).map(({ command, points }) => ({
      command,
      points: points.map((p) => transform(matrix, p)),
    })),
    digits,
  );
}

/** Where a cubic with these four values along one axis turns back, as parameters in (0, 1). */
function turns(p0: number, p1: number, p2: number, p3: number): number[] {
  const a = -p0 + 3 * p1 - 3 * p2 + p3;
  const b = 2 * (p0 - 2 * p1 + p2);
  const c = p1 - p0;
  if (Math.abs(a) < 1e-12) return Math.abs(b) < 1e-12 ? [] : [-c / b].filter((t) => t > 0 && t < 1);
  const root = b * b - 4 * a * c;
  if (root < 0) return [];
  return [(-b + Math.sqrt(root)) / (2 * a), (-b - Math.sqrt(root)) / (2 * a)].filter((t) => t > 0 && t < 1);
}

const cubicAt = (t: number, p0: number, p1: number, p2: number, p3: number) =>
  (1 - t) ** 3 * p0 + 3 * (1 - t) ** 2 * t * p1 + 3 * (1 - t) * t * t * p2 + t ** 3 * p3;

/** The exact box around the path's line (without its stroke); `undefined` for an empty path. */
export function pathBox(path: string): Box | undefined {
  const xs: number[] = [];
  const ys: number[] = [];
  let [x, y] = [0, 0];
  for (const { command, points } of stepsOf(path)) {
    const [p1, p2, p3] = points;
    if (command === 'C' && p1 && p2 && p3) {
      for (const t of turns(x, p1[0], p2[0], p3[0])) xs.push(cubicAt(t, x, p1[0], p2[0], p3[0]));
      for (const t of turns(y, p1[1], p2[1], p3[1])) ys.push(cubicAt(t, y, p1[1], p2[1], p3[1]));
    }
    const end = points.at(-1);
    if (!end) continue;
    [x, y] = end;
    xs.push(x);
    ys.push(y);
  }
  if (xs.length === 0) return undefined;
  const low = (values: number[]) => values.reduce((m, v) => Math.min(m, v), Number.POSITIVE_INFINITY);
  const high = (values: number[]) => values.reduce((m, v) => Math.max(m, v), Number.NEGATIVE_INFINITY);
  return { left: low(xs), top: low(ys), right: high(xs), bottom: high(ys) };
}
