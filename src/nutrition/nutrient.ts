import { known, notKnown, scale, sum } from './arithmetic.js';
import { type Food, NUTRIENTS, type NutrientName } from './food.js';
import type { Portion } from './portion.js';
import type { Unit } from './quantity.js';
import { combine, input, nameInputs, substitute, type Worked, type Working } from './working.js';

/** The unit in which a nutrient is counted. */
export type NutrientUnit<N extends NutrientName> = (typeof NUTRIENTS)[N]['unit'];

/** What has to be known of a food to say what a portion of it holds. */
export type Nourishing = Pick<Food, 'name' | 'per100g' | 'record'>;

/**
 * What a portion of a food holds of a nutrient: value per 100 g × grams ÷ 100, unrounded. A blank in the
 * record is not known, never zero.
 */
export function nutrientIn<N extends NutrientName>(
  food: Nourishing,
  nutrient: N,
  portion: Pick<Portion, 'grams' | 'working' | 'estimated'>,
): Worked<NutrientUnit<N>> {
  const unit: NutrientUnit<N> = NUTRIENTS[nutrient].unit;
  const per100 = per100Of(food, nutrient);
  const { source, number, description, date } = food.record;
  const outer: Working = {
    formula: 'per100 * grams / 100',
    inputs: [
      input('per100', per100, `${unit} per 100 g`, `${source} ${number}`, `${description}; ${date}`),
      input('grams', portion.grams.value, 'g', ''),
    ],
  };
  return {
    quantity: per100 === null ? notKnown(unit) : known((per100 * portion.grams.value) / 100, unit),
    working: substitute(outer, 'grams', portion.working),
    estimated: portion.estimated,
  };
}

/**
 * The sum of worked quantities, each with words that name it in the formula. Unknown parts are left out of
 * the formula and the sum says at least; when no part is known, the formula shows all and has no value.
 */
export function sumWorked<U extends Unit>(
  unit: U,
  parts: readonly { readonly words: string; readonly worked: Worked<NoInfer<U>> }[],
): Worked<U> {
  const quantity = sum(
    unit,
    parts.map((part) => part.worked.quantity),
  );
  const shown = quantity.value === null ? parts : parts.filter((part) => part.worked.quantity.value !== null);
  const named = nameInputs(shown, (part) => part.words);
  const formula = named.map(({ name }) => name).join(' + ');
  return {
    quantity,
    working: combine(
      formula === '' ? '0' : formula,
      named.map(({ name, item }) => ({ name, item: item.worked.working })),
    ),
    estimated: shown.some((part) => part.worked.estimated),
  };
}

/** A worked quantity times a factor of zero or more, such as the number of servings. */
export function scaleWorked<U extends Unit>(
  worked: Worked<U>,
  factor: number,
  unit: string,
  source: string,
): Worked<U> {
  const outer: Working = {
    formula: 'amount * factor',
    inputs: [input('amount', null, '', ''), input('factor', factor, unit, source)],
  };
  return {
    quantity: scale(worked.quantity, factor),
    working: substitute(outer, 'amount', worked.working),
    estimated: worked.estimated,
  };
}

function per100Of(food: Nourishing, nutrient: NutrientName): number | null {
  const value: number | null | undefined = food.per100g[nutrient];
  return typeof value === 'number' && Number.isFinite(value) ? value : null;
}
