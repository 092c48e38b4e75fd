import { kebab } from '../../document/index.js';
import {
  type DishChange,
  type DishForm,
  type DishKindName,
  type DishLoss,
  dishChanges,
  NEEDS,
  type Need,
} from '../../nutrition/index.js';
import { decimalsOf } from '../compute-decimals.js';
import { type DishKind, type DishPart, dishNumbers, sourcesOf, totalNumber } from '../compute-dish.js';
import type { ComputeContext, Computed, ComputedNumber } from '../contract.js';
import { quoted, readProblem } from '../problems.js';
import type { Published, PublishedFood } from '../published.js';
import { allReplaced, judged, type Verdict, verdictsOf, wholePasses } from './compute-tests.js';
import type { Swap, Values } from './schema.js';

/** A nutrient that moved, with the ids of both numbers and their values. */
export interface Move {
  readonly nutrient: DishLoss;
  readonly before: { readonly number: string; readonly value: number };
  readonly after: { readonly number: string; readonly value: number };
  readonly lost: boolean;
}

export interface TurnResult extends Computed {
  readonly form: DishForm;
  readonly serves: number;
  readonly before: readonly PublishedFood[];
  readonly after: readonly (PublishedFood & { readonly fresh: boolean; readonly countsAs?: DishKindName })[];
  readonly partsBefore: readonly DishPart[];
  readonly partsAfter: readonly DishPart[];
  readonly kinds: readonly DishKind[];
  readonly verdicts: readonly Verdict[];
  /** What is known of both dishes, lost first, then by how far it moved. */
  readonly moves: readonly Move[];
  readonly lost: readonly DishLoss[];
  /** Nutrients of which nobody can say whether they are lost. */
  readonly open: readonly DishLoss[];
  /** What has to be so, and what a need asks to bear in mind. */
  readonly conditions: readonly string[];
  readonly notes: readonly string[];
  /** Whether a food that often brings iodine goes. */
  readonly iodine: boolean;
  readonly estimated: readonly string[];
  readonly sources: readonly string[];
}

/** Tests the dish, swaps, tests again, and works out both dishes. Whatever does not pass is told, and nothing is shown. */
export function compute(values: Values, context: ComputeContext): TurnResult | undefined {
  const dish = context.published(values.of.id);
  if (dish?.kind !== 'dish' || !fits(values, dish, context)) return undefined;
  const { id, needs, swaps } = values;
  const verdicts = verdictsOf(dish.foods, needs);
  const replaced = allReplaced(values, dish.foods, verdicts, context);
  const conditions = swaps.map((swap) => judged(swap, values, context));
  if (!replaced || conditions.includes(undefined)) return undefined;
  const after = dish.foods.map((one) => {
    const swap = swaps.find(({ old }) => old.food.id === one.food.id);
    return swap ? { ...fromSwap(swap), fresh: true } : { ...one, fresh: false };
  });
  if (!wholePasses(values, after, dish.beside, context)) return undefined;
  const [was, is] = [dishNumbers(values.of.id, dish.foods), dishNumbers(id, after)];
  if ('reason' in was || 'reason' in is) {
    const refused = 'reason' in was ? was : is;
    if ('reason' in refused) context.report.add(readProblem('directives/rows', refused, values.place));
    return undefined;
  }
  const changes = dishChanges(dish.foods, after, dish.serves);
  const numbers = changes.flatMap((change) => numbersOf(id, change, dish.foods, after));
  const lost = changes.flatMap((change) => (change.lost ? [change.nutrient] : []));
  const kept = verdicts.flatMap(({ index, goes, reasons }) => (goes || after[index]?.fresh ? [] : reasons));
  return {
    numbers: [...is.numbers, ...numbers, ...TOTALS.map((one) => totalNumber(id, after, one, dish.serves))],
    facts: {
      foods: [
        ...after.map(({ food, fresh }) => ({
          food,
          place: swaps.find((one) => one.fresh.food.id === food.id)?.fresh.piece.place ?? values.place,
          ...(fresh ? { side: 'new' as const } : {}),
        })),
        ...swaps.map(({ old }) => ({ food: old.food, place: old.place, side: 'old' as const })),
      ],
      nutrients: [],
      settings: { need: needs, lost: lost.length > 0 ? ['yes'] : [] },
    },
    publishes: {
      kind: 'dish',
      form: dish.form,
      foods: after.map(({ food, portion, fills, words }) => ({ food, portion, fills, words })),
      beside: dish.beside,
      serves: dish.serves,
    },
    form: dish.form,
    serves: dish.serves,
    before: dish.foods,
    after,
    partsBefore: was.parts,
    partsAfter: is.parts,
    kinds: is.kinds,
    verdicts,
    moves: movesOf(id, changes),
    lost,
    open: changes.flatMap((change) => (change.lost === null ? [change.nutrient] : [])),
    conditions: [...new Set([...conditions.flatMap((one) => one ?? []), ...kept])],
    notes: [...new Set(needs.flatMap((need) => notesOf(NEEDS[need])))],
    iodine: swaps.some(({ old }) => IODINE.some((content) => old.food.contains[content] === 'yes')),
    estimated: after.flatMap(({ words, portion, fills }) =>
      portion.estimated || fills?.volume.estimated ? [words] : [],
    ),
    sources: sourcesOf([...dish.foods, ...after]),
  };
}

const TOTALS = ['energy', 'sodium', 'saturated fat'] as const;
/** Foods that bring iodine to many people; the release holds no value of it. */
const IODINE = ['fish', 'shellfish', 'milk', 'egg'] as const;

/** Needs of faith say what was looked at and what was not. */
function notesOf({ about, notes }: Need): readonly string[] {
  return about === 'faith' ? notes : [];
}

/** Every old food is in the dish, once, in the amount that is written. */
function fits(
  { swaps }: Values,
  dish: Published & { readonly kind: 'dish' },
  { report }: ComputeContext,
): boolean {
  const fault = (reason: string, hint: string, { place }: Swap['old']) => {
    report.add(readProblem('directives/swap', { reason, hint }, place));
    return false;
  };
  return swaps
    .map(({ old }, i) => {
      const own = dish.foods.find(({ food }) => food.id === old.food.id);
      if (!own)
        return fault(
          `${quoted(old.words)} is not in the dish.`,
          `The dish has: ${dish.foods.map(({ words }) => words).join('; ')}.`,
          old,
        );
      if (swaps.slice(0, i).some((one) => one.old.food.id === old.food.id))
        return fault(`${quoted(old.words)} goes already.`, 'Write one row for each food that goes.', old);
      if (
        old.grams !== null &&
        Math.abs(old.grams - own.portion.grams.value) > APART * own.portion.grams.value
      )
        return fault(
          `The dish has another amount of ${quoted(old.words)}: ${own.portion.words}.`,
          'Write the old food as the dish has it, or without an amount.',
          old,
        );
      return true;
    })
    .every(Boolean);
}
/** Two ways to write one amount may differ by so much, as a cup and its weight. */
const APART = 0.02;

function fromSwap({ fresh, countsAs }: Swap) {
  const { food, portion, words, fills } = fresh;
  return { food, portion, words, fills, ...(countsAs ? { countsAs } : {}) };
}

function numbersOf(
  id: string,
  { nutrient, before, after }: DishChange,
  was: readonly PublishedFood[],
  is: readonly PublishedFood[],
): ComputedNumber[] {
  const number = (
    name: string,
    worked: DishChange['before'],
    foods: readonly PublishedFood[],
  ): ComputedNumber => ({
    id: `${id}.${name}.${kebab(nutrient)}`,
    value: worked.quantity.value,
    ...(worked.quantity.atLeast ? { atLeast: true } : {}),
    unit: worked.quantity.unit,
    ...decimalsOf(nutrient),
    ...worked.working,
    sources: sourcesOf(foods),
    what: `${nutrient} ${name} the turn, for one person`,
  });
  return [number('before', before, was), number('after', after, is)];
}

/** Known on both sides in full, the lost ones first, then by share of the Daily Value. */
function movesOf(id: string, changes: readonly DishChange[]): Move[] {
  const known = ({ before, after, moved }: DishChange) =>
    before.quantity.value !== null &&
    after.quantity.value !== null &&
    !before.quantity.atLeast &&
    !after.quantity.atLeast &&
    moved > LEAST_MOVE;
  return (
    changes
      .filter(known)
      // What is lost keeps the order of the list; the rest goes by how far it moved.
      .toSorted((a, b) =>
        a.lost === true && b.lost === true
          ? 0
          : Number(b.lost === true) - Number(a.lost === true) || b.moved - a.moved,
      )
      .map(({ nutrient, before, after, lost }) => ({
        nutrient,
        before: { number: `${id}.before.${kebab(nutrient)}`, value: before.quantity.value ?? 0 },
        after: { number: `${id}.after.${kebab(nutrient)}`, value: after.quantity.value ?? 0 },
        lost: lost === true,
      }))
  );
}
/** What moved by less than this share of the Daily Value is not worth a line. House rule. */
const LEAST_MOVE = 0.05;
