import type { Adult } from './adult.js';
import { known } from './arithmetic.js';
import type { Amount, MassUnit } from './quantity.js';
import { ok, type Result, refuse } from './result.js';
import { unitRatio } from './units.js';
import { screen, YOUNGEST_FOR_WEIGHT } from './weight-guards.js';
import { FROM_LESSON, input, type Worked } from './working.js';

/**
 * The trade's eased pace: ½ lb a week while 15 lb or less are left, 2 lb a week from 100 lb, straight between, never
 * more than 1 percent of weight a week. Common practice, no source.
 */
export const EASED_PACE = {
  slow: { left: 15, perWeek: 0.5 },
  fast: { left: 100, perWeek: 2 },
  mostPercent: 1,
} as const;
const PRACTICE = 'common practice';

/** The invented adult of a pace table; it may have no sex, and `adult` in place of an age. */
export type PaceExample = Omit<Adult, 'sex' | 'age'> & { readonly age: number | 'adult' | null };

export interface PaceWeek {
  /** Weeks gone by; 0 is the start. */
  readonly week: number;
  /** lb left to lose at that time. */
  readonly left: number;
  /** lb that the week to come loses; 0 at the end. */
  readonly pace: number;
}

export interface EasedPace {
  readonly weeks: readonly PaceWeek[];
  /** Whole weeks after which at least so many lb are lost, for each milestone and at last for the whole. */
  readonly milestones: readonly { readonly lost: number; readonly weeks: number }[];
}

/**
 * The eased pace at a point, in lb a week: min(2, max(0.5, 0.5 + 1.5 × (left − 15) ÷ 85), 1% of weight), and never
 * more than is left. `left` in lb, 0 or more; `weight` in lb at that point. Common practice, no source.
 */
export function paceAt(left: number, weight: number): Worked<'lb'> {
  const { slow, fast, mostPercent } = EASED_PACE;
  const rise = (fast.perWeek - slow.perWeek) / (fast.left - slow.left);
  const eased = Math.max(slow.perWeek, slow.perWeek + rise * (left - slow.left));
  return {
    quantity: known(Math.min(fast.perWeek, eased, (weight * mostPercent) / 100, left), 'lb'),
    working: {
      formula:
        'min(fast, max(slow, slow + (fast - slow) * (left - slow_left) / (fast_left - slow_left)), weight * percent / 100, left)',
      inputs: [
        input('fast', fast.perWeek, 'lb a week', PRACTICE),
        input('slow', slow.perWeek, 'lb a week', PRACTICE),
        input('left', left, 'lb', FROM_LESSON),
        input('slow_left', slow.left, 'lb', PRACTICE),
        input('fast_left', fast.left, 'lb', PRACTICE),
        input('weight', weight, 'lb', FROM_LESSON),
        input('percent', mostPercent, 'percent a week', PRACTICE),
      ],
    },
    estimated: true,
  };
}

/**
 * A slow loss that eases as less is left, week by week, for an invented adult. Each week loses the pace of
 * its beginning. `every` is the distance of the milestones. Refuses everything that content on weight refuses
 * (`screen`, with the weight at the end as the goal) and amounts that are not above zero. Never a promise to a reader.
 */
export function easedPace(
  example: PaceExample,
  toLose: Amount<MassUnit>,
  every: Amount<MassUnit> = { value: 10, unit: 'lb' },
): Result<EasedPace> {
  const total = toLose.value * unitRatio(toLose.unit, 'lb');
  const apart = every.value * unitRatio(every.unit, 'lb');
  const start = Number(example.weight.value) * unitRatio(example.weight.unit, 'lb');
  if (!(total > 0 && Number.isFinite(total) && apart >= LEAST_APART)) {
    return refuse(
      `A loss of ${toLose.value} ${toLose.unit} with milestones ${every.value} ${every.unit} apart cannot be paced.`,
      'Write both above zero, with milestones 1 lb or more apart.',
    );
  }
  const goal = example.weight.value === null ? null : start - total;
  if (goal !== null && goal <= 0)
    return refuse('The loss is as much as the example weighs.', 'Check the amount and its unit.');
  const age = example.age === 'adult' ? YOUNGEST_FOR_WEIGHT : example.age;
  const may = screen({ ...example, age }, { value: goal, unit: 'lb' });
  if (!may.ok) return may;
  const weeks: PaceWeek[] = [];
  let left = total;
  while (left > 0) {
    const pace = Number(paceAt(left, start - (total - left)).quantity.value);
    weeks.push({ week: weeks.length, left, pace });
    left -= pace;
  }
  weeks.push({ week: weeks.length, left: 0, pace: 0 });
  const marks = Array.from({ length: Math.ceil(total / apart) }, (_, at) =>
    Math.min(total, (at + 1) * apart),
  );
  return ok({
    weeks,
    milestones: marks.map((lost) => ({
      lost,
      weeks: weeks.findIndex((week) => total - week.left >= lost - NOISE),
    })),
  });
}

const LEAST_APART = 1;
/** Sums of binary fractions miss a mark by less than this many lb. */
const NOISE = 1e-9;
