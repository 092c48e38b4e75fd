import { describe, expect, it } from 'vitest';
import {
  acceptableGrams,
  alcoholIn,
  DAILY_VALUES,
  type DailyValueName,
  declaredCholesterol,
  declaredFat,
  declaredPercent,
  energyFromFat,
  foodEnergy,
  glutenFree,
  HEALTHY_DATES,
  type IntakeName,
  ketogenicRatio,
  known,
  type LabeledFood,
  type LabelNutrient,
  lessClaim,
  lifeStageOf,
  lowOrHigh,
  meatlessIntake,
  organicWords,
  percentOfDailyValue,
  permittedCalories,
  referenceIntake,
  saltFromSodium,
  sodiumFromSalt,
  sourceWord,
  strongestThresholdClaim,
  strongestUsClaim,
  upperLimit,
  usClaim,
} from '../../src/nutrition/index.js';
import { valueIn } from './expect-result.js';
import type { CaseStatus } from './published-case.js';

/** Published values for labels, food energy and reference intakes, one row a value or a set. */
interface Check {
  readonly id: string;
  readonly title: string;
  readonly source: string;
  readonly status: CaseStatus;
  readonly got: () => unknown;
  readonly expected: unknown;
  /** Absolute; none is exact. */
  readonly tolerance?: number;
}

const SEEN: CaseStatus = 'value printed in the source';
const MEMORY: CaseStatus = 'value of the source, from memory';
const BY_HAND: CaseStatus = 'computed by hand, formula verified';
const BY_HAND_MEMORY: CaseStatus = 'computed by hand, formula from memory';
const RULE = '21 CFR 101.9(c)(8)(iv) and (c)(9), 2016 rule';
const SAMPLE = 'FDA sample label of 2016';
const DRI =
  'NASEM DRI summary tables: NCBI NBK545442 appendix J table 3, and a copy of the NAP vitamin table';

/** A food whose reference amount and serving are the 85 g that its amounts belong to. */
const perReference = (amounts: LabeledFood['amounts']): LabeledFood => ({
  grams: 85,
  amounts,
  reference: { grams: 85, small: false },
  servingGrams: 85,
});
const strongest = (about: LabelNutrient, amounts: LabeledFood['amounts']) =>
  valueIn(strongestUsClaim(about, perReference(amounts))).verdict?.claim ?? 'none';
const intake = (sex: 'female' | 'male', years: number) => (name: IntakeName) =>
  valueIn(referenceIntake(name, valueIn(lifeStageOf({ sex, years })))).value;
const exactPercent = (name: DailyValueName, value: number, unit: 'g' | 'mg' | 'µg') =>
  declaredPercent(name, valueIn(percentOfDailyValue(name, known(value, unit))).percent ?? Number.NaN);
const kcal = (grams: Parameters<typeof foodEnergy>[2]) =>
  valueIn(foodEnergy('4-4-9-7', 'kcal', grams)).quantity.value;

const CHECKS: readonly Check[] = [
  {
    id: 'C-DV-01',
    title: 'Daily Values, adults and children 4 and over',
    source: RULE,
    status: SEEN,
    got: () => Object.fromEntries(Object.entries(DAILY_VALUES).map(([name, { value }]) => [name, value])),
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
  },
  {
    id: 'C-DV-02',
    title: 'percents of the sample label',
    source: SAMPLE,
    status: MEMORY,
    got: () => [
      exactPercent('fat', 8, 'g'),
      exactPercent('saturated fat', 1, 'g'),
      exactPercent('sodium', 160, 'mg'),
      exactPercent('carbohydrate', 37, 'g'),
      exactPercent('fiber', 4, 'g'),
      exactPercent('added sugars', 10, 'g'),
      exactPercent('vitamin D', 2, 'µg'),
      exactPercent('calcium', 260, 'mg'),
      exactPercent('iron', 8, 'mg'),
      exactPercent('potassium', 240, 'mg'),
    ],
    expected: [10, 5, 7, 13, 14, 20, 10, 20, 45, 6],
  },
  {
    id: 'C-DV-04',
    title: '5 percent is low and 20 is high',
    source: 'FDA consumer pages',
    status: SEEN,
    got: () => [5, 6, 19, 20].map(lowOrHigh),
    expected: ['low', 'between', 'between', 'high'],
  },
  {
    id: 'C-RND-01',
    title: 'rounding of calories',
    source: '21 CFR 101.9(c)(1)',
    status: SEEN,
    got: () => [2, 3, 4.9, 47, 50, 52, 236].map(permittedCalories),
    expected: [[0], [0, 5], [0, 5], [45], [50], [50], [240]],
  },
  {
    id: 'C-RND-02',
    title: 'rounding of fat',
    source: '21 CFR 101.9(c)(2)',
    status: SEEN,
    got: () => [0.49, 0.5, 4.7, 4.9, 5.4, 5.6].map(declaredFat),
    expected: [0, 0.5, 4.5, 5, 5, 6],
  },
  {
    id: 'C-RND-04',
    title: 'rounding of cholesterol',
    source: '21 CFR 101.9(c)(3)',
    status: SEEN,
    got: () =>
      [1.9, 3, 6, 8]
        .map(declaredCholesterol)
        .map((one) => (one.lessThan ? `less than ${one.value} mg` : one.value)),
    expected: [0, 'less than 5 mg', 5, 10],
  },
  {
    id: 'C-RND-06',
    title: 'calories of the sample label',
    source: SAMPLE,
    status: MEMORY,
    got: () => {
      const exact = kcal({ fat: 8, carbohydrate: 37, protein: 3 }) ?? Number.NaN;
      return [exact, ...permittedCalories(exact)];
    },
    expected: [232, 230],
  },
  {
    id: 'C-CLM-01',
    title: 'sodium claims on unrounded amounts',
    source: '21 CFR 101.61; FDA Food Labeling Guide, appendix A; NAP 13221',
    status: BY_HAND,
    got: () => [4.9, 5, 35, 36, 140, 140.4].map((sodium) => strongest('sodium', { sodium })),
    expected: ['sodium free', 'very low sodium', 'very low sodium', 'low sodium', 'low sodium', 'none'],
  },
  {
    id: 'C-CLM-03',
    title: 'fat claims',
    source: '21 CFR 101.62(b)',
    status: SEEN,
    got: () => [0.4, 3, 3.1].map((fat) => strongest('fat', { fat })),
    expected: ['fat free', 'low fat', 'none'],
  },
  {
    id: 'C-CLM-04',
    title: 'low saturated fat needs 1 g and 15 percent of calories',
    source: '21 CFR 101.62(c)(2)',
    status: SEEN,
    got: () => {
      const verdict = valueIn(usClaim('low saturated fat', perReference({ 'saturated fat': 1, energy: 50 })));
      return [verdict.findings[1]?.actual, verdict.allowed];
    },
    expected: [18, 'no'],
    tolerance: 0.1,
  },
  {
    id: 'C-CLM-06',
    title: 'reduced and light in sodium',
    source: '21 CFR 101.61(b)(6) and 101.56(c)',
    status: BY_HAND,
    got: () =>
      [451, 450, 300].map((sodium) => {
        const claim = valueIn(lessClaim(known(sodium, 'mg'), known(600, 'mg'), 'no'));
        return claim.half === 'yes' ? 'light in sodium' : claim.reduced === 'yes' ? 'reduced' : 'none';
      }),
    expected: ['none', 'reduced', 'light in sodium'],
  },
  {
    id: 'C-CLM-08',
    title: 'good source and high',
    source: '21 CFR 101.54(b) and (c)',
    status: SEEN,
    got: () => [9.9, 10, 19.9, 20].map((percent) => sourceWord(percent)),
    expected: ['none', 'good source', 'good source', 'high'],
  },
  {
    id: 'C-CLM-09',
    title: 'low sodium of a meal is per 100 g',
    source: '21 CFR 101.61(b)(5)',
    status: SEEN,
    got: () => {
      const verdict = valueIn(usClaim('low sodium', { grams: 300, amounts: { sodium: 400 } }, 'meal'));
      return [verdict.findings[0]?.actual, verdict.allowed];
    },
    expected: [133.3, 'yes'],
    tolerance: 0.1,
  },
  {
    id: 'C-CLM-11',
    title: 'gluten-free under 20 parts per million',
    source: '21 CFR 101.91',
    status: MEMORY,
    got: () =>
      [19.9, 20].map(
        (ppm) => glutenFree({ ppm, glutenGrain: 'no', untreatedDerivative: 'no', fermented: 'no' }).allowed,
      ),
    expected: ['yes', 'no'],
  },
  {
    id: 'C-CLM-12',
    title: 'organic wording by share',
    source: '7 CFR 205.301',
    status: MEMORY,
    got: () => [100, 95, 94.9, 70, 69.9].map((percent) => valueIn(organicWords(percent)).words),
    expected: [
      '100 percent organic',
      'organic',
      'made with organic (specified ingredients)',
      'made with organic (specified ingredients)',
      'ingredient list only',
    ],
  },
  {
    id: 'C-HEAL-01',
    title: 'days of the rule on "healthy"',
    source: '89 FR 106064; 90 FR 10592',
    status: SEEN,
    got: () => HEALTHY_DATES,
    expected: {
      published: '2024-12-27',
      firstEffective: '2025-02-25',
      effective: '2025-04-28',
      compliance: '2028-02-25',
    },
  },
  {
    id: 'C-EU-01',
    title: 'low salt in the EU is 0.12 g of sodium, 0.3 g of salt',
    source: 'Regulation (EC) 1924/2006, Annex',
    status: BY_HAND,
    got: () =>
      [0.3, 0.31, 0.1, 0.0125].map((salt) => {
        const sodium = sodiumFromSalt(known(salt, 'g')).quantity.value;
        const food = { grams: 100, amounts: { sodium } };
        return valueIn(strongestThresholdClaim('eu', 'sodium', food, 'solid'))?.claim ?? 'none';
      }),
    expected: ['low salt', 'none', 'very low salt', 'salt free'],
  },
  {
    id: 'C-EU-02',
    title: 'sodium as salt',
    source: 'Regulation (EU) 1169/2011, Annex I',
    status: SEEN,
    got: () => [400, 120, 1000].map((mg) => saltFromSodium(known(mg, 'mg')).quantity.value),
    expected: [1, 0.3, 2.5],
    tolerance: 0.001,
  },
  {
    id: 'C-EU-04',
    title: 'kJ are summed with their own factors',
    source: 'Regulation (EU) 1169/2011, Annex XIV',
    status: BY_HAND_MEMORY,
    got: () => {
      const grams = { fat: 30, carbohydrate: 10, protein: 5, fiber: 3 };
      return [
        valueIn(foodEnergy('eu', 'kcal', grams)).quantity.value,
        valueIn(foodEnergy('eu', 'kJ', grams)).quantity.value,
      ];
    },
    // 336 × 4.184 would be 1406 kJ.
    expected: [336, 1389],
    tolerance: 1,
  },
  {
    id: 'D-01',
    title: 'general factors',
    source: 'USDA AH-74; 21 CFR 101.9(c)(1)(i)(B)',
    status: BY_HAND,
    got: () => kcal({ fat: 10, carbohydrate: 30, protein: 8, alcohol: 0 }),
    expected: 242,
    tolerance: 0.01,
  },
  {
    id: 'D-02',
    title: 'with alcohol',
    source: 'general factor of 7 kcal a gram',
    status: BY_HAND,
    got: () => kcal({ fat: 0, carbohydrate: 4, protein: 0, alcohol: 14 }),
    expected: 114,
    tolerance: 0.01,
  },
  {
    id: 'D-04',
    title: 'acceptable shares in grams at 2000 kcal',
    source: 'DRI for macronutrients 2002/2005: 45 to 65, 10 to 35, 20 to 35 percent',
    status: BY_HAND,
    got: () =>
      (['carbohydrate', 'protein', 'fat'] as const).flatMap((of) => {
        const { low, high } = valueIn(acceptableGrams(of, 2000));
        return [low, high];
      }),
    expected: [225, 325, 50, 175, 44.4, 77.8],
    tolerance: 0.1,
  },
  {
    id: 'D-06',
    title: 'ketogenic ratio and share of energy',
    source: 'ratio of fat to protein and carbohydrate',
    status: BY_HAND,
    got: () =>
      [valueIn(ketogenicRatio(120, 25, 15)), valueIn(ketogenicRatio(100, 20, 5))].flatMap((one) => [
        one.ratio,
        one.percentFromFat,
      ]),
    expected: [3, 87.1, 4, 90],
    tolerance: 0.05,
  },
  {
    id: 'D-07',
    title: 'energy from fat at four ratios',
    source: 'arithmetic with 9 and 4',
    status: BY_HAND,
    got: () => [4, 3, 2, 1].map(energyFromFat),
    expected: [90, 87.1, 81.8, 69.2],
    tolerance: 0.05,
  },
  {
    id: 'D-08, grams',
    title: 'alcohol of standard drinks',
    source: 'NIAAA standard drink of 14 g; ethanol 0.789 g a mL',
    status: BY_HAND_MEMORY,
    got: () =>
      [valueIn(alcoholIn(355, 5)), valueIn(alcoholIn(148, 12)), valueIn(alcoholIn(44, 40))].map(
        (one) => one.grams,
      ),
    expected: [14, 14, 13.9],
    tolerance: 0.1,
  },
  {
    id: 'D-08, energy',
    title: 'energy of the alcohol of standard drinks',
    source: 'NIAAA standard drink of 14 g; ethanol 0.789 g a mL',
    status: BY_HAND_MEMORY,
    got: () =>
      [valueIn(alcoholIn(355, 5)), valueIn(alcoholIn(148, 12)), valueIn(alcoholIn(44, 40))].map(
        (one) => one.kcal,
      ),
    expected: [98, 98, 97],
    tolerance: 1,
  },
  {
    id: 'F-DRI-01',
    title: 'men of 25',
    source: DRI,
    status: SEEN,
    got: () =>
      (
        [
          'calcium',
          'iron',
          'magnesium',
          'zinc',
          'potassium',
          'sodium',
          'vitamin C',
          'vitamin D',
          'vitamin B12',
          'folate',
          'choline',
          'vitamin K',
        ] as const
      ).map(intake('male', 25)),
    expected: [1000, 8, 400, 11, 3400, 1500, 90, 15, 2.4, 400, 550, 120],
  },
  {
    id: 'F-DRI-03',
    title: 'calcium and iron at 60',
    source: DRI,
    status: SEEN,
    got: () => [intake('female', 60)('calcium'), intake('male', 60)('calcium'), intake('female', 60)('iron')],
    expected: [1200, 1000, 8],
  },
  {
    id: 'F-DRI-04',
    title: 'vitamin B6 at 50 and 51',
    source: DRI,
    status: SEEN,
    got: () =>
      [50, 51].flatMap((years) => [
        intake('male', years)('vitamin B6'),
        intake('female', years)('vitamin B6'),
      ]),
    expected: [1.3, 1.3, 1.7, 1.5],
  },
  {
    id: 'F-DRI-06',
    title: 'potassium of the intake and of the label',
    source: DRI,
    status: SEEN,
    got: () => [intake('female', 30)('potassium'), DAILY_VALUES.potassium.value],
    expected: [2600, 4700],
  },
  {
    id: 'F-UL-01',
    title: 'upper levels that count some sources only',
    source: 'NASEM DRI tables of upper levels, footnotes',
    status: MEMORY,
    got: () =>
      (['magnesium', 'niacin', 'folate', 'vitamin E', 'vitamin A'] as const).map((name) => {
        const { counts, value, unit } = valueIn(upperLimit(name, 'males 19 to 30 years'));
        return `${counts} (${value} ${unit})`;
      }),
    expected: [
      'supplements and medicines only (350 mg)',
      'supplements and fortified food (35 mg)',
      'folic acid from supplements and fortified food (1000 µg)',
      'supplemental alpha-tocopherol (1000 mg)',
      'preformed vitamin A only (3000 µg)',
    ],
  },
  {
    id: 'F-DIET-03',
    title: 'iron without meat',
    source: 'DRI for micronutrients 2001, iron chapter',
    status: MEMORY,
    got: () => [
      intake('female', 30)('iron'),
      valueIn(meatlessIntake('iron', valueIn(lifeStageOf({ sex: 'female', years: 30 })))).value,
    ],
    expected: [18, 32.4],
    tolerance: 0.1,
  },
];

describe('published values of labels, food energy and intakes', () => {
  it.each(
    CHECKS.map((check) => [`${check.id} ${check.title} [${check.status}; ${check.source}]`, check] as const),
  )('%s', (_, { got, expected, tolerance }) => {
    if (tolerance === undefined) return expect(got()).toEqual(expected);
    const [ours, theirs] = [[got()].flat(), [expected].flat()];
    expect(ours).toHaveLength(theirs.length);
    theirs.forEach((value, index) => {
      const mine = ours[index];
      if (typeof value !== 'number') return expect(mine).toBe(value);
      expect(typeof mine).toBe('number');
      expect(Math.abs(Number(mine) - value)).toBeLessThanOrEqual(tolerance + 1e-9);
    });
  });
});
