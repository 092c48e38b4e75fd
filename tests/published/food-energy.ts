import {
  acceptableGrams,
  alcoholIn,
  energyFromFat,
  foodEnergy,
  ketogenicRatio,
} from '../../src/nutrition/index.js';
import { valueIn } from '../nutrition/expect-result.js';
import { BY_HAND, BY_HAND_RECALLED, type PublishedCase, row, worked } from './published-case.js';

const kcal = (grams: Parameters<typeof foodEnergy>[2]) =>
  worked(valueIn(foodEnergy('4-4-9-7', 'kcal', grams)));

export const FOOD_ENERGY: readonly PublishedCase[] = [
  row({
    id: 'D-01',
    what: 'general factors',
    given: { fat: 10, carbohydrate: 30, protein: 8, alcohol: 0 },
    expected: 242,
    tolerance: 0.01,
    source: 'USDA AH-74; 21 CFR 101.9(c)(1)(i)(B)',
    status: BY_HAND,
    find: kcal,
  }),
  row({
    id: 'D-02',
    what: 'with alcohol',
    given: { fat: 0, carbohydrate: 4, protein: 0, alcohol: 14 },
    expected: 114,
    tolerance: 0.01,
    source: 'general factor of 7 kcal a gram',
    status: BY_HAND,
    find: kcal,
  }),
  row({
    id: 'D-04',
    what: 'acceptable shares in grams at 2000 kcal',
    given: 2000,
    expected: { carbohydrate: [225, 325], protein: [50, 175], fat: [44.4, 77.8] },
    tolerance: 0.1,
    source: 'DRI for macronutrients 2002/2005: 45 to 65, 10 to 35, 20 to 35 percent',
    status: BY_HAND,
    find: (energy) =>
      Object.fromEntries(
        (['carbohydrate', 'protein', 'fat'] as const).map((of) => {
          const { low, high } = valueIn(acceptableGrams(of, energy));
          return [of, [low, high]];
        }),
      ),
  }),
  row({
    id: 'D-06',
    what: 'ketogenic ratio and share of energy',
    given: [
      { fat: 120, protein: 25, carbohydrate: 15 },
      { fat: 100, protein: 20, carbohydrate: 5 },
    ],
    expected: [
      { ratio: 3, percent: 87.1 },
      { ratio: 4, percent: 90 },
    ],
    tolerance: 0.05,
    source: 'ratio of fat to protein and carbohydrate',
    status: BY_HAND,
    find: (given) =>
      given.map(({ fat, protein, carbohydrate }) => {
        const { ratio, percentFromFat } = valueIn(ketogenicRatio(fat, protein, carbohydrate));
        return { ratio, percent: percentFromFat };
      }),
  }),
  row({
    id: 'D-07',
    what: 'energy from fat at four ratios',
    given: [4, 3, 2, 1],
    expected: [90, 87.1, 81.8, 69.2],
    tolerance: 0.05,
    source: 'arithmetic with 9 and 4',
    status: BY_HAND,
    find: (given) => given.map(energyFromFat),
  }),
  row({
    id: 'D-08',
    what: 'alcohol of standard drinks, and its energy',
    given: [
      { mL: 355, percent: 5 },
      { mL: 148, percent: 12 },
      { mL: 44, percent: 40 },
    ],
    expected: { grams: [14, 14, 13.9], kcal: [98, 98, 97] },
    tolerance: { grams: 0.1, kcal: 1 },
    source: 'NIAAA standard drink of 14 g; ethanol 0.789 g a mL',
    status: BY_HAND_RECALLED,
    find: (given) => {
      const drinks = given.map(({ mL, percent }) => valueIn(alcoholIn(mL, percent)));
      return { grams: drinks.map(({ grams }) => grams), kcal: drinks.map((one) => one.kcal) };
    },
  }),
];
