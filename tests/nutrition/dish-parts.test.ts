import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  apportion,
  DISH_GOAL,
  DISH_PARTS,
  type DishRow,
  dishKindOf,
  dishShares,
  gramsOf,
  parseAmount,
  portionOf,
  volumeOf,
} from '../../src/nutrition/index.js';
import { evaluate } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';
import { food, PINTO } from './foods.js';

const rows = (...given: readonly (readonly [string, number | null])[]): DishRow<string>[] =>
  given.map(([kind, volume]) => ({ kind, volume }));
const kindParts = (list: readonly DishRow<string>[]) =>
  valueIn(dishShares(list)).kinds.map(({ parts }) => parts);

describe('twelve parts', () => {
  it('has a goal of twelve', () => {
    expect(Object.values(DISH_GOAL).reduce((a, b) => a + b)).toBe(DISH_PARTS);
  });

  // By hand: exact shares of twelve, whole parts, then the largest remainders.
  it.each([
    ['240/120/120/60', rows(['a', 240], ['b', 120], ['c', 120], ['d', 60]), [5, 3, 3, 1]],
    ['240/120/120', rows(['a', 240], ['b', 120], ['c', 120]), [6, 3, 3]],
    [
      'a tie at 4.6 goes to the earlier',
      rows(['v', 140], ['v', 140], ['rice', 460], ['beans', 460]),
      [3, 5, 4],
    ],
    ['the other way about', rows(['v', 140], ['v', 140], ['beans', 460], ['rice', 460]), [3, 5, 4]],
    ['one kind', rows(['a', 7]), [12]],
    // 0.612 of a part, with a larger remainder elsewhere: above a twentieth it has a part of its own.
    ['a small kind', rows(['a', 70.65], ['b', 24.25], ['c', 5.1]), [8, 3, 1]],
    ['two small kinds', rows(['a', 89], ['b', 5.5], ['c', 5.5]), [10, 1, 1]],
    ['a very small kind', rows(['a', 97], ['b', 3]), [12, 0]],
    ['twelve equal kinds', rows(...'abcdefghijkl'.split('').map((k) => [k, 1] as const)), Array(12).fill(1)],
  ])('%s', (_, list, parts) => {
    expect(kindParts(list)).toEqual(parts);
  });

  it('goes on among the foods of a kind', () => {
    const { rows: parts, kinds } = valueIn(
      dishShares(rows(['v', 140], ['rice', 460], ['v', 140], ['beans', 460])),
    );
    // Three parts of vegetables: one and a half each; the tie goes to the earlier.
    expect(parts).toEqual([2, 5, 1, 4]);
    expect(kinds.map(({ share }) => share)).toEqual([280 / 1200, 460 / 1200, 460 / 1200]);
  });

  it('takes the part of a small kind from where it is missed least', () => {
    // By the largest remainder alone: 4.8, 3.66, 2.916, 0.624 are 5, 4, 3, 0. The fourth kind has its part; the
    // one that had gained most by rounding gives it.
    expect(kindParts(rows(['a', 40], ['b', 30.5], ['c', 24.3], ['d', 5.2]))).toEqual([5, 3, 3, 1]);
    // Eleven kinds of a little more than a twentieth each leave one part for the twelfth.
    const many = rows(['rice', 43.9], ...'abcdefghijk'.split('').map((k) => [k, 5.1] as const));
    expect(kindParts(many)).toEqual(Array(12).fill(1));
    expect(apportion([3, 3, 1, 1], 4, [0, 0, 1, 1])).toEqual([1, 1, 1, 1]);
    expect(apportion([4, 4, 1, 1], 5, [0, 0, 1, 1])).toEqual([2, 1, 1, 1]);
    expect(apportion([6, 6, 1, 1, 1], 5, [0, 0, 1, 1, 1])).toEqual([1, 1, 1, 1, 1]);
    expect(apportion([5.5, 5.5, 1], 4, [0, 0, 2])).toEqual([1, 1, 2]);
    expect(apportion([2, 2, 0.5], 3, [0, 0, 2])).toEqual([1, 0, 2]);
    expect(apportion([1, 1], 1, [1, 0])).toEqual([1, 0]);
    expect(apportion([1, 1], 1, [0, 1])).toEqual([0, 1]);
    expect(apportion([5, 5], 1, [0, 0])).toEqual([1, 0]);
  });

  it.each([
    [rows(), 'There is no food in the dish.'],
    [rows(['a', 100], ['b', null]), 'The volume of a food in the dish is not known.'],
    [rows(['a', 0]), 'The volume of a food in the dish is not above zero.'],
    [rows(['a', Number.POSITIVE_INFINITY]), 'The volume of a food in the dish is not above zero.'],
    [
      rows(...'abcdefghijklm'.split('').map((k) => [k, 1] as const)),
      'The dish has more than 12 kinds of food.',
    ],
  ])('%#: refused', (list, reason) => {
    expect(refusalOf(dishShares(list)).reason).toBe(reason);
  });

  const list = fc.array(fc.tuple(fc.constantFrom('v', 'g', 'p'), fc.integer({ min: 1, max: 900 })), {
    minLength: 1,
    maxLength: 8,
  });

  it('always adds up, within one of the exact share', () => {
    fc.assert(
      fc.property(list, (given) => {
        const { kinds, rows: parts } = valueIn(dishShares(rows(...given)));
        expect(parts.reduce((a, b) => a + b)).toBe(12);
        expect(kinds.reduce((so, kind) => so + kind.parts, 0)).toBe(12);
        for (const { kind, share, parts: own } of kinds) {
          expect(Math.abs(own - share * 12)).toBeLessThan(2);
          if (share > 0.05) expect(own).toBeGreaterThan(0);
          expect(given.reduce((so, [name], i) => so + (name === kind ? Number(parts[i]) : 0), 0)).toBe(own);
        }
      }),
    );
  });

  it('does not depend on the order, but for ties', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 5000 }), { minLength: 1, maxLength: 3 }),
        (sizes) => {
          const named = sizes.map((size, i) => [`kind ${i}`, size] as const);
          const total = sizes.reduce((a, b) => a + b);
          const rest = new Set(sizes.map((size) => (size * 12) % total));
          fc.pre(rest.size === sizes.length);
          const there = valueIn(dishShares(rows(...named))).kinds;
          const back = valueIn(dishShares(rows(...named.toReversed()))).kinds;
          expect(back.toReversed()).toEqual(there);
        },
      ),
    );
  });

  it('never takes a part from a food of which there is more', () => {
    fc.assert(
      fc.property(list, fc.integer({ min: 1, max: 500 }), (given, more) => {
        const [first, ...others] = given;
        if (first === undefined) return;
        const before = valueIn(dishShares(rows(first, ...others))).kinds[0]?.parts;
        const after = valueIn(dishShares(rows([first[0], first[1] + more], ...others))).kinds[0]?.parts;
        expect(after).toBeGreaterThanOrEqual(Number(before));
      }),
    );
  });
});

describe('the kind that a food fills a dish as', () => {
  const beans = food({ name: 'beans', plate: ['protein', 'grain or starch'] });
  const mango = food({ name: 'mango', plate: ['fruit'] });
  const water = food({ name: 'water', plate: ['drink'] });

  it('is one, or none', () => {
    expect(valueIn(dishKindOf(mango))).toBe('vegetables and fruit');
    expect(valueIn(dishKindOf(mango, 'vegetables and fruit'))).toBe('vegetables and fruit');
    expect(valueIn(dishKindOf(food({ plate: ['vegetable', 'fruit'] })))).toBe('vegetables and fruit');
    expect(valueIn(dishKindOf(water))).toBeNull();
  });

  it('has to be named for beans, and is never both', () => {
    expect(refusalOf(dishKindOf(beans))).toMatchObject({
      reason: 'beans counts as protein or as grain or starch, never as both.',
      near: ['protein', 'grain or starch'],
    });
    expect(valueIn(dishKindOf(beans, 'grain or starch'))).toBe('grain or starch');
    expect(refusalOf(dishKindOf(beans, 'vegetables and fruit')).hint).toBe(
      'It counts as protein and grain or starch.',
    );
    expect(refusalOf(dishKindOf(water, 'protein')).hint).toBe('It stands beside the dish.');
  });
});

describe('the volume as served', () => {
  const volume = (text: string, of = PINTO.boiled, kitchen: 'us exact' | 'metric' = 'us exact') => {
    const { amount } = valueIn(parseAmount(text));
    return volumeOf(amount, valueIn(portionOf(amount, of, kitchen)), of, kitchen);
  };

  it('is the amount, or comes from the weight', () => {
    const half = valueIn(volume('1/2 cup'));
    expect(half.milliliters).toBeCloseTo(118.294, 3);
    expect(evaluate(half.working)).toBeCloseTo(118.294, 3);
    expect(valueIn(volume('1 cup', PINTO.boiled, 'metric')).milliliters).toBe(250);
    // 171 g to the cup, USDA SR28 record 16043.
    const weighed = valueIn(volume('171 g'));
    expect(weighed.milliliters).toBeCloseTo(236.588, 3);
    expect(evaluate(weighed.working)).toBeCloseTo(236.588, 3);
    expect(weighed.estimated).toBe(false);
    const usual = valueIn(volumeOf(null, valueIn(portionOf(null, PINTO.boiled)), PINTO.boiled));
    expect(usual.milliliters).toBeCloseTo((90 / 171) * 236.588, 2);
  });

  it('says when a weight was estimated, and when there is none', () => {
    const leek = food({ measures: [{ name: 'cup', grams: 89, source: 'house', estimated: true }] });
    expect(valueIn(volume('100 g', leek)).estimated).toBe(true);
    expect(refusalOf(volume('100 g', PINTO.drained)).reason).toContain('is not known');
    const known = {
      ...valueIn(gramsOf({ count: 9, unit: 'g', measure: 'g', size: null }, leek)),
      estimated: true,
    };
    expect(valueIn(volumeOf(null, known, PINTO.boiled)).estimated).toBe(true);
  });
});
