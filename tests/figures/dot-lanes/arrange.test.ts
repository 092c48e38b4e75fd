import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrangeLane, scaleEnd, spread } from '../../../src/figures/dot-lanes/arrange.js';
import { leastDistance } from '../../../src/figures/dot-lanes/pack.js';

describe('the end of a scale', () => {
  it.each([
    [[640, 2, 360], 700],
    [[15.4, 9.3], 18],
    [[404, 358], 450],
    [[0.68], 0.7],
    [[39], 40],
    [[99], 120],
    [[0, 0], 1],
    [[], 1],
  ])('of %j is %d', (values, end) => {
    expect(scaleEnd(values)).toBeCloseTo(end, 12);
  });

  it('lies above every value and wastes less than a quarter of the lane', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 1e-3, max: 1e6, noNaN: true }), { minLength: 1 }), (values) => {
        const highest = Math.max(...values);
        expect(scaleEnd(values)).toBeGreaterThan(highest);
        expect(scaleEnd(values)).toBeLessThan(highest * 1.3);
      }),
    );
  });
});

describe('spreading labels', () => {
  it('moves two that collide apart equally', () => {
    expect(
      spread(
        [
          { middle: 50, width: 20 },
          { middle: 54, width: 20 },
        ],
        4,
        0,
        100,
      ),
    ).toEqual([40, 64]);
  });

  it('leaves those alone that do not collide', () => {
    expect(
      spread(
        [
          { middle: 20, width: 10 },
          { middle: 60, width: 10 },
        ],
        4,
        0,
        100,
      ),
    ).toEqual([20, 60]);
  });

  it('says when there is no room', () => {
    expect(
      spread(
        [
          { middle: 5, width: 60 },
          { middle: 9, width: 60 },
        ],
        4,
        0,
        100,
      ),
    ).toBeUndefined();
  });

  const label = fc.record({
    middle: fc.double({ min: 0, max: 400, noNaN: true }),
    width: fc.double({ min: 5, max: 40, noNaN: true }),
  });

  it('keeps order, gaps and bounds, and never moves more than it must', () => {
    fc.assert(
      fc.property(fc.array(label, { maxLength: 7 }), (unsorted) => {
        const labels = unsorted.toSorted((a, b) => a.middle - b.middle);
        const middles = spread(labels, 5, 0, 400);
        if (!middles) return;
        let cost = 0;
        for (const [i, { middle, width }] of labels.entries()) {
          const at = middles[i] ?? Number.NaN;
          expect(at - width / 2).toBeGreaterThan(-1e-6);
          expect(at + width / 2).toBeLessThan(400 + 1e-6);
          const next = labels[i + 1];
          if (next) expect((middles[i + 1] ?? 0) - next.width / 2 - at - width / 2).toBeGreaterThan(5 - 1e-6);
          cost += (at - middle) ** 2;
        }
        // Another allowed placing, from the start edge on, is never nearer to what was wished.
        let x = 0;
        const packed = labels.map(({ middle, width }) => {
          const at = Math.max(middle, x + width / 2);
          x = at + width / 2 + 5;
          return at;
        });
        if (x - 5 > 400) return;
        expect(cost).toBeLessThanOrEqual(
          packed.reduce((sum, at, i) => sum + (at - (labels[i]?.middle ?? 0)) ** 2, 0) + 1e-6,
        );
      }),
    );
  });
});

describe('arranging dots on a lane', () => {
  const room = { radius: 9, apart: 1.5, gap: 8, beside: 4, low: 0, high: 500 };
  const point = fc.record({
    x: fc.double({ min: 120, max: 470, noNaN: true }),
    width: fc.double({ min: 10, max: 60, noNaN: true }),
  });

  it('hangs the second of two equal ones, its value at the end side', () => {
    const places = arrangeLane(
      [
        { x: 200, width: 30 },
        { x: 200, width: 30 },
      ],
      room,
    );
    expect(places).toEqual([
      { tier: 0, middle: 200 },
      { tier: 1, middle: 200 + 9 + 4 + 15 },
    ]);
  });

  it('puts the value at the start side where the end is near', () => {
    const places = arrangeLane(
      [
        { x: 480, width: 36 },
        { x: 480, width: 36 },
      ],
      room,
    );
    expect(places?.[1]).toEqual({ tier: 1, middle: 480 - 9 - 4 - 18 });
  });

  it('lets no dot touch a dot and no value touch a value', () => {
    fc.assert(
      fc.property(fc.array(point, { minLength: 1, maxLength: 6 }), (unsorted) => {
        const points = unsorted.toSorted((a, b) => a.x - b.x);
        const places = arrangeLane(points, room);
        if (!places) return;
        for (const [i, p] of points.entries())
          for (const [k, q] of points.entries()) {
            if (i >= k) continue;
            const [a, b] = [places[i], places[k]];
            if (!a || !b || a.tier !== b.tier) continue;
            expect(Math.abs(p.x - q.x)).toBeGreaterThan(2 * room.radius);
            expect(Math.abs(a.middle - b.middle)).toBeGreaterThan((p.width + q.width) / 2);
          }
      }),
      { numRuns: 500 },
    );
  });
});

describe('packing rows', () => {
  it('lets what hangs below stand beside what stands above', () => {
    const up = [{ from: 0, to: 10, by: 30 }];
    const left = { up, down: [{ from: 0, to: 10, by: 20 }] };
    const right = { up, down: [{ from: 50, to: 60, by: 20 }] };
    expect(leastDistance(left, right, { across: 4, down: 5 })).toBe(55);
    expect(leastDistance(right, right, { across: 4, down: 5 })).toBe(35);
  });
});
