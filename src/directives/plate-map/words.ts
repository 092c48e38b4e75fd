import type { DishKindName } from '../../nutrition/index.js';
import type { DishPart } from '../compute-dish.js';
import type { ViewContext } from '../contract.js';
import { FILL } from '../dish-looks.js';
import { shortName } from '../dish-names.js';
import type { MapResult } from './compute.js';
import { BESIDE_TERMS, KIND_TERMS } from './keys.js';
import { BESIDE, type MapFood, type Values } from './schema.js';

/** Whether readers count parts; beginning readers get "half, some, some" and no numbers. */
export function counts({ level, where }: ViewContext): boolean {
  return level !== 'short' || where === 'key';
}

/** Kinds that have a part, in the order in which the dish is filled. */
export function kindsIn({ kinds }: MapResult): readonly DishKindName[] {
  return FILL.filter((kind) => kinds.some((one) => one.kind === kind && one.parts > 0));
}

/** The foods of a kind, as rows have them, with what they count as. */
export function foodsOf(
  kind: DishKindName,
  values: Values,
  { parts }: MapResult,
  context: ViewContext,
  amounts: 'after' | 'none',
): string[] {
  return parts
    .filter((part) => part.kind === kind && part.parts > 0)
    .map(({ index }) => {
      const food = values.foods[index];
      const named = { amount: food?.portion.words ?? '', food: nameOf(index, values) };
      const words = amounts === 'none' ? named.food : context.say('portion-after', named);
      return food?.countsAs && amounts === 'none'
        ? context.say('counted', { food: words, kind: context.say(KIND_TERMS[food.countsAs]) })
        : words;
    });
}

/** A food in its row's words, with what it counts as. */
export function foodWords(food: MapFood, { say }: ViewContext, amounts: 'before' | 'none'): string {
  const named = { amount: food.portion.words, food: food.words };
  const words = amounts === 'none' ? food.words : say('portion', named);
  return food.countsAs ? say('counted', { food: words, kind: say(KIND_TERMS[food.countsAs]) }) : words;
}

/** A food's short name among the foods of the dish. */
export function nameOf(index: number, { foods }: Values): string {
  return shortName(
    foods[index]?.words ?? '',
    foods.map(({ words }) => words),
  );
}

/** A line for each thing that stands beside the dish: `Drink: water.` */
export function besideLines(values: Values, context: ViewContext): string[] {
  return [...BESIDE, 'other' as const].flatMap((beside) => {
    const foods = besideFoods(values, context, beside);
    return foods.length > 0
      ? [context.say('beside-line', { what: context.say(BESIDE_TERMS[beside]), foods: context.list(foods) })]
      : [];
  });
}

export function besideFoods(
  { foods, written }: Values,
  context: ViewContext,
  beside: (typeof BESIDE)[number] | 'other',
): string[] {
  const totals = context.where === 'staff' || context.level === 'fuller' || context.level === 'staff';
  return [
    ...foods
      .filter((one) => one.beside === beside)
      // A usual portion that nobody wrote is told where the totals that count it are.
      .map((one) => foodWords(one, context, counts(context) && (one.measured || totals) ? 'before' : 'none')),
    ...written.filter((one) => one.beside === beside).map(({ text }) => text),
  ];
}

/** The same in as few words as a slide has room for. */
export function besideNames(values: Values, beside: (typeof BESIDE)[number] | 'other'): string[] {
  return [
    ...values.foods.flatMap((one, index) => (one.beside === beside ? [nameOf(index, values)] : [])),
    ...values.written.filter((one) => one.beside === beside).map(({ text }) => text),
  ];
}

/** Foods of the dish that got no counter. */
export function leftOver(values: Values, { parts }: MapResult): string[] {
  return parts.flatMap((part: DishPart) => (part.parts === 0 ? [values.foods[part.index]?.words ?? ''] : []));
}
