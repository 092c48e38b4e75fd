import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import { computeParts } from '../desk.js';
import { part } from '../parts.js';
import { abbreviated } from '../sr28.js';

/** A figure of forms of one food, read and computed. */
function compare(food: string, basis: string, show: string, rows: readonly string[]) {
  const report = createReport();
  const computed = computeParts([part('form-compare', { id: 'x', food, basis, show }, rows)], report);
  return {
    value: (row: string, name: string) => computed.numbers.get(`x.${row}.${name}`)?.value,
    problems: report.problems.map((problem) => problem.code),
    result: computed.entries[0]?.computed,
  };
}

describe('forms on one basis, against the publisher’s own file of USDA SR28 (September 2015)', () => {
  // Every expected value is the record's amount in 100 g × the grams of its household weight ÷ 100.
  const cup = (number: string, field: 'sodium' | 'fiber' | 'protein', weight: 1 | 2) => {
    const row = abbreviated(number);
    const [amount, grams] = [row[field], weight === 1 ? row.weight1 : row.weight2];
    if (amount === null || grams === null) throw new Error(`Record ${number} has no ${field} or weight.`);
    return (amount * grams) / 100;
  };

  it('per cup: pinto beans cooked at home, record 16043', () => {
    const { value, problems } = compare('pinto beans', '1 cup, ready to eat', 'sodium; fiber; protein', [
      'dried, cooked at home',
      'canned, drained and rinsed',
    ]);
    expect(problems).toEqual([]);
    expect(abbreviated('16043').words1).toBe('1 cup');
    expect(value('dried-cooked-at-home', 'sodium')).toBeCloseTo(cup('16043', 'sodium', 1), 9);
    expect(value('dried-cooked-at-home', 'fiber')).toBeCloseTo(cup('16043', 'fiber', 1), 9);
    expect(value('dried-cooked-at-home', 'protein')).toBeCloseTo(cup('16043', 'protein', 1), 9);
    expect(value('canned-drained-and-rinsed', 'sodium')).toBeCloseTo(cup('16345', 'sodium', 1), 9);
  });

  it('per half cup and per weight', () => {
    const rows = ['frozen, boiled, no salt', 'canned, drained'];
    const half = compare('green peas', '1/2 cup, ready to eat', 'sodium', rows);
    expect(half.value('canned-drained', 'sodium')).toBeCloseTo(cup('11308', 'sodium', 1) / 2, 9);
    const weight = compare('green peas', '100 g, ready to eat', 'sodium', rows);
    expect(weight.value('canned-drained', 'sodium')).toBeCloseTo(
      abbreviated('11308').sodium ?? Number.NaN,
      9,
    );
  });

  it('a value that the publisher left blank is not known, never zero', () => {
    expect(abbreviated('16345').fiber).toBeNull();
    const { value, problems } = compare('pinto beans', '1 cup, ready to eat', 'fiber', [
      'dried, cooked at home',
      'canned, drained and rinsed',
    ]);
    expect(problems).toEqual([]);
    expect(value('canned-drained-and-rinsed', 'fiber')).toBeNull();
  });

  it('draining and rinsing pinto beans: 44 percent less in a cup and about 20 percent less in 100 g', () => {
    // Both shares are worked out by hand from records 16044 (268 mg, cup 240 g) and 16345 (212 mg, cup 169 g):
    // 643.2 → 358.3 mg and 268 → 212 mg. They answer different questions, so the basis is always said.
    const rows = ['canned, with liquid', 'canned, drained and rinsed'];
    const share = (basis: string) => {
      const { value } = compare('pinto beans', basis, 'sodium', rows);
      const [before, after] = [
        value('canned-with-liquid', 'sodium'),
        value('canned-drained-and-rinsed', 'sodium'),
      ];
      return 1 - (after ?? Number.NaN) / (before ?? Number.NaN);
    };
    expect(share('1 cup')).toBeCloseTo(0.443, 3);
    expect(share('100 g')).toBeCloseTo(0.209, 3);
  });

  it('per can: a drained can weighs less than a full one', () => {
    const { value, problems, result } = compare('pinto beans', '1 can', 'sodium', [
      'canned, with liquid',
      'canned, drained',
      'canned, drained and rinsed',
    ]);
    expect(problems).toEqual([]);
    expect([
      abbreviated('16044').weight2,
      abbreviated('16146').weight1,
      abbreviated('16345').weight2,
    ]).toEqual([442, 277, 258]);
    expect(value('canned-with-liquid', 'weight')).toBe(442);
    expect(value('canned-drained', 'weight')).toBe(277);
    expect(value('canned-drained', 'sodium')).toBeCloseTo(cup('16146', 'sodium', 1), 9);
    expect(result).toMatchObject({ labelRows: ['A'] });
  });
});

describe('what a figure must not pass over', () => {
  it('names rows that are weighed before cooking, unless the basis says so', () => {
    const rows = ['dry', 'dried, cooked at home'];
    expect(compare('pinto beans', '1 cup', 'fiber', rows).result).toMatchObject({ beforeCooking: ['A'] });
    expect(compare('pinto beans', '1 cup, ready to eat', 'fiber', rows).problems).toEqual(['N03']);
  });

  it('marks a cup whose weight was estimated', () => {
    const rows = ['dried, cooked at home', 'canned, drained'];
    expect(compare('pinto beans', '1 cup', 'sodium', rows).result).toMatchObject({ estimated: ['B'] });
    expect(compare('pinto beans', '100 g', 'sodium', rows).result).toMatchObject({ estimated: [] });
  });

  it('tells a measure that has no weight from a state that does not fit', () => {
    const frozen = ['frozen, boiled, no salt', 'dried, cooked at home'];
    expect(compare('pinto beans', '1 cup, ready to eat', 'sodium', frozen).problems).toEqual([
      'directives/amount',
    ]);
    const label = ['canned, with liquid', 'dried, cooked at home'];
    expect(compare('pinto beans', '1 cup, ready to eat', 'sodium', label).problems).toEqual(['N03']);
  });
});
