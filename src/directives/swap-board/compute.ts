import { kebab } from '../../document/index.js';
import {
  type Contains,
  DAILY_VALUES,
  type Food,
  isLost,
  type NeedVerdict,
  nutrientIn,
  onlyIfFortified,
  swapChange,
  testNeeds,
} from '../../nutrition/index.js';
import type { ComputeContext, Computed, ComputedNumber } from '../contract.js';
import { readProblem } from '../problems.js';
import { type Costs, costsOf, needsOf } from './compute-costs.js';
import { judged, notesOf, SETTINGS, trapsOf } from './compute-tests.js';
import { SWAP_NUTRIENTS, type SwapNutrient, type SwapRow, type Values } from './schema.js';

/** One side of a change: the number's id and its value, `null` where it is not known. */
export interface Side {
  readonly number: string;
  readonly value: number | null;
}

export interface Change {
  readonly nutrient: SwapNutrient;
  readonly before: Side;
  readonly after: Side;
  /** How far it moved, as a share of the Daily Value; zero where it is not known. */
  readonly moved: number;
  /** `null` where nobody can say. */
  readonly lost: boolean | null;
  /** The new food brings it only because it was added. */
  readonly added: boolean;
}

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
  const lost = new Set(swaps.flatMap((swap) => lostIn(swap)));
  const used = rows.flatMap(({ old, fresh }) => [old, fresh]);
  return {
    numbers,
    facts: {
      foods: [
        ...rows.flatMap(({ old, fresh }) => [
          { food: old.food, place: old.piece.place, side: 'old' as const },
          { food: fresh.food, place: fresh.piece.place, side: 'new' as const },
        ]),
        // A trap of the worksheet is named and not offered.
        ...traps.map((food) => ({ food, place: values.place, side: 'old' as const })),
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

export function lostIn({ changes }: BoardSwap): SwapNutrient[] {
  return changes.flatMap(({ nutrient, lost }) => (lost === true ? [nutrient] : []));
}

/** A row is called by its new food; where two rows have the same, by both. */
function nameOf({ old, fresh }: SwapRow, rows: readonly SwapRow[]): string {
  const same = rows.filter((row) => kebab(row.fresh.words) === kebab(fresh.words));
  return kebab(same.length > 1 ? `${old.words} to ${fresh.words}` : fresh.words);
}

function changeOf(at: string, row: SwapRow, nutrient: SwapNutrient, numbers: ComputedNumber[]): Change {
  const [before, after] = [row.old, row.fresh].map(({ food, portion }) =>
    nutrientIn(food, nutrient, portion),
  );
  if (!before || !after) throw new Error('A swap has two sides.');
  const change = swapChange(before, after);
  const name = `${at}.${kebab(nutrient)}`;
  const sides = [['before', before, row.old] as const, ['after', after, row.fresh] as const].map(
    ([when, worked, { food, portion }]): ComputedNumber => ({
      id: `${name}-${when}`,
      value: worked.quantity.value,
      unit: worked.quantity.unit,
      ...worked.working,
      sources: [food.record.source],
      // Only the two sides of one swap stand side by side, so that each row has amounts of its own.
      what: `${nutrient} ${when} the swap: ${portion.words} ${food.name}`,
      food: { id: food.id, ...food.record },
    }),
  );
  numbers.push(...sides, {
    id: `${name}-change`,
    value: change.value,
    unit: change.unit,
    ...change.working,
    sources: [...new Set([row.old, row.fresh].map(({ food }) => food.record.source))],
    what: `change of ${nutrient} from ${row.old.food.name} to ${row.fresh.food.name}`,
  });
  const daily = DAILY_VALUES[nutrient].value;
  const given = after.quantity.value;
  return {
    nutrient,
    before: { number: `${name}-before`, value: before.quantity.value },
    after: { number: `${name}-after`, value: given },
    moved: change.value === null ? 0 : Math.abs(change.value) / daily,
    lost: isLost(before, after, nutrient),
    added:
      given !== null &&
      given >= LEAST_ADDED * daily &&
      !isOfAnimals(row.fresh.food) &&
      onlyIfFortified(row.fresh.food, nutrient),
  };
}
/** Below this share of the Daily Value a food may well bring it of its own. House rule. */
const LEAST_ADDED = 0.1;

const ANIMAL = ['meat', 'fish', 'shellfish', 'milk', 'egg'] as const;
/** Foods of animals bring calcium, iron and vitamin B12 of their own, whatever was added. */
function isOfAnimals({ contains }: Food): boolean {
  return ANIMAL.some((content) => contains[content] === 'yes');
}

/** Foods that bring iodine to many people; the release holds no value of it. */
function bringsIodine({ contains }: Food): boolean {
  const sure: Contains = 'yes';
  return (['fish', 'shellfish', 'milk', 'egg'] as const).some((content) => contains[content] === sure);
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
