import { heightInCm, type LengthUnit, weightInKg } from './adult.js';
import type { MassUnit } from './quantity.js';
import { type Measured, type Reckoned, whenKnown } from './reckoned.js';
import { ok, type Result, refuse } from './result.js';
import { input, substitute, type Working } from './working.js';

export type BmiClass =
  | 'underweight'
  | 'neither under nor over'
  | 'overweight'
  | 'obesity class 1'
  | 'obesity class 2'
  | 'obesity class 3';

/** Where each class begins. Source: CDC and WHO cut points for adults (25 and 30 seen restated, the rest from memory). */
export const BMI_CLASSES: readonly { readonly from: number; readonly name: BmiClass }[] = [
  { from: 0, name: 'underweight' },
  { from: 18.5, name: 'neither under nor over' },
  { from: 25, name: 'overweight' },
  { from: 30, name: 'obesity class 1' },
  { from: 35, name: 'obesity class 2' },
  { from: 40, name: 'obesity class 3' },
];
/** Extra points at which WHO advises action in Asian populations. From memory (WHO Expert Consultation, 2004). */
export const ASIAN_ACTION_POINTS = [23, 27.5] as const;
/** No curve of this tool goes below this index, and no example starts below it. */
export const LOWEST_BMI = 18.5;

/** Classes are for this age and over; younger people have percentiles by age. */
const ADULT_FROM = 20;

/**
 * Body mass index, weight ÷ height², in kg/m², unrounded. Unknown when height or weight is. For an invented
 * example only: no page asks a reader for it. Refuses heights outside 100–250 cm and weights outside 20–400 kg.
 */
export function bodyMassIndex(
  height: Measured<LengthUnit>,
  weight: Measured<MassUnit>,
): Result<Reckoned<'kg/m²'>> {
  const tall = heightInCm(height);
  if (!tall.ok) return tall;
  const heavy = weightInKg(weight);
  if (!heavy.ok) return heavy;
  const outer: Working = {
    formula: 'weight / (height / 100 * (height / 100))',
    inputs: [input('weight', heavy.value.value, 'kg', ''), input('height', tall.value.value, 'cm', '')],
  };
  return ok({
    value: whenKnown({ kg: heavy.value.value, cm: tall.value.value }, ({ kg, cm }) => bmiOf(kg, cm)),
    unit: 'kg/m²',
    working: substitute(substitute(outer, 'weight', heavy.value.working), 'height', tall.value.working),
  });
}

/** The same from plain kg and cm. */
export function bmiOf(kg: number, cm: number): number {
  return kg / (cm / 100) ** 2;
}

/**
 * The class of an unrounded index: 29.95 is overweight though it prints as 30.0. An index that is on a limit but
 * for the noise of binary fractions counts as on it. Refuses ages under 20, for which percentiles by age
 * are used, and an index that is not above zero.
 */
export function bmiClass(index: number, age: number): Result<BmiClass> {
  if (!(age >= ADULT_FROM)) {
    return refuse(
      `These classes are for ages ${ADULT_FROM} and over; this example is ${age}.`,
      'Percentiles by age and sex are used below that; this tool does not hold them.',
    );
  }
  if (!(index > 0) || !Number.isFinite(index)) {
    return refuse(`${index} is no body mass index.`, 'Check height and weight and their units.');
  }
  const named = BMI_CLASSES.reduce((so, one) => (reaches(index, one.from) ? one : so));
  return ok(named.name);
}

/** Whether an index is at a limit or above it, the noise of binary fractions aside. */
export function reaches(index: number, limit: number): boolean {
  return index >= limit * (1 - 1e-12);
}
