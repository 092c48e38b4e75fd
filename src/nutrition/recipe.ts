import { known, notKnown } from './arithmetic.js';
import { alreadyCooked, timesRetention } from './cooking.js';
import type { Food, NutrientName } from './food.js';
import { NUTRIENTS } from './food.js';
import { type Nourishing, type NutrientUnit, nutrientIn, sumWorked } from './nutrient.js';
import type { Portion } from './portion.js';
import type { Unit } from './quantity.js';
import { ok, type Result, refuse } from './result.js';
import type { CookingYield } from './retention.js';
import { hasRetentionFactors, RETENTION_SOURCE, retentionCode, retentionOf } from './retention-table.js';
import { combine, FROM_LESSON, input, substitute, type Worked, type Working } from './working.js';

/** One food of a recipe. */
export interface Ingredient {
  readonly food: Nourishing & Pick<Food, 'state'>;
  readonly portion: Portion;
  /** Code of the retention release for how it is cooked in this dish; none for food that is cooked or stays raw. */
  readonly retention?: string;
}

/**
 * What happens to a nutrient for which the release has no factor. `not known` is the default; `kept whole` is what
 * recipe calculation commonly does for protein, fiber and the like, and does not hold where fat or water is poured off.
 */
export type WithoutFactor = 'not known' | 'kept whole';

/**
 * What a whole recipe holds of a nutrient: the sum over its ingredients of per 100 g × grams ÷ 100, each times its
 * retention once. Unknown parts are left out and the sum says at least. Refused: no ingredients, a retention code
 * on food that is cooked already, and codes that are not there. A cell that the release lacks or has wrong is not
 * known. The order of the ingredients makes no difference to the value.
 */
export function recipeNutrient<N extends NutrientName>(
  ingredients: readonly Ingredient[],
  nutrient: N,
  withoutFactor: WithoutFactor = 'not known',
): Result<Worked<NutrientUnit<N>>> {
  if (ingredients.length === 0) return refuse('The recipe has no ingredients.', 'Write one on each row.');
  const unit: NutrientUnit<N> = NUTRIENTS[nutrient].unit;
  const parts: { words: string; worked: Worked<NutrientUnit<N>> }[] = [];
  for (const ingredient of ingredients) {
    const { food, portion, retention: code } = ingredient;
    const raw = nutrientIn(food, nutrient, portion);
    if (code === undefined) {
      parts.push({ words: food.name, worked: raw });
      continue;
    }
    const cooked = alreadyCooked(food);
    if (cooked !== null) return cooked;
    const found = retentionCode(code);
    if (!found.ok) return found;
    const retention = retentionOf(code, nutrient);
    if (!retention.ok) {
      const whole = withoutFactor === 'kept whole' && !hasRetentionFactors(nutrient);
      parts.push({ words: food.name, worked: whole ? { ...raw, estimated: true } : lost(raw, unit, code) });
      continue;
    }
    parts.push({ words: food.name, worked: timesRetention(raw, retention.value) });
  }
  return ok(sumWorked(unit, parts));
}

/** The amount in one of several equal servings: `recipe / servings`. Refuses servings that are not above zero. */
export function perServing<U extends Unit>(recipe: Worked<U>, servings: number): Result<Worked<U>> {
  if (!(servings > 0) || !Number.isFinite(servings)) {
    return refuse('A recipe makes one serving or more.', 'Write the number of servings, such as serves=6.');
  }
  return ok(divided(recipe, 'servings', input('servings', servings, 'servings', FROM_LESSON)));
}

/** What a recipe weighs. */
export interface RecipeWeight {
  readonly grams: number;
  readonly working: Working;
  readonly estimated: boolean;
}

/**
 * What the cooked recipe weighs: grams of all ingredients × yield; without a yield, of all that went in. Refuses no
 * ingredients and a yield that is not above zero.
 */
export function recipeWeight(
  ingredients: readonly Ingredient[],
  cooking?: CookingYield,
): Result<RecipeWeight> {
  if (ingredients.length === 0) return refuse('The recipe has no ingredients.', 'Write one on each row.');
  if (cooking !== undefined && (!(cooking.factor > 0) || !Number.isFinite(cooking.factor))) {
    return refuse(
      `A cooking yield of ${cooking.factor} is not above zero.`,
      'Write weight after ÷ weight before.',
    );
  }
  const raw = sumWorked(
    'g',
    ingredients.map(({ food, portion }) => ({
      words: food.name,
      worked: { ...portion, quantity: known(portion.grams.value, 'g') },
    })),
  );
  const grams = Number(raw.quantity.value);
  if (cooking === undefined) return ok({ grams, working: raw.working, estimated: raw.estimated });
  const outer: Working = {
    formula: 'weight * yield',
    inputs: [
      input('weight', null, '', ''),
      input('yield', cooking.factor, 'g cooked per g raw', cooking.source),
    ],
  };
  return ok({
    grams: grams * cooking.factor,
    working: substitute(outer, 'weight', raw.working),
    estimated: true,
  });
}

/** What 100 g of the cooked recipe hold: `recipe / weight * 100`, the yield inside the weight, so divided by once. */
export function recipePer100g<U extends Unit>(recipe: Worked<U>, weight: RecipeWeight): Worked<U> {
  const { value, unit, atLeast } = recipe.quantity;
  return {
    quantity: value === null ? notKnown(unit) : { ...known((value / weight.grams) * 100, unit), atLeast },
    working: combine('recipe / weight * 100', [
      { name: 'recipe', item: recipe.working },
      { name: 'weight', item: weight.working },
    ]),
    estimated: recipe.estimated || weight.estimated,
  };
}

function divided<U extends Unit>(
  whole: Worked<U>,
  name: string,
  by: ReturnType<typeof input<number>>,
): Worked<U> {
  const { value, unit, atLeast } = whole.quantity;
  const outer: Working = { formula: `recipe / ${name}`, inputs: [input('recipe', null, '', ''), by] };
  return {
    quantity: value === null ? notKnown(unit) : { ...known(value / by.value, unit), atLeast },
    working: substitute(outer, 'recipe', whole.working),
    estimated: whole.estimated,
  };
}

function lost<U extends Unit>(raw: Worked<U>, unit: U, code: string): Worked<U> {
  const outer: Working = {
    formula: 'raw * retention / 100',
    inputs: [
      input('raw', null, '', ''),
      input('retention', null, 'percent kept', `${RETENTION_SOURCE} ${code}`),
    ],
  };
  return { quantity: notKnown(unit), working: substitute(outer, 'raw', raw.working), estimated: true };
}
