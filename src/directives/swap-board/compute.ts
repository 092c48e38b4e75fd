import { kebab } from '../../document/index.js';
import { type Food, type NeedVerdict, testNeeds } from '../../nutrition/index.js';
import type { ComputeContext, Computed, ComputedNumber } from '../contract.js';
import { readProblem } from '../problems.js';
import { bringsIodine, type Change, changeOf } from './compute-changes.js';
import { type Costs, costsOf, needsOf } from './compute-costs.js';
import { judged, notesOf, SETTINGS, trapsOf } from './compute-tests.js';
import { SWAP_NUTRIENTS, type SwapNutrient, type SwapRow, type Values } from './schema.js';

export interface BoardSwap {
  readonly row: SwapRow;
  readonly changes: readonly Change[];
  readonly costs?: Costs;
  /** What has to be so for the new food. */
  readonly conditions: readonly string[];
  /** Whether a food that often brings iodine goes and none comes. */
  readonly iodine: boolean;
}

/** A food of the worksheet with what each need says of it. */
export interface Candidate {
  readonly words: string;
  readonly verdicts: readonly NeedVerdict[];
}

export interface BoardResult extends Computed {
  readonly swaps: readonly BoardSwap[];
  readonly notes: readonly string[];
  readonly candidates: readonly Candidate[];
  readonly estimated: readonly string[];
  readonly sources: readonly string[];
}

/** Tests each new food by every need in force and works out what changes. What does not pass is told, and nothing is shown. */
export function compute(values: Values, context: ComputeContext): BoardResult | undefined {
  const { id, rows, needs } = values;
  const conditions = rows.map((row) => judged(row, values, context));
  const numbers: ComputedNumber[] = [];
  const swaps = rows.map((row, i): BoardSwap => {
    const at = `${id}.${nameOf(row, rows)}`;
    const changes = SWAP_NUTRIENTS.map((nutrient) => changeOf(at, row, nutrient, numbers));
    const costs = costsOf(at, row, values.currency, numbers);
    return {
      row,
      changes,
      ...(costs ? { costs } : {}),
      conditions: conditions[i] ?? [],
      iodine: bringsIodine(row.old.food) && !bringsIodine(row.fresh.food),
    };
  });
  const idle = swaps.map((swap) => doesItsJob(swap, context)).includes(false);
  if (idle || conditions.includes(undefined)) return undefined;
  const traps = trapsOf(values);
  // Vitamin B12 that may be lost calls for its caution as that which is.
  const lost = new Set(swaps.flatMap((swap) => [...lostIn(swap), ...(mayLoseB12(swap) ? [B12] : [])]));
  const used = rows.flatMap(({ old, fresh }) => [old, fresh]);
  return {
    numbers,
    facts: {
      foods: [
        ...rows.flatMap(({ old, fresh }) => [
          { food: old.food, place: old.piece.place, side: 'old' as const },
          { food: fresh.food, place: fresh.piece.place, side: 'new' as const },
        ]),
        // A trap stands on the worksheet, so that it is looked at like any food of the lesson.
        ...traps.map((food) => ({ food, place: values.place })),
      ],
      // As in a turned dish, nothing is ranked and nothing is a goal.
      nutrients: [],
      settings: {
        need: needs,
        lost: lost.size > 0 ? ['yes', ...lost] : [],
        sodium: sodiumFalls(swaps) ? ['falls 500 mg'] : [],
        use: rows.some(({ use }) => use !== undefined && MORNING.test(use)) ? ['morning'] : [],
      },
      prices: rows.flatMap(({ prices }) => (prices ? needsOf(prices) : [])),
    },
    swaps,
    notes: notesOf(values),
    candidates: candidatesOf(values, traps),
    estimated: [...new Set(used.flatMap(({ portion, words }) => (portion.estimated ? [words] : [])))],
    sources: [...new Set(used.map(({ food }) => food.record.source))],
  };
}

const MORNING = /\b(?:breakfasts?|mornings?)\b/i;

const B12 = 'vitamin B12';

function mayLoseB12({ changes }: BoardSwap): boolean {
  return changes.some(({ nutrient, lost }) => nutrient === B12 && lost === null);
}

export function lostIn({ changes }: BoardSwap): SwapNutrient[] {
  return changes.flatMap(({ nutrient, lost }) => (lost === true ? [nutrient] : []));
}

/** A row is called by its new food; where two rows have the same, by both. */
function nameOf({ old, fresh }: SwapRow, rows: readonly SwapRow[]): string {
  const same = rows.filter((row) => kebab(row.fresh.words) === kebab(fresh.words));
  return kebab(same.length > 1 ? `${old.words} to ${fresh.words}` : fresh.words);
}

/** A nutrient that is called the food's job has to come with the new food. */
function doesItsJob({ row, changes }: BoardSwap, { report }: ComputeContext): boolean {
  const idle = changes.filter(({ nutrient, lost }) => row.brings.includes(nutrient) && lost !== false);
  for (const { nutrient, lost } of idle)
    report.add(
      readProblem(
        'directives/swap',
        {
          reason:
            lost === null
              ? `It is not known whether ${row.fresh.food.name} brings enough ${nutrient} for this job.`
              : `${row.fresh.food.name} brings less than half of the ${nutrient}, so that it cannot do this job.`,
          hint: 'Name another food, or the job that it does do.',
        },
        row.place,
      ),
    );
  return idle.length === 0;
}

/** Milligrams by which sodium may fall over the board. What is not known may be none, so that the caution comes too often and never too late. */
function sodiumFalls(swaps: readonly BoardSwap[]): boolean {
  const falls = swaps.map(({ changes }) => {
    const sodium = changes.find(({ nutrient }) => nutrient === 'sodium');
    return Math.max(0, (sodium?.before.value ?? 0) - (sodium?.after.value ?? 0));
  });
  return falls.reduce((sum, fall) => sum + fall, 0) >= SODIUM_FALL;
}
const SODIUM_FALL = 500;

/** New foods and traps together, by name, so that their order tells nothing. */
function candidatesOf({ rows, needs }: Values, traps: readonly Food[]): Candidate[] {
  return [
    ...rows.map(({ fresh: { food, words } }) => ({ food, words })),
    ...traps.map((food) => ({ food, words: food.name })),
  ]
    .filter(({ food }, i, all) => all.findIndex((one) => one.food.id === food.id) === i)
    .toSorted((a, b) => (a.words < b.words ? -1 : 1))
    .map(({ food, words }) => ({ words, verdicts: testNeeds(food, needs, SETTINGS) }));
}
