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
import { adult } from '../nutrition/adults.js';
import { refusalOf, valueIn } from '../nutrition/expect-result.js';
import {
  again,
  BY_HAND,
  BY_HAND_RECALLED,
  PRINTED,
  type PublishedCase,
  row,
  worked,
} from './published-case.js';

const MIFFLIN = 'Mifflin MD et al. Am J Clin Nutr 1990;51:241-7';
const NEED_2023 =
  'National Academies 2023, DRI for Energy, doi 10.17226/26818, Table S-2, as more than eight public transcriptions agree';
const NEED_2005 = 'IOM 2002/2005 DRI Macronutrients, table of needs at age 30';
const HENRY = 'Henry CJK. Public Health Nutr 2005;8:1133-52';

interface Person {
  readonly sex: Sex;
  readonly age: number;
  readonly cm: number;
  readonly kg: number;
}
const of = ({ sex, age, cm, kg }: Person) => adult(sex, age, cm, kg);

const resting = (form: MifflinForm) => (person: Person) => worked(valueIn(restingEnergy(of(person), form)));

const need = (given: Person & { readonly level: ActivityLevel<2023> }) =>
  worked(valueIn(energyNeed(of(given), given.level)));

/** Every value of the printed table: level, cm, kg, kcal of men and of women. Weight is the index × height². */
const TABLE_2005: readonly (readonly [string, ActivityLevel<2005>, number, number, number, number])[] = [
  ['A-EER05-01', 'sedentary', 150, 41.625, 1848, 1625],
  ['A-EER05-02', 'low active', 165, 50.366, 2254, 2016],
  ['A-EER05-03', 'active', 180, 80.968, 3200, 2769],
  ['A-EER05-04', 'very active', 165, 68.035, 3296, 2807],
  ['A-EER05-05', 'sedentary', 165, 50.366, 2068, 1816],
  ['A-EER05-06', 'very active', 180, 80.968, 3720, 3141],
  ['A-EER05-T01', 'sedentary', 150, 24.99 * 1.5 ** 2, 2080, 1762],
  ['A-EER05-T02', 'low active', 150, 18.5 * 1.5 ** 2, 2009, 1803],
  ['A-EER05-T03', 'active', 150, 18.5 * 1.5 ** 2, 2215, 2025],
  ['A-EER05-T04', 'very active', 150, 18.5 * 1.5 ** 2, 2554, 2291],
  ['A-EER05-T05', 'low active', 150, 24.99 * 1.5 ** 2, 2267, 1956],
  ['A-EER05-T06', 'active', 150, 24.99 * 1.5 ** 2, 2506, 2198],
  ['A-EER05-T07', 'very active', 150, 24.99 * 1.5 ** 2, 2898, 2489],
  ['A-EER05-T08', 'sedentary', 165, 24.99 * 1.65 ** 2, 2349, 1982],
  ['A-EER05-T09', 'active', 165, 18.5 * 1.65 ** 2, 2490, 2267],
  ['A-EER05-T10', 'very active', 165, 18.5 * 1.65 ** 2, 2880, 2567],
  ['A-EER05-T11', 'low active', 165, 24.99 * 1.65 ** 2, 2566, 2202],
  ['A-EER05-T12', 'active', 165, 24.99 * 1.65 ** 2, 2842, 2477],
  ['A-EER05-T13', 'sedentary', 180, 18.5 * 1.8 ** 2, 2301, 2015],
  ['A-EER05-T14', 'low active', 180, 18.5 * 1.8 ** 2, 2513, 2239],
  ['A-EER05-T15', 'active', 180, 18.5 * 1.8 ** 2, 2782, 2519],
  ['A-EER05-T16', 'very active', 180, 18.5 * 1.8 ** 2, 3225, 2855],
  ['A-EER05-T17', 'sedentary', 180, 24.99 * 1.8 ** 2, 2635, 2211],
  ['A-EER05-T18', 'low active', 180, 24.99 * 1.8 ** 2, 2884, 2459],
];

export const ENERGY: readonly PublishedCase[] = [
  row({
    id: 'A-MSJ-01',
    what: 'resting energy of a man',
    given: { sex: 'male', age: 45, cm: 178, kg: 90 },
    expected: 1792.5,
    tolerance: 0.5,
    source: MIFFLIN,
    status: BY_HAND,
    find: resting('simplified'),
  }),
  row({
    id: 'A-MSJ-02',
    what: 'resting energy of a woman',
    given: { sex: 'female', age: 40, cm: 165, kg: 80 },
    expected: 1470.25,
    tolerance: 0.5,
    source: MIFFLIN,
    status: BY_HAND,
    find: resting('simplified'),
  }),
  row({
    id: 'A-MSJ-04',
    what: 'the regression form, which is never mixed with the other',
    given: { sex: 'male', age: 45, cm: 178, kg: 90 },
    expected: 1795.2,
    tolerance: 0.5,
    source: MIFFLIN,
    status: BY_HAND,
    find: resting('regression'),
  }),
  row({
    id: 'A-MSJ-05',
    what: 'the regression form, printed as 1508 in a worked example',
    given: { sex: 'female', age: 25, cm: 178, kg: 68 },
    expected: 1507.82,
    tolerance: 1,
    source: MIFFLIN,
    status: PRINTED,
    find: resting('regression'),
  }),
  row({
    id: 'A-EER23-01',
    what: 'need of an inactive man',
    given: { sex: 'male', level: 'inactive', age: 30, cm: 170, kg: 70 },
    expected: 2520.17,
    tolerance: 1,
    source: NEED_2023,
    status: PRINTED,
    find: need,
  }),
  row({
    id: 'A-EER23-03',
    what: 'need of a very active man, whose constant is below zero',
    given: { sex: 'male', level: 'very active', age: 30, cm: 178, kg: 80 },
    expected: 3464.6,
    tolerance: 1,
    source: NEED_2023,
    status: BY_HAND,
    find: need,
  }),
  row({
    id: 'A-EER23-04',
    what: 'need of a low active woman of 72',
    given: { sex: 'female', level: 'low active', age: 72, cm: 160, kg: 65 },
    expected: 1916.15,
    tolerance: 1,
    source: NEED_2023,
    status: BY_HAND,
    find: need,
  }),
  row({
    id: 'A-EER23-06',
    what: 'need of an active man',
    given: { sex: 'male', level: 'active', age: 22, cm: 183, kg: 77 },
    expected: 3184.79,
    tolerance: 1,
    source: NEED_2023,
    status: BY_HAND,
    find: need,
  }),
  row({
    id: 'A-EER23-08',
    what: 'need of an inactive woman',
    given: { sex: 'female', level: 'inactive', age: 40, cm: 165, kg: 80 },
    expected: 2185.1,
    tolerance: 1,
    source: NEED_2023,
    status: BY_HAND,
    find: need,
  }),
  row({
    id: 'A-EER23-09',
    what: 'limits of the activity levels',
    given: [1.52, 1.53, 1.67, 1.68, 1.84, 1.85],
    expected: ['inactive', 'low active', 'low active', 'active', 'active', 'very active'],
    source: 'Health Canada, DRI tables: 1.00-<1.53, 1.53-<1.68, 1.68-<1.85, 1.85-<2.50',
    status: PRINTED,
    find: (given) => given.map((level) => valueIn(activityLevelOf(level, 2023))),
  }),
  row({
    id: 'A-EER23-10',
    what: 'no plain adult number under 19, in pregnancy or when breastfeeding',
    given: [{ age: 17 }, { circumstances: ['pregnant'] }, { circumstances: ['breastfeeding'] }],
    expected: [
      'This equation is for ages 19 and over; this example is 17.',
      'The plain adult equation does not hold for somebody who is pregnant.',
      'The plain adult equation does not hold for somebody who is breastfeeding.',
    ],
    source: NEED_2023,
    status: BY_HAND,
    find: (given) =>
      given.map((one) => refusalOf(energyNeed({ ...adult('female', 30, 165, 65), ...one }, 'active')).reason),
  }),
  ...TABLE_2005.map(([id, level, cm, kg, men, women]) =>
    row({
      id,
      what: `older need, ${level}, ${cm} cm, ${Number(kg.toFixed(1))} kg`,
      given: { age: 30, cm, kg, level },
      expected: { male: men, female: women, checked: 'copies' },
      tolerance: { male: 3, female: 3 },
      source: NEED_2005,
      status: PRINTED,
      find: ({ age }) => {
        const [male, female] = (['male', 'female'] as const).map((sex) =>
          valueIn(energyNeed2005(adult(sex, age, cm, kg), level)),
        );
        if (!male || !female) throw new Error('two sexes');
        return { male: worked(male), female: worked(female), checked: male.checked };
      },
    }),
  ),
  row({
    id: 'A-HEN-01',
    what: 'basal energy of a man of 45 by weight',
    given: { sex: 'male', age: 45, kg: 90 },
    expected: { kcal: 1871, checked: 'copies' },
    tolerance: { kcal: 1 },
    source: HENRY,
    status: BY_HAND,
    find: ({ sex, age, kg }) => {
      const found = valueIn(oxfordEnergy(adult(sex, age, null, kg), 'weight'));
      return { kcal: worked(found), checked: found.checked };
    },
  }),
  row({
    id: 'A-HEN-03',
    what: 'basal energy of a man of 25 by weight and height',
    given: { sex: 'male', age: 25, cm: 180, kg: 80 },
    expected: { kcal: 1828.4, checked: 'memory' },
    tolerance: { kcal: 1 },
    source: `${HENRY}; the constant from memory`,
    status: BY_HAND_RECALLED,
    find: (person) => {
      const found = valueIn(oxfordEnergy(of(person), 'weight and height'));
      return { kcal: worked(found), checked: found.checked };
    },
  }),
  row({
    id: 'A-BMI-01',
    what: 'an index that prints as 30.0 is classed before rounding',
    given: { inches: 65, pounds: 180, age: 40 },
    expected: { index: 29.953, class: 'overweight' },
    tolerance: { index: 0.01 },
    source: 'CDC/NHLBI cut points',
    status: BY_HAND,
    find: ({ inches, pounds, age }) => {
      const { value, working } = valueIn(
        bodyMassIndex({ value: inches, unit: 'in' }, { value: pounds, unit: 'lb' }),
      );
      const index = again(value, working);
      return { index, class: valueIn(bmiClass(index, age)) };
    },
  }),
];
