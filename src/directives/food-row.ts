import { type Food, type Portion, parseAmount, portionOf, type WrittenAmount } from '../nutrition/index.js';
import { isFood } from '../records/index.js';
import type { ReadContext } from './contract.js';
import { foodProblem, readProblem } from './problems.js';
import type { Piece } from './row.js';

/** A food written amount first, such as `3/4 cup pinto beans, cooked`. */
export interface FoodRow {
  readonly food: Food;
  readonly portion: Portion;
  /** What was written before the food; `null` for the usual portion. */
  readonly amount: WrittenAmount | null;
  /** The food's own words, which name it in ids. */
  readonly words: string;
  readonly piece: Piece;
}

/** Reads a food with its amount, or its usual portion where none is written; reports what cannot be read. */
export function readFoodRow(piece: Piece, { foods, report }: ReadContext): FoodRow | undefined {
  const read = parseAmount(piece.text);
  if (!read.ok) {
    report.add(readProblem('directives/amount', read, piece.place));
    return undefined;
  }
  const { amount, rest } = read.value;
  const food = foods.find(rest);
  if (!isFood(food)) {
    report.add(foodProblem(rest, food, piece.place));
    return undefined;
  }
  const portion = portionOf(amount, food);
  if (!portion.ok) {
    report.add(readProblem('directives/amount', portion, piece.place));
    return undefined;
  }
  return { food, portion: portion.value, amount, words: rest, piece };
}
