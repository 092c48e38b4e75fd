import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  acceptableGrams,
  alcoholIn,
  ENERGY_SHARES,
  energyFromFat,
  foodEnergy,
  ketogenicRatio,
  known,
  notKnown,
  saltFromSodium,
  sodiumFromSalt,
  splitEnergy,
} from '../../src/nutrition/index.js';
import { evaluate, evaluateParts } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';

const grams = fc.double({ min: 0, max: 500, noNaN: true });

describe('energy of a food', () => {
  it('shows how it was got, by each set of factors', () => {
    const parts = {
      fat: 30,
      carbohydrate: 10,
      protein: 5,
      fiber: 3,
      polyols: 2,
      erythritol: 9,
      'organic acids': 1,
    };
    const kJ = valueIn(foodEnergy('eu', 'kJ', parts));
    // Regulation (EU) 1169/2011, Annex XIV, by hand: 1110 + 170 + 85 + 24 + 20 + 0 + 13.
    expect(kJ.quantity).toEqual({ value: 1422, unit: 'kJ', atLeast: false });
    expect(evaluate(kJ.working)).toBeCloseTo(1422, 9);
    expect(kJ.working.inputs.every(({ note, unit }) => unit === 'g' || note === 'from memory')).toBe(true);
    const kcal = valueIn(foodEnergy('4-4-9-7', 'kcal', { fat: 8, carbohydrate: 37, protein: 3 }));
    expect(kcal.working.formula).toBe(
      'fat * fat_factor + carbohydrate * carbohydrate_factor + protein * protein_factor',
    );
  });

  it('is at least the known part, and not known without one', () => {
    const some = valueIn(foodEnergy('4-4-9-7', 'kcal', { fat: 10, carbohydrate: null, protein: 5 }));
    expect(some.quantity).toEqual({ value: 110, unit: 'kcal', atLeast: true });
    expect(evaluate(some.working)).toBe(110);
    const none = valueIn(foodEnergy('4-4-9-7', 'kcal', { fat: null }));
    expect(none.quantity).toEqual(notKnown('kcal'));
    expect(none.working.inputs).toHaveLength(2);
  });

  it('refuses what it cannot count', () => {
    expect(refusalOf(foodEnergy('4-4-9-7', 'kJ', { fat: 1 })).reason).toBe('The factors 4-4-9-7 give no kJ.');
    expect(refusalOf(foodEnergy('4-4-9-7', 'kcal', { fiber: 1 })).reason).toContain('do not count fiber');
    expect(refusalOf(foodEnergy('eu', 'kcal', {})).reason).toContain('nothing');
    for (const fat of [-1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(refusalOf(foodEnergy('eu', 'kcal', { fat })).reason).toContain('of fat is below zero');
  });

  it('grows with every part', () => {
    fc.assert(
      fc.property(grams, grams, grams, (fat, carbohydrate, protein) => {
        const of = (more: number) =>
          valueIn(foodEnergy('eu', 'kJ', { fat: fat + more, carbohydrate, protein })).quantity.value ?? 0;
        expect(of(1) - of(0)).toBeCloseTo(37, 6);
      }),
    );
  });
});

describe('shares of energy', () => {
  it('add up to the whole, and each shows how it was got', () => {
    fc.assert(
      fc.property(grams, grams, grams, grams, (carbohydrate, protein, fat, alcohol) => {
        const split = splitEnergy({ carbohydrate, protein, fat: fat + 0.001, alcohol });
        const { percent, workings } = valueIn(split);
        expect(ENERGY_SHARES.reduce((so, share) => so + percent[share], 0)).toBeCloseTo(100, 6);
        for (const share of ENERGY_SHARES) expect(evaluate(workings[share])).toBeCloseTo(percent[share], 6);
      }),
    );
  });

  it('are refused without energy or with bad grams', () => {
    const none = { carbohydrate: 0, protein: 0, fat: 0, alcohol: 0 };
    expect(refusalOf(splitEnergy(none)).reason).toBe('There is no energy to split.');
    for (const fat of [-1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(refusalOf(splitEnergy({ ...none, fat })).reason).toContain('g of fat');
  });

  it.each([
    // DRI for macronutrients 2002/2005; children from memory. 30 to 40 percent of 1000 kcal is 33.3 to 44.4 g.
    ['fat', 1000, '1 to 3 years', 33.33, 44.44, 'from memory'],
    ['protein', 2000, '4 to 18 years', 50, 150, 'from memory'],
    ['carbohydrate', 2000, 'adults', 225, 325, 'adults'],
  ] as const)('%s at %d kcal, %s: %d to %d g', (of, kcal, ages, low, high, note) => {
    const found = valueIn(acceptableGrams(of, kcal, ages));
    expect([found.low, found.high]).toEqual([expect.closeTo(low, 2), expect.closeTo(high, 2)]);
    expect(evaluateParts(found.working).low).toBeCloseTo(low, 2);
    expect(evaluateParts(found.working).high).toBeCloseTo(high, 2);
    expect(found.working.inputs[1]?.note).toContain(note);
  });

  it('need energy above zero', () => {
    for (const kcal of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(refusalOf(acceptableGrams('fat', kcal)).reason).toContain('is not above zero');
  });

  it('give the ketogenic ratio, which agrees with the split', () => {
    fc.assert(
      fc.property(grams, grams, grams, (fat, protein, carbohydrate) => {
        const rest = protein + 1;
        const found = valueIn(ketogenicRatio(fat, rest, carbohydrate));
        const split = valueIn(splitEnergy({ fat, protein: rest, carbohydrate, alcohol: 0 }));
        expect(found.percentFromFat).toBeCloseTo(split.percent.fat, 6);
        expect(evaluate(found.working)).toBeCloseTo(found.ratio, 9);
      }),
    );
    expect(energyFromFat(0)).toBe(0);
    for (const [fat, protein, carbohydrate] of [
      [-1, 1, 1],
      [1, -1, 2],
      [1, 2, -1],
      [1, 0, 0],
      [Number.POSITIVE_INFINITY, 1, 1],
    ] as const)
      expect(refusalOf(ketogenicRatio(fat, protein, carbohydrate)).reason).toContain('zero or more');
  });
});

describe('alcohol', () => {
  it('counts the standard drink of a country', () => {
    const us = valueIn(alcoholIn(355, 5));
    expect(us.drinks).toBeCloseTo(1, 2);
    expect(evaluate(us.working)).toBeCloseTo(us.grams, 9);
    // A UK unit is 10 mL of ethanol: 568 mL at 4 percent is 2.3 units (common practice, from memory).
    expect(valueIn(alcoholIn(568, 4, 'uk')).drinks).toBeCloseTo(2.24, 2);
  });

  it('refuses what is no drink', () => {
    for (const [milliliters, strength] of [
      [-1, 5],
      [Number.POSITIVE_INFINITY, 5],
      [100, -1],
      [100, 101],
      [100, Number.NaN],
    ] as const)
      expect(refusalOf(alcoholIn(milliliters, strength)).reason).toContain('is no drink');
  });
});

describe('salt and sodium', () => {
  it('go there and back', () => {
    fc.assert(
      fc.property(grams, (mg) => {
        const salt = saltFromSodium(known(mg, 'mg'));
        const back = sodiumFromSalt(salt.quantity);
        expect(back.quantity.unit).toBe('mg');
        expect(back.quantity.value).toBeCloseTo(mg, 9);
        expect(evaluate(salt.working)).toBeCloseTo(salt.quantity.value ?? Number.NaN, 9);
        expect(evaluate(back.working)).toBeCloseTo(mg, 9);
      }),
    );
  });

  it('keep what is not known, at least, and how the amount was got', () => {
    expect(saltFromSodium(notKnown('mg')).quantity).toEqual(notKnown('g'));
    const working = { formula: 'a', inputs: [{ name: 'a', value: 400, unit: 'mg', source: 'lesson' }] };
    const salt = saltFromSodium({ ...known(400, 'mg'), atLeast: true }, working);
    expect(salt.quantity).toEqual({ value: 1, unit: 'g', atLeast: true });
    expect(evaluate(salt.working)).toBeCloseTo(1, 9);
    expect(salt.working.formula).toBe('a * ratio * salt_per_sodium');
  });
});
