import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pathOf } from '../../../src/figures/shapes.js';
import { PathDataError, readPathData } from '../../../src/figures/svg/path-data.js';

/** Cases from the grammar and the prose of SVG 2, chapter 9 (paths). */
const CASES: readonly (readonly [string, string, string])[] = [
  ['moves and lines', 'M1 2 L3 4', 'M1 2L3 4'],
  ['more pairs after a move are lines', 'M1 2 3 4 5 6', 'M1 2L3 4L5 6'],
  ['more pairs after a relative move are relative lines', 'm1 2 3 4', 'M1 2L4 6'],
  ['upright and level lines', 'M0 0H5V6h-2v-3', 'M0 0L5 0L5 6L3 6L3 3'],
  ['numbers without space between', 'M.5.5-1-1', 'M0.5 0.5L-1 -1'],
  ['exponents', 'M1e1 2E-1', 'M10 0.2'],
  [
    'a smooth curve mirrors the handle before',
    'M0 0C0 5 5 5 5 0S10 -5 10 0',
    'M0 0C0 5 5 5 5 0C5 -5 10 -5 10 0',
  ],
  ['a smooth curve after a line starts at the point', 'M0 0L5 0S10 -5 10 0', 'M0 0L5 0C5 0 10 -5 10 0'],
  ['a quadratic becomes a cubic', 'M0 0Q3 6 6 0', 'M0 0C2 4 4 4 6 0'],
  ['a smooth quadratic mirrors its handle', 'M0 0Q3 6 6 0T12 0', 'M0 0C2 4 4 4 6 0C8 -4 10 -4 12 0'],
  ['after closing, relative commands start at the first point', 'M1 1l4 0l0 4zl2 2', 'M1 1L5 1L5 5ZL3 3'],
  ['an arc without radius is a line', 'M0 0A0 5 0 0 1 9 9', 'M0 0L9 9'],
  ['an arc to where it starts still names its end', 'M3 3A5 5 0 0 1 3 3', 'M3 3L3 3'],
  ['flags may stand without space', 'M0 0a1 1 0 012 0', 'M0 0C0 -0.552 0.448 -1 1 -1C1.552 -1 2 -0.552 2 0'],
];

describe('reading path data', () => {
  it.each(CASES)('%s', (_, written, expected) => {
    expect(pathOf(readPathData(written))).toBe(expected);
  });

  it.each([
    ['no move first', 'L1 1'],
    ['a word', 'M0 0 hello'],
    ['a missing number', 'M0 0 L1'],
    ['a flag that is none', 'M0 0 A1 1 0 2 0 1 1'],
    ['a number beyond all sense', 'M1e99 0'],
    ['a number after closing', 'M0 0 1 1z 5'],
  ])('refuses %s', (_, written) => {
    expect(() => readPathData(written)).toThrow(PathDataError);
  });

  it('keeps the points of an arc on its circle and ends where it must', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 90, noNaN: true }),
        fc.double({ min: 0.1, max: 6.1, noNaN: true }),
        fc.boolean(),
        fc.boolean(),
        (r, angle, large, sweep) => {
          const end = [r * Math.cos(angle), r * Math.sin(angle)] as const;
          const steps = readPathData(
            `M${r} 0A${r} ${r} 0 ${+large} ${+sweep} ${end[0].toFixed(9)} ${end[1].toFixed(9)}`,
          );
          const last = steps.at(-1)?.points.at(-1) ?? [0, 0];
          expect(Math.hypot(last[0] - end[0], last[1] - end[1])).toBeLessThan(1e-6);
          const curves = steps.filter((s) => s.command === 'C');
          // Both circles through two points with this radius: the one around 0, or its mirror image.
          const other = [r + end[0], end[1]] as const;
          for (const { points } of curves) {
            const p = points[2] ?? [0, 0];
            const off = Math.min(
              Math.abs(Math.hypot(p[0], p[1]) - r),
              Math.abs(Math.hypot(p[0] - other[0], p[1] - other[1]) - r),
            );
            expect(off).toBeLessThan(r * 1e-3);
          }
        },
      ),
    );
  });

  it('never fails in another way, whatever it is given', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom(...'MmLlHhVvCcSsQqTtAaZz0123456789.-+ ,eE') }),
        (text) => {
          try {
            expect(pathOf(readPathData(text)).replace(/[\d. -]/g, '')).toMatch(/^[MLCZ]*$/);
          } catch (error) {
            expect(error).toBeInstanceOf(PathDataError);
          }
        },
      ),
    );
  });
});
