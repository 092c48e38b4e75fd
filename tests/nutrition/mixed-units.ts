import type { Amount, Quantity } from '../../src/nutrition/index.js';
import { add, compare, convert, known, ratio, smallestOf, subtract, sum } from '../../src/nutrition/index.js';

// Compiled by types.test.ts: every line under an expectation has to fail to compile, the others to compile.
declare const grams: Amount<'g'>;
declare const milligrams: Amount<'mg'>;
declare const energy: Amount<'kcal'>;
declare const cups: Amount<'cup'>;
declare const sodium: Quantity<'mg'>;
declare const fiber: Quantity<'g'>;

export const fine: Amount<'g'> = add(grams, grams);
export const turned: Amount<'g'> = add(grams, convert(milligrams, 'g'));
export const poured: Amount<'mL'> = convert(cups, 'mL', 'us label');

// @ts-expect-error Grams and kilocalories cannot be added.
add(grams, energy);
// @ts-expect-error The second operand does not widen the unit of the first.
add(grams, milligrams);
// @ts-expect-error A bare number is no amount.
add(grams, 5);
// @ts-expect-error Cups and grams cannot be taken from each other.
subtract(cups, grams);
// @ts-expect-error A ratio needs one unit.
ratio(grams, energy);
// @ts-expect-error A volume has no weight without a food.
convert(cups, 'g');
// @ts-expect-error Energy is no mass.
convert(energy, 'g');
// @ts-expect-error Milligrams of sodium and grams of fiber are not one sum.
sum('mg', [sodium, fiber]);
// @ts-expect-error They cannot be compared either.
compare(sodium, fiber);
// @ts-expect-error Nor can one of them be the smallest.
smallestOf<'mg'>([{ name: 'fiber', value: fiber }]);
// @ts-expect-error What is not known is null and never passes for a number.
export const zero: number = known(1, 'g').value;
// @ts-expect-error Quantities cannot be changed.
sodium.value = 0;
