import { volumeOf } from './dish-parts.js';
import { volumeMeasure, type Weighable } from './food-measures.js';
import { portionOf } from './portion.js';
import { type Pourable, pourable } from './regional-measures.js';
import { ok, type Result, refuse } from './result.js';
import { KITCHENS, type Kitchen, sizeOf } from './units.js';
import { input, type Working } from './working.js';
import { parseAmount, type WrittenAmount } from './written-amount.js';

/** Things that people pour into. Spoons are the tablespoon and the teaspoon. */
export type PourInto = 'cup' | 'spoon';

/** An amount to pour, what it weighs, and how that was got. */
export interface Pour extends Pourable {
  readonly grams: number;
  /** Of `grams`: the volume by the weight that a volume of the food has. */
  readonly working: Working;
  /** True when the weight of the food's measure was estimated and not published. */
  readonly estimated: boolean;
}

/**
 * The nearest amount to pour of a volume, in the measures that people own: cups in quarters and thirds, else whole and
 * half tablespoons, else parts of a teaspoon. A rounded amount takes the larger measure when it fills it: 3 teaspoons
 * are 1 tablespoon, 4 tablespoons a quarter cup. Refused when only the other measures would hold it.
 */
export function nearestPour(
  milliliters: number,
  kitchen: Kitchen,
  into: readonly PourInto[],
): Result<Pourable> {
  const found = pourable(milliliters, kitchen);
  if (!found.ok) return found;
  const { cup, tbsp } = KITCHENS[kitchen];
  const as = (unit: Pourable['unit'], count: number, size: number): Pourable => ({
    count,
    unit,
    milliliters: count * size,
  });
  let best = found.value;
  if (best.unit === 'tsp' && best.milliliters >= tbsp - NOISE) best = as('tbsp', 1, tbsp);
  if (best.unit === 'tbsp' && best.milliliters >= cup / 4 - NOISE) best = as('cup', 1 / 4, cup);
  if (best.unit === 'cup' && !into.includes('cup')) {
    const count = Math.round((milliliters / tbsp) * 2) / 2;
    return count <= MOST_SPOONS
      ? ok(as('tbsp', count, tbsp))
      : refuse('The amount is too large to measure in spoons.', 'Let a cup be among the measures.');
  }
  if (best.unit !== 'cup' && !into.includes('spoon')) {
    return milliliters >= (cup / 4) * LEAST_OF_A_CUP
      ? ok(as('cup', 1 / 4, cup))
      : refuse('The amount is too small to measure in cups.', 'Let a spoon be among the measures.');
  }
  return ok(best);
}

const NOISE = 1e-6;
const NEAREST = 'the nearest amount that measures come in';
/** More spoons than anybody counts. House rule. */
const MOST_SPOONS = 9;
/** From so much of a quarter cup up, a quarter cup is the nearest cup measure. */
const LEAST_OF_A_CUP = 0.75;

/**
 * An amount of a food (its usual portion when there is none) as people can pour it, and what that weighs. A written
 * volume is poured as written, in the measures of the kitchen; anything else goes through the food's own volume.
 * Refused for a food without any volume.
 */
export function pourOf(
  amount: WrittenAmount | null,
  food: Weighable,
  kitchen: Kitchen,
  into: readonly PourInto[],
): Result<Pour> {
  const usual = amount === null ? parseAmount(food.usual.words) : null;
  const written = amount ?? (usual?.ok && usual.value.rest === '' ? usual.value.amount : null);
  const portion = portionOf(written?.unit ? written : amount, food, kitchen);
  if (!portion.ok) return portion;
  const volume = volumeOf(written, portion.value, food, kitchen);
  if (!volume.ok) return volume;
  const near = nearestPour(volume.value.milliliters, kitchen, into);
  if (!near.ok) return near;
  return weighPour(near.value, food, kitchen, ownDensity(written, portion.value.grams.value, kitchen));
}

/** What an amount to pour weighs: volume × weight of a volume of the food. Refused for a food without one. */
export function weighPour(pour: Pourable, food: Weighable, kitchen: Kitchen, stated?: Density): Result<Pour> {
  const density = stated ?? densityOf(food);
  if (density === null)
    return refuse(
      `The volume of ${food.name} is not known.`,
      'Write its amount in cups, with the weight in brackets.',
    );
  const size = KITCHENS[kitchen][pour.unit];
  return ok({
    ...pour,
    grams: (pour.count * size * density.grams) / density.milliliters,
    working: {
      formula: 'count * size * grams_each / volume_each',
      inputs: [
        input('count', pour.count, pour.unit, 'house', NEAREST),
        input('size', size, `mL per ${pour.unit}`, KITCHENS[kitchen].source),
        input('grams_each', density.grams, `g per ${density.unit}`, density.source, density.note),
        input('volume_each', density.milliliters, `mL per ${density.unit}`, density.volumeSource),
      ],
    },
    estimated: density.estimated,
  });
}

/** The weight of a volume of a food in its state. */
interface Density {
  readonly grams: number;
  readonly milliliters: number;
  readonly unit: string;
  readonly source: string;
  readonly note?: string;
  readonly volumeSource: string;
  readonly estimated: boolean;
}

function densityOf(food: Weighable): Density | null {
  const own = volumeMeasure(food, 'cup');
  if (own === null) return null;
  const { grams, source, note, estimated } = own.measure;
  return {
    grams,
    milliliters: sizeOf(own.unit),
    unit: own.unit,
    source,
    ...(note === undefined ? {} : { note }),
    volumeSource: KITCHENS['us exact'].source,
    estimated: estimated === true,
  };
}

/** `1/2 cup (80 g)`: the author's own weight of a volume goes before the table's. */
function ownDensity(amount: WrittenAmount | null, grams: number, kitchen: Kitchen): Density | undefined {
  if (!amount?.unit || !amount.size) return undefined;
  return {
    grams,
    milliliters: amount.count * sizeOf(amount.unit, kitchen),
    unit: 'amount',
    source: 'lesson',
    note: 'weight as written',
    volumeSource: KITCHENS[kitchen].source,
    estimated: false,
  };
}

/** A hand that stands for a measure when there is none. */
export type HandMeasure = 'fist' | 'cupped hand' | 'thumb' | 'thumb tip';

/** What a middling adult hand holds. Common practice, no source; hands differ, and whoever prints this says so. */
const HANDS: readonly {
  readonly hand: HandMeasure;
  readonly unit: Pourable['unit'];
  readonly count: number;
}[] = [
  { hand: 'fist', unit: 'cup', count: 1 },
  { hand: 'cupped hand', unit: 'cup', count: 1 / 2 },
  { hand: 'thumb', unit: 'tbsp', count: 1 },
  { hand: 'thumb tip', unit: 'tsp', count: 1 },
];

/** The hand that comes to the very amount, once or twice; `null` where none does. */
export function handFor({
  unit,
  count,
}: Pick<Pourable, 'unit' | 'count'>): { readonly hand: HandMeasure; readonly times: 1 | 2 } | null {
  for (const times of [1, 2] as const) {
    const found = HANDS.find((one) => one.unit === unit && Math.abs(one.count * times - count) < NOISE);
    if (found) return { hand: found.hand, times };
  }
  return null;
}
