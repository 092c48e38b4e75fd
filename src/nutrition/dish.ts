import { DAILY_VALUES, type DailyValueName } from './daily-values.js';
import {
  DISH_PARTS,
  type DishKindName,
  type DishShares,
  dishShares,
  type ServedVolume,
  volumeOf,
} from './dish-parts.js';
import { type Food, NUTRIENTS, type NutrientName } from './food.js';
import { nutrientIn, sumWorked } from './nutrient.js';
import type { Portion } from './portion.js';
import { perServing } from './recipe.js';
import { ok, type Result } from './result.js';
import { isLost } from './swaps.js';
import { KITCHENS, sizeOf } from './units.js';
import { input, substitute, type Worked, type Working } from './working.js';
import type { WrittenAmount } from './written-amount.js';

/** Dishes that can be told apart from above. */
export const DISH_FORMS = ['bowl', 'plate', 'tray', 'lunch-box', 'shared-pot'] as const;
export type DishForm = (typeof DISH_FORMS)[number];

/** A food of a dish. What stands beside the dish fills no part of it. */
export interface DishFood {
  readonly food: Food;
  readonly portion: Portion;
  readonly fills: { readonly kind: DishKindName; readonly volume: ServedVolume } | null;
}

/**
 * A cup of meat, poultry or fish in pieces, for those that have no cup of their own in the table: 140 g, what the
 * release weighs for a cup of chopped chicken breast (05064). An estimate for every other one.
 */
export const CUP_IN_PIECES = {
  grams: 140,
  source: 'usda-sr28',
  note: 'estimated: chicken breast, 1 cup, chopped or diced',
} as const;

/**
 * The volume of a food as served: by `volumeOf`, or for meat, poultry and fish without a cup of their own by the cup
 * in pieces, which is marked as an estimate. Refused for every other food without a volume.
 */
export function volumeAsServed(
  amount: WrittenAmount | null,
  portion: Portion,
  food: Food,
): Result<ServedVolume> {
  const own = volumeOf(amount, portion, food);
  const { meat, fish, shellfish } = food.contains;
  if (own.ok || ![meat, fish, shellfish].includes('yes') || !food.plate.includes('protein')) return own;
  const size = sizeOf('cup');
  const outer: Working = {
    formula: 'weight / grams_each * size',
    inputs: [
      input('weight', portion.grams.value, 'g', ''),
      input('grams_each', CUP_IN_PIECES.grams, 'g per cup', CUP_IN_PIECES.source, CUP_IN_PIECES.note),
      input('size', size, 'mL per cup', KITCHENS['us exact'].source),
    ],
  };
  return ok({
    milliliters: (portion.grams.value / CUP_IN_PIECES.grams) * size,
    working: substitute(outer, 'weight', portion.working),
    estimated: true,
  });
}

/** The twelve parts of a dish over the foods that fill it, in the order given; those beside it have no part. */
export function partsOf(foods: readonly DishFood[]): Result<DishShares> {
  return dishShares(
    foods.flatMap(({ fills }) => (fills ? [{ kind: fills.kind, volume: fills.volume.milliliters }] : [])),
  );
}

/** How the parts of a food or kind come from its volume: its share of twelve, rounded so that all are twelve. */
export function partsWorking(parts: number, volume: number, whole: number): Working {
  const exact = (volume / whole) * DISH_PARTS;
  return {
    formula: `volume / dish * ${DISH_PARTS} + rounding`,
    inputs: [
      input('volume', volume, 'mL', 'lesson', 'as served'),
      input('dish', whole, 'mL', 'lesson', 'all that fills the dish'),
      input('rounding', parts - exact, 'parts', 'house', 'largest remainder, so that all parts are twelve'),
    ],
  };
}

/** What one person gets of a nutrient from the dish and what stands beside it. `serves` is above zero. */
export function dishNutrient<N extends NutrientName>(
  foods: readonly Pick<DishFood, 'food' | 'portion'>[],
  nutrient: N,
  serves: number,
): Worked<(typeof NUTRIENTS)[N]['unit']> {
  const unit: (typeof NUTRIENTS)[N]['unit'] = NUTRIENTS[nutrient].unit;
  const whole = sumWorked(
    unit,
    foods.map(({ food, portion }) => ({ words: food.name, worked: nutrientIn(food, nutrient, portion) })),
  );
  const each = serves === 1 ? ok(whole) : perServing(whole, serves);
  return each.ok ? each.value : whole;
}

/** Nutrients whose loss a changed dish has to tell, those that people miss most first. House choice. */
export const DISH_LOSSES = [
  'protein',
  'calcium',
  'iron',
  'zinc',
  'vitamin B12',
  'vitamin D',
  'fiber',
  'vitamin A',
  'vitamin C',
  'folate',
  'riboflavin',
  'magnesium',
  'potassium',
  'selenium',
] as const satisfies readonly (NutrientName & DailyValueName)[];
export type DishLoss = (typeof DISH_LOSSES)[number];

/** What one person gets before and after, and whether it is lost; `null` where that cannot be told. */
export interface DishChange {
  readonly nutrient: DishLoss;
  readonly before: Worked;
  readonly after: Worked;
  readonly lost: boolean | null;
  /** How far it moved, as a share of the Daily Value; zero where it is not known. */
  readonly moved: number;
}

/** Every nutrient of `DISH_LOSSES`, for one person, before and after a dish was changed. */
export function dishChanges(
  before: readonly DishFood[],
  after: readonly DishFood[],
  serves: number,
): readonly DishChange[] {
  return DISH_LOSSES.map((nutrient) => {
    const [was, is] = [dishNutrient(before, nutrient, serves), dishNutrient(after, nutrient, serves)];
    const [a, b] = [was.quantity.value, is.quantity.value];
    const moved = a === null || b === null ? 0 : Math.abs(b - a) / DAILY_VALUES[nutrient].value;
    return { nutrient, before: was, after: is, lost: isLost(was, is, nutrient), moved };
  });
}
