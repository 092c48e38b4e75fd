import type { Reckoned } from './reckoned.js';
import { ok, type Result, refuse } from './result.js';
import { FROM_LESSON, input } from './working.js';

/** What somebody did. `moderate`: you can talk but not sing; `vigorous`: only a few words at a time. */
export type MoveKind = 'light' | 'moderate' | 'vigorous' | 'strength' | 'balance';

/** One thing on one day; seated and chair forms count like others. */
export interface Move {
  /** 1 to 7. */
  readonly day: number;
  readonly kind: MoveKind;
  /** `null` is not known. */
  readonly minutes: number | null;
}

/** Ages 18 to 64, and 65 and over. Children have minutes by the day; see `childWeek`. */
export type ActivityGroup = 'adult' | 'older adult';

const GUIDELINES = 'activity-guidelines-2018';

/** Minutes a week in moderate equivalents, and days. */
export const WEEK_GOAL = {
  moderate: { from: 150, to: 300 },
  vigorousCounts: 2,
  strengthDays: 2,
  childMinutesADay: 60,
  source: GUIDELINES,
} as const;

/** Three answers: what is not known is neither yes nor no. */
export type Met = 'yes' | 'no' | 'not known';

/** Aerobic minutes of a week, in moderate equivalents. */
export interface AerobicWeek {
  /** Moderate minutes + 2 × vigorous minutes. */
  readonly equivalent: Reckoned<'min'>;
  /** Whether minutes that are not known come on top. */
  readonly atLeast: boolean;
  readonly meetsAerobic: Met;
  /** Minutes to 150; 0 when there, `null` when not known. */
  readonly missing: number | null;
}

export interface ActivityWeek extends AerobicWeek {
  /** Different days with strength work. */
  readonly strengthDays: number;
  readonly meetsStrength: boolean;
  /** Whether a day has balance work; asked of older adults only. */
  readonly meetsBalance: boolean | null;
}

/**
 * Adds a week up against the guidelines: 150 to 300 minutes of moderate activity (one vigorous minute counts as two),
 * muscle work on 2 days or more, and balance work for people of 65 and over. Light minutes do not count here, and
 * strength and balance minutes are not added to the aerobic ones. Refuses days outside 1 to 7, minutes below
 * zero, and more than 24 hours on one day.
 * Source: Physical Activity Guidelines for Americans, 2nd edition, 2018 (150 minutes seen restated, the
 * rest from memory).
 */
export function activityWeek(moves: readonly Move[], group: ActivityGroup): Result<ActivityWeek> {
  const wrong = moves.find(({ day }) => !Number.isInteger(day) || day < 1 || day > DAYS_A_WEEK);
  if (wrong !== undefined)
    return refuse(`Day ${wrong.day} is not a day of the week.`, 'Use 1 to 7 for Monday to Sunday.');
  for (let day = 1; day <= DAYS_A_WEEK; day += 1) {
    const checked = addMinutes(
      moves.filter((move) => move.day === day).map(({ minutes }) => minutes),
      1,
    );
    if (!checked.ok) return checked;
  }
  const of = (kind: MoveKind) => moves.filter((move) => move.kind === kind).map(({ minutes }) => minutes);
  const days = new Set(moves.filter(({ kind }) => kind === 'strength').map(({ day }) => day));
  return ok({
    ...inEquivalents(of('moderate'), of('vigorous')),
    strengthDays: days.size,
    meetsStrength: days.size >= WEEK_GOAL.strengthDays,
    meetsBalance: group === 'older adult' ? moves.some(({ kind }) => kind === 'balance') : null,
  });
}

/**
 * Minutes of a week in moderate equivalents from minutes of each kind, each list in any order. A part that is not
 * known is left out and `atLeast` says so; when no part is known the sum is not known. Refuses minutes below
 * zero and more than a week has.
 * Source: Physical Activity Guidelines for Americans, 2nd edition, 2018 (from memory).
 */
export function aerobicWeek(
  moderate: readonly (number | null)[],
  vigorous: readonly (number | null)[],
): Result<AerobicWeek> {
  const all = addMinutes([...moderate, ...vigorous], DAYS_A_WEEK);
  return all.ok ? ok(inEquivalents(moderate, vigorous)) : all;
}

/** The same for minutes that were checked. */
function inEquivalents(
  moderate: readonly (number | null)[],
  vigorous: readonly (number | null)[],
): AerobicWeek {
  const parts = [...moderate, ...vigorous];
  const nothing = parts.length > 0 && parts.every((one) => one === null);
  const medium = sumOf(moderate);
  const hard = sumOf(vigorous);
  const value = nothing ? null : medium + WEEK_GOAL.vigorousCounts * hard;
  const atLeast = value !== null && parts.includes(null);
  const enough = value !== null && value >= WEEK_GOAL.moderate.from;
  const known = value !== null && !atLeast;
  return {
    equivalent: {
      value,
      unit: 'min',
      working: {
        formula: 'moderate + counts * vigorous',
        inputs: [
          input('moderate', nothing ? null : medium, 'min', FROM_LESSON),
          input('counts', WEEK_GOAL.vigorousCounts, 'moderate min per vigorous min', GUIDELINES),
          input('vigorous', nothing ? null : hard, 'min', FROM_LESSON),
        ],
      },
    },
    atLeast,
    meetsAerobic: enough ? 'yes' : known ? 'no' : 'not known',
    missing: enough ? 0 : known ? WEEK_GOAL.moderate.from - value : null,
  };
}

/**
 * On how many days a child or teenager reaches 60 minutes, of the days given (at most seven); days that are not known
 * are counted apart. Source: Physical Activity Guidelines for Americans, 2nd edition, 2018 (from memory).
 */
export function childWeek(
  minutes: readonly (number | null)[],
): Result<{ readonly reached: number; readonly notKnown: number; readonly days: number }> {
  if (minutes.length > DAYS_A_WEEK)
    return refuse(`A week has no ${minutes.length} days.`, 'Give at most seven days.');
  for (const one of minutes) {
    const checked = addMinutes([one], 1);
    if (!checked.ok) return checked;
  }
  return ok({
    reached: minutes.filter((one) => one !== null && one >= WEEK_GOAL.childMinutesADay).length,
    notKnown: minutes.filter((one) => one === null).length,
    days: minutes.length,
  });
}

const DAYS_A_WEEK = 7;
const MINUTES_A_DAY = 1440;

/** The sum of the known minutes. Refuses minutes below zero and what does not fit into so many days. */
function addMinutes(minutes: readonly (number | null)[], days: number): Result<number> {
  const there = minutes.filter((one) => one !== null);
  const below = there.find((one) => !(one >= 0));
  if (below !== undefined) return refuse(`${below} is no number of minutes.`, 'Write minutes, 0 or more.');
  const total = sumOf(there);
  if (total > days * MINUTES_A_DAY) {
    return refuse(
      `${total} minutes do not fit into ${days === 1 ? 'one day' : 'a week'}.`,
      'Check that the numbers are minutes.',
    );
  }
  return ok(total);
}

/** In ascending order, so that the order of the rows makes no difference to the last binary digit. */
function sumOf(minutes: readonly (number | null)[]): number {
  const there = minutes.filter((one) => one !== null).sort((a, b) => a - b);
  return there.reduce((so, one) => so + one, 0);
}
