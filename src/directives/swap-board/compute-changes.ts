import { kebab } from '../../document/index.js';
import {
  type Contains,
  DAILY_VALUES,
  type Food,
  isLost,
  nutrientIn,
  onlyIfFortified,
  swapChange,
} from '../../nutrition/index.js';
import { decimalsOf } from '../compute-decimals.js';
import type { ComputedNumber } from '../contract.js';
import type { SwapNutrient, SwapRow } from './schema.js';

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

/** What both sides hold of a nutrient and how far it moves; its three numbers go to the others. */
export function changeOf(
  at: string,
  row: SwapRow,
  nutrient: SwapNutrient,
  numbers: ComputedNumber[],
): Change {
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
      ...decimalsOf(nutrient),
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
    ...decimalsOf(nutrient),
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
export function bringsIodine({ contains }: Food): boolean {
  const sure: Contains = 'yes';
  return (['fish', 'shellfish', 'milk', 'egg'] as const).some((content) => contains[content] === sure);
}
