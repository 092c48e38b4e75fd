import { amountOf } from './arithmetic.js';
import type { Amount } from './quantity.js';

/**
 * What one international unit is, by the form of the vitamin: an IU has no meaning without the form.
 * Source: 21 CFR 101.9(c)(8)(iv) footnotes and NIH Office of Dietary Supplements, from memory.
 */
export const INTERNATIONAL_UNITS = {
  'vitamin D': { value: 0.025, unit: 'µg' },
  'vitamin A, retinol': { value: 0.3, unit: 'µg' },
  'vitamin E, natural': { value: 0.67, unit: 'mg' },
  'vitamin E, synthetic': { value: 0.45, unit: 'mg' },
} as const;
export type VitaminForm = keyof typeof INTERNATIONAL_UNITS;

/** International units of a named form as a mass: µg (vitamin A as RAE) or mg (vitamin E as alpha-tocopherol). */
export function fromInternationalUnits<F extends VitaminForm>(
  form: F,
  units: number,
): Amount<(typeof INTERNATIONAL_UNITS)[F]['unit']> {
  const one: Amount<(typeof INTERNATIONAL_UNITS)[F]['unit']> = INTERNATIONAL_UNITS[form];
  return amountOf(one.value * units, one.unit);
}
