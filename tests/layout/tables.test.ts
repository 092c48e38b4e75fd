import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columnWidths } from '../../src/layout/blocks/columns.js';
import { evenSplit } from '../../src/layout/parts/sources.js';

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

describe('widths of columns', () => {
  it('give the first column what is left over, after some air for the others', () => {
    const [first = 0, second = 0] = columnWidths(
      [
        { least: 20, most: 50, text: 40 },
        { least: 20, most: 40, text: 30 },
      ],
      400,
    );
    expect(second).toBeCloseTo(40 + (6 * 72) / 25.4);
    expect(first + second).toBeCloseTo(400);
  });

  it('give each column its longest word before any gets more', () => {
    const widths = columnWidths(
      [
        { least: 30, most: 30, text: 30 },
        { least: 50, most: 900, text: 700 },
        { least: 50, most: 60, text: 55 },
      ],
      200,
    );
    expect(widths[0]).toBeGreaterThanOrEqual(30);
    expect(widths[2]).toBeGreaterThanOrEqual(50);
    expect(widths[1]).toBeGreaterThan(100);
  });

  it('always fill the table, and hold the words when there is room for them', () => {
    const need = fc.record({
      least: fc.integer({ min: 1, max: 80 }),
      more: fc.integer({ min: 0, max: 400 }),
    });
    fc.assert(
      fc.property(
        fc.array(need, { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 50, max: 600 }),
        (needs, width) => {
          const columns = needs.map(({ least, more }) => ({
            least,
            most: least + more,
            text: least + more / 2,
          }));
          const widths = columnWidths(columns, width);
          expect(sum(widths)).toBeCloseTo(width);
          if (sum(columns.map((c) => c.least)) <= width)
            widths.forEach((w, i) => {
              expect(w).toBeGreaterThanOrEqual((columns[i]?.least ?? 0) - 1e-9);
            });
        },
      ),
    );
  });
});

describe('two columns of sources', () => {
  it('split where the higher one is lowest', () => {
    expect(evenSplit([10, 10])).toBe(1);
    expect(evenSplit([30, 10, 10])).toBe(1);
    expect(evenSplit([10, 10, 10])).toBe(2);
    expect(evenSplit([10])).toBe(1);
  });

  it('are never worse than all in one', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 12 }), (heights) => {
        const split = evenSplit(heights);
        const higher = Math.max(sum(heights.slice(0, split)), sum(heights.slice(split)));
        for (let other = 1; other <= heights.length; other += 1)
          expect(higher).toBeLessThanOrEqual(
            Math.max(sum(heights.slice(0, other)), sum(heights.slice(other))),
          );
      }),
    );
  });
});
