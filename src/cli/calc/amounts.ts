import {
  gramsOf,
  ok,
  type Portion,
  parseAmount,
  type Result,
  refuse,
  type WrittenAmount,
} from '../../nutrition/index.js';
import type { Field, Shelf } from './contract.js';

/** An amount of food as a recipe writes it. */
export function foodAmount(help: string): Field<WrittenAmount> {
  return {
    help,
    units: [],
    read: (text): Result<WrittenAmount> => {
      const read = parseAmount(text);
      if (!read.ok) return read;
      const { amount, rest } = read.value;
      return amount === null || rest !== ''
        ? refuse(`"${text}" is no amount.`, 'Write one such as 1 cup, 2 lb or 1 can (15 oz).')
        : ok(amount);
    },
  };
}

/** Grams of an amount: of a food with its measures, or of any weight without one. */
export function weigh(
  amount: WrittenAmount,
  food: string | undefined,
  shelf: Shelf,
  kitchen: Parameters<typeof gramsOf>[2],
): Result<Portion> {
  if (food === undefined) {
    const anything = {
      name: 'the food',
      state: 'ready to eat',
      measures: [],
      usual: { words: '', grams: 0 },
    } as const;
    const found = gramsOf(amount, anything, kitchen);
    return found.ok
      ? found
      : refuse(
          'Only weights can be priced without a food.',
          'Write both as weights, or name the food: food="pinto beans, dry".',
        );
  }
  const found = shelf.food(food);
  return found.ok ? gramsOf(amount, found.value, kitchen) : found;
}
