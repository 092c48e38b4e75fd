import type { Mark, Matrix } from '../figures/index.js';

/** A box in the marks' own coordinates. */
export interface Bounds {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/**
 * The box around each mark, groups opened. Curves count by their control points and text by its
 * line's ascent and descent, so a box is never too small; strokes count with half their width.
 */
export function boundsOf(marks: readonly Mark[], at: Matrix = [1, 0, 0, 1, 0, 0]): Bounds[] {
  return marks.flatMap((mark) => {
    switch (mark.kind) {
      case 'group': {
        const inner = mark.at ? times(at, mark.at) : at;
        const within = boundsOf(mark.marks, inner);
        return mark.clip === undefined ? within : clipped(within, around(inner, pointsOf(mark.clip)));
      }
      case 'text':
        return [
          around(at, [
            [mark.x, mark.baseline - mark.line.ascent],
            [mark.x + mark.line.width, mark.baseline + mark.line.descent],
          ]),
        ];
      case 'raster':
        return [
          around(at, [
            [mark.x, mark.y],
            [mark.x + mark.width, mark.y + mark.height],
          ]),
        ];
      case 'shape': {
        const points = pointsOf(mark.path);
        if (points.length === 0) return [];
        return [around(at, points, (mark.stroke?.width ?? 0) / 2)];
      }
      default:
        return mark satisfies never;
    }
  });
}

/** The highest point of anything that reaches into the columns from `low` to `high`; nothing if none does. */
export function topWithin(
  marks: readonly Mark[],
  [low, high]: readonly [number, number],
): number | undefined {
  const tops = boundsOf(marks)
    .filter((b) => b.left < high && b.right > low)
    .map((b) => Math.max(0, b.top));
  return tops.length === 0 ? undefined : Math.min(...tops);
}

function clipped(boxes: readonly Bounds[], clip: Bounds): Bounds[] {
  return boxes
    .map((b) => ({
      left: Math.max(b.left, clip.left),
      top: Math.max(b.top, clip.top),
      right: Math.min(b.right, clip.right),
      bottom: Math.min(b.bottom, clip.bottom),
    }))
    .filter((b) => b.left < b.right && b.top < b.bottom);
}

function times(outer: Matrix, inner: Matrix): Matrix {
  const [a, b, c, d, e, f] = outer;
  const [g, h, i, j, k, l] = inner;
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

function around(m: Matrix, points: readonly (readonly [number, number])[], pad = 0): Bounds {
  const [a, b, c, d, e, f] = m;
  const grown = points.flatMap(([x, y]) => [
    [x - pad, y - pad],
    [x + pad, y - pad],
    [x - pad, y + pad],
    [x + pad, y + pad],
  ]);
  const xs = grown.map(([x = 0, y = 0]) => a * x + c * y + e);
  const ys = grown.map(([x = 0, y = 0]) => b * x + d * y + f);
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

/** All points of a path, control points included. */
function pointsOf(path: string): (readonly [number, number])[] {
  const numbers = [...path.matchAll(/[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/g)].map((m) => Number(m[0]));
  const points: (readonly [number, number])[] = [];
  for (let i = 0; i + 1 < numbers.length; i += 2) points.push([numbers[i] ?? 0, numbers[i + 1] ?? 0]);
  return points;
}
