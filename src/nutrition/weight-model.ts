import { known } from './arithmetic.js';
import { bmiOf, LOWEST_BMI, reaches } from './body-mass-index.js';
import type { Amount, EnergyUnit } from './quantity.js';
import { ok, type Result, refuse } from './result.js';
import { KJ_PER_KCAL, unitRatio } from './units.js';
import { type WeightBaseline, type WeightExample, weightBaseline } from './weight-baseline.js';
import {
  ADAPTATION,
  BUILDING,
  ENERGY_IN,
  FLUID,
  FOOD_HANDLING,
  GLYCOGEN,
  leanShare,
  UPKEEP,
  WEIGHT_MODEL,
} from './weight-constants.js';
import { input, type Worked, type Working } from './working.js';

/** From a day on, intake differs from the intake at the start by this much a day; below zero is less food. */
export interface IntakeStep {
  /** Whole days from the start, 0 or more. */
  readonly fromDay: number;
  readonly change: Amount<EnergyUnit>;
}

/** The body at the beginning of a day; day 0 is the start. kg, and kJ a day for what expenditure adapted by. */
export interface WeightDay {
  readonly day: number;
  readonly weight: number;
  readonly fat: number;
  readonly lean: number;
  readonly fluid: number;
  readonly glycogen: number;
  readonly adapted: number;
}

export interface WeightCourse {
  readonly baseline: WeightBaseline;
  /** Every day from 0 to the last. */
  readonly days: readonly [WeightDay, ...WeightDay[]];
  /** Whether the course was cut because the next day would be below a body mass index of 18.5. */
  readonly stopped: boolean;
}

/** Fat, lean tissue, fluid, glycogen (kg), adaptation (kJ a day). */
type State = readonly [number, number, number, number, number];

const MOST_DAYS = 3650;
/** Below this a day's food is medical treatment (2013 AHA/ACC/TOS guideline, recommendation 4e). */
export const VERY_LOW_KCAL = 800;
/** Twice the intake of the start; a limit of our own. */
const MOST_TIMES = 2;
/** Quarter days: halving them again moves no weight by a gram (a test holds this). */
const STEPS_A_DAY = 4;

/**
 * The course of an invented adult's weight when intake changes in steps, by the dynamic model: fat, lean tissue,
 * glycogen and fluid change by the gap between intake and expenditure, and expenditure follows. Classical
 * Runge-Kutta in quarter days. Carbohydrate keeps its share of the energy, sodium does not change.
 * Domain: that of `weightBaseline`; up to 3650 days; every intake at least 800 kcal a day and at most twice the
 * start's. The course stops before the day on which the index would be below 18.5. Group means: not for children,
 * pregnancy, edema, very lean people or building muscle. It says nothing of pace; see `judgeCourse`.
 * Source: Hall KD et al. Lancet 2011;378:826-837, web appendix, equations 1-9. The published equations level
 * about 3 kg above one of the paper's own figures (−2 MJ a day).
 */
export function weightCourse(
  example: WeightExample,
  steps: readonly IntakeStep[],
  days: number,
): Result<WeightCourse> {
  const read = weightBaseline(example);
  if (!read.ok) return read;
  const baseline = read.value;
  const plan = readSteps(baseline, steps);
  if (!plan.ok) return plan;
  if (!(Number.isInteger(days) && days >= 0 && days <= MOST_DAYS)) {
    return refuse(
      `${days} is not a number of days from 0 to ${MOST_DAYS}.`,
      'Use whole days, at most ten years.',
    );
  }
  return ok(runCourse(baseline, plan.value, days));
}

/** The weight on a day of a course, in kg, as the sum of its parts. Refuses days that the course has not. */
export function weightOn(course: WeightCourse, day: number): Result<Worked<'kg'>> {
  const found = dayOf(course, day);
  if (!found.ok) return found;
  const { weight } = found.value;
  return ok({
    quantity: known(weight, 'kg'),
    working: { formula: PARTS, inputs: partsOf(found.value) },
    estimated: true,
  });
}

/** Weight on a day less weight at the start, in kg; a loss is below zero. Refuses days that the course has not. */
export function weightChangeOn(course: WeightCourse, day: number): Result<Worked<'kg'>> {
  const found = dayOf(course, day);
  if (!found.ok) return found;
  const [first] = course.days;
  const working: Working = {
    formula: `${PARTS} - start`,
    inputs: [...partsOf(found.value), input('start', first.weight, 'kg', 'lesson', 'weight on day 0')],
  };
  return ok({ quantity: known(found.value.weight - first.weight, 'kg'), working, estimated: true });
}

/** Intake in kJ a day on each day of a plan, and where it changes; made by `readSteps`. */
export interface IntakePlan {
  readonly changes: readonly { readonly fromDay: number; readonly kj: number }[];
}

/** Checks steps of intake against the baseline: in order, one a day, from 800 kcal to twice the start. */
export function readSteps(baseline: WeightBaseline, steps: readonly IntakeStep[]): Result<IntakePlan> {
  const changes: { fromDay: number; kj: number }[] = [];
  let before = -1;
  for (const { fromDay, change } of steps) {
    if (!Number.isInteger(fromDay) || fromDay <= before) {
      return refuse(
        `A step from day ${fromDay} does not come after the step before it.`,
        'Write steps in order, each from a whole day, 0 or later.',
      );
    }
    before = fromDay;
    const kj = change.value * unitRatio(change.unit, 'kJ');
    const intake = baseline.intakeKj + kj;
    if (!Number.isFinite(intake) || intake > MOST_TIMES * baseline.intakeKj) {
      return refuse(
        `A change of ${change.value} ${change.unit} a day is more than the model can follow.`,
        'Make the change smaller; group material speaks of a few hundred kcal.',
      );
    }
    if (intake < VERY_LOW_KCAL * KJ_PER_KCAL) {
      return refuse(
        `The change leaves ${Math.round(intake / KJ_PER_KCAL)} kcal a day. Below ${VERY_LOW_KCAL} kcal is medical treatment, not a lesson.`,
        'Make the change smaller. Such plans need a clinic.',
      );
    }
    changes.push({ fromDay, kj });
  }
  return ok({ changes });
}

/** Runs a plan that was read. `stepsADay` is for the test that the steps are fine enough. */
export function runCourse(
  baseline: WeightBaseline,
  plan: IntakePlan,
  days: number,
  stepsADay = STEPS_A_DAY,
): WeightCourse {
  let state: State = [baseline.fat.value, baseline.lean, baseline.fluid, GLYCOGEN.start, 0];
  const course: [WeightDay, ...WeightDay[]] = [dayFrom(0, state)];
  for (let day = 0; day < days; day += 1) {
    const kj = plan.changes.findLast(({ fromDay }) => fromDay <= day)?.kj ?? 0;
    for (let step = 0; step < stepsADay; step += 1) state = rungeKutta(baseline, state, kj, 1 / stepsADay);
    const next = dayFrom(day + 1, state);
    if (!reaches(bmiOf(next.weight, baseline.heightCm), LOWEST_BMI))
      return { baseline, days: course, stopped: true };
    course.push(next);
  }
  return { baseline, days: course, stopped: false };
}

const PARTS = 'fat + lean + fluid + (1 + water) * glycogen';

function partsOf(day: WeightDay) {
  const note = `the model's state on day ${day.day}, in quarter-day steps`;
  return [
    input('fat', day.fat, 'kg', WEIGHT_MODEL, note),
    input('lean', day.lean, 'kg', WEIGHT_MODEL, note),
    input('fluid', day.fluid, 'kg', WEIGHT_MODEL, note),
    input('water', GLYCOGEN.water, 'kg per kg', WEIGHT_MODEL),
    input('glycogen', day.glycogen, 'kg', WEIGHT_MODEL, note),
  ];
}

function dayOf(course: WeightCourse, day: number): Result<WeightDay> {
  const found = course.days[day];
  if (found !== undefined) return ok(found);
  const last = course.days.length - 1;
  return refuse(
    `The course has no day ${day}; its days are 0 to ${last}.`,
    course.stopped ? `It stops there because the body mass index would fall below ${LOWEST_BMI}.` : undefined,
  );
}

function dayFrom(day: number, [fat, lean, fluid, glycogen, adapted]: State): WeightDay {
  const weight = fat + lean + fluid + (1 + GLYCOGEN.water) * glycogen;
  return { day, weight, fat, lean, fluid, glycogen, adapted };
}

/** How fast each part changes in a day at a change of intake in kJ a day. */
function slopes(baseline: WeightBaseline, state: State, kj: number): State {
  const [fat, lean, fluid, glycogen, adapted] = state;
  const intake = baseline.intakeKj + kj;
  const share = intake / baseline.intakeKj;
  const carbohydrate = baseline.carbohydrate * baseline.intakeKj;
  const toGlycogen = carbohydrate * share - carbohydrate * (glycogen / GLYCOGEN.start) ** 2;
  const p = leanShare(fat);
  const building = (p * BUILDING.lean) / ENERGY_IN.lean + ((1 - p) * BUILDING.fat) / ENERGY_IN.fat;
  const spent =
    (baseline.rest.value +
      UPKEEP.fat * fat +
      UPKEEP.lean * lean +
      baseline.moving.value * dayFrom(0, state).weight +
      FOOD_HANDLING * kj +
      adapted +
      (intake - toGlycogen) * building) /
    (1 + building);
  const gap = intake - spent - toGlycogen;
  return [
    ((1 - p) * gap) / ENERGY_IN.fat,
    (p * gap) / ENERGY_IN.lean,
    (-FLUID.perLiter * (fluid - baseline.fluid) - FLUID.byCarbohydrate * (1 - share)) / FLUID.sodium,
    toGlycogen / ENERGY_IN.glycogen,
    (ADAPTATION.share * kj - adapted) / ADAPTATION.days,
  ];
}

function rungeKutta(baseline: WeightBaseline, state: State, kj: number, step: number): State {
  const a = slopes(baseline, state, kj);
  const b = slopes(baseline, along(state, a, step / 2), kj);
  const c = slopes(baseline, along(state, b, step / 2), kj);
  const d = slopes(baseline, along(state, c, step), kj);
  const mean = (at: 0 | 1 | 2 | 3 | 4) => (a[at] + 2 * b[at] + 2 * c[at] + d[at]) / 6;
  return along(state, [mean(0), mean(1), mean(2), mean(3), mean(4)], step);
}

function along(state: State, slope: State, step: number): State {
  const at = (i: 0 | 1 | 2 | 3 | 4) => state[i] + slope[i] * step;
  return [at(0), at(1), at(2), at(3), at(4)];
}
