import { type DailyValueName, dailyValueOf } from './daily-values.js';
import { roundTo } from './rounding.js';

/**
 * Rounding of a US label, 21 CFR 101.9(c). The rule does not settle ties; here they go up. Amounts are zero
 * or more.
 */

/** A declared amount; `lessThan` means that the label says "less than" the value. */
export interface Declared {
  readonly value: number;
  readonly lessThan: boolean;
}

/** Calories, (c)(1): to 5 up to 50, to 10 above. Under 5 may be zero, so both values are permitted there. */
export function permittedCalories(kcal: number): readonly number[] {
  const nearest = roundTo(kcal, kcal <= 50 ? 5 : 10);
  return kcal < 5 && nearest !== 0 ? [0, nearest] : [nearest];
}

/** Total, saturated and trans fat in g, (c)(2): under 0.5 is 0, to 0.5 below 5, to 1 from 5. */
export function declaredFat(grams: number): number {
  if (grams < 0.5) return 0;
  return roundTo(grams, grams < 5 ? 0.5 : 1);
}

/** Cholesterol in mg, (c)(3): under 2 is 0, from 2 to under 5 "less than 5", then to 5. */
export function declaredCholesterol(mg: number): Declared {
  if (mg < 2) return { value: 0, lessThan: false };
  if (mg < 5) return { value: 5, lessThan: true };
  return { value: roundTo(mg, 5), lessThan: false };
}

/** Sodium in mg, (c)(4): under 5 is 0, to 5 up to 140, to 10 above. */
export function declaredSodium(mg: number): number {
  if (mg < 5) return 0;
  return roundTo(mg, mg <= 140 ? 5 : 10);
}

/**
 * Carbohydrate, fiber, sugars, added sugars and protein in g, (c)(6) and (c)(7): under 0.5 is 0, from 0.5 to
 * under 1 "less than 1", then to 1.
 */
export function declaredGrams(grams: number): Declared {
  if (grams < 0.5) return { value: 0, lessThan: false };
  if (grams < 1) return { value: 1, lessThan: true };
  return { value: roundTo(grams, 1), lessThan: false };
}

/**
 * Percent of the Daily Value: vitamins and minerals with an RDI, (c)(8)(iii), under 2 is 0, to 2 up to 10, to 5
 * up to 50, to 10 above; everything else, (d)(7)(ii), to 1.
 */
export function declaredPercent(name: DailyValueName, percent: number): number {
  if (dailyValueOf(name)?.kind !== 'RDI') return roundTo(percent, 1);
  if (percent < 2) return 0;
  return roundTo(percent, percent <= 10 ? 2 : percent <= 50 ? 5 : 10);
}
