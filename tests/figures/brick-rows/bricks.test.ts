import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layBricks, partsOf, worthThatFits } from '../../../src/figures/brick-rows/bricks.js';
import { bricks } from '../samples.js';

const room = { from: 100, to: 500, gap: 2, more: 3 };

describe('a line of bricks', () => {
  it('fills its room, five by five', () => {
    const line = layBricks(12, room);
    expect(line.x(0)).toBe(100);
    expect(line.x(11) + line.width).toBeCloseTo(500, 9);
    expect(line.x(5) - line.x(4)).toBeCloseTo(line.x(1) - line.x(0) + 3, 9);
  });

  it('finds the place of an amount: the end of one brick and the start of the next are two places', () => {
    const line = layBricks(10, room);
    expect(line.edge(5, 'end')).toBeCloseTo(line.x(4) + line.width, 9);
    expect(line.edge(5, 'start')).toBeCloseTo(line.x(5), 9);
    expect(line.edge(4.5, 'start')).toBeCloseTo(line.x(4) + line.width / 2, 9);
    expect(line.edge(0, 'end')).toBe(100);
    expect(line.edge(99, 'end')).toBeCloseTo(500, 9);
  });

  it('parts bricks so that the parts add up to the amounts, whatever they are', () => {
    const amount = fc.double({ min: 0, max: 300, noNaN: true });
    fc.assert(
      fc.property(amount, amount, amount, fc.constantFrom(7, 20, 25), (low, more, rest, worth) => {
        const row = {
          ...bricks.rows[0],
          name: '',
          note: '',
          sign: 'can' as const,
          total: low + more + rest,
          sure: low,
          possible: low + more,
        };
        const count = Math.ceil(row.total / worth) + 1;
        const sums = { sure: 0, possible: 0, whole: 0 };
        for (let i = 0; i < count; i++) {
          const parts = partsOf(row, worth, i);
          expect(parts.sure).toBeLessThanOrEqual(parts.possible);
          expect(parts.possible).toBeLessThanOrEqual(parts.whole);
          for (const key of ['sure', 'possible', 'whole'] as const) sums[key] += parts[key] * worth;
        }
        expect(sums.sure).toBeCloseTo(low, 6);
        expect(sums.possible).toBeCloseTo(low + more, 6);
        expect(sums.whole).toBeCloseTo(row.total, 6);
      }),
    );
  });

  it('names a worth at which no more bricks come than fit', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 40 }), (total, most) => {
        const spec = { ...bricks, rows: bricks.rows.map((r) => ({ ...r, total })) };
        expect(Math.ceil(total / worthThatFits(spec, most) - 1e-9)).toBeLessThanOrEqual(most);
      }),
    );
  });
});
