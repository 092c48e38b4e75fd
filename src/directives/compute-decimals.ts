import { DAILY_VALUES, type DailyValueName, type NutrientName } from '../nutrition/index.js';

/** Up to this Daily Value, in its own unit, a whole unit is so much of a day that a change would not show. House rule. */
const SMALL_DAILY_VALUE = 5;

/** One decimal for nutrients of which a day needs only a few units, such as vitamin B12; whole units for the rest. */
export function decimalsOf(nutrient: NutrientName): { readonly decimals?: number } {
  const value = DAILY_VALUES[nutrient as DailyValueName]?.value;
  return value !== undefined && value <= SMALL_DAILY_VALUE ? { decimals: 1 } : {};
}
