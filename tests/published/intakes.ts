import {
  DAILY_VALUES,
  type IntakeName,
  lifeStageOf,
  meatlessIntake,
  nutrientsAtRisk,
  referenceIntake,
  type Sex,
  testIngredients,
  unsaidAtRisk,
  upperLimit,
} from '../../src/nutrition/index.js';
import { valueIn } from '../nutrition/expect-result.js';
import { BY_HAND_RECALLED, PRINTED, type PublishedCase, RECALLED, row } from './published-case.js';

const DRI =
  'NASEM DRI summary tables: NCBI NBK545442 appendix J table 3, and a copy of the NAP vitamin table';

const intake = (name: IntakeName, sex: Sex, years: number) =>
  valueIn(referenceIntake(name, valueIn(lifeStageOf({ sex, years })))).value;

export const INTAKES: readonly PublishedCase[] = [
  row({
    id: 'F-DRI-01',
    what: 'men of 25',
    given: { sex: 'male', years: 25 },
    expected: {
      calcium: 1000,
      iron: 8,
      magnesium: 400,
      zinc: 11,
      potassium: 3400,
      sodium: 1500,
      'vitamin C': 90,
      'vitamin D': 15,
      'vitamin B12': 2.4,
      folate: 400,
      choline: 550,
      'vitamin K': 120,
    },
    source: DRI,
    status: PRINTED,
    find: ({ sex, years }) =>
      Object.fromEntries(
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
        ).map((name) => [name, intake(name, sex, years)]),
      ),
  }),
  row({
    id: 'F-DRI-03',
    what: 'calcium of women and men and iron of women at 60',
    given: 60,
    expected: [1200, 1000, 8],
    source: DRI,
    status: PRINTED,
    find: (years) => [
      intake('calcium', 'female', years),
      intake('calcium', 'male', years),
      intake('iron', 'female', years),
    ],
  }),
  row({
    id: 'F-DRI-04',
    what: 'vitamin B6 rises at 51, not at 71',
    given: [50, 51],
    expected: { male: [1.3, 1.7], female: [1.3, 1.5] },
    source: DRI,
    status: PRINTED,
    find: (given) => ({
      male: given.map((years) => intake('vitamin B6', 'male', years)),
      female: given.map((years) => intake('vitamin B6', 'female', years)),
    }),
  }),
  row({
    id: 'F-DRI-06',
    what: 'potassium of the intake of 2019, and of the label, which keeps the 4700 of 2005',
    given: { sex: 'female', years: 30 },
    expected: { intake: 2600, label: 4700 },
    source: DRI,
    status: PRINTED,
    find: ({ sex, years }) => ({
      intake: intake('potassium', sex, years),
      label: DAILY_VALUES.potassium.value,
    }),
  }),
  row({
    id: 'F-UL-01',
    what: 'upper levels that count some sources only',
    given: ['magnesium', 'niacin', 'folate', 'vitamin E', 'vitamin A'],
    expected: [
      'supplements and medicines only (350 mg)',
      'supplements and fortified food (35 mg)',
      'folic acid from supplements and fortified food (1000 µg)',
      'supplemental alpha-tocopherol (1000 mg)',
      'preformed vitamin A only (3000 µg)',
    ],
    source: 'NASEM DRI tables of upper levels, footnotes',
    status: RECALLED,
    find: (given) =>
      given.map((name) => {
        const { counts, value, unit } = valueIn(upperLimit(name, 'males 19 to 30 years'));
        return `${counts} (${value} ${unit})`;
      }),
  }),
  row({
    id: 'F-DIET-01',
    what: 'what needs leave out of an ingredient list',
    given: [
      'honey',
      'gelatin',
      'whey',
      'carmine',
      'egg white',
      'fish sauce',
      'barley malt',
      'tofu',
      'lentils',
    ],
    expected: {
      vegan: ['honey', 'gelatin', 'whey', 'carmine', 'egg white', 'fish sauce'],
      vegetarian: ['gelatin', 'carmine', 'fish sauce'],
      'gluten-free': ['barley malt'],
    },
    source: 'definitions in common use',
    status: BY_HAND_RECALLED,
    find: (given) =>
      Object.fromEntries(
        (['vegan', 'vegetarian', 'gluten-free'] as const).map((need) => {
          const verdicts = given.map((words) => testIngredients(words, need, 'not said').verdict);
          if (verdicts.some((one) => one !== 'breaks' && one !== 'nothing found')) return [need, verdicts];
          return [need, given.filter((_, index) => verdicts[index] === 'breaks')];
        }),
      ),
  }),
  row({
    id: 'F-DIET-03',
    what: 'iron without meat',
    given: { sex: 'female', years: 30 },
    expected: [18, 32.4],
    tolerance: 0.1,
    source: 'DRI for micronutrients 2001, iron chapter',
    status: RECALLED,
    find: (who) => [
      intake('iron', who.sex, who.years),
      valueIn(meatlessIntake('iron', valueIn(lifeStageOf(who)))).value,
    ],
  }),
  row({
    id: 'F-DIET-04',
    what: 'nutrients that a vegan page must name, and should',
    given: 'vegan',
    expected: {
      must: ['vitamin B12'],
      should: ['vitamin D', 'calcium', 'iodine', 'iron', 'zinc', 'omega-3 (EPA/DHA)', 'choline', 'selenium'],
    },
    source: 'Academy of Nutrition and Dietetics, positions on vegetarian patterns',
    status: RECALLED,
    find: (need) => ({
      must: unsaidAtRisk(need, []),
      should: nutrientsAtRisk(need)
        .filter(({ weight }) => weight === 'watch')
        .map(({ nutrient }) => nutrient),
    }),
  }),
];
