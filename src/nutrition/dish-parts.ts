import type { Food, PlateKind } from './food.js';
import { volumeMeasure, type Weighable } from './food-measures.js';
import type { Portion } from './portion.js';
import { inWords, ok, type Result, refuse } from './result.js';
import { isVolumeUnit, KITCHENS, type Kitchen, sizeOf } from './units.js';
import { FROM_LESSON, input, substitute, type Working } from './working.js';
import type { WrittenAmount } from './written-amount.js';

/** A dish is shown in twelve parts. */
export const DISH_PARTS = 12;
/** A kind above this share of the dish has a part of its own. House rule. */
export const OWN_PART_ABOVE = 0.05;

/** Kinds that fill a dish. Drinks, fats, seasonings and calcium foods stand beside it in words. */
export const DISH_KINDS = ['vegetables and fruit', 'protein', 'grain or starch'] as const;
export type DishKindName = (typeof DISH_KINDS)[number];

/** The parts of twelve that the plate method aims at. Common practice, no source. */
export const DISH_GOAL: Readonly<Record<DishKindName, number>> = {
  'vegetables and fruit': 6,
  protein: 3,
  'grain or starch': 3,
};

const KINDS: Readonly<Partial<Record<PlateKind, DishKindName>>> = {
  vegetable: 'vegetables and fruit',
  fruit: 'vegetables and fruit',
  'grain or starch': 'grain or starch',
  protein: 'protein',
};

/**
 * The kind that a food fills a dish as; `null` for one that stands beside the dish. A food of two kinds (beans) needs
 * `countAs` and counts as that one only. Refused without it, and for a kind that the food is not.
 */
export function dishKindOf(
  food: Pick<Food, 'name' | 'plate'>,
  countAs?: DishKindName,
): Result<DishKindName | null> {
  const kinds = [...new Set(food.plate.flatMap((kind) => KINDS[kind] ?? []))];
  if (countAs === undefined) {
    return kinds.length > 1
      ? refuse(
          `${food.name} counts as ${kinds.join(' or as ')}, never as both.`,
          'Write which in the row.',
          kinds,
        )
      : ok(kinds[0] ?? null);
  }
  if (kinds.includes(countAs)) return ok(countAs);
  return refuse(
    `${food.name} does not count as ${countAs}.`,
    kinds.length === 0 ? 'It stands beside the dish.' : `It counts as ${inWords(kinds)}.`,
    kinds,
  );
}

/** A volume as served, in mL. */
export interface ServedVolume {
  readonly milliliters: number;
  readonly working: Working;
  readonly estimated: boolean;
}

/**
 * The volume of a row as served: of the amount itself when it is a volume, else of its grams through a volume measure
 * of the food. Refused for a food that has none.
 */
export function volumeOf(
  amount: WrittenAmount | null,
  portion: Portion,
  food: Weighable,
  kitchen: Kitchen = 'us exact',
): Result<ServedVolume> {
  if (amount?.unit && isVolumeUnit(amount.unit)) {
    const size = sizeOf(amount.unit, kitchen);
    return ok({
      milliliters: amount.count * size,
      working: {
        formula: 'count * size',
        inputs: [
          input('count', amount.count, amount.unit, FROM_LESSON),
          input('size', size, `mL per ${amount.unit}`, KITCHENS[kitchen].source),
        ],
      },
      estimated: false,
    });
  }
  const own = volumeMeasure(food, 'cup');
  if (own === null) {
    return refuse(
      `The volume of ${food.name} is not known.`,
      'Write its amount in cups, with the weight in brackets.',
    );
  }
  const size = sizeOf(own.unit);
  const outer: Working = {
    formula: 'weight / grams_each * size',
    inputs: [
      input('weight', null, '', ''),
      input('grams_each', own.measure.grams, `g per ${own.unit}`, own.measure.source, own.measure.note),
      input('size', size, `mL per ${own.unit}`, KITCHENS['us exact'].source),
    ],
  };
  return ok({
    milliliters: (portion.grams.value / own.measure.grams) * size,
    working: substitute(outer, 'weight', portion.working),
    estimated: portion.estimated || own.measure.estimated === true,
  });
}

/** A food of a dish with its volume as served. */
export interface DishRow<K extends string = DishKindName> {
  readonly kind: K;
  /** In mL; `null` is not known. */
  readonly volume: number | null;
}

/** Parts of a dish by kind, in the order in which the kinds come, and by row. */
export interface DishShares<K extends string = DishKindName> {
  readonly kinds: readonly { readonly kind: K; readonly share: number; readonly parts: number }[];
  /** Parts of each row, in the order given; a row may have none. */
  readonly rows: readonly number[];
}

/**
 * Twelve parts by the largest remainder: first among the kinds, of which each above a twentieth has at least one, then
 * among the foods of a kind. Ties go to the earlier row. The parts always add up to twelve. Refused: no rows, a volume
 * that is not known or not above zero, and more kinds with a part of their own than parts.
 */
export function dishShares<K extends string>(rows: readonly DishRow<K>[]): Result<DishShares<K>> {
  if (rows.length === 0) return refuse('There is no food in the dish.', 'Write one food on each row.');
  const volumes: number[] = [];
  for (const { volume } of rows) {
    if (volume === null)
      return refuse('The volume of a food in the dish is not known.', 'Write its amount in cups.');
    if (!(volume > 0) || !Number.isFinite(volume)) {
      return refuse('The volume of a food in the dish is not above zero.', 'Write how much there is.');
    }
    volumes.push(volume);
  }
  const names = [...new Set(rows.map(({ kind }) => kind))];
  const members = names.map((kind) => rows.flatMap((row, i) => (row.kind === kind ? [i] : [])));
  const sums = members.map((places) => sumOf(places.map((i) => Number(volumes[i]))));
  const total = sumOf(sums);
  const least = sums.map((sum) => (sum / total > OWN_PART_ABOVE ? 1 : 0));
  if (sumOf(least) > DISH_PARTS) {
    return refuse(`The dish has more than ${DISH_PARTS} kinds of food.`, 'Put foods of a kind together.');
  }
  const parts = apportion(sums, DISH_PARTS, least);
  const ofRows = new Map<number, number>();
  members.forEach((places, k) => {
    const inside = apportion(
      places.map((i) => Number(volumes[i])),
      Number(parts[k]),
      places.map(() => 0),
    );
    places.forEach((place, i) => ofRows.set(place, Number(inside[i])));
  });
  return ok({
    kinds: names.map((kind, k) => ({ kind, share: Number(sums[k]) / total, parts: Number(parts[k]) })),
    rows: rows.map((_, i) => Number(ofRows.get(i))),
  });
}

/**
 * Shares out whole seats by the largest remainder, none below its `least`. Ties go to the earlier. The seats always add
 * up; more weight never gives fewer seats. The weights have to be above zero; `least` has one entry for each, and
 * their sum may not exceed the seats.
 */
export function apportion(weights: readonly number[], seats: number, least: readonly number[]): number[] {
  const total = sumOf(weights);
  const exact = weights.map((weight) => (weight / total) * seats);
  const given = exact.map((share, i) => Math.max(Math.floor(share + NOISE), Number(least[i])));
  for (let left = seats - sumOf(given); left > 0; left--) {
    const next = extreme(exact.map((share, i) => share - Number(given[i])));
    given[next] = Number(given[next]) + 1;
  }
  for (let over = sumOf(given) - seats; over > 0; over--) {
    const rests = exact.map((share, i) =>
      Number(given[i]) > Number(least[i]) ? Number(given[i]) - share : -seats,
    );
    const next = weights.length - 1 - extreme([...rests].reverse());
    given[next] = Number(given[next]) - 1;
  }
  return given;
}

const NOISE = 1e-9;

/** The place of the largest value; the first of equal ones. */
function extreme(values: readonly number[]): number {
  return values.reduce((best, value, i) => (value > Number(values[best]) + NOISE ? i : best), 0);
}

/** Adds from the smallest up, so that the order of the rows makes no difference. */
function sumOf(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b).reduce((so, value) => so + value, 0);
}
