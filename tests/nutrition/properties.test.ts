import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  activityEnergy,
  afterCooking,
  alcoholIn,
  bodyMassIndex,
  carbohydrateChoices,
  cookedPer100g,
  declaredCholesterol,
  declaredFat,
  declaredGrams,
  declaredPercent,
  declaredSodium,
  drainedShare,
  energyNeed,
  energyNeed2005,
  type Food,
  foodEnergy,
  fromInternationalUnits,
  heightInCm,
  known,
  lessClaim,
  linearChange,
  linearWeight,
  metOf,
  notKnown,
  nutrientIn,
  organicShare,
  oxfordEnergy,
  parseBasis,
  percentOfDailyValue,
  percentOfReferenceIntake,
  permittedCalories,
  perServing,
  type Result,
  recipePer100g,
  restingEnergy,
  ruleOfThumb,
  saltFromSodium,
  staticRule,
  sumWorked,
  swapChange,
  timesRetention,
  type Unit,
  unitRatio,
  usefulLoss,
  valueOnBasis,
  type Worked,
  weightInKg,
} from '../../src/nutrition/index.js';
import { adult } from './adults.js';
import { evaluate, evaluateParts } from './evaluate.js';
import { valueIn } from './expect-result.js';
import { food, PINTO } from './foods.js';

/** Amounts as they stand in tables and lessons. */
const amount = fc.integer({ min: 0, max: 50_000 }).map((n) => n / 10);
const above = fc.integer({ min: 1, max: 50_000 }).map((n) => n / 10);
const percent = fc.integer({ min: 0, max: 100 });
const cooking = fc.integer({ min: 20, max: 500 }).map((n) => ({ factor: n / 100, source: 'case' }));
const close = (a: number | null | undefined, b: number) => {
  expect(a).toBeTypeOf('number');
  expect(Math.abs(Number(a) - b)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(b)));
};
const given = <U extends Unit>(value: number | null, unit: U): Worked<U> => ({
  quantity: value === null ? notKnown(unit) : known(value, unit),
  working: { formula: 'given', inputs: [{ name: 'given', value, unit, source: 'case' }] },
  estimated: false,
});
const kept = (share: number) => ({ percent: share, source: 'case', method: 'case' });

describe('rounding of a US label', () => {
  // The widest step at an amount, so the most that rounding may move it by half of.
  it.each<[string, (value: number) => number, (value: number) => number]>([
    ['calories', (kcal) => Number(permittedCalories(kcal).at(-1)), (kcal) => (kcal <= 50 ? 5 : 10)],
    ['fat', declaredFat, () => 1],
    ['sodium', declaredSodium, (mg) => (mg < 5 ? 10 : mg <= 140 ? 5 : 10)],
    ['cholesterol', (mg) => declaredCholesterol(mg).value, (mg) => (mg < 5 ? 6 : 5)],
    ['carbohydrate', (g) => declaredGrams(g).value, () => 1],
    ['percent of iron', (of) => declaredPercent('iron', of), (of) => (of <= 10 ? 4 : of <= 50 ? 5 : 10)],
    ['percent of fat', (of) => declaredPercent('fat', of), () => 1],
  ])('of %s never falls, stays near and is the same again', (_what, rounded, step) => {
    fc.assert(
      fc.property(amount, amount, (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        expect(rounded(less)).toBeLessThanOrEqual(rounded(more));
        expect(rounded(a)).toBeGreaterThanOrEqual(0);
        expect(Math.abs(rounded(a) - a)).toBeLessThanOrEqual(step(a) / 2 + 1e-9);
        expect(rounded(rounded(a))).toBe(rounded(a));
      }),
    );
  });
});

describe('cooking', () => {
  it('never makes more of a nutrient, and the pot as a whole agrees with 100 g of it', () => {
    fc.assert(
      fc.property(above, percent, cooking, (raw, share, pot) => {
        const whole = valueIn(afterCooking(given(raw, 'mg'), kept(share)));
        expect(whole.quantity.value).toBeLessThanOrEqual(raw);
        close(evaluate(whole.working), Number(whole.quantity.value));
        // 100 g raw become 100 × yield g.
        const each = valueIn(cookedPer100g(known(raw, 'mg'), 'case', kept(share), pot));
        close(Number(each.quantity.value) * pot.factor, Number(whole.quantity.value));
        close(evaluate(each.working), Number(each.quantity.value));
      }),
    );
  });

  it('parts a recipe into servings that add up, by its weight as by its number', () => {
    fc.assert(
      fc.property(amount, fc.integer({ min: 1, max: 60 }), above, (all, servings, grams) => {
        const recipe = given(all, 'mg');
        const one = valueIn(perServing(recipe, servings));
        close(Number(one.quantity.value) * servings, all);
        const working = {
          formula: 'weighed',
          inputs: [{ name: 'weighed', value: grams, unit: 'g', source: 'case' }],
        };
        const per100g = recipePer100g(recipe, { grams, working, estimated: false });
        close((Number(per100g.quantity.value) * grams) / 100, all);
        close(evaluate(per100g.working), Number(per100g.quantity.value));
      }),
    );
  });

  it('takes a share of a can above nothing and never above all of it', () => {
    const can = (base: Food, grams: number): Food => ({
      ...base,
      measures: [{ name: 'can', grams, source: 'case' }],
    });
    fc.assert(
      fc.property(above, fc.integer({ min: 1, max: 100 }), (full, part) => {
        const found = valueIn(
          drainedShare(can(PINTO.withLiquid, full), can(PINTO.drained, (full * part) / 100)),
        );
        close(found.share, part / 100);
        close(evaluate(found.working), found.share);
      }),
    );
  });
});

describe('amounts of a lesson', () => {
  it('give a nutrient in proportion to the basis', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        fc.constantFrom('cup', 'tbsp', 'oz', 'g'),
        (count, unit) => {
          const of = (many: number) =>
            valueIn(
              valueOnBasis(PINTO.boiled, 'fiber', valueIn(parseBasis(`${many} ${unit}, ready to eat`))),
            );
          close(of(count).worked.quantity.value, Number(of(1).worked.quantity.value) * count);
          close(evaluate(of(count).worked.working), Number(of(count).worked.quantity.value));
        },
      ),
    );
  });

  it('give alcohol in proportion, energy at 7 kcal a gram, and a working that gives it', () => {
    fc.assert(
      fc.property(amount, percent, (volume, strength) => {
        const drink = valueIn(alcoholIn(volume, strength));
        close(valueIn(alcoholIn(volume * 2, strength)).grams, drink.grams * 2);
        close(drink.kcal, drink.grams * 7);
        close(evaluate(drink.working), drink.grams);
        expect(drink.grams).toBeLessThanOrEqual(volume);
        expect(valueIn(alcoholIn(volume, strength, 'uk')).drinks).toBeGreaterThanOrEqual(drink.drinks);
      }),
    );
  });

  it('give international units in proportion', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('vitamin D', 'vitamin A, retinol', 'vitamin E, natural', 'vitamin E, synthetic'),
        amount,
        (form, units) =>
          close(fromInternationalUnits(form, units).value, units * fromInternationalUnits(form, 1).value),
      ),
    );
  });

  it('give an organic share from 0 to 100 that rises with the organic part', () => {
    fc.assert(
      fc.property(above, percent, percent, amount, (dry, part, other, waterAndSalt) => {
        const share = (of: number) =>
          valueIn(organicShare({ organic: (dry * of) / 100, all: dry + waterAndSalt, waterAndSalt }));
        const [less, more] = [Math.min(part, other), Math.max(part, other)];
        // Weights that come so near the whole that binary fractions decide are refused or 100.
        fc.pre(more < 100);
        expect(share(less).percent).toBeLessThanOrEqual(share(more).percent + 1e-9);
        expect(share(more).percent).toBeGreaterThanOrEqual(0);
        expect(share(more).percent).toBeLessThanOrEqual(100);
        close(evaluate(share(part).working), share(part).percent);
      }),
    );
  });

  it('give the same share less in grams as in milligrams, 100 percent for none and 0 for as much', () => {
    fc.assert(
      fc.property(amount, above, (less, reference) => {
        const claim = valueIn(lessClaim(known(less, 'mg'), known(reference, 'mg'), 'no'));
        const inGrams = valueIn(lessClaim(known(less / 1000, 'g'), known(reference, 'mg'), 'no'));
        close(inGrams.lessPercent, Number(claim.lessPercent));
        expect(claim.lessPercent).toBeLessThanOrEqual(100);
        expect(valueIn(lessClaim(known(0, 'mg'), known(reference, 'mg'), 'no')).lessPercent).toBe(100);
        close(valueIn(lessClaim(known(reference, 'mg'), known(reference, 'mg'), 'no')).lessPercent, 0);
        if (claim.half === 'yes') expect(claim.reduced).toBe('yes');
        close(evaluate(claim.working), Number(claim.lessPercent));
      }),
    );
  });
});

describe('height and weight', () => {
  it('are the same in any unit', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 40, max: 250 }),
        fc.constantFrom('g', 'oz', 'lb'),
        fc.integer({ min: 140, max: 210 }),
        (kg, unit, cm) => {
          const weight = valueIn(weightInKg({ value: kg * unitRatio('kg', unit), unit }));
          close(weight.value, kg);
          close(evaluate(weight.working), Number(weight.value));
          close(valueIn(heightInCm({ value: cm / 2.54, unit: 'in' })).value, cm);
          close(valueIn(heightInCm({ value: cm / 100, unit: 'm' })).value, cm);
        },
      ),
    );
  });

  it('give a useful loss of 3 to 5 percent in the unit of the weight', () => {
    fc.assert(
      fc.property(fc.integer({ min: 50, max: 250 }), fc.constantFrom('kg', 'lb'), (value, unit) => {
        const loss = valueIn(usefulLoss({ value, unit }));
        expect(loss.unit).toBe(unit);
        close(loss.low, value * 0.03);
        close(loss.high, value * 0.05);
        expect(evaluateParts(loss.working)).toEqual({ low: loss.low, high: loss.high });
      }),
    );
  });
});

const nobody = adult('female', 40, 165, null);
const walking = valueIn(metOf('17190', 2024));
const some = food({ per100g: { sodium: null } });
const portion = {
  grams: { value: 90, unit: 'g' },
  measure: null,
  working: { formula: 'grams', inputs: [{ name: 'grams', value: 90, unit: 'g', source: 'case' }] },
  estimated: false,
} as const;
const of = <T, V>(result: Result<T>, pick: (value: T) => V): V => pick(valueIn(result));

describe('what is not known stays not known', () => {
  it.each<[string, () => number | null]>([
    ['a nutrient in a portion', () => nutrientIn(some, 'sodium', portion).quantity.value],
    [
      'a sum of nothing known',
      () => sumWorked('mg', [{ words: 'a', worked: given(null, 'mg') }]).quantity.value,
    ],
    ['a percent of a Daily Value', () => of(percentOfDailyValue('sodium', notKnown('mg')), (v) => v.percent)],
    [
      'a percent of a reference intake',
      () =>
        of(
          percentOfReferenceIntake('sodium', 'females 31 to 50 years', notKnown('mg')),
          ({ percent: share }) => share,
        ),
    ],
    ['how much less', () => of(lessClaim(notKnown('mg'), known(9, 'mg'), 'no'), (v) => v.lessPercent)],
    ['salt', () => saltFromSodium(notKnown('mg')).quantity.value],
    ['the energy of a food', () => of(foodEnergy('4-4-9-7', 'kcal', { fat: null }), (v) => v.quantity.value)],
    ['a retention', () => timesRetention(given(null, 'mg'), kept(50)).quantity.value],
    [
      'a cooked food',
      () =>
        of(
          cookedPer100g(notKnown('mg'), 'case', kept(50), { factor: 1, source: 'case' }),
          (v) => v.quantity.value,
        ),
    ],
    ['a serving of a recipe', () => of(perServing(given(null, 'mg'), 4), (v) => v.quantity.value)],
    ['resting energy', () => of(restingEnergy(nobody, 'simplified'), (v) => v.quantity.value)],
    ['basal energy', () => of(oxfordEnergy(nobody, 'weight'), (v) => v.quantity.value)],
    ['an energy need', () => of(energyNeed(nobody, 'active'), (v) => v.quantity.value)],
    ['an energy need of 2005', () => of(energyNeed2005(nobody, 'active'), (v) => v.quantity.value)],
    [
      'a body mass index',
      () => of(bodyMassIndex({ value: 165, unit: 'cm' }, { value: null, unit: 'kg' }), (v) => v.value),
    ],
    [
      'the energy of an activity',
      () => of(activityEnergy(walking, { value: null, unit: 'kg' }, 30), (v) => v.quantity.value),
    ],
    ['the straight form', () => of(linearWeight(null, 30), (v) => v.time.value)],
    [
      'a change by the straight form',
      () =>
        of(
          linearChange(valueIn(linearWeight(20, null)), { value: -500, unit: 'kcal' }, 365),
          (v) => v.quantity.value,
        ),
    ],
    ['a rule of thumb', () => ruleOfThumb({ value: null, unit: 'kJ' }).eventual.quantity.value],
    ['the static rule', () => of(staticRule({ value: null, unit: 'kcal' }, 7), (v) => v.quantity.value)],
    ['a useful loss', () => of(usefulLoss({ value: null, unit: 'kg' }), (v) => v.low)],
    ['carbohydrate choices', () => carbohydrateChoices(given(null, 'g')).value],
    ['what a swap changes', () => swapChange(given(null, 'mg'), given(3, 'mg')).value],
  ])('%s', (_what, value) => {
    expect(value()).toBeNull();
  });
});
