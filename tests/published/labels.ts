import {
  DAILY_VALUES,
  type DailyValueName,
  declaredCholesterol,
  declaredFat,
  declaredPercent,
  foodEnergy,
  glutenFree,
  HEALTHY_DATES,
  known,
  type LabeledFood,
  type LabelNutrient,
  lessClaim,
  lowOrHigh,
  organicWords,
  percentOfDailyValue,
  permittedCalories,
  saltFromSodium,
  sodiumFromSalt,
  sourceWord,
  strongestThresholdClaim,
  strongestUsClaim,
  usClaim,
} from '../../src/nutrition/index.js';
import { valueIn } from '../nutrition/expect-result.js';
import {
  BY_HAND,
  BY_HAND_RECALLED,
  PRINTED,
  type PublishedCase,
  RECALLED,
  row,
  worked,
} from './published-case.js';

const SAMPLE = 'FDA sample label of 2016';

/** A food whose reference amount and serving are the 85 g that its amounts belong to. */
const perReference = (amounts: LabeledFood['amounts']): LabeledFood => ({
  grams: 85,
  amounts,
  reference: { grams: 85, small: false },
  servingGrams: 85,
});
const strongest = (about: LabelNutrient, amounts: LabeledFood['amounts']) =>
  valueIn(strongestUsClaim(about, perReference(amounts))).verdict?.claim ?? 'none';
const percent = (name: DailyValueName, value: number) =>
  declaredPercent(
    name,
    valueIn(percentOfDailyValue(name, known(value, DAILY_VALUES[name].unit))).percent ?? Number.NaN,
  );

export const LABELS: readonly PublishedCase[] = [
  row({
    id: 'C-DV-01',
    what: 'Daily Values, adults and children 4 and over',
    given: 'grams, milligrams and micrograms as the label has them',
    expected: {
      fat: 78,
      'saturated fat': 20,
      cholesterol: 300,
      sodium: 2300,
      carbohydrate: 275,
      fiber: 28,
      'added sugars': 50,
      protein: 50,
      'vitamin D': 20,
      calcium: 1300,
      iron: 18,
      potassium: 4700,
      'vitamin A': 900,
      'vitamin C': 90,
      'vitamin E': 15,
      'vitamin K': 120,
      thiamin: 1.2,
      riboflavin: 1.3,
      niacin: 16,
      'vitamin B6': 1.7,
      folate: 400,
      'vitamin B12': 2.4,
      biotin: 30,
      'pantothenic acid': 5,
      phosphorus: 1250,
      iodine: 150,
      magnesium: 420,
      zinc: 11,
      selenium: 55,
      copper: 0.9,
      manganese: 2.3,
      chromium: 35,
      molybdenum: 45,
      chloride: 2300,
      choline: 550,
    },
    source: '21 CFR 101.9(c)(8)(iv) and (c)(9), 2016 rule',
    status: PRINTED,
    find: () => Object.fromEntries(Object.entries(DAILY_VALUES).map(([name, { value }]) => [name, value])),
  }),
  row({
    id: 'C-DV-02',
    what: 'percents of the sample label',
    given: {
      fat: 8,
      'saturated fat': 1,
      sodium: 160,
      carbohydrate: 37,
      fiber: 4,
      'added sugars': 10,
      'vitamin D': 2,
      calcium: 260,
      iron: 8,
      potassium: 240,
    },
    expected: {
      fat: 10,
      'saturated fat': 5,
      sodium: 7,
      carbohydrate: 13,
      fiber: 14,
      'added sugars': 20,
      'vitamin D': 10,
      calcium: 20,
      iron: 45,
      potassium: 6,
    },
    source: SAMPLE,
    status: RECALLED,
    find: (given) =>
      Object.fromEntries(
        Object.entries(given).map(([name, value]) => [name, percent(name as DailyValueName, value)]),
      ),
  }),
  row({
    id: 'C-DV-04',
    what: '5 percent is low and 20 is high',
    given: [5, 6, 19, 20],
    expected: ['low', 'between', 'between', 'high'],
    source: 'FDA consumer pages',
    status: PRINTED,
    find: (given) => given.map(lowOrHigh),
  }),
  row({
    id: 'C-RND-01',
    what: 'rounding of calories; under 5 may be zero',
    given: [2, 3, 4.9, 47, 50, 52, 236],
    expected: [[0], [0, 5], [0, 5], [45], [50], [50], [240]],
    source: '21 CFR 101.9(c)(1)',
    status: PRINTED,
    find: (given) => given.map(permittedCalories),
  }),
  row({
    id: 'C-RND-02',
    what: 'rounding of fat',
    given: [0.49, 0.5, 4.7, 4.9, 5.4, 5.6],
    expected: [0, 0.5, 4.5, 5, 5, 6],
    source: '21 CFR 101.9(c)(2)',
    status: PRINTED,
    find: (given) => given.map(declaredFat),
  }),
  row({
    id: 'C-RND-04',
    what: 'rounding of cholesterol',
    given: [1.9, 3, 6, 8],
    expected: [0, 'less than 5 mg', 5, 10],
    source: '21 CFR 101.9(c)(3)',
    status: PRINTED,
    find: (given) =>
      given.map(declaredCholesterol).map((one) => (one.lessThan ? `less than ${one.value} mg` : one.value)),
  }),
  row({
    id: 'C-RND-06',
    what: 'calories of the sample label',
    given: { fat: 8, carbohydrate: 37, protein: 3 },
    expected: { exact: 232, declared: [230] },
    source: SAMPLE,
    status: RECALLED,
    find: (grams) => {
      const exact = worked(valueIn(foodEnergy('4-4-9-7', 'kcal', grams)));
      return { exact, declared: permittedCalories(exact) };
    },
  }),
  row({
    id: 'C-CLM-01',
    what: 'sodium claims on unrounded amounts: 140.4 mg prints as 140 and does not qualify',
    given: [4.9, 5, 35, 36, 140, 140.4],
    expected: ['sodium free', 'very low sodium', 'very low sodium', 'low sodium', 'low sodium', 'none'],
    source: '21 CFR 101.61; FDA Food Labeling Guide, appendix A; NAP 13221',
    status: BY_HAND,
    find: (given) => given.map((sodium) => strongest('sodium', { sodium })),
  }),
  row({
    id: 'C-CLM-03',
    what: 'fat claims',
    given: [0.4, 3, 3.1],
    expected: ['fat free', 'low fat', 'none'],
    source: '21 CFR 101.62(b)',
    status: PRINTED,
    find: (given) => given.map((fat) => strongest('fat', { fat })),
  }),
  row({
    id: 'C-CLM-04',
    what: 'low saturated fat needs 1 g and 15 percent of calories',
    given: { 'saturated fat': 1, energy: 50 },
    expected: { percent: 18, allowed: 'no' },
    tolerance: 0.1,
    source: '21 CFR 101.62(c)(2)',
    status: PRINTED,
    find: (amounts) => {
      const { findings, allowed } = valueIn(usClaim('low saturated fat', perReference(amounts)));
      return { percent: findings[1]?.actual, allowed };
    },
  }),
  row({
    id: 'C-CLM-06',
    what: 'reduced and light in sodium',
    given: { before: 600, after: [451, 450, 300] },
    expected: ['none', 'reduced', 'light in sodium'],
    source: '21 CFR 101.61(b)(6) and 101.56(c)',
    status: BY_HAND,
    find: ({ before, after }) =>
      after.map((sodium) => {
        const claim = valueIn(lessClaim(known(sodium, 'mg'), known(before, 'mg'), 'no'));
        return claim.half === 'yes' ? 'light in sodium' : claim.reduced === 'yes' ? 'reduced' : 'none';
      }),
  }),
  row({
    id: 'C-CLM-08',
    what: 'good source and high',
    given: [9.9, 10, 19.9, 20],
    expected: ['none', 'good source', 'good source', 'high'],
    source: '21 CFR 101.54(b) and (c)',
    status: PRINTED,
    find: (given) => given.map((share) => sourceWord(share)),
  }),
  row({
    id: 'C-CLM-09',
    what: 'low sodium of a meal is per 100 g',
    given: { grams: 300, amounts: { sodium: 400 } },
    expected: { per100g: 133.3, allowed: 'yes' },
    tolerance: 0.1,
    source: '21 CFR 101.61(b)(5)',
    status: PRINTED,
    find: (meal) => {
      const { findings, allowed } = valueIn(usClaim('low sodium', meal, 'meal'));
      return { per100g: findings[0]?.actual, allowed };
    },
  }),
  row({
    id: 'C-CLM-11',
    what: 'gluten-free under 20 parts per million',
    given: [19.9, 20],
    expected: ['yes', 'no'],
    source: '21 CFR 101.91',
    status: RECALLED,
    find: (given) =>
      given.map(
        (ppm) => glutenFree({ ppm, glutenGrain: 'no', untreatedDerivative: 'no', fermented: 'no' }).allowed,
      ),
  }),
  row({
    id: 'C-CLM-12',
    what: 'organic wording by share, water and salt left out',
    given: [100, 95, 94.9, 70, 69.9],
    expected: [
      '100 percent organic',
      'organic',
      'made with organic (specified ingredients)',
      'made with organic (specified ingredients)',
      'ingredient list only',
    ],
    source: '7 CFR 205.301',
    status: RECALLED,
    find: (given) => given.map((share) => valueIn(organicWords(share)).words),
  }),
  row({
    id: 'C-HEAL-01',
    what: 'days of the rule on "healthy"',
    given: 'the rule of 2024 and its delay',
    expected: {
      published: '2024-12-27',
      firstEffective: '2025-02-25',
      effective: '2025-04-28',
      compliance: '2028-02-25',
    },
    source: '89 FR 106064; 90 FR 10592',
    status: PRINTED,
    find: () => HEALTHY_DATES,
  }),
  row({
    id: 'C-EU-01',
    what: 'low salt in the EU is 0.12 g of sodium, 0.3 g of salt',
    given: [0.3, 0.31, 0.1, 0.0125],
    expected: ['low salt', 'none', 'very low salt', 'salt free'],
    source: 'Regulation (EC) 1924/2006, Annex',
    status: BY_HAND,
    find: (given) =>
      given.map((salt) => {
        const sodium = sodiumFromSalt(known(salt, 'g')).quantity.value;
        const food = { grams: 100, amounts: { sodium } };
        return valueIn(strongestThresholdClaim('eu', 'sodium', food, 'solid'))?.claim ?? 'none';
      }),
  }),
  row({
    id: 'C-EU-02',
    what: 'sodium as salt',
    given: [400, 120, 1000],
    expected: [1, 0.3, 2.5],
    tolerance: 0.001,
    source: 'Regulation (EU) 1169/2011, Annex I',
    status: PRINTED,
    find: (given) => given.map((mg) => worked(saltFromSodium(known(mg, 'mg')))),
  }),
  row({
    id: 'C-EU-04',
    what: 'kJ are summed with their own factors; 336 × 4.184 would be 1406',
    given: { fat: 30, carbohydrate: 10, protein: 5, fiber: 3 },
    expected: { kcal: 336, kJ: 1389 },
    tolerance: 1,
    source: 'Regulation (EU) 1169/2011, Annex XIV',
    status: BY_HAND_RECALLED,
    find: (grams) => ({
      kcal: worked(valueIn(foodEnergy('eu', 'kcal', grams))),
      kJ: worked(valueIn(foodEnergy('eu', 'kJ', grams))),
    }),
  }),
];
