import type { MassUnit } from './quantity.js';
import type { Measured, Reckoned } from './reckoned.js';
import { inWords, ok, type Result, refuse } from './result.js';
import { unitRatio } from './units.js';
import { asGiven, FROM_LESSON, input } from './working.js';

/** The sex that the published equations were fitted for; none was fitted for anything else. */
export type Sex = 'female' | 'male';
export type LengthUnit = 'cm' | 'm' | 'in' | 'ft';

/** What makes an equation for plain adults, or any content on weight, wrong for somebody. */
export const CIRCUMSTANCES = [
  'pregnant',
  'breastfeeding',
  'eating disorder, now or before',
  'insulin',
  'sulfonylurea',
  'kidney disease',
  'recent unexplained weight loss',
  'active cancer',
  'frailty',
  'lithium without review',
  'warfarin without review',
] as const;
export type Circumstance = (typeof CIRCUMSTANCES)[number];

/** An invented example adult, or the one whom a clinician checks the tool with; never a reader. */
export interface Adult {
  readonly sex: Sex;
  /** Years since birth; part years count. `null` is not known. */
  readonly age: number | null;
  readonly height: Measured<LengthUnit>;
  readonly weight: Measured<MassUnit>;
  readonly circumstances?: readonly Circumstance[];
}

/** The same adult in the units of the equations. */
export interface AdultFigures {
  readonly age: Reckoned<'years'>;
  readonly height: Reckoned<'cm'>;
  readonly weight: Reckoned<'kg'>;
}

/** Who an equation speaks of: ages from `from` up to, but not including, the birthday `before`. */
export interface Ages {
  readonly from: number;
  readonly before: number;
  /** Where else to look, for an age outside. */
  readonly hint: string;
}

const CM: Readonly<Record<LengthUnit, number>> = { cm: 1, m: 100, in: 2.54, ft: 30.48 };
/** Outside these a figure is taken for a slip of the unit. Limits of our own. */
const HEIGHTS = { low: 100, high: 250 };
const WEIGHTS = { low: 20, high: 400 };
const OLDEST = 120;

/**
 * Reads an adult for an equation: height in cm, weight in kg, age in years, each with its working. Unknown
 * figures stay unknown. Refuses ages outside the equation's, pregnancy and breastfeeding (they have equations
 * of their own), and figures that no adult has (height outside 100–250 cm, weight outside 20–400 kg), which
 * are nearly always a wrong unit.
 */
export function readAdult(adult: Adult, ages: Ages): Result<AdultFigures> {
  const height = heightInCm(adult.height);
  if (!height.ok) return height;
  const weight = weightInKg(adult.weight);
  if (!weight.ok) return weight;
  const age = ageInYears(adult.age);
  if (!age.ok) return age;
  const years = age.value.value;
  if (years !== null && (years < ages.from || years >= ages.before)) {
    const upTo = ages.before > OLDEST ? 'and over' : `to ${ages.before - 1}`;
    return refuse(
      `This equation is for ages ${ages.from} ${upTo}; this example is ${Math.floor(years)}.`,
      ages.hint,
    );
  }
  const own = (adult.circumstances ?? []).filter((one) => one === 'pregnant' || one === 'breastfeeding');
  if (own.length > 0) {
    return refuse(
      `The plain adult equation does not hold for somebody who is ${inWords(own)}.`,
      'Choose another invented example; the equations for pregnancy and breastfeeding are for a clinician.',
    );
  }
  return ok({ age: age.value, height: height.value, weight: weight.value });
}

/** A height in cm; 1 in is 2.54 cm and 1 ft is 12 in exactly. Refuses heights outside 100–250 cm. */
export function heightInCm(height: Measured<LengthUnit>): Result<Reckoned<'cm'>> {
  const each = CM[height.unit];
  const value = height.value === null ? null : height.value * each;
  if (value !== null && !(value >= HEIGHTS.low && value <= HEIGHTS.high)) {
    return refuse(
      `A height of ${height.value} ${height.unit} is outside ${HEIGHTS.low} to ${HEIGHTS.high} cm.`,
      'Check the number and its unit.',
    );
  }
  return ok({ value, unit: 'cm', working: inUnit('height', height, each, 'cm') });
}

/** A body weight in kg. Refuses weights outside 20–400 kg. */
export function weightInKg(weight: Measured<MassUnit>): Result<Reckoned<'kg'>> {
  const each = unitRatio(weight.unit, 'kg');
  const value = weight.value === null ? null : weight.value * each;
  if (value !== null && !(value >= WEIGHTS.low && value <= WEIGHTS.high)) {
    return refuse(
      `A weight of ${weight.value} ${weight.unit} is outside ${WEIGHTS.low} to ${WEIGHTS.high} kg.`,
      'Check the number and its unit.',
    );
  }
  return ok({ value, unit: 'kg', working: inUnit('weight', weight, each, 'kg') });
}

function ageInYears(age: number | null): Result<Reckoned<'years'>> {
  if (age !== null && !(age >= 0 && age <= OLDEST)) {
    return refuse(`An age of ${age} years is not between 0 and ${OLDEST}.`, 'Write the age in years.');
  }
  return ok({ value: age, unit: 'years', working: asGiven(input('age', age, 'years', FROM_LESSON)) });
}

function inUnit(name: string, given: Measured, each: number, unit: string) {
  const as = input(name, given.value, given.unit, FROM_LESSON);
  if (each === 1) return asGiven(as);
  const factor = input(`${unit}_each`, each, `${unit} per ${given.unit}`, 'definition of the units');
  return { formula: `${name} * ${factor.name}`, inputs: [as, factor] };
}
