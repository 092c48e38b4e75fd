import type { Adult } from './adult.js';
import { LOWEST_BMI } from './body-mass-index.js';
import type { Range } from './quantity.js';
import { ok, type Result, refuse } from './result.js';
import { KJ_PER_KCAL, unitRatio } from './units.js';
import { WEIGHT_MODEL } from './weight-constants.js';
import {
  type CoursePace,
  GUIDELINE_FLOOR,
  intakeFlag,
  judgeCourses,
  NEVER_DRAWN_KG,
  screen,
} from './weight-guards.js';
import { type IntakeStep, type WeightCourse, weightChangeOn, weightCourse } from './weight-model.js';
import { type RuleOfThumb, ruleOfThumb } from './weight-rules.js';
import { FROM_LESSON, input, type Working } from './working.js';

/** What the band is run over; the figure states it. A choice of our own. */
export const BAND_OVER = {
  /** Physical activity levels. */
  activity: [1.4, 1.8],
  /** Points of fat less and more than the regression gives. */
  fatPoints: [-5, 5],
  /** Share of the change that is kept to. */
  kept: [0.8, 1],
} as const;

/** One corner of the band and its course. */
export interface BandCourse {
  /** The corner in words, for a working. */
  readonly corner: string;
  readonly course: WeightCourse;
}

export interface WeightBand {
  /** The last day of the band; every day from 0 has a low and a high end. */
  readonly lastDay: number;
  readonly courses: readonly BandCourse[];
  /** Whether the band was cut because one of its courses would fall below a body mass index of 18.5. */
  readonly stopped: boolean;
  /** The fastest of its courses. `too fast` may not stand in group material. */
  readonly pace: CoursePace;
  /** The published rules of thumb as its check; `null` when the change comes in several steps. */
  readonly rule: RuleOfThumb | null;
}

const MOST_MONTHS = 36;
const MONTH = 365 / 12;

/** The whole day on which a month of a band ends: 12 months are 365 days. */
export function dayOfMonth(month: number): number {
  return Math.round(month * MONTH);
}

/**
 * What one change of intake (or several, in steps) does to an invented adult: the dynamic model run over activity 1.4
 * and 1.8, fat 5 points less and more than the regression, and 80 and 100 percent of the change kept to. The
 * spread is the band; a single line would promise too much. Refuses everything that content on weight
 * refuses (`screen`), changes above zero, more than 36 months, an intake below the guideline's range (1200 kcal
 * women, 1500 kcal men) and a course that loses 1.5 kg in any week. It stops before any of its courses goes below a
 * body mass index of 18.5. `unit` is what the readers count in; it decides between 2 lb and 1 kg a week.
 * Source: Hall KD et al. Lancet 2011;378:826-837 for the model; the ranges are ours.
 */
export function weightBand(
  adult: Adult,
  steps: readonly IntakeStep[],
  months: number,
  unit: 'lb' | 'kg',
): Result<WeightBand> {
  const may = screen(adult);
  if (!may.ok) return may;
  if (!(months >= 1 && months <= MOST_MONTHS)) {
    return refuse(`${months} months are not between 1 and ${MOST_MONTHS}.`, 'Use three years at most.');
  }
  if (steps.some(({ change }) => change.value > 0)) {
    return refuse('The change adds food, and this chart shows eating less.', 'Write the change below zero.');
  }
  const courses: BandCourse[] = [];
  for (const { activity, fatPoints, kept, corner } of corners()) {
    const keptSteps = steps.map(({ fromDay, change }) => ({
      fromDay,
      change: { ...change, value: change.value * kept },
    }));
    const course = weightCourse({ adult, activity, fatPoints }, keptSteps, dayOfMonth(months));
    if (!course.ok) return course;
    const { baseline } = course.value;
    const lowest =
      baseline.intakeKj +
      Math.min(0, ...keptSteps.map(({ change }) => change.value * unitRatio(change.unit, 'kJ')));
    if (intakeFlag(adult.sex, lowest / KJ_PER_KCAL) !== 'ok') {
      return refuse(
        `The change would leave the example less than ${GUIDELINE_FLOOR[adult.sex]} kcal a day, below the guideline's range.`,
        'Make the change smaller, or choose another invented example.',
      );
    }
    courses.push({ corner, course: course.value });
  }
  const all = courses.map(({ course }) => course);
  const pace = judgeCourses(all, unit);
  if (pace.flag === 'never drawn') {
    return refuse(
      `In its fastest week the example would lose ${NEVER_DRAWN_KG} kg or more; at this pace gallstone risk rises.`,
      'Make the change smaller, or bring it in by steps.',
    );
  }
  const [only, ...more] = steps;
  return ok({
    lastDay: Math.min(...all.map((course) => course.days.length - 1)),
    courses,
    stopped: all.some((course) => course.stopped),
    pace,
    rule: only?.fromDay === 0 && more.length === 0 ? ruleOfThumb(only.change) : null,
  });
}

/**
 * The band on a day: change from the start in kg, a loss below zero, so `low` is the greatest loss. The working names
 * the corners that the ends come from. Refuses days that the band has not.
 */
export function bandOn(
  band: WeightBand,
  day: number,
): Result<{ readonly range: Range<'kg'>; readonly working: Working }> {
  const ends = band.courses.flatMap(({ corner, course }) => {
    const change = weightChangeOn(course, day <= band.lastDay ? day : -1);
    const value = change.ok ? change.value.quantity.value : null;
    return value === null ? [] : [{ corner, value, start: course.baseline.weight }];
  });
  const [first, ...rest] = ends;
  if (first === undefined) {
    return refuse(
      `The band has no day ${day}; its days are 0 to ${band.lastDay}.`,
      band.stopped ? `It stops there because the body mass index would fall below ${LOWEST_BMI}.` : undefined,
    );
  }
  const low = rest.reduce((so, one) => (one.value < so.value ? one : so), first);
  const high = rest.reduce((so, one) => (one.value > so.value ? one : so), first);
  const end = (name: string, { corner, value, start }: typeof first) =>
    input(name, start + value, 'kg', WEIGHT_MODEL, `weight on day ${day}; ${corner}`);
  return ok({
    range: { low: low.value, high: high.value, unit: 'kg' },
    working: {
      formula: 'low = lightest - start; high = heaviest - start',
      inputs: [end('lightest', low), end('heaviest', high), input('start', first.start, 'kg', FROM_LESSON)],
    },
  });
}

function corners() {
  return BAND_OVER.activity.flatMap((activity) =>
    BAND_OVER.fatPoints.flatMap((fatPoints) =>
      BAND_OVER.kept.map((kept) => ({
        activity,
        fatPoints,
        kept,
        corner: `activity ${activity}, ${fatPoints} points of fat, ${kept * 100} percent of the change`,
      })),
    ),
  );
}
