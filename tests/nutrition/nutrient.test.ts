import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  cookedPer100g,
  gramsOf,
  known,
  notKnown,
  nutrientIn,
  type Portion,
  parseAmount,
  scaleWorked,
  sumWorked,
  usualPortion,
} from '../../src/nutrition/index.js';
import { evaluate } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';
import { food, PINTO } from './foods.js';

const portion = (grams: number): Portion => {
  const { amount } = valueIn(parseAmount(`${grams} g`));
  if (amount === null) throw new Error('no amount');
  return valueIn(gramsOf(amount, PINTO.boiled));
};

describe('what a portion holds', () => {
  it('is value per 100 g × grams ÷ 100, with the record named', () => {
    const sodium = nutrientIn(PINTO.rinsed, 'sodium', portion(169));
    // USDA SR28, record 16345: 212 mg per 100 g and 169 g per cup; 358.28 by hand.
    expect(sodium.quantity).toEqual({ value: 358.28, unit: 'mg', atLeast: false });
    expect(sodium.working).toEqual({
      formula: 'per100 * grams / 100',
      inputs: [
        {
          name: 'per100',
          value: 212,
          unit: 'mg per 100 g',
          source: 'usda-sr28 16345',
          note: 'Beans, pinto, canned, drained and rinsed; 2015-09-01',
        },
        { name: 'grams', value: 169, unit: 'g', source: 'lesson' },
      ],
    });
  });

  it('is not known where the record is blank', () => {
    const fiber = nutrientIn(PINTO.rinsed, 'fiber', portion(169));
    expect(fiber.quantity).toEqual({ value: null, unit: 'g', atLeast: false });
    expect(evaluate(fiber.working)).toBeNaN();
    for (const wrong of [undefined, Number.NaN, Number.POSITIVE_INFINITY]) {
      const odd = { ...PINTO.boiled, per100g: { ...PINTO.boiled.per100g, iron: wrong as unknown as null } };
      expect(nutrientIn(odd, 'iron', portion(100)).quantity.value).toBeNull();
    }
  });

  it('is marked as estimated when the weight was', () => {
    expect(nutrientIn(PINTO.boiled, 'sodium', { ...portion(50), estimated: true }).estimated).toBe(true);
    expect(nutrientIn(PINTO.boiled, 'sodium', usualPortion(PINTO.boiled)).estimated).toBe(false);
  });

  it('is linear in the grams, and the formula gives the value', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max: 5000, noNaN: true })),
        fc.double({ min: 0.001, max: 5000, noNaN: true }),
        fc.integer({ min: 2, max: 12 }),
        (per100, grams, times) => {
          const one = food({ per100g: { sodium: per100 } });
          const few = nutrientIn(one, 'sodium', portion(grams));
          const many = nutrientIn(one, 'sodium', portion(grams * times));
          const value = few.quantity.value ?? Number.NaN;
          expect(Math.abs((many.quantity.value ?? Number.NaN) - value * times)).toBeLessThanOrEqual(
            1e-12 * value * times,
          );
          expect(evaluate(few.working)).toBe(value);
        },
      ),
    );
  });
});

describe('sums of portions', () => {
  const part = (words: string, sodium: number | null, grams = 100) => ({
    words,
    worked: nutrientIn(food({ name: words, per100g: { sodium } }), 'sodium', portion(grams)),
  });

  it('has a formula over what is known', () => {
    const total = sumWorked('mg', [part('rice', 10), part('beans', null), part('beans, dry', 5, 200)]);
    expect(total.quantity).toEqual({ value: 20, unit: 'mg', atLeast: true });
    expect(evaluate(total.working)).toBe(20);
    expect(total.working.inputs).toHaveLength(4);
  });

  it('is not known when nothing is, and zero when there is nothing', () => {
    const none = sumWorked('mg', [part('rice', null), part('beans', null)]);
    expect(none.quantity).toEqual(notKnown('mg'));
    expect(evaluate(none.working)).toBeNaN();
    const empty = sumWorked('mg', []);
    expect(empty).toEqual({
      quantity: known(0, 'mg'),
      working: { formula: '0', inputs: [] },
      estimated: false,
    });
  });

  it('is the same in any order, and its formula agrees', () => {
    const parts = fc.array(
      fc.record({ words: fc.string(), sodium: fc.option(fc.double({ min: 0, max: 3000, noNaN: true })) }),
      { minLength: 1, maxLength: 6 },
    );
    fc.assert(
      fc.property(parts, (all) => {
        const forth = sumWorked(
          'mg',
          all.map((one) => part(one.words, one.sodium)),
        );
        const back = sumWorked('mg', all.map((one) => part(one.words, one.sodium)).reverse());
        expect(back.quantity).toEqual(forth.quantity);
        if (forth.quantity.value === null) expect(evaluate(forth.working)).toBeNaN();
        else expect(evaluate(forth.working)).toBeCloseTo(forth.quantity.value, 6);
      }),
    );
  });

  it('is estimated when a part that counts is', () => {
    const guessed = { words: 'leek', worked: { ...part('leek', 20).worked, estimated: true } };
    expect(sumWorked('mg', [part('rice', 1), guessed]).estimated).toBe(true);
  });
});

describe('several servings', () => {
  it('multiplies and says by what', () => {
    const one = nutrientIn(PINTO.boiled, 'sodium', portion(171));
    const four = scaleWorked(one, 4, 'servings', 'lesson');
    expect(four.quantity.value).toBeCloseTo(6.84, 9);
    expect(evaluate(four.working)).toBeCloseTo(6.84, 9);
    expect(
      scaleWorked(nutrientIn(PINTO.rinsed, 'fiber', portion(1)), 4, 'servings', 'lesson').quantity.value,
    ).toBeNull();
  });
});

// Source: USDA Table of Nutrient Retention Factors, Release 6 (2007): its rows and its note on method.
describe('cooked from raw', () => {
  const source = 'usda-retention-6';
  const cooked = (raw: number | null, percent: number, factor: number) =>
    cookedPer100g(
      raw === null ? notKnown('mg') : known(raw, 'mg'),
      'usda-sr28 1',
      { percent, source, method: 'boiled' },
      { factor, source: 'test' },
    );

  it.each([
    // Vitamin C of greens, 100 mg raw: code 3004 little water 60%, 3005 much water 55%, 3006 water used 70%.
    [100, 60, 1, 60],
    [100, 55, 1, 55],
    [100, 70, 1, 70],
    // Retention and yield together: 30 × 0.55 ÷ 0.9.
    [30, 55, 0.9, 18.333],
    // Code 3775, other vegetables, boiled in much water, drained: folate 65%, vitamin C 75%, potassium 90%.
    [100, 65, 1, 65],
    [40, 75, 1, 30],
    [300, 90, 1, 270],
  ])('%d raw, %d percent kept, yield %d', (raw, percent, factor, value) => {
    const result = valueIn(cooked(raw, percent, factor));
    expect(result.quantity.value).toBeCloseTo(value, 2);
    expect(evaluate(result.working)).toBeCloseTo(value, 2);
    expect(result.estimated).toBe(true);
  });

  it('leaves what is not known not known', () => {
    expect(valueIn(cooked(null, 60, 1)).quantity).toEqual(notKnown('mg'));
    const some = { value: 10, unit: 'mg', atLeast: true } as const;
    const result = cookedPer100g(some, '', { percent: 50, source, method: '' }, { factor: 2, source: '' });
    expect(valueIn(result).quantity).toEqual({ value: 2.5, unit: 'mg', atLeast: true });
  });

  it('refuses factors that cannot be', () => {
    for (const percent of [-1, 101, Number.NaN])
      expect(refusalOf(cooked(1, percent, 1)).reason).toContain('between 0 and 100');
    for (const factor of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(refusalOf(cooked(1, 50, factor)).reason).toContain('not above zero');
    }
  });
});
