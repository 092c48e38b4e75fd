import {
  type Circumstance,
  FORBES_ENERGY,
  intakeFlag,
  KCAL_PER_POUND,
  leanShare,
  linearWeight,
  paceFlag,
  ruleOfThumb,
  screen,
  staticRule,
  unitRatio,
  usefulLoss,
  type WeightExample,
  weightBaseline,
  weightCourse,
  weightOn,
} from '../../src/nutrition/index.js';
import { adult, example } from '../nutrition/adults.js';
import { evaluateParts } from '../nutrition/evaluate.js';
import { refusalOf, valueIn } from '../nutrition/expect-result.js';
import { again, BY_HAND, PRINTED, type PublishedCase, RECALLED, row, worked } from './published-case.js';

const HALL =
  'Hall KD et al. Lancet 2011;378:826-37, web appendix; numbers by Runge-Kutta in steps of 0.05 days';
const HALL_RULE = 'Hall 2011: 100 kJ a day per kg; half in about one year, 95 percent in about three';
const GUIDELINE = '2013 AHA/ACC/TOS guideline';
const KG_PER_POUND = 0.45359237;

const WOMAN = example('female', 40, 165, 80);
const PAPER = example('male', 23, 180, 100);

interface Change {
  readonly of: WeightExample;
  readonly kcal: number;
  readonly days: readonly number[];
}

/** Intake at the start, and weight on some days of a change that is kept to. */
function course({ of, kcal, days }: Change) {
  const steps = [{ fromDay: 0, change: { value: kcal, unit: 'kcal' } }] as const;
  const found = valueIn(weightCourse(of, steps, Math.max(...days)));
  return {
    intake: valueIn(weightBaseline(of)).intake.quantity.value,
    kg: days.map((day) => worked(valueIn(weightOn(found, day)))),
  };
}

/** The printed table of the straight form: kg of fat, then kJ per kg and day, days, and days to the half. */
const STRAIGHT = [
  ['B-LIN-T1', 10, 110, 289, 201],
  ['B-LIN-01', 20, 92.1, 420, 291],
  ['B-LIN-02', 30, 83.3, 507, 351],
  ['B-LIN-T2', 60, 72, 651, 451],
] as const;

export const WEIGHT: readonly PublishedCase[] = [
  row({
    id: 'B-HALL-01',
    what: 'fat at the start (Jackson 2002 regression)',
    given: PAPER,
    expected: 27.238,
    tolerance: 0.01,
    source: HALL,
    status: BY_HAND,
    find: (given) => {
      const { fat } = valueIn(weightBaseline(given));
      return again(fat.value, fat.working);
    },
  }),
  row({
    id: 'B-HALL-03',
    what: 'Forbes’ constant as it splits energy is 2.001 kg, not 10.4',
    given: { fat: [5, 20, 40] },
    expected: { constant: 2.001013, shares: [0.2858, 0.091, 0.0476] },
    tolerance: 0.0005,
    source: HALL,
    status: BY_HAND,
    find: ({ fat }) => ({ constant: FORBES_ENERGY, shares: fat.map(leanShare) }),
  }),
  row({
    id: 'B-HALL-04',
    what: 'the paper’s man of 100 kg before anything changes',
    given: PAPER,
    expected: { intakeMj: 12.65, movingKj: 29.52, restMj: 5.076 },
    tolerance: { intakeMj: 0.02, movingKj: 0.1, restMj: 0.05 },
    source: `${HALL}; 12.65 MJ a day is the published baseline`,
    status: BY_HAND,
    find: (given) => {
      const { intakeKj, intake, moving, rest } = valueIn(weightBaseline(given));
      return {
        intakeMj: again(intakeKj / 4.184, intake.working) * 0.004184,
        movingKj: again(moving.value, moving.working),
        restMj: again(rest.value, rest.working) / 1000,
      };
    },
  }),
  row({
    id: 'B-HALL-05',
    what: '5 MJ a day less for 180 days, then 10.9 MJ a day',
    given: { of: PAPER, first: 7650, after: 10_900, days: [180, 365, 730] },
    expected: [79.94, 80.71, 80.65],
    tolerance: 0.3,
    source: HALL,
    status: BY_HAND,
    find: ({ of, first, after, days }) => {
      const { intakeKj } = valueIn(weightBaseline(of));
      const steps = [
        { fromDay: 0, change: { value: first - intakeKj, unit: 'kJ' } },
        { fromDay: 180, change: { value: after - intakeKj, unit: 'kJ' } },
      ] as const;
      const found = valueIn(weightCourse(of, steps, 730));
      return days.map((day) => found.days[day]?.weight);
    },
  }),
  row({
    id: 'B-HALL-07',
    what: 'a woman of 80 kg, 500 kcal a day less',
    given: { of: WOMAN, kcal: -500, days: [28, 84, 182, 365] },
    expected: { intake: 2209, kg: [78.06, 75.56, 71.76, 66.26] },
    tolerance: 0.3,
    source: HALL,
    status: BY_HAND,
    find: course,
  }),
  row({
    id: 'B-HALL-09',
    what: 'a woman of 95 kg, 500 kcal a day less',
    given: { of: example('female', 50, 162, 95), kcal: -500, days: [182, 365, 1095] },
    expected: { intake: 2332, kg: [87.07, 81.43, 70.1] },
    tolerance: 0.3,
    source: HALL,
    status: BY_HAND,
    find: course,
  }),
  row({
    id: 'B-HALL-11',
    what: 'a woman of 80 kg, 250 kcal a day less',
    given: { of: WOMAN, kcal: -250, days: [365, 1095] },
    expected: { intake: 2209, kg: [73.19, 68.42] },
    tolerance: 0.3,
    source: HALL,
    status: BY_HAND,
    find: course,
  }),
  row({
    id: 'B-HALL-13',
    what: 'eating the baseline keeps the weight',
    given: { of: WOMAN, kcal: 0, days: [365, 3650] },
    expected: [80, 80],
    tolerance: 0.001,
    source: HALL,
    status: BY_HAND,
    find: (given) => course(given).kg,
  }),
  row({
    id: 'B-HALL-15',
    what: 'where adaptation ends, and 63.2 percent of it on day 14',
    given: { kcal: -500, days: [200, 14] },
    expected: [-70, -44.2],
    tolerance: 0.2,
    source: HALL,
    status: BY_HAND,
    find: ({ kcal, days }) => {
      const steps = [{ fromDay: 0, change: { value: kcal, unit: 'kcal' } }] as const;
      const found = valueIn(weightCourse(WOMAN, steps, 200));
      return days.map((day) => Number(found.days[day]?.adapted) / 4.184);
    },
  }),
  ...STRAIGHT.map(([id, fat, following, time, halfTime]) =>
    row({
      id,
      what: `the straight form at ${fat} kg of fat`,
      given: { fat, movingKj: 30 },
      expected: { following, time, halfTime },
      tolerance: { following: 1, time: 2, halfTime: 2 },
      source: 'Hall 2011, web appendix, equations 10-18 and its table',
      status: PRINTED,
      find: ({ movingKj }) => {
        const form = valueIn(linearWeight(fat, movingKj));
        return {
          following: again(form.following.value, form.following.working),
          time: again(form.time.value, form.time.working),
          halfTime: again(form.halfTime.value, form.halfTime.working),
        };
      },
    }),
  ),
  row({
    id: 'B-RULE-01',
    what: 'the published rule of thumb',
    given: { value: -500, unit: 'kJ' },
    expected: { eventual: -5, afterOneYear: -2.5, afterThreeYears: -4.75 },
    tolerance: 0.01,
    source: HALL_RULE,
    status: PRINTED,
    find: (change) => {
      const { eventual, afterOneYear, afterThreeYears } = ruleOfThumb(change);
      return {
        eventual: worked(eventual),
        afterOneYear: worked(afterOneYear),
        afterThreeYears: worked(afterThreeYears),
      };
    },
  }),
  row({
    id: 'B-RULE-T1',
    what: 'the same rule as printed in kcal: 24 a kg, 10 a lb, and 5 lb in the first year for 100',
    given: { perKg: 24, perPound: 10, firstYear: 100 },
    expected: { kg: 1, pounds: 1, firstYear: 5 },
    tolerance: { kg: 0.01, pounds: 0.1, firstYear: 0.5 },
    source: HALL_RULE,
    status: PRINTED,
    find: ({ perKg, perPound, firstYear }) => ({
      kg: worked(ruleOfThumb({ value: perKg, unit: 'kcal' }).eventual),
      pounds: worked(ruleOfThumb({ value: perPound, unit: 'kcal' }).eventual) / KG_PER_POUND,
      firstYear: worked(ruleOfThumb({ value: firstYear, unit: 'kcal' }).afterOneYear) / KG_PER_POUND,
    }),
  }),
  row({
    id: 'B-STAT-01',
    what: 'the static rule, marked as no forecast',
    given: { value: 500, unit: 'kcal' },
    expected: { week: 1, year: 52, isForecast: false },
    tolerance: 0.05,
    source: 'Wishnofsky 1958; shown wrong by Hall & Chow 2013 and Thomas 2013',
    status: BY_HAND,
    find: (change) => {
      const week = valueIn(staticRule(change, 7));
      return {
        week: worked(week),
        year: worked(valueIn(staticRule(change, 364))),
        isForecast: !week.warning.includes('not a forecast'),
      };
    },
  }),
  row({
    id: 'B-STAT-02',
    what: 'the static rule against the model at one year',
    given: { of: WOMAN, kcal: -500, days: 365 },
    expected: { static: 23.7, model: 13.7, factor: 1.72 },
    tolerance: { static: 0.2, model: 0.3, factor: 0.05 },
    source: HALL,
    status: BY_HAND,
    find: ({ of, kcal, days }) => {
      const lost = -worked(valueIn(staticRule({ value: kcal, unit: 'kcal' }, days))) * KG_PER_POUND;
      const model = 80 - Number(course({ of, kcal, days: [days] }).kg[0]);
      return { static: lost, model, factor: lost / model };
    },
  }),
  row({
    id: 'B-STAT-03',
    what: '3500 kcal a pound in metric units',
    given: { kcalPerPound: 3500 },
    expected: { given: 3500, kcal: 7716.2, mj: 32.28 },
    tolerance: { kcal: 1, mj: 0.1 },
    source: 'Hall KD. Int J Obes 2008;32:573-576 gives 32.2 MJ/kg',
    status: PRINTED,
    find: () => {
      const kcal = KCAL_PER_POUND * unitRatio('kg', 'lb');
      return { given: KCAL_PER_POUND, kcal, mj: (kcal * unitRatio('kcal', 'kJ')) / 1000 };
    },
  }),
  row({
    id: 'B-SAFE-01',
    what: 'whom content on weight turns away: no forecast, no target, a clinician',
    given: {
      age: 17,
      index: 18,
      goalIndex: 18.4,
      circumstances: [
        'pregnant',
        'breastfeeding',
        'eating disorder, now or before',
        'insulin',
        'sulfonylurea',
        'kidney disease',
      ],
    },
    expected: { anybodyElse: 'may be shown', turnedAway: 9 },
    source: `${GUIDELINE}; scope of the 2023 energy equations; the list from memory`,
    status: BY_HAND,
    find: ({ age, index, goalIndex, circumstances }) => {
      const plain = adult('female', 40, 165, 80);
      const results = [
        screen({ ...plain, age }),
        screen(adult('female', 40, 165, index * 1.65 ** 2)),
        screen(plain, { value: goalIndex * 1.65 ** 2, unit: 'kg' }),
        ...circumstances.map((one: Circumstance) => screen({ ...plain, circumstances: [one] })),
      ];
      const turnedAway = results
        .map(refusalOf)
        .filter(
          ({ reason, hint }) =>
            /^No weight forecast and no energy target is made here: \S/.test(reason) &&
            hint?.includes('Refer to a clinician'),
        );
      return { anybodyElse: valueIn(screen(plain)), turnedAway: turnedAway.length };
    },
  }),
  row({
    id: 'B-SAFE-02',
    what: 'the guideline’s lowest intakes',
    given: [
      ['female', 1150],
      ['female', 1200],
      ['male', 1450],
      ['male', 1500],
      ['female', 790],
    ],
    expected: ['below guideline range', 'ok', 'below guideline range', 'ok', 'very-low-calorie'],
    source: `${GUIDELINE}, recommendations 3a and 4e`,
    status: PRINTED,
    find: (given) => given.map(([sex, kcal]) => intakeFlag(sex, kcal)),
  }),
  row({
    id: 'B-SAFE-04',
    what: 'pace a week in pounds',
    given: [0.5, 1, 2, 2.5],
    expected: ['ok', 'ok', 'ok', 'too fast'],
    source: 'CDC, 1 to 2 lb a week; practice from ½ lb',
    status: RECALLED,
    find: (given) => given.map((value) => paceFlag({ value, unit: 'lb' })),
  }),
  row({
    id: 'B-SAFE-05',
    what: 'the loss from which health gains begin',
    given: { value: 90, unit: 'kg' },
    expected: { low: 2.7, high: 4.5, again: { low: 2.7, high: 4.5 } },
    tolerance: 0.01,
    source: `${GUIDELINE}, 3 to 5 percent`,
    status: PRINTED,
    find: (weight) => {
      const { low, high, working } = valueIn(usefulLoss(weight));
      return { low, high, again: evaluateParts(working) };
    },
  }),
];
