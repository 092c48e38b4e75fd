import { describe, expect, it } from 'vitest';
import {
  type Declared,
  declaredCholesterol,
  declaredFat,
  declaredGrams,
  declaredPercent,
  declaredSodium,
  percentOfDailyValue,
  permittedCalories,
} from '../../src/nutrition/index.js';
import { valueIn } from './expect-result.js';

const words = ({ value, lessThan }: Declared) => (lessThan ? `less than ${value}` : String(value));

// Source of the rules: 21 CFR 101.9(c)(1) to (c)(8) and (d)(7)(ii).
describe('rounding of a US label', () => {
  it.each([
    [2, [0]],
    [3, [0, 5]],
    [4.9, [0, 5]],
    [47, [45]],
    [50, [50]],
    [52, [50]],
    [236, [240]],
    // The FDA's sample label of 2016, from memory: fat 8 g, carbohydrate 37 g, protein 3 g, 230 calories.
    [8 * 9 + 37 * 4 + 3 * 4, [230]],
  ])('%d kcal', (kcal, permitted) => {
    expect(permittedCalories(kcal)).toEqual(permitted);
  });

  it.each([
    [0.49, 0],
    [0.5, 0.5],
    [4.7, 4.5],
    [4.9, 5],
    [5.4, 5],
    [5.6, 6],
  ])('%d g of fat', (grams, declared) => {
    expect(declaredFat(grams)).toBe(declared);
  });

  it.each([
    [1.9, '0'],
    [3, 'less than 5'],
    [6, '5'],
    [8, '10'],
  ])('%d mg of cholesterol', (mg, declared) => {
    expect(words(declaredCholesterol(mg))).toBe(declared);
  });

  it.each([
    // Worked from the rule by hand.
    [4.9, 0],
    [5, 5],
    [137, 135],
    [138, 140],
    [140, 140],
    [140.4, 140],
    [144, 140],
    [145, 150],
    [462, 460],
  ])('%d mg of sodium', (mg, declared) => {
    expect(declaredSodium(mg)).toBe(declared);
  });

  it.each([
    // Worked from the rule by hand.
    [0.49, '0'],
    [0.5, 'less than 1'],
    [0.9, 'less than 1'],
    [1, '1'],
    [6.5, '7'],
  ])('%d g of fiber', (grams, declared) => {
    expect(words(declaredGrams(grams))).toBe(declared);
  });

  it.each([
    // The FDA's sample label of 2016, figures from memory.
    ['fat', 8, 'g', 10],
    ['saturated fat', 1, 'g', 5],
    ['sodium', 160, 'mg', 7],
    ['carbohydrate', 37, 'g', 13],
    ['fiber', 4, 'g', 14],
    ['added sugars', 10, 'g', 20],
    ['vitamin D', 2, 'µg', 10],
    ['calcium', 260, 'mg', 20],
    ['iron', 8, 'mg', 45],
    ['potassium', 240, 'mg', 6],
    // Worked from the rule by hand.
    ['calcium', 25, 'mg', 0],
    ['vitamin C', 90, 'mg', 100],
    ['vitamin C', 61, 'mg', 70],
  ] as const)('%s, %d %s', (name, value, unit, percent) => {
    const exact = valueIn(percentOfDailyValue(name, { value, unit, atLeast: false })).percent;
    expect(declaredPercent(name, exact ?? Number.NaN)).toBe(percent);
  });
});
