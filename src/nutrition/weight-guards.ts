import { type Adult, heightInCm, type Sex, weightInKg } from './adult.js';
import { bmiOf, LOWEST_BMI, reaches } from './body-mass-index.js';
import type { Amount, MassUnit } from './quantity.js';
import type { Measured } from './reckoned.js';
import { inWords, ok, type Result, refuse } from './result.js';
import { unitRatio } from './units.js';
import { VERY_LOW_KCAL, type WeightCourse } from './weight-model.js';
import { FROM_LESSON, input, type Working } from './working.js';

const NEEDS_A_CLINICIAN = 'Refer to a clinician; use the weight-free sheet.';

/** Nobody younger gets content on weight: the energy equations begin here (18 elsewhere). */
export const YOUNGEST_FOR_WEIGHT = 19;

/**
 * Why content on weight must turn an example away or refer it: an age under 19 (the energy equations' limit; 18
 * elsewhere), an index below 18.5 now or at the goal, and every circumstance of the list. Empty when there is no
 * reason. An unknown age, height or weight is a reason too, because nobody can say that it is safe.
 * Source: 2013 AHA/ACC/TOS guideline; scope of the 2023 energy equations; the circumstances from memory.
 */
export function turnAways(adult: Omit<Adult, 'sex'>, goal?: Measured<MassUnit>): readonly string[] {
  const reasons: string[] = [];
  if (adult.age === null) reasons.push('the age is not known');
  else if (!(adult.age >= YOUNGEST_FOR_WEIGHT)) reasons.push(`an age under ${YOUNGEST_FOR_WEIGHT}`);
  reasons.push(...(adult.circumstances ?? []));
  reasons.push(...belowLowest(adult, adult.weight, ''));
  if (goal !== undefined) reasons.push(...belowLowest(adult, goal, ' at the goal'));
  return reasons;
}

/** Passes when nothing speaks against content on weight; otherwise refuses with every reason. */
export function screen(adult: Omit<Adult, 'sex'>, goal?: Measured<MassUnit>): Result<'may be shown'> {
  const reasons = turnAways(adult, goal);
  if (reasons.length === 0) return ok('may be shown');
  return refuse(
    `No weight forecast and no energy target is made here: ${inWords(reasons)}.`,
    NEEDS_A_CLINICIAN,
  );
}

function belowLowest(adult: Omit<Adult, 'sex'>, weight: Measured<MassUnit>, where: string): string[] {
  const height = heightInCm(adult.height);
  const kg = weightInKg(weight);
  if (!height.ok) return [height.reason];
  if (!kg.ok) return [kg.reason];
  if (height.value.value === null || kg.value.value === null)
    return [`the body mass index${where} is not known`];
  const low = !reaches(bmiOf(kg.value.value, height.value.value), LOWEST_BMI);
  return low ? [`a body mass index below ${LOWEST_BMI}${where}`] : [];
}

export type IntakeFlag = 'ok' | 'below guideline range' | 'very-low-calorie';

/** The lowest usual prescription in kcal a day: 2013 AHA/ACC/TOS guideline, recommendation 3a. */
export const GUIDELINE_FLOOR: Readonly<Record<Sex, number>> = { female: 1200, male: 1500 };

/**
 * Where a day's intake stands against the guideline: 1200 kcal (women) or 1500 kcal (men) and more is within, below
 * 800 kcal is very-low-calorie, for trained staff in a medical setting only and refused by this tool.
 * Source: 2013 AHA/ACC/TOS guideline, recommendations 3a and 4e.
 */
export function intakeFlag(sex: Sex, kcal: number): IntakeFlag {
  if (kcal >= GUIDELINE_FLOOR[sex]) return 'ok';
  return kcal >= VERY_LOW_KCAL ? 'below guideline range' : 'very-low-calorie';
}

export type PaceFlag = 'ok' | 'too fast' | 'never drawn';

/** kg a week from which gallstone risk rises; such a pace is never drawn. Practice, from memory. */
export const NEVER_DRAWN_KG = 1.5;
/** The most a week in group material: 2 lb, or 1 kg where people count in kg; and 1 percent of weight. */
export const MOST_A_WEEK = { lb: 2, kg: 1, percent: 1 } as const;

/** Whether a loss a week may stand in group material. Source: CDC, 1 to 2 lb a week (from memory); practice ½ to 2 lb. */
export function paceFlag(perWeek: Amount<'lb' | 'kg'>): PaceFlag {
  const kg = perWeek.value * unitRatio(perWeek.unit, 'kg');
  if (kg >= NEVER_DRAWN_KG) return 'never drawn';
  return perWeek.value <= MOST_A_WEEK[perWeek.unit] ? 'ok' : 'too fast';
}

/** How fast a course goes, losses above zero. */
export interface CoursePace {
  /** The greatest loss in any seven days, kg. */
  readonly greatestWeek: number;
  /** The greatest mean loss a week over any four weeks (or the whole of a shorter course), kg. */
  readonly fourWeekMean: number;
  /** The same as percent of the weight before those weeks, at its greatest. */
  readonly percentOfWeight: number;
  readonly flag: PaceFlag;
}

/**
 * How fast a course loses weight, and whether that may stand in group material: `never drawn` when any seven days lose
 * 1.5 kg, `too fast` when any four weeks lose more than 2 lb (or 1 kg, by `unit`) or 1 percent of weight a week. Water
 * that leaves in the first days counts in.
 */
export function judgeCourse(course: WeightCourse, unit: 'lb' | 'kg'): CoursePace {
  return judgeCourses([course], unit);
}

/** The same for the fastest of several courses. */
export function judgeCourses(courses: readonly WeightCourse[], unit: 'lb' | 'kg'): CoursePace {
  const most = (span: number, measure: (loss: number, before: number) => number) =>
    Math.max(0, ...courses.map((course) => greatest(course, span, measure)));
  const greatestWeek = most(7, (loss) => loss);
  const fourWeekMean = most(28, (loss) => loss);
  const percentOfWeight = most(28, (loss, before) => (loss / before) * 100);
  const mean = paceFlag({ value: fourWeekMean * unitRatio('kg', unit), unit });
  const slow = mean === 'ok' && percentOfWeight <= MOST_A_WEEK.percent;
  const flag = greatestWeek >= NEVER_DRAWN_KG ? 'never drawn' : slow ? 'ok' : 'too fast';
  return { greatestWeek, fourWeekMean, percentOfWeight, flag };
}

/** The greatest of a measure of the loss a week over all spans of some days; zero for a course of one day. */
function greatest(
  { days }: WeightCourse,
  span: number,
  measure: (lossAWeek: number, before: number) => number,
): number {
  const length = Math.min(span, days.length - 1);
  return days.reduce((so, end) => {
    const begin = days[end.day - length];
    if (begin === undefined || length === 0) return so;
    return Math.max(so, measure(((begin.weight - end.weight) * 7) / length, begin.weight));
  }, 0);
}

/** 3 to 5 percent of a weight, in its unit, from which health gains begin. */
export interface UsefulLoss {
  readonly low: number | null;
  readonly high: number | null;
  readonly unit: MassUnit;
  readonly working: Working;
}

/**
 * The loss that already helps: 3 to 5 percent of weight; more than 5 percent helps more. Unknown in, unknown out.
 * Source: 2013 AHA/ACC/TOS guideline.
 */
export function usefulLoss(weight: Measured<MassUnit>): Result<UsefulLoss> {
  const read = weightInKg(weight);
  if (!read.ok) return read;
  const { value, unit } = weight;
  return ok({
    low: value === null ? null : (value * 3) / 100,
    high: value === null ? null : (value * 5) / 100,
    unit,
    working: {
      formula: 'low = weight * from / 100; high = weight * to / 100',
      inputs: [
        input('weight', value, unit, FROM_LESSON),
        input('from', 3, 'percent', 'aha-acc-tos-2013'),
        input('to', 5, 'percent', 'aha-acc-tos-2013'),
      ],
    },
  });
}
