import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  afterCooking,
  COOKING_YIELDS,
  cookedFood,
  drainedShare,
  findRetentionCodes,
  findYields,
  type Ingredient,
  nutrientIn,
  type Portion,
  perServing,
  RETENTION_CODES,
  RETENTION_NUTRIENTS,
  ROUGH_YIELDS,
  recipeNutrient,
  recipePer100g,
  recipeWeight,
  retentionCode,
  retentionOf,
  weighedYield,
  yieldOfRow,
} from '../../src/nutrition/index.js';
import { evaluate } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';
import { food, PINTO } from './foods.js';

const grams = (count: number): Portion => ({
  grams: { value: count, unit: 'g' },
  words: `${count} g`,
  measure: null,
  working: { formula: 'grams', inputs: [{ name: 'grams', value: count, unit: 'g', source: 'lesson' }] },
  estimated: false,
});
const spinach = food({
  name: 'spinach',
  state: 'raw',
  // USDA SR28, record 11457.
  per100g: { 'vitamin C': 28.1, potassium: 558, fiber: 2.2 },
});
const percent = (code: string, nutrient: (typeof RETENTION_NUTRIENTS)[number]) =>
  valueIn(retentionOf(code, nutrient)).percent;

describe('retention factors', () => {
  // USDA Table of Nutrient Retention Factors, Release 6 (2007), rows typed again from public transcriptions.
  it.each([
    ['3004', { 'vitamin C': 60, thiamin: 85, riboflavin: 95, calcium: 95, iron: 95, sodium: 95 }],
    ['3005', { 'vitamin C': 55, thiamin: 80, riboflavin: 90, calcium: 95, iron: 95, sodium: 95 }],
    ['3006', { 'vitamin C': 70 }],
    ['3456', { 'vitamin C': 75, folate: 80, 'vitamin A': 90 }],
    ['3460', { 'vitamin C': 75, folate: 70, 'vitamin A': 85 }],
    [
      '3775',
      { 'vitamin C': 75, folate: 65, calcium: 95, iron: 95, potassium: 90, zinc: 95, 'vitamin A': 90 },
    ],
    ['3307', { 'vitamin C': 75, calcium: 95, iron: 95, potassium: 90, zinc: 95, magnesium: 95 }],
    ['3308', { 'vitamin C': 75, calcium: 95, iron: 95, potassium: 90, zinc: 95, magnesium: 95 }],
    [
      '501',
      {
        'vitamin C': 65,
        folate: 60,
        calcium: 85,
        iron: 85,
        potassium: 75,
        sodium: 90,
        magnesium: 80,
        phosphorus: 90,
      },
    ],
    [
      '521',
      { 'vitamin C': 65, calcium: 85, iron: 80, potassium: 70, sodium: 90, magnesium: 75, phosphorus: 85 },
    ],
    ['154', { 'vitamin C': 50, thiamin: 80, riboflavin: 90, folate: 50, iron: 100, 'vitamin A': 75 }],
    ['0105', { 'vitamin C': 80, thiamin: 85, riboflavin: 95, calcium: 100, iron: 100, sodium: 100 }],
    ['2151', { 'vitamin C': 85, thiamin: 90, riboflavin: 100, calcium: 100 }],
    ['5002', { alcohol: 85 }],
    ['5003', { alcohol: 75 }],
    ['5001', { alcohol: 70 }],
    ['5010', { alcohol: 45 }],
    ['5004', { alcohol: 40 }],
    ['5005', { alcohol: 35, choline: 100 }],
    ['5006', { alcohol: 25 }],
    ['5007', { alcohol: 20 }],
    ['5008', { alcohol: 10 }],
  ] as const)('%s', (code, factors) => {
    for (const [nutrient, kept] of Object.entries(factors)) {
      expect(percent(code, nutrient as keyof typeof factors), nutrient).toBe(kept);
    }
  });

  it('is the whole release, in steps of five', () => {
    expect(RETENTION_CODES).toHaveLength(270);
    const refused: string[] = [];
    for (const { code } of RETENTION_CODES) {
      for (const nutrient of RETENTION_NUTRIENTS) {
        const found = retentionOf(code, nutrient);
        if (!found.ok) refused.push(`${code} ${nutrient}`);
        else expect([found.value.percent % 5, found.value.percent <= 100]).toEqual([0, true]);
      }
    }
    // 17 of our columns of the defect row stand for the 24 blank cells of the release.
    expect(refused.filter((one) => one.startsWith('5005'))).toHaveLength(17);
    expect(refused.filter((one) => !one.startsWith('5005'))).toEqual([
      '1706 vitamin A',
      '5009 alcohol',
      '1154 choline',
    ]);
  });

  it('says what is wrong with a cell, a code or a nutrient', () => {
    expect(refusalOf(retentionOf('5005', 'folate')).reason).toContain('wrong or blank at folate of 5005');
    expect(refusalOf(retentionOf('5009', 'alcohol')).reason).toContain('gives no alcohol for 5009');
    expect(refusalOf(retentionOf('3005', 'fiber')).reason).toBe(
      'Release 6 has no retention factors for fiber.',
    );
    expect(refusalOf(retentionOf('3999', 'iron')).reason).toBe(
      'There is no retention code 3999 in release 6.',
    );
    expect(refusalOf(retentionCode('30005')).reason).toContain('30005');
    expect(valueIn(retentionCode('5'))).toEqual({
      code: '0005',
      group: 'dairy and eggs',
      method: 'cheese, cooked with liquid',
    });
    expect(valueIn(retentionOf('2402', 'iron')).method).toContain('doubtful');
    expect(valueIn(retentionOf('3005', 'iron'))).toEqual({
      percent: 95,
      source: 'usda-retention-2007 3005',
      method: 'vegetables, leafy greens, boiled, covered with water, drained',
    });
  });

  it('finds codes by words', () => {
    expect(findRetentionCodes('potatoes skin').map(({ code }) => code)).toEqual([
      '3301',
      '3307',
      '3701',
      '3707',
    ]);
    expect(findRetentionCodes('nothing like it')).toEqual([]);
    expect(findRetentionCodes('')).toHaveLength(270);
  });
});

describe('cooking from a raw record', () => {
  const half = { factor: 0.9, source: 'weighed' };

  it('multiplies by the factor and divides by the yield', () => {
    const worked = valueIn(cookedFood(spinach, 'vitamin C', '3005', half));
    // 28.1 × 0.55 ÷ 0.9, by hand.
    expect(worked.quantity.value).toBeCloseTo(17.172, 3);
    expect(evaluate(worked.working)).toBeCloseTo(17.172, 3);
    expect(worked.estimated).toBe(true);
    expect(valueIn(cookedFood(spinach, 'iron', '3005', half)).quantity.value).toBeNull();
  });

  it('never takes a cooked record, and never a factor twice', () => {
    for (const state of ['cooked', 'canned, drained', 'frozen, cooked', 'ready to eat'] as const) {
      const refusal = refusalOf(cookedFood({ ...spinach, state }, 'iron', '3005', half));
      expect(refusal.reason).toContain('already shows what cooking or canning took away');
    }
    const retention = valueIn(retentionOf('3005', 'potassium'));
    const raw = nutrientIn(spinach, 'potassium', grams(200));
    const once = valueIn(afterCooking(raw, retention));
    expect(once.quantity.value).toBeCloseTo(558 * 2 * 0.85, 9);
    expect(evaluate(once.working)).toBeCloseTo(558 * 2 * 0.85, 9);
    expect(refusalOf(afterCooking(once, retention)).reason).toContain('already');
    const per100 = valueIn(cookedFood(spinach, 'potassium', '3005', half));
    expect(afterCooking(per100, retention).ok).toBe(false);
    expect(valueIn(afterCooking(nutrientIn(spinach, 'iron', grams(9)), retention)).quantity.value).toBeNull();
  });

  it('refuses codes and yields that are none', () => {
    expect(cookedFood(spinach, 'iron', '9999', half).ok).toBe(false);
    expect(cookedFood(spinach, 'iron', '3005', { factor: 0, source: '' }).ok).toBe(false);
  });
});

describe('cooking yields', () => {
  it('holds the published table', () => {
    // USDA Table of Cooking Yields for Meat and Poultry, Release 2 (2014), rows typed again.
    expect(COOKING_YIELDS).toHaveLength(173);
    const [bacon] = valueIn(findYields('bacon microwaved'));
    expect(bacon).toMatchObject({
      food: 'pork, cured, bacon',
      method: 'microwaved',
      factor: 0.29,
      span: { low: 0.2889, high: 0.3013 },
      samples: 3,
      record: '10861',
    });
    expect(valueIn(findYields('beef ground medium crumbles'))[0]).toMatchObject({
      factor: 0.67,
      record: '23575',
    });
    expect(valueIn(findYields('beef retail all cuts'))[0]).toMatchObject({
      factor: 0.78,
      record: null,
      samples: 458,
    });
    expect(valueIn(findYields('tenderloin roast boneless'))[0]).toMatchObject({ factor: 0.82, span: null });
    expect(valueIn(findYields('chicken thigh stewed'))[0]).toMatchObject({ factor: 0.74, samples: null });
    for (const { factor, span, food: name } of [...COOKING_YIELDS, ...ROUGH_YIELDS]) {
      expect(factor, name).toBeGreaterThan(0.25);
      // One row is rounded past its highest by half a percent.
      if (span) expect(factor >= span.low - 0.005 && factor <= span.high + 0.005, name).toBe(true);
    }
  });

  it('marks what is from memory', () => {
    const [beans, ...more] = valueIn(findYields('dry beans'));
    expect(beans).toMatchObject({ factor: 2.45, checked: 'memory' });
    expect(more).toEqual([]);
    expect(yieldOfRow(beans as never)).toEqual({ factor: 2.45, source: 'group average, common practice' });
    const [bacon] = valueIn(findYields('bacon microwaved'));
    expect(yieldOfRow(bacon as never).source).toBe('usda-cooking-yields-2014 10861');
  });

  it('names near words', () => {
    expect(refusalOf(findYields('turky')).near).toEqual(['turkey']);
    expect(refusalOf(findYields('beef quinoa')).near).toBeUndefined();
    expect(refusalOf(findYields('bacon turkey')).reason).toContain('No cooking yield is known');
  });

  it('takes a weighed one', () => {
    expect(valueIn(weighedYield(200, 150, 'kitchen'))).toEqual({ factor: 0.75, source: 'kitchen' });
    for (const [before, after] of [
      [0, 1],
      [1, 0],
      [Number.NaN, 1],
      [1, Number.POSITIVE_INFINITY],
      [Number.POSITIVE_INFINITY, 1],
    ] as const)
      expect(refusalOf(weighedYield(before, after, '')).reason).toContain('above zero');
    expect(refusalOf(weighedYield(1000, 1, '')).reason).toContain('no food has');
    expect(refusalOf(weighedYield(1, 10, '')).reason).toContain('no food has');
  });
});

describe('the drained share of a can', () => {
  it('is drained ÷ full', () => {
    // USDA SR28, records 16044, 16146 and 16345: cans of 442, 277 and 258 g.
    const drained = valueIn(drainedShare(PINTO.withLiquid, PINTO.drained));
    expect(drained.share).toBeCloseTo(277 / 442, 12);
    expect(evaluate(drained.working)).toBeCloseTo(drained.share, 12);
    expect(drained).toMatchObject({ measure: 'can (15.5 oz)', estimated: false });
    expect(valueIn(drainedShare(PINTO.withLiquid, PINTO.rinsed)).share).toBeCloseTo(258 / 442, 12);
  });

  it('needs the two records of one food, and one package in both', () => {
    expect(drainedShare(PINTO.drained, PINTO.rinsed).ok).toBe(false);
    expect(drainedShare(PINTO.withLiquid, PINTO.boiled).ok).toBe(false);
    expect(drainedShare(PINTO.withLiquid, { ...PINTO.drained, kind: 'black beans' }).ok).toBe(false);
    expect(refusalOf(drainedShare(PINTO.withLiquid, { ...PINTO.drained, measures: [] })).reason).toContain(
      'No package',
    );
    const can = (weight: number, estimated: boolean) => [
      { name: 'can', grams: weight, source: 'test', ...(estimated ? { estimated } : {}) },
    ];
    const pair = (full: number, left: number, a = false, b = false) =>
      drainedShare(
        { ...PINTO.withLiquid, measures: can(full, a) },
        { ...PINTO.drained, measures: can(left, b) },
      );
    expect(refusalOf(pair(100, 101)).reason).toContain('weighs more');
    expect([valueIn(pair(2, 1, true)).estimated, valueIn(pair(2, 1, false, true)).estimated]).toEqual([
      true,
      true,
    ]);
  });
});

describe('a recipe', () => {
  const onion = food({ name: 'onion', state: 'raw', per100g: { potassium: 146, fiber: 1.7 } });
  const beans = food({ name: 'beans', state: 'cooked', per100g: { potassium: 436, fiber: 9 } });
  const mystery = food({ name: 'spice', state: 'ready to eat' });
  const stew: readonly Ingredient[] = [
    { food: spinach, portion: grams(200), retention: '3006' },
    { food: onion, portion: grams(100) },
    { food: beans, portion: grams(300) },
  ];

  it('is the sum, each part kept once', () => {
    const total = valueIn(recipeNutrient(stew, 'potassium'));
    // Code 3006 keeps 100 percent of potassium; 1116 + 146 + 1308, by hand.
    expect(percent('3006', 'potassium')).toBe(100);
    expect(total.quantity).toEqual({ value: 2570, unit: 'mg', atLeast: false });
    expect(evaluate(total.working)).toBeCloseTo(2570, 9);
    expect(total.estimated).toBe(true);
    const serving = valueIn(perServing(total, 4));
    expect(serving.quantity.value).toBe(642.5);
    expect(evaluate(serving.working)).toBeCloseTo(642.5, 9);
  });

  it('says at least where a part is not known', () => {
    const more = [...stew, { food: mystery, portion: grams(2) }];
    expect(valueIn(recipeNutrient(more, 'potassium')).quantity).toEqual({
      value: 2570,
      unit: 'mg',
      atLeast: true,
    });
    expect(valueIn(perServing(valueIn(recipeNutrient(more, 'potassium')), 2)).quantity.atLeast).toBe(true);
    const none = valueIn(recipeNutrient([{ food: mystery, portion: grams(2) }], 'iron'));
    expect(none.quantity.value).toBeNull();
    expect(valueIn(perServing(none, 3)).quantity.value).toBeNull();
    const weight = valueIn(recipeWeight(stew));
    expect(recipePer100g(none, weight).quantity.value).toBeNull();
  });

  it('does not take a nutrient without a factor for kept, unless told', () => {
    expect(valueIn(recipeNutrient(stew, 'fiber')).quantity).toEqual({
      value: 28.7,
      unit: 'g',
      atLeast: true,
    });
    const whole = valueIn(recipeNutrient(stew, 'fiber', 'kept whole'));
    expect(whole.quantity.value).toBeCloseTo(33.1, 9);
    expect(whole.estimated).toBe(true);
    // A defect of the release stays not known.
    const wine = {
      food: food({ state: 'raw', per100g: { iron: 1 } }),
      portion: grams(100),
      retention: '5005',
    };
    const lost = valueIn(recipeNutrient([wine], 'iron', 'kept whole'));
    expect(lost.quantity.value).toBeNull();
    expect(lost.working.inputs.map(({ value }) => value)).toContain(null);
  });

  it('weighs what went in times the yield, and is divided by that once', () => {
    const total = valueIn(recipeNutrient(stew, 'potassium'));
    const raw = valueIn(recipeWeight(stew));
    expect([raw.grams, raw.estimated]).toEqual([600, false]);
    const cooked = valueIn(recipeWeight(stew, { factor: 0.8, source: 'weighed' }));
    expect(cooked.grams).toBeCloseTo(480, 9);
    const per100 = recipePer100g(total, cooked);
    expect(per100.quantity.value).toBeCloseTo((2570 / 480) * 100, 9);
    expect(evaluate(per100.working)).toBeCloseTo((2570 / 480) * 100, 9);
    expect(recipePer100g({ ...total, estimated: false }, { ...raw, estimated: false }).estimated).toBe(false);
    expect(recipePer100g({ ...total, estimated: false }, cooked).estimated).toBe(true);
  });

  it('refuses what cannot be', () => {
    expect(recipeNutrient([], 'iron').ok).toBe(false);
    expect(recipeWeight([]).ok).toBe(false);
    for (const factor of [0, Number.POSITIVE_INFINITY])
      expect(recipeWeight(stew, { factor, source: '' }).ok).toBe(false);
    expect(recipeNutrient([{ food: beans, portion: grams(1), retention: '501' }], 'iron').ok).toBe(false);
    expect(recipeNutrient([{ food: onion, portion: grams(1), retention: '9' }], 'iron').ok).toBe(false);
    const total = valueIn(recipeNutrient(stew, 'potassium'));
    for (const servings of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(perServing(total, servings).ok).toBe(false);
  });

  it('does not depend on the order, and grows with each part', () => {
    const parts = fc.array(
      fc.tuple(fc.integer({ min: 1, max: 500 }), fc.constantFrom(spinach, onion, beans, mystery)),
      {
        minLength: 1,
        maxLength: 6,
      },
    );
    fc.assert(
      fc.property(parts, (rows) => {
        const list = rows.map(([weight, of]) => ({ food: of, portion: grams(weight) }));
        const value = (some: readonly Ingredient[]) => valueIn(recipeNutrient(some, 'potassium')).quantity;
        expect(value([...list].reverse())).toEqual(value(list));
        const more = value([...list, { food: beans, portion: grams(10) }]);
        expect(more.value).toBeGreaterThan(value(list).value ?? 0);
      }),
    );
  });
});
