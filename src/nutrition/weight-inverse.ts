import type { Sex } from './adult.js';
import { known } from './arithmetic.js';
import type { MassUnit } from './quantity.js';
import type { Measured } from './reckoned.js';
import { ok, type Result, refuse } from './result.js';
import { KJ_PER_KCAL, unitRatio } from './units.js';
import { type WeightBaseline, type WeightExample, weightBaseline } from './weight-baseline.js';
import { WEIGHT_MODEL } from './weight-constants.js';
import { GUIDELINE_FLOOR, judgeCourse, screen } from './weight-guards.js';
import { runCourse, type WeightCourse } from './weight-model.js';
import { input, substitute, type Worked } from './working.js';

/** These words stand wherever the result of the inverse stands. */
export const FOR_THE_TOOL = 'checks the tool, not for a person';

/** The constant change of intake that an invented example would need. */
export interface ConstantChange {
  /** kcal a day against the intake at the start; below zero is less food. */
  readonly change: Worked<'kcal'>;
  readonly intake: Worked<'kcal'>;
  readonly course: WeightCourse;
  readonly words: typeof FOR_THE_TOOL;
}

const DAYS = { low: 28, high: 3650 };
const HALVINGS = 30;

/**
 * The constant change of intake with which the dynamic model takes an invented example from its weight to `goal` (a
 * weight, not a loss) on day `days`. It checks the tool and is for no person. Refuses everything that content
 * on weight refuses (`screen`), a goal above the start, fewer than 28 days, an intake below the guideline's range
 * (1200 kcal women, 1500 kcal men), and a pace that is too fast for group material. Found by halving the interval
 * between the guideline's lowest intake and the intake at the start, to less than a thousandth of a kcal.
 * Source: the equations of Hall KD et al. Lancet 2011;378:826-837.
 */
export function constantChangeFor(
  example: WeightExample,
  goal: Measured<MassUnit>,
  days: number,
): Result<ConstantChange> {
  const may = screen(example.adult, goal);
  if (!may.ok) return may;
  const read = weightBaseline(example);
  if (!read.ok) return read;
  const baseline = read.value;
  const target = Number(goal.value) * unitRatio(goal.unit, 'kg');
  if (target > baseline.weight) {
    return refuse(
      'The goal is above the weight at the start.',
      'The model is held against trials of losing weight; choose a goal at or below the start.',
    );
  }
  if (!(Number.isInteger(days) && days >= DAYS.low && days <= DAYS.high)) {
    return refuse(
      `${days} is not a number of days from ${DAYS.low} to ${DAYS.high}.`,
      'Use whole days, four weeks or more.',
    );
  }
  const { sex } = example.adult;
  const floor = GUIDELINE_FLOOR[sex] * KJ_PER_KCAL - baseline.intakeKj;
  if (floor > 0 || weightAfter(baseline, floor, days) > target) return tooLittle(sex);
  let [less, more] = [floor, 0];
  for (let times = 0; times < HALVINGS; times += 1) {
    const middle = (less + more) / 2;
    if (weightAfter(baseline, middle, days) > target) more = middle;
    else less = middle;
  }
  const kj = (less + more) / 2;
  const course = constantCourse(baseline, kj, days);
  if (judgeCourse(course, 'lb').flag !== 'ok') {
    return refuse(
      'The example would lose more than 2 lb or 1 percent of its weight a week, which is too fast.',
      'Allow more days, or a goal nearer to the start.',
    );
  }
  const intake = (baseline.intakeKj + kj) / KJ_PER_KCAL;
  const found = input(
    'intake',
    intake,
    'kcal',
    WEIGHT_MODEL,
    `gives the goal on day ${days}; ${FOR_THE_TOOL}`,
  );
  return ok({
    change: {
      quantity: known(kj / KJ_PER_KCAL, 'kcal'),
      working: substitute(
        { formula: 'intake - baseline', inputs: [found, input('baseline', null, 'kcal', '')] },
        'baseline',
        baseline.intake.working,
      ),
      estimated: true,
    },
    intake: {
      quantity: known(intake, 'kcal'),
      working: { formula: 'intake', inputs: [found] },
      estimated: true,
    },
    course,
    words: FOR_THE_TOOL,
  });
}

function tooLittle(sex: Sex) {
  return refuse(
    `The example would need less than ${GUIDELINE_FLOOR[sex]} kcal a day, below the guideline's range.`,
    'Allow more days, or a goal nearer to the start.',
  );
}

function constantCourse(baseline: WeightBaseline, kj: number, days: number): WeightCourse {
  return runCourse(baseline, { changes: [{ fromDay: 0, kj }] }, days);
}

/** Weight in kg at the end; a course that stopped early went below every goal there can be. */
function weightAfter(baseline: WeightBaseline, kj: number, days: number): number {
  const course = constantCourse(baseline, kj, days);
  return course.stopped ? 0 : course.days.reduce((_, day) => day).weight;
}
