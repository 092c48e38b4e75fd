import {
  ENERGY_FACTORS,
  type EnergyShare,
  FROM_LESSON,
  input,
  known,
  notKnown,
  nutrientIn,
  sumWorked,
  type Worked,
} from '../../nutrition/index.js';
import type { Eaten, Meal, Values } from './schema.js';

export type Grams = Readonly<Record<EnergyShare, Worked<'g'>>>;
export const FACTORS = ENERGY_FACTORS['4-4-9-7'].perGram.kcal;
export function eachShare<T>(make: (part: EnergyShare) => T): Record<EnergyShare, T> {
  return {
    carbohydrate: make('carbohydrate'),
    protein: make('protein'),
    fat: make('fat'),
    alcohol: make('alcohol'),
  };
}

/** Whether a meal has alcohol, or may have. */
export function drinks({ foods, alcohol }: Meal): boolean {
  return (alcohol ?? 0) > 0 || (alcohol === null && foods.some(({ food }) => food.flags.includes('alcohol')));
}

/** Grams of each part over all foods; alcohol as the rows state it, none in food that is no drink. */
export function gramsOf(values: Values, foods: readonly Eaten[]): Grams {
  const of = (part: 'carbohydrate' | 'protein' | 'fat') =>
    sumWorked(
      'g',
      foods.map(({ food, portion }) => ({ words: food.name, worked: nutrientIn(food, part, portion) })),
    );
  const stated = values.meals
    .filter((meal) => drinks(meal) || meal.alcohol !== null)
    .map(({ name, alcohol }) => ({ words: name, worked: statedAlcohol(alcohol) }));
  return {
    carbohydrate: of('carbohydrate'),
    protein: of('protein'),
    fat: of('fat'),
    alcohol: sumWorked('g', stated),
  };
}

function statedAlcohol(grams: number | null): Worked<'g'> {
  return {
    quantity: grams === null ? notKnown('g') : known(grams, 'g'),
    working: { formula: 'alcohol', inputs: [input('alcohol', grams, 'g', FROM_LESSON)] },
    estimated: false,
  };
}

/** Foods whose record leaves a part blank, and drinks whose alcohol nobody stated. */
export function unknownIn({ meals }: Values): string[] {
  const blank = ({ food }: Eaten) =>
    (['carbohydrate', 'protein', 'fat'] as const).some((part) => food.per100g[part] === null);
  return meals.flatMap((meal) =>
    meal.foods
      .filter((one) => blank(one) || (meal.alcohol === null && one.food.flags.includes('alcohol')))
      .map(({ words }) => words),
  );
}
