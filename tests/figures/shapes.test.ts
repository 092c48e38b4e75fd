import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { invert, multiply, overlap, transform } from '../../src/figures/geometry.js';
import {
  circlePath,
  coordinate,
  pathBox,
  polyPath,
  rectPath,
  stepsOf,
  transformPath,
} from '../../src/figures/shapes.js';

describe('path data', () => {
  it('writes numbers without exponent or minus zero', () => {
    expect([coordinate(-0.0001), coordinate(1e-9), coordinate(1 / 3), coordinate(12)]).toEqual([
      '0',
      '0',
      '0.333',
      '12',
    ]);
  });

  it('holds only M, L, C and Z', () => {
    for (const path of [
      rectPath(1, 2, 3, 4),
      rectPath(1, 2, 30, 40, 5),
      circlePath(0, 0, 9),
      polyPath([[0, 0]], true),
    ])
      expect(path.replace(/[\d. -]/g, '').replace(/[MLCZ]/g, '')).toBe('');
    expect(() => stepsOf('M0 0H3')).toThrow('command H');
  });

  it('draws circles that are round to 0.03% of the radius', () => {
    const [start, ...curves] = stepsOf(circlePath(0, 0, 1000));
    let from = start?.points[0] ?? [0, 0];
    for (const { command, points } of curves) {
      const [a, b, c] = points;
      if (command !== 'C' || !a || !b || !c) continue;
      for (let t = 0; t <= 1; t += 0.05) {
        const at = (k: 0 | 1) =>
          (1 - t) ** 3 * from[k] + 3 * (1 - t) ** 2 * t * a[k] + 3 * (1 - t) * t * t * b[k] + t ** 3 * c[k];
        expect(Math.abs(Math.hypot(at(0), at(1)) - 1000)).toBeLessThan(0.3);
      }
      from = c;
    }
  });

  it('finds the exact box of a curve, not that of its handles', () => {
    // y(t) = 3·(1-t)²·t·100 + 3·(1-t)·t²·100 has its top at t = 1/2: 75.
    expect(pathBox('M0 0C0 100 100 100 100 0')).toEqual({ left: 0, top: 0, right: 100, bottom: 75 });
    expect(pathBox('')).toBeUndefined();
  });

  it('rounds no corner by more than half a side', () => {
    expect(pathBox(rectPath(0, 0, 10, 4, 99))).toEqual({ left: 0, top: 0, right: 10, bottom: 4 });
  });
});

describe('matrices', () => {
  const number = fc.double({ min: -50, max: 50, noNaN: true });
  const matrix = fc.tuple(number, number, number, number, number, number);

  it('multiply as doing one after the other, and invert back', () => {
    fc.assert(
      fc.property(matrix, matrix, fc.tuple(number, number), (m, n, p) => {
        const once = transform(multiply(m, n), p);
        const twice = transform(m, transform(n, p));
        expect(Math.hypot(once[0] - twice[0], once[1] - twice[1])).toBeLessThan(1e-6);
        const back = invert(m);
        if (!back || Math.abs(m[0] * m[3] - m[1] * m[2]) < 0.01) return;
        const again = transform(back, transform(m, p));
        expect(Math.hypot(again[0] - p[0], again[1] - p[1])).toBeLessThan(1e-3);
      }),
    );
  });

  it('move path data', () => {
    expect(transformPath([2, 0, 0, 2, 1, -1], 'M0 0L3 4Z')).toBe('M1 -1L7 7Z');
  });

  it('tell boxes that touch from boxes that overlap', () => {
    const box = (left: number) => ({ left, top: 0, right: left + 10, bottom: 10 });
    expect(overlap(box(0), box(10))).toBe(0);
    expect(overlap(box(0), box(7))).toBe(3);
    expect(overlap(box(0), box(30))).toBeLessThan(0);
  });
});
