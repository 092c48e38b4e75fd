import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  handFor,
  KITCHENS,
  type Kitchen,
  nearestPour,
  parseAmount,
  pourOf,
  referenceAmountFor,
  weighPour,
} from '../../src/nutrition/index.js';
import { evaluate } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';
import { food } from './foods.js';

const SR28 = 'usda-sr28';
const rice = food({
  name: 'brown rice, cooked',
  kind: 'brown rice',
  plate: ['grain or starch'],
  measures: [{ name: 'cup', grams: 202, source: SR28 }],
  usual: { words: '1/2 cup', grams: 101 },
});
const oil = food({
  name: 'canola oil',
  kind: 'canola oil',
  state: 'ready to eat',
  measures: [
    { name: 'tbsp', grams: 14, source: SR28 },
    { name: 'cup', grams: 218, source: SR28 },
  ],
  usual: { words: '1 tbsp', grams: 14 },
});
const salmon = food({ name: 'salmon', usual: { words: '3 oz', grams: 85 } });
const BOTH = ['cup', 'spoon'] as const;
const amount = (words: string) => valueIn(parseAmount(words)).amount;

describe('what an amount to pour weighs', () => {
  it('rice: the weight of the table, in a label cup, a metric cup and one of 200 mL', () => {
    // USDA SR28, 20037: a cup (236.588 mL) of cooked brown rice weighs 202 g. By hand: 120 mL × 202 ÷ 236.588.
    const half = valueIn(pourOf(null, rice, 'us label', BOTH));
    expect([half.count, half.unit]).toEqual([0.5, 'cup']);
    expect(half.grams).toBeCloseTo(102.46, 2);
    expect(valueIn(pourOf(null, rice, 'metric', BOTH)).grams).toBeCloseTo(106.73, 2);
    expect(valueIn(pourOf(null, rice, 'cup of 200 mL', BOTH)).grams).toBeCloseTo(85.38, 2);
    expect(evaluate(half.working)).toBeCloseTo(half.grams, 9);
  });

  it('oil: the density of the table lies by the 0.92 g a mL of vegetable oils', () => {
    // Density of canola oil at room temperature: 0.914 to 0.917 g a mL (Codex Stan 210, relative density), from memory.
    const spoon = valueIn(pourOf(null, oil, 'us label', BOTH));
    expect([spoon.count, spoon.unit]).toEqual([1, 'tbsp']);
    expect(spoon.grams / spoon.milliliters).toBeCloseTo(0.92, 2);
    expect(spoon.estimated).toBe(false);
  });

  it('goes through the volume of the food where the words name none, and says what a cup is of', () => {
    // By hand: 100 g of a food of which 200 g fill a cup are half a cup, 120 of 240 mL by the label.
    const soup = food({
      name: 'soup',
      measures: [{ name: 'cup', grams: 200, source: SR28, note: 'with the beans' }],
      usual: { words: '1 bowl of soup', grams: 100 },
    });
    const half = valueIn(pourOf(null, soup, 'us label', BOTH));
    expect([half.count, half.unit]).toEqual([0.5, 'cup']);
    expect(half.working.inputs.map(({ note }) => note)).toContain('with the beans');
  });

  it('is refused for a measure that the food lacks, and for more than the measures hold', () => {
    expect(refusalOf(pourOf(amount('2 slices'), rice, 'us label', BOTH)).reason).toContain('slice');
    expect(refusalOf(pourOf(amount('1 cup'), rice, 'us label', ['spoon'])).reason).toContain('too large');
  });

  it('takes the weight that the author wrote', () => {
    const own = valueIn(pourOf(amount('1/2 cup (90 g)'), rice, 'us label', BOTH));
    expect(own.grams).toBeCloseTo(90, 9);
    expect(own.working.inputs.some((input) => input.source === 'lesson')).toBe(true);
  });

  it('pours a weight as the nearest measure', () => {
    const near = valueIn(pourOf(amount('140 g'), rice, 'us label', BOTH));
    expect(near.unit).toBe('cup');
    expect(near.count).toBeCloseTo(2 / 3, 9);
  });

  it('refuses a food that has no volume', () => {
    expect(refusalOf(pourOf(null, salmon, 'us label', BOTH)).reason).toMatch(/volume of salmon/i);
    expect(weighPour({ count: 1, unit: 'cup', milliliters: 240 }, salmon, 'metric').ok).toBe(false);
  });

  it('says when a weight was estimated', () => {
    const guess = { ...rice, measures: [{ name: 'cup', grams: 200, source: 'house', estimated: true }] };
    expect(valueIn(pourOf(null, guess, 'us label', BOTH)).estimated).toBe(true);
  });
});

describe('the nearest measures', () => {
  const near = (mL: number, into: readonly ('cup' | 'spoon')[] = BOTH, kitchen: Kitchen = 'us label') => {
    const { count, unit } = valueIn(nearestPour(mL, kitchen, into));
    return [Number(count.toFixed(3)), unit];
  };

  // By hand, cups of 240 mL and spoons of 15 and 5 mL.
  it.each([
    [60, 0.25, 'cup'],
    [82, 0.333, 'cup'],
    [120, 0.5, 'cup'],
    [163.8, 0.667, 'cup'],
    [180, 0.75, 'cup'],
    [360, 1.5, 'cup'],
    [30, 2, 'tbsp'],
    [14.787, 1, 'tbsp'],
    [5, 1, 'tsp'],
    [2.4, 0.5, 'tsp'],
    [59, 0.25, 'cup'],
  ])('%d mL is %d %s', (mL, count, unit) => expect(near(mL)).toEqual([count, unit]));

  it('with one kind of measure only', () => {
    expect(near(120, ['spoon'])).toEqual([8, 'tbsp']);
    expect(near(55, ['cup'])).toEqual([0.25, 'cup']);
    expect(nearestPour(240, 'us label', ['spoon']).ok).toBe(false);
    expect(nearestPour(15, 'us label', ['cup']).ok).toBe(false);
  });

  it('of a pinch are an eighth of a teaspoon, and of nothing none', () => {
    expect(near(0.4)).toEqual([1 / 8, 'tsp']);
    for (const none of [0, -5, Number.NaN]) expect(nearestPour(none, 'us label', BOTH).ok).toBe(false);
  });

  it('are never far from what was asked', () => {
    const kitchens = fc.constantFrom<Kitchen>('us label', 'metric', 'cup of 200 mL');
    fc.assert(
      fc.property(fc.double({ min: 1, max: 2000, noNaN: true }), kitchens, (mL, kitchen) => {
        const found = nearestPour(mL, kitchen, BOTH);
        const { cup, tsp } = KITCHENS[kitchen];
        expect(found.ok).toBe(true);
        if (!found.ok) return;
        const away = Math.abs(found.value.milliliters - mL);
        expect(away).toBeLessThanOrEqual(mL >= cup / 4 ? cup / 8 : mL > 15 ? 7.5 : tsp / 2);
        expect(found.value.milliliters).toBeGreaterThan(0);
      }),
    );
  });
});

describe('hands', () => {
  it('stand for the amounts that they come to, and for no other', () => {
    expect(handFor({ unit: 'cup', count: 1 })).toEqual({ hand: 'fist', times: 1 });
    expect(handFor({ unit: 'tbsp', count: 2 })).toEqual({ hand: 'thumb', times: 2 });
    expect(handFor({ unit: 'cup', count: 2 / 3 })).toBeNull();
  });
});

describe('what a label counts', () => {
  const told = (kind: string, more: Parameters<typeof food>[0] = {}) => {
    const found = referenceAmountFor(food({ name: kind, kind, ...more }));
    return found && [found.amount, found.unit];
  };

  // 21 CFR 101.12(b), table 2, as amended in 2016, from memory.
  it.each([
    ['brown rice', { state: 'cooked' }, [140, 'g']],
    ['brown rice', { state: 'dry' }, [45, 'g']],
    ['canola oil', { state: 'ready to eat' }, [1, 'tbsp']],
    ['butter', { state: 'ready to eat' }, [1, 'tbsp']],
    ['peanut butter', { state: 'ready to eat' }, [2, 'tbsp']],
    ['milk', { state: 'ready to eat' }, [240, 'mL']],
    ['pinto beans', { state: 'dry', plate: ['protein', 'grain or starch'] }, [35, 'g']],
    ['pinto beans', { state: 'canned, drained', plate: ['protein', 'grain or starch'] }, [90, 'g']],
    ['pinto beans', { state: 'canned, with liquid', plate: ['protein', 'grain or starch'] }, [130, 'g']],
    ['chicken broth', { state: 'ready to eat' }, [245, 'g']],
    ['apple', { state: 'raw', plate: ['fruit'] }, [140, 'g']],
    ['raisins', { state: 'ready to eat', plate: ['fruit'] }, [40, 'g']],
    ['carrots', { state: 'cooked', plate: ['vegetable'] }, [85, 'g']],
    ['honey', { state: 'ready to eat' }, [1, 'tbsp']],
    ['pasta', { state: 'dry' }, [55, 'g']],
    ['pasta', { state: 'cooked' }, [140, 'g']],
    ['oats', { state: 'dry' }, [40, 'g']],
  ] as const)('%s %o', (kind, more, expected) => expect(told(kind, more as object)).toEqual(expected));

  it('is not known for a kind that the rule does not name', () => {
    expect(told('pupusa', { state: 'cooked' })).toBeNull();
    expect(told('tamale', { state: 'cooked' })).toBeNull();
  });
});
