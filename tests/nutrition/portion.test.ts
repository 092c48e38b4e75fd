import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Food,
  gramsOf,
  parseAmount,
  portionOf,
  usualPortion,
  type WrittenAmount,
} from '../../src/nutrition/index.js';
import { evaluate } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';
import { food, PINTO } from './foods.js';

const amountIn = (text: string): WrittenAmount => {
  const { amount } = valueIn(parseAmount(text));
  if (amount === null) throw new Error(`No amount in ${text}`);
  return amount;
};
const weigh = (text: string, of: Food) => gramsOf(amountIn(text), of);
const grams = (text: string, of: Food) => valueIn(weigh(text, of)).grams.value;
const measures = (weights: Readonly<Record<string, number>>) =>
  Object.entries(weights).map(([name, weight]) => ({ name, grams: weight, source: 'test-table' }));

// Weights of measures: USDA SR28, records 09040 (bananas), 01123 (eggs), 04582 (canola oil), 01077 (whole milk).
const banana = food({
  name: 'banana',
  state: 'raw',
  measures: measures({ cup: 150, small: 101, medium: 118, large: 136 }),
});
const egg = food({ name: 'egg', state: 'raw', measures: measures({ large: 50, medium: 44, each: 50 }) });
const oil = food({
  name: 'canola oil',
  state: 'ready to eat',
  measures: measures({ tbsp: 14, cup: 218, tsp: 4.5 }),
});
const milk = food({ name: 'milk', state: 'ready to eat', measures: measures({ cup: 244 }) });

describe('the weight of an amount', () => {
  it.each([
    // Weights by definition: NIST Handbook 44, Appendix C.
    ['100 g', PINTO.boiled, 100],
    ['3 oz', PINTO.boiled, 85.049],
    ['1 1/2 lb', PINTO.boiled, 680.389],
    ['0.5 kg', PINTO.boiled, 500],
    // Through the food's own measures: USDA SR28.
    ['1 cup', PINTO.boiled, 171],
    ['1/2 cup', PINTO.rinsed, 84.5],
    ['2 tbsp', PINTO.boiled, 21.2],
    ['1 medium', banana, 118],
    ['2 large', banana, 272],
    ['3', egg, 150],
    ['1/2', banana, 59],
    ['1 can (15.5 oz)', PINTO.rinsed, 258],
    ['2 cans (439.4 g)', PINTO.rinsed, 516],
    ['1 can', PINTO.rinsed, 258],
    // Through another volume of the food: 16 tablespoons, 48 teaspoons, 8 fluid ounces to the cup.
    ['1 tbsp', milk, 244 / 16],
    ['1 tsp', milk, 244 / 48],
    ['12 fl oz', milk, 366],
    ['8 fl oz', oil, 218],
    ['1 L', milk, 1031.33],
    // The usual portion, by its own name.
    ['2 servings', milk, 180],
    ['1 portion', milk, 90],
    // What a package holds, when all of it is the food.
    ['1 can (15 oz)', PINTO.withLiquid, 425.243],
    ['2 cartons (8 fl oz)', milk, 488],
    ['1 bag (2 lb)', food({ state: 'dry' }), 907.185],
    // A weight in brackets is what the author has read on the package.
    ['1 cup (245 g)', milk, 245],
    ['1 cup (245 g)', food(), 245],
    ['3 oz (85 g)', food(), 85.049],
    ['8 oz (1 cup)', food(), 226.796],
  ] as const)('%s', (text, of, weight) => {
    const portion = valueIn(weigh(text, of));
    expect(portion.grams.value).toBeCloseTo(weight, 2);
    expect(portion.grams.unit).toBe('g');
    expect(evaluate(portion.working)).toBeCloseTo(portion.grams.value, 9);
    expect(portion.estimated).toBe(false);
  });

  it('depends on the cup when the cup is named', () => {
    const cup = amountIn('1 cup');
    expect(valueIn(gramsOf(cup, milk)).grams.value).toBe(244);
    // 250 mL ÷ 236.588 mL × 244 g, by hand.
    const metric = valueIn(gramsOf(cup, milk, 'metric'));
    expect(metric.grams.value).toBeCloseTo(257.832, 2);
    expect(evaluate(metric.working)).toBeCloseTo(metric.grams.value, 9);
    expect(valueIn(gramsOf(amountIn('3 oz'), milk, 'us label')).grams.value).toBe(84);
    expect(valueIn(gramsOf(amountIn('1 can (15 oz)'), PINTO.withLiquid, 'us label')).grams.value).toBe(420);
  });

  it('says which measure was used, from where, and what the row says', () => {
    const portion = valueIn(weigh('1/2 cup', PINTO.rinsed));
    expect(portion.measure).toBe('cup');
    expect(portion.words).toBe('1/2 cup');
    expect(portion.working).toEqual({
      formula: 'count * grams_each',
      inputs: [
        { name: 'count', value: 0.5, unit: 'cup', source: 'lesson' },
        { name: 'grams_each', value: 169, unit: 'g per cup', source: 'usda-sr28' },
      ],
    });
    expect(valueIn(weigh('1/2', banana)).measure).toBe('medium');
    expect(valueIn(weigh('100 g', banana)).measure).toBeNull();
  });

  it('carries the mark of an estimated weight', () => {
    const guess = (name: string, weight: number) => ({
      name,
      grams: weight,
      source: 'test',
      estimated: true,
    });
    const leek = food({
      name: 'leek',
      state: 'raw',
      measures: [guess('cup', 89), guess('each', 90), guess('can (15 oz)', 250)],
    });
    for (const text of ['1 cup', '2 tbsp', '1', '1 can (15 oz)', '1 bottle (8 fl oz)']) {
      const portion = valueIn(weigh(text, leek));
      expect(portion.estimated).toBe(true);
      expect(portion.working.inputs.at(-1)?.note).toBe('estimated');
    }
    expect(valueIn(weigh('50 g', leek)).estimated).toBe(false);
  });

  it('says what the source calls the measure', () => {
    const noted = (more: object) => {
      const one = { name: 'can', grams: 277, source: 'usda-sr28', note: 'can, drained solids', ...more };
      return valueIn(weigh('1 can', food({ measures: [one] }))).working.inputs.at(-1)?.note;
    };
    expect(noted({})).toBe('can, drained solids');
    expect(noted({ estimated: true })).toBe('estimated: can, drained solids');
  });

  it('takes a published weight before an estimated one, and the largest volume', () => {
    const both = food({
      measures: [
        { name: 'cup', grams: 200, source: 'guess', estimated: true },
        { name: 'tsp', grams: 5, source: 'table' },
        { name: 'tbsp', grams: 14, source: 'table' },
      ],
    });
    expect(valueIn(weigh('1 fl oz', both)).measure).toBe('tbsp');
    expect(valueIn(weigh('1 cup', both)).measure).toBe('cup');
  });

  it('takes a bare count as each, as a measure in the name, or as medium', () => {
    const tortilla = food({ name: 'corn tortillas', measures: measures({ medium: 30, tortilla: 24 }) });
    expect(grams('2', tortilla)).toBe(48);
    expect(grams('2', food({ name: 'radishes', measures: measures({ radish: 4.5 }) }))).toBe(9);
    expect(grams('1', food({ name: 'peach', measures: measures({ peach: 150 }) }))).toBe(150);
    expect(grams('2', food({ measures: measures({ medium: 10, whole: 12 }) }))).toBe(24);
    expect(refusalOf(weigh('2', food({ name: 'bread', measures: measures({ slice: 28 }) }))).reason).toBe(
      'The weight of one piece of bread is not known.',
    );
  });
});

describe('amounts that cannot be weighed', () => {
  it('names the measures that the food has', () => {
    expect(refusalOf(weigh('2 slices', banana))).toEqual({
      ok: false,
      reason: 'The weight of one slice of banana is not known.',
      hint: 'Write the amount as a weight or in a measure that this food has: cup, small, medium and large.',
      near: ['cup', 'small', 'medium', 'large'],
    });
    const bare = refusalOf(weigh('1 cup', food({ name: 'nothing measured' })));
    expect(bare.hint).toBe('Write the amount as a weight.');
    expect(bare.near).toBeUndefined();
  });

  it('does not take the size on a can for the weight of what is eaten', () => {
    const refusal = refusalOf(weigh('1 can (28 oz)', PINTO.drained));
    expect(refusal.reason).toBe(
      'The size on the can is not the weight of pinto beans, canned, drained: it is what was packed, not what is eaten.',
    );
    for (const state of ['cooked', 'frozen, cooked', 'canned, drained and rinsed'] as const) {
      expect(weigh('1 bag (12 oz)', food({ state })).ok).toBe(false);
    }
  });

  it('asks which can is meant', () => {
    const two = food({
      name: 'corn, canned',
      state: 'canned, drained',
      measures: measures({ 'can (15 oz)': 250, 'can (8 oz)': 130 }),
    });
    expect(refusalOf(weigh('1 can', two))).toMatchObject({
      reason: 'corn, canned: "can" can be can (15 oz) and can (8 oz).',
      near: ['can (15 oz)', 'can (8 oz)'],
    });
    expect(grams('1 can (425 g)', two)).toBe(250);
    expect(weigh('1 can (12 fl oz)', two).ok).toBe(false);
    expect(weigh('1 medium (7 oz)', banana).ok).toBe(false);
  });

  it('holds a weight in brackets against the amount before it', () => {
    expect(refusalOf(weigh('1 cup (24 g)', milk)).reason).toBe(
      '"1 cup (24 g)" does not fit: that much milk weighs about 244 g.',
    );
    expect(refusalOf(weigh('3 oz (58 g)', milk)).reason).toContain('about 85 g');
  });

  it('has no use for a package of liquid whose weight is not known', () => {
    expect(weigh('1 carton (8 fl oz)', food({ state: 'ready to eat' })).ok).toBe(false);
    expect(weigh('1 carton', food({ state: 'ready to eat' })).ok).toBe(false);
  });

  it('passes over weights that are none', () => {
    const broken = food({ measures: measures({ cup: 0, tbsp: Number.NaN, slice: -3 }) });
    for (const text of ['1 cup', '1 slice', '1']) expect(weigh(text, broken).ok).toBe(false);
  });

  it('refuses counts that no text can hold', () => {
    for (const count of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(gramsOf({ count, unit: 'g', measure: 'g', size: null }, milk).ok).toBe(false);
    }
  });
});

describe('a row without an amount', () => {
  it('takes the usual portion', () => {
    const portion = valueIn(portionOf(null, PINTO.boiled));
    expect(portion).toEqual(usualPortion(PINTO.boiled));
    expect(portion.words).toBe('1/2 cup');
    expect(evaluate(portion.working)).toBe(90);
    expect(valueIn(portionOf(amountIn('1 cup'), PINTO.boiled)).grams.value).toBe(171);
  });

  it('is estimated where its measure was, also as servings', () => {
    const guessed = food({ usual: { words: '1/2 cup', grams: 84.5, estimated: true } });
    for (const portion of [usualPortion(guessed), valueIn(weigh('2 servings', guessed))]) {
      expect(portion.estimated).toBe(true);
      expect(portion.working.inputs.at(-1)?.note).toBe('estimated: usual portion, 1/2 cup');
    }
    expect(usualPortion(food()).estimated).toBe(false);
  });

  it('throws when the table gives the usual portion no weight', () => {
    expect(() => usualPortion(food({ usual: { words: 'some', grams: Number.NaN } }))).toThrow('no amount');
  });
});

describe('weighing', () => {
  it('is linear in the count', () => {
    const unit = fc.constantFrom('g', 'oz', 'lb', 'cup', 'tbsp', 'fl oz', 'medium', 'large');
    fc.assert(
      fc.property(
        unit,
        fc.double({ min: 0.01, max: 1000, noNaN: true }),
        fc.integer({ min: 2, max: 20 }),
        (word, count, times) => {
          const one = amountIn(`1 ${word}`);
          const few = valueIn(gramsOf({ ...one, count }, banana)).grams.value;
          const many = valueIn(gramsOf({ ...one, count: count * times }, banana)).grams.value;
          expect(Math.abs(many - few * times)).toBeLessThanOrEqual(1e-12 * many);
        },
      ),
    );
  });
});
