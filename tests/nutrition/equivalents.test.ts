import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  carbohydrateChoices,
  type EquivalentKind,
  type EquivalentQuestion,
  EXCHANGE_LISTS,
  equivalentKindOf,
  equivalentsOf,
  type Food,
  gramsOf,
  KITCHENS,
  kitchenOf,
  known,
  notKnown,
  parseAmount,
  pourable,
  REGION_KITCHENS,
  shownChoices,
  sumEquivalents,
  sumExchanges,
} from '../../src/nutrition/index.js';
import { hold } from '../published/published-case.js';
import { evaluate } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';
import { food, PINTO } from './foods.js';

const weighing = (
  name: string,
  weights: Readonly<Record<string, number>>,
  more: Parameters<typeof food>[0] = {},
) =>
  food({
    name,
    ...more,
    measures: Object.entries(weights).map(([measure, grams]) => ({
      name: measure,
      grams,
      source: 'usda-sr28',
    })),
  });
const question = (of: Food, text: string, kind: EquivalentKind, more: Partial<EquivalentQuestion> = {}) => {
  const { amount } = valueIn(parseAmount(text));
  if (amount === null) throw new Error(text);
  return { food: of, portion: valueIn(gramsOf(amount, of)), kind, edition: 'us-2020' as const, ...more };
};

describe('equivalents', () => {
  // Equivalents per 100 g: USDA ARS, Food Patterns Equivalents Database 2017-March 2020. Weights of measures: USDA
  // SR28. The database has cups of its own for some foods, so six percent are allowed.
  it.each([
    ['milk', { cup: 244 }, 'milk, yogurt or fortified soy drink', 0.41],
    ['yogurt, plain', { cup: 245 }, 'milk, yogurt or fortified soy drink', 0.41],
    ['cheddar cheese', {}, 'natural cheese', 2.35],
    ['egg, hard-boiled', { each: 50 }, 'egg', 2],
    ['almonds', {}, 'nuts and seeds', 7.05],
    ['peanut butter', { tbsp: 16 }, 'nut butter', 6.25],
    ['white rice, cooked', { cup: 158 }, 'cooked grain', 1.22],
    ['white bread', {}, 'bread', 3.39],
    ['chicken breast, roasted', {}, 'cooked meat, poultry or seafood', 3.5],
    ['orange', { cup: 180 }, 'fruit', 0.54],
    ['raisins', { cup: 145 }, 'dried fruit', 1.33],
    ['orange juice', { cup: 249 }, 'fruit juice', 0.4],
    ['tomato juice', { cup: 243 }, 'vegetable juice', 0.41],
    ['carrots, raw', { cup: 128 }, 'vegetable', 0.8],
    ['romaine lettuce, raw', { cup: 47 }, 'raw leafy greens', 1.05],
  ] as const)('%s', (name, weights, kind, per100) => {
    const result = valueIn(equivalentsOf(question(weighing(name, weights), '100 g', kind)));
    hold(result.value, per100, per100 * 0.06);
    expect(evaluate(result.working)).toBeCloseTo(result.value, 9);
    expect(result.edition).toBe('us-2020');
  });

  it('counts beans as vegetables or as protein foods, never as both', () => {
    const as = (countAs?: 'vegetables' | 'protein foods' | 'fruit') =>
      equivalentsOf(
        question(PINTO.boiled, '1 cup', 'cooked beans', countAs === undefined ? {} : { countAs }),
      );
    // The same database: 0.57 cup and 2.29 oz per 100 g; exactly 1 cup and 4 oz for a cup by the rule.
    expect(valueIn(as('vegetables'))).toMatchObject({
      value: 1,
      unit: 'cup-equivalent',
      group: 'vegetables',
    });
    expect(valueIn(as('protein foods'))).toMatchObject({ value: 4, unit: 'ounce-equivalent' });
    expect(refusalOf(as()).reason).toContain('counts as protein foods or as vegetables, never as both');
    expect(refusalOf(as('fruit')).reason).toBe('pinto beans, dried, cooked does not count as fruit.');
    const beans = (countAs: 'vegetables' | 'protein foods', words = 'pinto beans') => ({
      words,
      equivalents: valueIn(as(countAs)),
    });
    const twice = refusalOf(sumEquivalents([beans('vegetables'), beans('protein foods')]));
    expect(twice.reason).toBe('pinto beans counts as vegetables and as protein foods.');
    expect(
      valueIn(
        sumEquivalents([beans('vegetables'), beans('vegetables'), beans('protein foods', 'black beans')]),
      ),
    ).toEqual({
      vegetables: 2,
      fruit: 0,
      dairy: 0,
      grains: 0,
      'protein foods': 4,
    });
    const other = { words: 'x', equivalents: { ...valueIn(as('vegetables')), edition: 'us-2025' as const } };
    expect(refusalOf(sumEquivalents([beans('vegetables'), other])).reason).toBe(
      'Numbers of us-2020 and us-2025 stand together.',
    );
  });

  it('has none in the edition that counts servings', () => {
    const refusal = refusalOf(
      equivalentsOf(question(PINTO.boiled, '1 cup', 'vegetable', { edition: 'us-2025' })),
    );
    expect(refusal.reason).toBe('dga-2025-2030 counts servings, and their sizes are not known.');
  });

  it('needs the measure of the food, and says where the rule comes from', () => {
    expect(equivalentsOf(question(food({ name: 'kale' }), '100 g', 'raw leafy greens')).ok).toBe(false);
    const leek = food({ measures: [{ name: 'cup', grams: 89, source: 'house', estimated: true }] });
    const rough = valueIn(equivalentsOf(question(leek, '100 g', 'vegetable')));
    expect(rough.estimated).toBe(true);
    expect(rough.working.inputs.map(({ source }) => source)).toContain('dga-2020-2025 appendix 3');
    expect(valueIn(equivalentsOf(question(leek, '2 cups', 'bread'))).estimated).toBe(true);
  });

  it('is linear in the portion, and sums in any order', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 900 }), { minLength: 1, maxLength: 6 }), (weights) => {
        const list = weights.map((weight) => ({
          words: 'pinto beans',
          equivalents: valueIn(
            equivalentsOf(question(PINTO.boiled, `${weight} g`, 'cooked beans', { countAs: 'vegetables' })),
          ),
        }));
        const total = valueIn(sumEquivalents(list)).vegetables;
        expect(valueIn(sumEquivalents(list.toReversed())).vegetables).toBe(total);
        expect(total).toBeCloseTo(weights.reduce((a, b) => a + b) / 171, 9);
      }),
    );
  });
});

describe('what a food counts as', () => {
  const of = (name: string, plate: Food['plate'][number], more: Parameters<typeof food>[0] = {}) =>
    equivalentKindOf(food({ name, plate: [plate], state: 'ready to eat', ...more }));
  const beans = { plate: ['protein', 'grain or starch'] as const };

  it.each([
    ['tomato juice, canned', 'vegetable', {}, 'vegetable juice'],
    ['tomato juice, canned', 'drink', {}, 'vegetable juice'],
    ['carrot juice', 'drink', {}, 'vegetable juice'],
    ['vegetable juice', 'drink', {}, 'vegetable juice'],
    ['orange juice', 'drink', {}, 'fruit juice'],
    ['apple juice', 'fruit', {}, 'fruit juice'],
    ['tomatoes, dried', 'vegetable', {}, 'dried vegetable'],
    ['spinach, raw', 'vegetable', { state: 'raw' }, 'raw leafy greens'],
    ['spinach, boiled', 'vegetable', { state: 'cooked' }, 'vegetable'],
    ['cabbage, raw', 'vegetable', { state: 'raw' }, 'vegetable'],
    ['mango', 'fruit', { state: 'raw' }, 'fruit'],
    ['prunes', 'fruit', {}, 'dried fruit'],
    ['apricots, dried', 'fruit', {}, 'dried fruit'],
    ['milk', 'dairy or calcium', { contains: { milk: 'yes' } }, 'milk, yogurt or fortified soy drink'],
    ['soy drink, calcium added', 'dairy or calcium', {}, 'milk, yogurt or fortified soy drink'],
    ['cheddar cheese', 'dairy or calcium', { contains: { milk: 'yes' } }, 'natural cheese'],
    ['queso fresco', 'dairy or calcium', { contains: { milk: 'yes' } }, 'natural cheese'],
    ['cheese, processed', 'dairy or calcium', {}, 'processed cheese'],
    ['american cheese', 'dairy or calcium', {}, 'processed cheese'],
    ['potatoes, boiled', 'grain or starch', { state: 'cooked' }, 'vegetable'],
    ['corn, boiled', 'grain or starch', { state: 'cooked' }, 'vegetable'],
    ['corn tortilla', 'grain or starch', {}, 'bread'],
    ['flour tortilla', 'grain or starch', {}, 'bread'],
    ['flour tortillas', 'grain or starch', {}, 'bread'],
    ['white bread', 'grain or starch', {}, 'bread'],
    ['bun', 'grain or starch', {}, 'bread'],
    ['roll', 'grain or starch', {}, 'bread'],
    ['pita', 'grain or starch', {}, 'bread'],
    ['wheat flour, white', 'grain or starch', {}, 'dry grain'],
    ['wheat bran', 'grain or starch', {}, 'dry grain'],
    ['oat bran, cooked', 'grain or starch', { state: 'cooked' }, 'cooked grain'],
    ['puréed rice', 'grain or starch', {}, 'cooked grain'],
    ['french fries', 'grain or starch', {}, 'vegetable'],
    ['lotus root', 'vegetable', {}, 'vegetable'],
    ['brown rice, dry', 'grain or starch', { state: 'dry' }, 'dry grain'],
    ['brown rice, cooked', 'grain or starch', { state: 'cooked' }, 'cooked grain'],
    ['corn flakes', 'grain or starch', { kind: 'cereal; chips' }, 'cereal flakes'],
    ['popcorn, air-popped', 'grain or starch', {}, 'cereal flakes'],
    ['pinto beans', 'protein', { ...beans, state: 'cooked' }, 'cooked beans'],
    ['tofu, firm', 'protein', { contains: { soy: 'yes' } }, 'tofu'],
    ['tempeh', 'protein', { contains: { soy: 'yes' } }, 'tofu'],
    ['egg', 'protein', { contains: { egg: 'yes' } }, 'egg'],
    ['peanut butter', 'protein', { contains: { peanut: 'yes' } }, 'nut butter'],
    ['tahini', 'protein', { contains: { sesame: 'yes' } }, 'nut butter'],
    [
      'beef, roasted',
      'protein',
      { state: 'cooked', contains: { meat: 'yes' } },
      'cooked meat, poultry or seafood',
    ],
    [
      'cod, baked',
      'protein',
      { state: 'cooked', contains: { fish: 'yes' } },
      'cooked meat, poultry or seafood',
    ],
    [
      'shrimp',
      'protein',
      { state: 'cooked', contains: { shellfish: 'yes' } },
      'cooked meat, poultry or seafood',
    ],
    ['walnuts', 'protein', { contains: { 'tree nut': 'yes' } }, 'nuts and seeds'],
    ['peanuts', 'protein', { contains: { peanut: 'yes' } }, 'nuts and seeds'],
    ['sesame', 'protein', { contains: { sesame: 'yes' } }, 'nuts and seeds'],
    ['chia seeds', 'protein', {}, 'nuts and seeds'],
    ['mustard seed', 'protein', {}, 'nuts and seeds'],
    ['flaxseed', 'protein', {}, 'nuts and seeds'],
  ] as const)('%s (%s)', (name, plate, more, kind) => {
    expect(valueIn(of(name, plate, more as never))).toBe(kind);
  });

  it.each([
    ['pinto beans', 'protein', { ...beans, state: 'canned, with liquid' }, 'is weighed with its liquid'],
    ['pinto beans', 'protein', { ...beans, state: 'dry' }, 'is not cooked'],
    ['edamame', 'protein', { ...beans, state: 'raw' }, 'is not cooked'],
    ['beef', 'protein', { state: 'raw', contains: { meat: 'yes' } }, 'is not cooked'],
    ['bean soup', 'vegetable', {}, 'is a mixed dish'],
    ['ricotta cheese', 'dairy or calcium', {}, 'has an equivalent of its own'],
    ['cranberry juice cocktail', 'drink', {}, 'is no milk and no juice'],
    ['lotus seeds', 'grain or starch', {}, 'is a seed that counts as no grain'],
    ['dry milk', 'dairy or calcium', { contains: { milk: 'yes' } }, 'is milk with water taken out'],
    ['egg white', 'protein', { contains: { egg: 'yes' } }, 'is only part of an egg'],
    ['egg yolk', 'protein', { contains: { egg: 'yes' } }, 'is only part of an egg'],
    ['cola', 'drink', {}, 'is no milk and no juice'],
    ['cottage cheese', 'dairy or calcium', { contains: { milk: 'yes' } }, 'has an equivalent of its own'],
    ['evaporated milk', 'dairy or calcium', { contains: { milk: 'yes' } }, 'is milk with water taken out'],
    ['condensed milk', 'dairy or calcium', { contains: { milk: 'yes' } }, 'is milk with water taken out'],
    ['milk powder', 'dairy or calcium', { contains: { milk: 'yes' } }, 'is milk with water taken out'],
    ['rice drink', 'dairy or calcium', {}, 'is no dairy'],
    ['canola oil', 'fat', {}, 'counts in no food group'],
    ['protein powder', 'protein', {}, 'of no known kind'],
  ] as const)('%s (%s): none', (name, plate, more, reason) => {
    expect(refusalOf(of(name, plate, more as never)).reason).toContain(reason);
  });

  it('is none for a food without a plate kind', () => {
    expect(equivalentKindOf(food({ name: 'thing', plate: [] })).ok).toBe(false);
  });
});

describe('carbohydrate choices', () => {
  const worked = (value: number | null) => ({
    quantity: value === null ? notKnown('g') : known(value, 'g'),
    working: { formula: 'grams', inputs: [{ name: 'grams', value, unit: 'g', source: 'lesson' }] },
    estimated: false,
  });

  it('is grams ÷ 15', () => {
    const choices = carbohydrateChoices(worked(37));
    expect(choices.value).toBeCloseTo(2.467, 3);
    expect(evaluate(choices.working)).toBeCloseTo(2.467, 3);
    expect(carbohydrateChoices(worked(null)).value).toBeNull();
  });

  // The bands in use, by their ends; from memory.
  it.each([
    [0, 0],
    [5, 0],
    [5.4, 0],
    [5.5, 0.5],
    [6, 0.5],
    [10, 0.5],
    [11, 1],
    [15, 1],
    [20, 1],
    [21, 1.5],
    [25, 1.5],
    [26, 2],
    [35, 2],
    [36, 2.5],
    [40, 2.5],
    [41, 3],
    [45, 3],
    [60, 4],
  ])('%d g is shown as %d', (grams, choices) => {
    expect(valueIn(shownChoices(known(grams, 'g')))).toBe(choices);
  });

  it('is not known for what is not known', () => {
    expect(valueIn(shownChoices(notKnown('g')))).toBeNull();
    expect(valueIn(shownChoices({ ...known(20, 'g'), atLeast: true }))).toBeNull();
    expect(shownChoices(known(-1, 'g')).ok).toBe(false);
  });

  it('never falls, and lies within two thirds of a choice', () => {
    const shown = (grams: number) => Number(valueIn(shownChoices(known(grams, 'g'))));
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 300, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        (grams, more) => {
          expect(shown(grams + more)).toBeGreaterThanOrEqual(shown(grams));
          expect(Math.abs(shown(grams) - grams / 15)).toBeLessThan(0.4);
        },
      ),
    );
  });
});

describe('exchanges', () => {
  it('adds lists up', () => {
    // By hand: two starch, one lean protein, half a milk.
    expect(valueIn(sumExchanges({ starch: 2, 'lean protein': 1, 'fat-free milk': 0.5 }))).toEqual({
      carbohydrate: 36,
      protein: 17,
      fat: { low: 4, high: 5.5 },
      kcal: 255,
    });
    expect(valueIn(sumExchanges({})).kcal).toBe(0);
    for (const count of [-1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(sumExchanges({ fat: count }).ok).toBe(false);
  });

  it('agrees with 4-4-9 within the rounding of the lists', () => {
    for (const [name, { carbohydrate, protein, fat, kcal }] of Object.entries(EXCHANGE_LISTS)) {
      const energy = (grams: number) => carbohydrate * 4 + protein * 4 + grams * 9;
      expect(energy(fat.low) - 4, name).toBeLessThanOrEqual(kcal);
      expect(energy(fat.high) + 4, name).toBeGreaterThanOrEqual(kcal);
    }
  });
});

describe('measures of a region', () => {
  it('names the cup', () => {
    // Common practice, no source.
    expect(valueIn(kitchenOf('us'))).toBe('us exact');
    expect([KITCHENS[valueIn(kitchenOf('AU'))].tbsp, KITCHENS[valueIn(kitchenOf('NZ'))].cup]).toEqual([
      20, 250,
    ]);
    expect(refusalOf(kitchenOf('XX')).near).toEqual(Object.keys(KITCHENS));
    expect(kitchenOf('constructor').ok).toBe(false);
    for (const region of Object.keys(REGION_KITCHENS)) expect(region).toMatch(/^[A-Z]{2}$/);
  });

  it.each([
    // By hand, in mL: the US cup of 236.588 and the spoons of 14.787 and 4.929.
    [236.588, 'us exact', 1, 'cup'],
    [120, 'us exact', 0.5, 'cup'],
    [80, 'us exact', 1 / 3, 'cup'],
    [430, 'us exact', 1 + 3 / 4, 'cup'],
    [59.15, 'us exact', 0.25, 'cup'],
    [40, 'us exact', 2.5, 'tbsp'],
    [15, 'us label', 1, 'tbsp'],
    [20, 'australian', 1, 'tbsp'],
    [15, 'australian', 3, 'tsp'],
    [2.4, 'us exact', 0.5, 'tsp'],
    [0.4, 'us exact', 0.125, 'tsp'],
    [240, 'us label', 1, 'cup'],
  ] as const)('%d mL in %s', (milliliters, kitchen, count, unit) => {
    const result = valueIn(pourable(milliliters, kitchen));
    expect(result.count).toBeCloseTo(count, 9);
    expect(result.unit).toBe(unit);
    expect(result.milliliters).toBeCloseTo(count * KITCHENS[kitchen][unit], 6);
  });

  it('refuses what nobody can pour', () => {
    for (const volume of [0, -1, Number.NaN, Number.POSITIVE_INFINITY, 0.1])
      expect(pourable(volume).ok).toBe(false);
  });

  it('is near what was asked, and never falls within a measure', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 3000, noNaN: true }), (volume) => {
        const result = valueIn(pourable(volume));
        const size = KITCHENS['us exact'][result.unit];
        expect(Math.abs(result.milliliters - volume)).toBeLessThanOrEqual(size / 4 + 1e-6);
        expect(result.count).toBeGreaterThan(0);
      }),
    );
  });
});
