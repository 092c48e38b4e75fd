import { nutrientIn } from '../../nutrition/index.js';
import type { ComputeContext, Computed } from '../contract.js';
import { type Effect, effectOf, less, timesNumber } from './compute-effect.js';
import { DAYS_A_WEEK, type StepRow, type Touch, type Values } from './schema.js';

export interface PlanResult extends Computed {
  /** By the key of a step. */
  readonly effects: ReadonlyMap<string, Effect>;
  readonly sources: readonly string[];
  readonly estimated: readonly string[];
}

/** Fiber of a day from which it comes in slowly, in grams. */
const MUCH_FIBER = 5;

/** What each step changes, in terms of food: a nutrient of what comes or goes, or its amount, times how often. */
export function compute({ id, steps, place }: Values, { published }: ComputeContext): PlanResult {
  const found = steps.map((step) => ({ step, made: effectOf(id, step, published) }));
  const numbers = found.flatMap(({ step, made }) =>
    made?.number ? [made.number, ...timesNumber(id, step)] : [],
  );
  const rinses = steps.flatMap(({ rinse }) => (rinse ? (less(published(rinse.id)) ?? []) : []));
  return {
    numbers,
    facts: {
      foods: [
        ...steps.flatMap(({ change }) =>
          change
            ? [
                {
                  food: change.food,
                  place: change.place,
                  side: change.way === 'less' ? 'old' : 'new',
                } as const,
              ]
            : [],
        ),
        ...rinses.map(({ food }) => ({ food, place })),
      ],
      nutrients: [],
      settings: { step: touched(steps) },
    },
    effects: new Map(found.flatMap(({ step, made }) => (made ? [[step.key, made.effect] as const] : []))),
    sources: [...new Set(numbers.flatMap(({ sources }) => sources))],
    estimated: [
      ...new Set(steps.flatMap(({ change }) => (change?.portion.estimated ? [change.portion.words] : []))),
    ],
  };
}

/** What the steps touch together, and much fiber where a food brings it; a value that is not known counts as much. */
function touched(steps: readonly StepRow[]): Touch[] {
  const fiber = steps.some(({ change, often }) => {
    if (change?.way !== 'more') return false;
    const each = nutrientIn(change.food, 'fiber', change.portion).quantity.value;
    const daily = often ? (often.per === 'day' ? often.times : often.times / DAYS_A_WEEK) : 1;
    return each === null || each * daily >= MUCH_FIBER;
  });
  return [
    ...new Set([...steps.flatMap(({ touches }) => touches), ...(fiber ? (['adds fiber'] as const) : [])]),
  ];
}
