import { type Adult, type AdultFigures, type Ages, readAdult, type Sex } from './adult.js';
import { type EnergyEstimate, type EnergyRow, fromRow } from './energy-equation.js';
import { ok, type Result } from './result.js';

/**
 * The two published forms. `simplified` is the one in practice; `regression` has the unrounded coefficients and
 * is the one inside the body-weight model. They differ by a few kcal and are never mixed.
 */
export type MifflinForm = 'simplified' | 'regression';

const MIFFLIN = 'mifflin-1990';

/** kcal a day by weight in kg, height in cm and age in years. */
export const MIFFLIN_ROWS: Readonly<Record<MifflinForm, Readonly<Record<Sex, EnergyRow>>>> = {
  simplified: {
    male: mifflin(5, 10, -5),
    female: mifflin(-161, 10, -5),
  },
  regression: {
    // The paper writes it once: -161, and 166 more for men.
    male: mifflin(166 - 161, 9.99, -4.92),
    female: mifflin(-161, 9.99, -4.92),
  },
};

/** The people that the equation was made from: 19 to 78 years. */
export const MIFFLIN_AGES: Ages = {
  from: 19,
  before: 79,
  hint: 'Its people were 19 to 78 years old. The energy-need equation of 2023 covers every age from 19.',
};

/**
 * Resting energy of an adult in kcal a day by Mifflin and St Jeor. Domain: healthy adults of 19 to 78 years,
 * not pregnant or breastfeeding; the rest is refused with a reason. Unknown figures give an unknown result.
 * Source: Mifflin MD, St Jeor ST, Hill LA, Scott BJ, Daugherty SA, Koh YO. Am J Clin Nutr 1990;51:241-247
 * (498 people; R² 0.71).
 */
export function restingEnergy(adult: Adult, form: MifflinForm): Result<EnergyEstimate> {
  const read = readAdult(adult, MIFFLIN_AGES);
  return read.ok ? ok(restingEnergyOf(read.value, adult.sex, form)) : read;
}

/** The same for an adult who was read with `MIFFLIN_AGES`. */
export function restingEnergyOf(figures: AdultFigures, sex: Sex, form: MifflinForm): EnergyEstimate {
  return {
    ...fromRow(MIFFLIN_ROWS[form][sex], figures),
    equation: `Mifflin-St Jeor 1990, ${form} form`,
    cautions: [
      'Within about 10 percent for most people; for one person it can be further off.',
      'Older adults and minority groups were few among its people; not for acute illness.',
    ],
  };
}

function mifflin(constant: number, perKg: number, perYear: number): EnergyRow {
  const perHeight = { each: 6.25, unit: 'cm' } as const;
  return { source: MIFFLIN, checked: 'publication', constant, perKg, perHeight, perYear };
}
