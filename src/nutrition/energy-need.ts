import type { ActivityLevel } from './activity-level.js';
import { type Adult, type Ages, readAdult, type Sex } from './adult.js';
import { type EnergyEstimate, type EnergyRow, fromRow } from './energy-equation.js';
import { ok, type Result } from './result.js';

/** kcal a day by weight in kg, height in cm and age in years. The constant of very active men is below zero. */
export const NEED_ROWS_2023: Readonly<Record<Sex, Readonly<Record<ActivityLevel<2023>, EnergyRow>>>> = {
  male: {
    inactive: need(753.07, -10.83, 6.5, 14.1),
    'low active': need(581.47, -10.83, 8.3, 14.94),
    active: need(1004.82, -10.83, 6.52, 15.91),
    'very active': need(-517.88, -10.83, 15.61, 19.11),
  },
  female: {
    inactive: need(584.9, -7.01, 5.72, 11.71),
    'low active': need(575.77, -7.01, 6.6, 12.14),
    active: need(710.25, -7.01, 6.54, 12.34),
    'very active': need(511.83, -7.01, 9.07, 12.56),
  },
};

/** Ages of both editions of the adult equations. */
export const NEED_AGES: Ages = {
  from: 19,
  before: Number.POSITIVE_INFINITY,
  hint: 'Younger people have other equations; choose an invented example of 19 years or over.',
};

/**
 * Energy in kcal a day that keeps the weight of an adult as it is, by the 2023 equations. Domain: 19 years and
 * over, any body mass index. Refuses younger ages, pregnancy and breastfeeding, which have equations of their own.
 * Unknown figures give an unknown result. A group's estimate, nobody's target.
 * Source: National Academies. Dietary Reference Intakes for Energy. 2023. doi 10.17226/26818, Table S-2
 * (coefficients as more than eight public transcriptions agree on them).
 */
export function energyNeed(adult: Adult, level: ActivityLevel<2023>): Result<EnergyEstimate> {
  const read = readAdult(adult, NEED_AGES);
  if (!read.ok) return read;
  return ok({
    ...fromRow(NEED_ROWS_2023[adult.sex][level], read.value),
    equation: `Estimated energy requirement 2023, ${level}`,
    cautions: [KEEPS_WEIGHT],
  });
}

export const KEEPS_WEIGHT =
  'Keeps weight as it is, for a group; one person can need a few hundred kcal more or less.';

function need(constant: number, perYear: number, perCm: number, perKg: number): EnergyRow {
  const perHeight = { each: perCm, unit: 'cm' } as const;
  return { source: 'dri-energy-2023', checked: 'copies', constant, perKg, perHeight, perYear };
}
