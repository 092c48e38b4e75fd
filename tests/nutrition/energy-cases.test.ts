import { describe, expect } from 'vitest';
import {
  type ActivityLevel,
  activityLevelOf,
  bmiClass,
  bodyMassIndex,
  energyNeed,
  energyNeed2005,
  type MifflinForm,
  oxfordEnergy,
  restingEnergy,
  type Sex,
} from '../../src/nutrition/index.js';
import { adult } from './adults.js';
import { evaluate } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';
import { type PublishedCase, runCases, within } from './published-case.js';

const MIFFLIN = 'Mifflin MD et al. Am J Clin Nutr 1990;51:241-7';
const NEED_2023 =
  'National Academies 2023, DRI for Energy, doi 10.17226/26818, Table S-2, as more than eight public transcriptions agree';
const NEED_2005 = 'IOM 2002/2005 DRI Macronutrients, table of needs at age 30';
const HENRY = 'Henry CJK. Public Health Nutr 2005;8:1133-52';
const BY_HAND = 'computed by hand, formula verified';

function mifflin(
  sex: Sex,
  age: number,
  cm: number,
  kg: number,
  form: MifflinForm,
  kcal: number,
  off: number,
) {
  return () => {
    const { quantity, working } = valueIn(restingEnergy(adult(sex, age, cm, kg), form));
    within(quantity.value, kcal, off);
    expect(evaluate(working)).toBeCloseTo(Number(quantity.value), 9);
  };
}

function need(level: ActivityLevel<2023>, sex: Sex, age: number, cm: number, kg: number, kcal: number) {
  return () => {
    const { quantity, working } = valueIn(energyNeed(adult(sex, age, cm, kg), level));
    within(quantity.value, kcal, 1);
    expect(evaluate(working)).toBeCloseTo(Number(quantity.value), 9);
  };
}

function need2005(level: ActivityLevel<2005>, cm: number, kg: number, men: number, women: number) {
  return () => {
    for (const [sex, kcal] of [
      ['male', men],
      ['female', women],
    ] as const) {
      const { quantity, working, checked } = valueIn(energyNeed2005(adult(sex, 30, cm, kg), level));
      within(quantity.value, kcal, 3);
      expect(evaluate(working)).toBeCloseTo(Number(quantity.value), 9);
      expect(checked).toBe('copies');
    }
  };
}

const CASES: readonly PublishedCase[] = [
  {
    id: 'A-MSJ-01',
    title: 'resting energy of a man',
    source: MIFFLIN,
    status: BY_HAND,
    holds: mifflin('male', 45, 178, 90, 'simplified', 1792.5, 0.5),
  },
  {
    id: 'A-MSJ-02',
    title: 'resting energy of a woman',
    source: MIFFLIN,
    status: BY_HAND,
    holds: mifflin('female', 40, 165, 80, 'simplified', 1470.25, 0.5),
  },
  {
    id: 'A-MSJ-04',
    title: 'the regression form',
    source: MIFFLIN,
    status: BY_HAND,
    holds: mifflin('male', 45, 178, 90, 'regression', 1795.2, 0.5),
  },
  {
    id: 'A-MSJ-05',
    title: 'the regression form, printed as 1508 in a worked example',
    source: MIFFLIN,
    status: 'value printed in the source',
    holds: mifflin('female', 25, 178, 68, 'regression', 1507.82, 1),
  },
  {
    id: 'A-EER23-01',
    title: 'an inactive man',
    source: NEED_2023,
    status: 'value printed in the source',
    holds: need('inactive', 'male', 30, 170, 70, 2520.17),
  },
  {
    id: 'A-EER23-03',
    title: 'a very active man, whose constant is below zero',
    source: NEED_2023,
    status: BY_HAND,
    holds: need('very active', 'male', 30, 178, 80, 3464.6),
  },
  {
    id: 'A-EER23-04',
    title: 'a low active woman of 72',
    source: NEED_2023,
    status: BY_HAND,
    holds: need('low active', 'female', 72, 160, 65, 1916.15),
  },
  {
    id: 'A-EER23-06',
    title: 'an active man',
    source: NEED_2023,
    status: BY_HAND,
    holds: need('active', 'male', 22, 183, 77, 3184.79),
  },
  {
    id: 'A-EER23-08',
    title: 'an inactive woman',
    source: NEED_2023,
    status: BY_HAND,
    holds: need('inactive', 'female', 40, 165, 80, 2185.1),
  },
  {
    id: 'A-EER23-09',
    title: 'limits of the activity levels',
    source: 'Health Canada, DRI tables: 1.00-<1.53, 1.53-<1.68, 1.68-<1.85, 1.85-<2.50',
    status: 'value printed in the source',
    holds: () => {
      const words = [1.52, 1.53, 1.67, 1.68, 1.84, 1.85].map((level) =>
        valueIn(activityLevelOf(level, 2023)),
      );
      expect(words).toEqual(['inactive', 'low active', 'low active', 'active', 'active', 'very active']);
    },
  },
  {
    id: 'A-EER23-10',
    title: 'no plain adult number under 19, in pregnancy or when breastfeeding',
    source: NEED_2023,
    status: BY_HAND,
    holds: () => {
      const plain = adult('female', 30, 165, 65);
      expect(refusalOf(energyNeed({ ...plain, age: 17 }, 'active')).reason).toBe(
        'This equation is for ages 19 and over; this example is 17.',
      );
      for (const circumstance of ['pregnant', 'breastfeeding'] as const) {
        const refused = refusalOf(energyNeed({ ...plain, circumstances: [circumstance] }, 'active'));
        expect(refused.reason).toBe(
          `The plain adult equation does not hold for somebody who is ${circumstance}.`,
        );
      }
    },
  },
  ...(
    [
      ['A-EER05-01', 'sedentary', 150, 41.625, 1848, 1625],
      ['A-EER05-02', 'low active', 165, 50.366, 2254, 2016],
      ['A-EER05-03', 'active', 180, 80.968, 3200, 2769],
      ['A-EER05-04', 'very active', 165, 68.035, 3296, 2807],
      ['A-EER05-05', 'sedentary', 165, 50.366, 2068, 1816],
      ['A-EER05-06', 'very active', 180, 80.968, 3720, 3141],
      // The other values of the same printed table; weight is the index × height².
      ['A-EER05 table', 'sedentary', 150, 24.99 * 1.5 ** 2, 2080, 1762],
      ['A-EER05 table', 'low active', 150, 18.5 * 1.5 ** 2, 2009, 1803],
      ['A-EER05 table', 'active', 150, 18.5 * 1.5 ** 2, 2215, 2025],
      ['A-EER05 table', 'very active', 150, 18.5 * 1.5 ** 2, 2554, 2291],
      ['A-EER05 table', 'low active', 150, 24.99 * 1.5 ** 2, 2267, 1956],
      ['A-EER05 table', 'active', 150, 24.99 * 1.5 ** 2, 2506, 2198],
      ['A-EER05 table', 'very active', 150, 24.99 * 1.5 ** 2, 2898, 2489],
      ['A-EER05 table', 'sedentary', 165, 24.99 * 1.65 ** 2, 2349, 1982],
      ['A-EER05 table', 'active', 165, 18.5 * 1.65 ** 2, 2490, 2267],
      ['A-EER05 table', 'very active', 165, 18.5 * 1.65 ** 2, 2880, 2567],
      ['A-EER05 table', 'low active', 165, 24.99 * 1.65 ** 2, 2566, 2202],
      ['A-EER05 table', 'active', 165, 24.99 * 1.65 ** 2, 2842, 2477],
      ['A-EER05 table', 'sedentary', 180, 18.5 * 1.8 ** 2, 2301, 2015],
      ['A-EER05 table', 'low active', 180, 18.5 * 1.8 ** 2, 2513, 2239],
      ['A-EER05 table', 'active', 180, 18.5 * 1.8 ** 2, 2782, 2519],
      ['A-EER05 table', 'very active', 180, 18.5 * 1.8 ** 2, 3225, 2855],
      ['A-EER05 table', 'sedentary', 180, 24.99 * 1.8 ** 2, 2635, 2211],
      ['A-EER05 table', 'low active', 180, 24.99 * 1.8 ** 2, 2884, 2459],
    ] as const
  ).map(
    ([id, level, cm, kg, men, women]): PublishedCase => ({
      id,
      title: `${level}, ${cm} cm, ${kg} kg`,
      source: NEED_2005,
      status: 'value printed in the source',
      holds: need2005(level, cm, kg, men, women),
    }),
  ),
  {
    id: 'A-HEN-01',
    title: 'basal energy of a man of 45 by weight',
    source: HENRY,
    status: BY_HAND,
    holds: () => {
      const { quantity, working, checked } = valueIn(oxfordEnergy(adult('male', 45, null, 90), 'weight'));
      within(quantity.value, 1871, 1);
      expect(evaluate(working)).toBeCloseTo(1871, 9);
      expect(checked).toBe('copies');
    },
  },
  {
    id: 'A-HEN-03',
    title: 'basal energy of a man of 25 by weight and height',
    source: `${HENRY}; the constant from memory`,
    status: 'computed by hand, formula from memory',
    holds: () => {
      const result = valueIn(oxfordEnergy(adult('male', 25, 180, 80), 'weight and height'));
      within(result.quantity.value, 1828.4, 1);
      expect(evaluate(result.working)).toBeCloseTo(1828.4, 9);
      expect(result.checked).toBe('memory');
    },
  },
  {
    id: 'A-BMI-01',
    title: 'an index that prints as 30.0 is classed before rounding',
    source: 'CDC/NHLBI cut points',
    status: BY_HAND,
    holds: () => {
      const { value, working } = valueIn(
        bodyMassIndex({ value: 65, unit: 'in' }, { value: 180, unit: 'lb' }),
      );
      within(value, 29.953, 0.01);
      expect(evaluate(working)).toBeCloseTo(Number(value), 9);
      expect(valueIn(bmiClass(Number(value), 40))).toBe('overweight');
    },
  },
];

describe('published values of resting energy, energy need and body mass index', () => {
  runCases(CASES);
});
