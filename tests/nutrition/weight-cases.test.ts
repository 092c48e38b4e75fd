import { describe, expect } from 'vitest';
import {
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
import { adult, example } from './adults.js';
import { evaluate, evaluateParts } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';
import { type CaseStatus, type PublishedCase, runCases, within } from './published-case.js';

const HALL =
  'Hall KD et al. Lancet 2011;378:826-37, web appendix; numbers by Runge-Kutta in steps of 0.05 days';
const GUIDELINE = '2013 AHA/ACC/TOS guideline';
const BY_HAND: CaseStatus = 'computed by hand, formula verified';
const PRINTED: CaseStatus = 'value printed in the source';

/** Weights by day at a constant change, each within 0.3 kg. */
function held(of: WeightExample, kcal: number, weights: Readonly<Record<number, number>>, off = 0.3) {
  return () => {
    const days = Object.keys(weights).map(Number);
    const steps = [{ fromDay: 0, change: { value: kcal, unit: 'kcal' } }] as const;
    const course = valueIn(weightCourse(of, steps, Math.max(...days)));
    for (const day of days) {
      const { quantity, working } = valueIn(weightOn(course, day));
      within(quantity.value, weights[day] ?? Number.NaN, off);
      expect(evaluate(working)).toBeCloseTo(Number(quantity.value), 9);
    }
  };
}

const WOMAN = example('female', 40, 165, 80);
const PAPER = example('male', 23, 180, 100);

const CASES: readonly PublishedCase[] = [
  {
    id: 'B-HALL-01',
    title: 'fat at the start (Jackson 2002 regression)',
    source: HALL,
    status: BY_HAND,
    holds: () => {
      const { fat } = valueIn(weightBaseline(PAPER));
      within(fat.value, 27.238, 0.01);
      expect(evaluate(fat.working)).toBeCloseTo(fat.value, 9);
    },
  },
  {
    id: 'B-HALL-03',
    title: 'Forbes’ constant as it splits energy is 2.001 kg, not 10.4',
    source: HALL,
    status: BY_HAND,
    holds: () => {
      within(FORBES_ENERGY, 2.001013, 0.0005);
      for (const [fat, share] of [
        [5, 0.2858],
        [20, 0.091],
        [40, 0.0476],
      ] as const)
        within(leanShare(fat), share, 0.0005);
    },
  },
  {
    id: 'B-HALL-04',
    title: 'the paper’s man of 100 kg before anything changes',
    source: `${HALL}; 12.65 MJ a day is the published baseline`,
    status: BY_HAND,
    holds: () => {
      const { intakeKj, intake, moving, rest } = valueIn(weightBaseline(PAPER));
      within(intakeKj / 1000, 12.65, 0.02);
      within(evaluate(intake.working) * 4.184, intakeKj, 1e-6);
      within(moving.value, 29.52, 0.1);
      expect(evaluate(moving.working)).toBeCloseTo(moving.value, 9);
      within(rest.value / 1000, 5.076, 0.05);
      expect(evaluate(rest.working)).toBeCloseTo(rest.value, 6);
    },
  },
  {
    id: 'B-HALL-05',
    title: '5 MJ a day less for 180 days, then 10.9 MJ a day',
    source: HALL,
    status: BY_HAND,
    holds: () => {
      const { intakeKj } = valueIn(weightBaseline(PAPER));
      const steps = [
        { fromDay: 0, change: { value: 7650 - intakeKj, unit: 'kJ' } },
        { fromDay: 180, change: { value: 10_900 - intakeKj, unit: 'kJ' } },
      ] as const;
      const course = valueIn(weightCourse(PAPER, steps, 730));
      within(course.days[180]?.weight, 79.94, 0.3);
      within(course.days[365]?.weight, 80.71, 0.3);
      within(course.days[730]?.weight, 80.65, 0.3);
    },
  },
  {
    id: 'B-HALL-07',
    title: 'a woman of 80 kg, 500 kcal a day less',
    source: HALL,
    status: BY_HAND,
    holds: () => {
      within(valueIn(weightBaseline(WOMAN)).intake.quantity.value, 2209, 0.3);
      held(WOMAN, -500, { 28: 78.06, 84: 75.56, 182: 71.76, 365: 66.26 })();
    },
  },
  {
    id: 'B-HALL-09',
    title: 'a woman of 95 kg, 500 kcal a day less',
    source: HALL,
    status: BY_HAND,
    holds: () => {
      const one = example('female', 50, 162, 95);
      within(valueIn(weightBaseline(one)).intake.quantity.value, 2332, 0.3);
      held(one, -500, { 182: 87.07, 365: 81.43, 1095: 70.1 })();
    },
  },
  {
    id: 'B-HALL-11',
    title: 'a woman of 80 kg, 250 kcal a day less',
    source: HALL,
    status: BY_HAND,
    holds: () => {
      within(valueIn(weightBaseline(WOMAN)).intake.quantity.value, 2209, 0.3);
      held(WOMAN, -250, { 365: 73.19, 1095: 68.42 })();
    },
  },
  {
    id: 'B-HALL-13',
    title: 'eating the baseline keeps the weight',
    source: HALL,
    status: BY_HAND,
    holds: held(WOMAN, 0, { 365: 80, 3650: 80 }, 0.001),
  },
  {
    id: 'B-HALL-15',
    title: 'where adaptation ends, and 63.2 percent of it on day 14',
    source: HALL,
    status: BY_HAND,
    holds: () => {
      const steps = [{ fromDay: 0, change: { value: -500, unit: 'kcal' } }] as const;
      const { days } = valueIn(weightCourse(WOMAN, steps, 200));
      within(Number(days[200]?.adapted) / 4.184, -70, 0.2);
      within(Number(days[14]?.adapted) / 4.184, -44.2, 0.2);
    },
  },
  ...(
    [
      ['B-LIN table', 10, 110, 289, 201],
      ['B-LIN-01', 20, 92.1, 420, 291],
      ['B-LIN-02', 30, 83.3, 507, 351],
      ['B-LIN table', 60, 72, 651, 451],
    ] as const
  ).map(
    ([id, fat, epsilon, tau, half]): PublishedCase => ({
      id,
      title: `the straight form at ${fat} kg of fat`,
      source: 'Hall 2011, web appendix, equations 10-18 and its table',
      status: PRINTED,
      holds: () => {
        const form = valueIn(linearWeight(fat, 30));
        within(form.following.value, epsilon, 1);
        within(form.time.value, tau, 2);
        within(form.halfTime.value, half, 2);
        for (const one of Object.values(form)) expect(evaluate(one.working)).toBeCloseTo(one.value, 6);
      },
    }),
  ),
  {
    id: 'B-RULE-01',
    title: 'the published rule of thumb',
    source: 'Hall 2011: 100 kJ a day per kg; half in about one year, 95 percent in about three',
    status: PRINTED,
    holds: () => {
      const rule = ruleOfThumb({ value: -500, unit: 'kJ' });
      for (const [part, kg] of [
        [rule.eventual, -5],
        [rule.afterOneYear, -2.5],
        [rule.afterThreeYears, -4.75],
      ] as const) {
        within(part.quantity.value, kg, 0.01);
        expect(evaluate(part.working)).toBeCloseTo(kg, 9);
      }
      // Printed with it: 24 kcal a day per kg, and 10 kcal a day per lb; 100 kcal a day is about 5 lb in the first year.
      within(ruleOfThumb({ value: 24, unit: 'kcal' }).eventual.quantity.value, 1, 0.01);
      const inPounds = Number(ruleOfThumb({ value: 10, unit: 'kcal' }).eventual.quantity.value) / 0.45359237;
      within(inPounds, 1, 0.1);
      const firstYear = Number(ruleOfThumb({ value: 100, unit: 'kcal' }).afterOneYear.quantity.value);
      within(firstYear / 0.45359237, 5, 0.5);
    },
  },
  {
    id: 'B-STAT-01',
    title: 'the static rule, marked as no forecast',
    source: 'Wishnofsky 1958; shown wrong by Hall & Chow 2013 and Thomas 2013',
    status: BY_HAND,
    holds: () => {
      const change = { value: 500, unit: 'kcal' } as const;
      const week = valueIn(staticRule(change, 7));
      within(week.quantity.value, 1, 0.05);
      expect(evaluate(week.working)).toBeCloseTo(1, 9);
      expect(week.warning).toContain('not a forecast');
      within(valueIn(staticRule(change, 364)).quantity.value, 52, 0.05);
    },
  },
  {
    id: 'B-STAT-02',
    title: 'the static rule against the model at one year',
    source: HALL,
    status: BY_HAND,
    holds: () => {
      const change = { value: -500, unit: 'kcal' } as const;
      const loss = -Number(valueIn(staticRule(change, 365)).quantity.value) * 0.45359237;
      const course = valueIn(weightCourse(WOMAN, [{ fromDay: 0, change }], 365));
      const model = 80 - Number(course.days[365]?.weight);
      within(loss, 23.7, 0.2);
      within(model, 13.7, 0.3);
      within(loss / model, 1.72, 0.05);
    },
  },
  {
    id: 'B-STAT-03',
    title: '3500 kcal a pound in metric units',
    source: 'Hall KD. Int J Obes 2008;32:573-576 gives 32.2 MJ/kg',
    status: PRINTED,
    holds: () => {
      const perKg = KCAL_PER_POUND * unitRatio('kg', 'lb');
      within(perKg, 7716.2, 1);
      within((perKg * unitRatio('kcal', 'kJ')) / 1000, 32.28, 0.1);
    },
  },
  {
    id: 'B-SAFE-01',
    title: 'whom content on weight turns away',
    source: `${GUIDELINE}; scope of the 2023 energy equations; the list from memory`,
    status: BY_HAND,
    holds: () => {
      const plain = adult('female', 40, 165, 80);
      expect(valueIn(screen(plain))).toBe('may be shown');
      const turned = [
        screen({ ...plain, age: 17 }),
        screen(adult('female', 40, 165, 18 * 1.65 ** 2)),
        screen(plain, { value: 18.4 * 1.65 ** 2, unit: 'kg' }),
        ...(
          [
            'pregnant',
            'breastfeeding',
            'eating disorder, now or before',
            'insulin',
            'sulfonylurea',
            'kidney disease',
          ] as const
        ).map((circumstance) => screen({ ...plain, circumstances: [circumstance] })),
      ];
      for (const result of turned) {
        expect(refusalOf(result).reason).toMatch(/^No weight forecast and no energy target is made here: \S/);
        expect(refusalOf(result).hint).toContain('Refer to a clinician');
      }
    },
  },
  {
    id: 'B-SAFE-02',
    title: 'the guideline’s lowest intakes',
    source: `${GUIDELINE}, recommendations 3a and 4e`,
    status: PRINTED,
    holds: () => {
      expect(intakeFlag('female', 1150)).toBe('below guideline range');
      expect(intakeFlag('female', 1200)).toBe('ok');
      expect(intakeFlag('male', 1450)).toBe('below guideline range');
      expect(intakeFlag('male', 1500)).toBe('ok');
      expect(intakeFlag('female', 790)).toBe('very-low-calorie');
    },
  },
  {
    id: 'B-SAFE-04',
    title: 'pace a week in pounds',
    source: 'CDC, 1 to 2 lb a week; practice from ½ lb',
    status: 'value of the source, from memory',
    holds: () => {
      const flags = [0.5, 1, 2, 2.5].map((value) => paceFlag({ value, unit: 'lb' }));
      expect(flags).toEqual(['ok', 'ok', 'ok', 'too fast']);
    },
  },
  {
    id: 'B-SAFE-05',
    title: 'the loss from which health gains begin',
    source: `${GUIDELINE}, 3 to 5 percent`,
    status: PRINTED,
    holds: () => {
      const { low, high, working } = valueIn(usefulLoss({ value: 90, unit: 'kg' }));
      within(low, 2.7, 0.01);
      within(high, 4.5, 0.01);
      expect(evaluateParts(working)).toEqual({ low, high });
    },
  },
];

describe('published values of the weight model and its guards', () => {
  runCases(CASES);
});
