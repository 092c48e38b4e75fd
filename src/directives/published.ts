import type { DishFood, DishForm, Food, NutrientName, Portion } from '../nutrition/index.js';

/** One food of a published dish, as its row wrote it. What stands beside the dish fills nothing. */
export interface PublishedFood extends DishFood {
  /** The food's words in the row, which name it in ids and on pages. */
  readonly words: string;
}

/** What a directive gives the others of its lesson to work with. A kind, never a name: nobody asks who made it. */
export type Published =
  /** All that is eaten from one dish, and for how many people it is. */
  | {
      readonly kind: 'dish';
      readonly form: DishForm;
      readonly foods: readonly PublishedFood[];
      /** What stands beside it in words that are no food of the tables. */
      readonly beside: readonly string[];
      readonly serves: number;
    }
  /** A food made in the lesson, with one serving of it. */
  | { readonly kind: 'food'; readonly food: Food; readonly portion: Portion }
  /** How much less of a nutrient there is after something was done to a food. Both ends in the nutrient's unit. */
  | {
      readonly kind: 'less';
      readonly food: Food;
      readonly nutrient: NutrientName;
      readonly low: number;
      readonly high: number;
      /** The amount of food it holds for, in words. */
      readonly basis: string;
      /** Ids of the numbers that tell it. */
      readonly numbers: readonly string[];
    };
