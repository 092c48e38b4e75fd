import { known, notKnown } from './arithmetic.js';
import type { EnergyUnit } from './quantity.js';
import type { Measured, Reckoned } from './reckoned.js';
import { ok, type Result, refuse } from './result.js';
import { unitRatio } from './units.js';
import {
  ADAPTATION,
  BUILDING,
  ENERGY_IN,
  FOOD_HANDLING,
  FORBES,
  UPKEEP,
  WEIGHT_MODEL,
} from './weight-constants.js';
import { FROM_LESSON, input, substitute, type Worked } from './working.js';

/** 1 − β: what is left of a change of intake after food handling and adaptation. */
const HELD = 1 - FOOD_HANDLING - ADAPTATION.share;

/** The dynamic model, made straight around the weight at the start. Values per change of intake held for good. */
export interface LinearWeight {
  /** ρ: energy that a kg of change is worth. */
  readonly energyDensity: Reckoned<'kJ per kg'>;
  /** ε: by how much expenditure follows each kg. */
  readonly following: Reckoned<'kJ per kg a day'>;
  /** τ = ρ ÷ ε: the time in which 63 percent of the change comes. */
  readonly time: Reckoned<'days'>;
  readonly halfTime: Reckoned<'days'>;
}

/**
 * ρ = (ηF + ρF + α (ηL + ρL)) ÷ ((1 − β)(1 + α)), ε = ((γF + α γL) ÷ (1 + α) + δ) ÷ (1 − β), with α = 10.4 ÷ fat
 * and β = 0.24. `fat` in kg at the start, above 0; `moving` is δ in kJ per kg a day, 0 or more (30 is sedentary).
 * Unknown in, unknown out. Source: Hall KD et al. Lancet 2011;378:826-837, web appendix, equations 10-18.
 */
export function linearWeight(fat: number | null, moving: number | null): Result<LinearWeight> {
  if (fat !== null && !(fat > 0 && Number.isFinite(fat)))
    return refuse(`${fat} kg of fat is not above zero.`, 'Give the fat at the start in kg.');
  if (moving !== null && !(moving >= 0 && Number.isFinite(moving)))
    return refuse(`${moving} kJ per kg a day is below zero.`, 'Sedentary is about 30.');
  const alpha = `${FORBES} / fat`;
  const held = `(1 - ${FOOD_HANDLING} - ${ADAPTATION.share})`;
  const density = `(fat_building + fat_energy + ${alpha} * (lean_building + lean_energy)) / (${held} * (1 + ${alpha}))`;
  const following = `((fat_upkeep + ${alpha} * lean_upkeep) / (1 + ${alpha}) + moving) / ${held}`;
  const given = input('fat', fat, 'kg', FROM_LESSON);
  const forDensity = [
    given,
    input('fat_building', BUILDING.fat, 'kJ per kg', WEIGHT_MODEL),
    input('fat_energy', ENERGY_IN.fat, 'kJ per kg', WEIGHT_MODEL),
    input('lean_building', BUILDING.lean, 'kJ per kg', WEIGHT_MODEL),
    input('lean_energy', ENERGY_IN.lean, 'kJ per kg', WEIGHT_MODEL),
  ];
  const forFollowing = [
    input('fat_upkeep', UPKEEP.fat, 'kJ per kg', WEIGHT_MODEL),
    input('lean_upkeep', UPKEEP.lean, 'kJ per kg', WEIGHT_MODEL),
    input('moving', moving, 'kJ per kg a day', FROM_LESSON),
  ];
  const rho = fat === null ? null : densityAt(fat);
  const epsilon = fat === null || moving === null ? null : followingAt(fat, moving);
  const tau = rho === null || epsilon === null ? null : rho / epsilon;
  const time = `(${density}) / (${following})`;
  const all = [...forDensity, ...forFollowing];
  const half = input('ln_two', Math.LN2, '', 'natural logarithm of 2');
  return ok({
    energyDensity: { value: rho, unit: 'kJ per kg', working: { formula: density, inputs: forDensity } },
    following: {
      value: epsilon,
      unit: 'kJ per kg a day',
      working: { formula: following, inputs: [given, ...forFollowing] },
    },
    time: { value: tau, unit: 'days', working: { formula: time, inputs: all } },
    halfTime: {
      value: tau === null ? null : tau * Math.LN2,
      unit: 'days',
      working: { formula: `${time} * ln_two`, inputs: [...all, half] },
    },
  });
}

/**
 * Change of weight in kg after some days of a constant change of intake, by the straight form:
 * change ÷ ε × (1 − exp(−days ÷ τ)); a loss is below zero. `Infinity` days is where it ends. Close to the dynamic
 * model for small changes only. Not known when the change or the form is not. Refuses days below zero.
 */
export function linearChange(
  model: LinearWeight,
  change: Measured<EnergyUnit>,
  days: number,
): Result<Worked<'kg'>> {
  if (!(days >= 0)) return refuse(`${days} days lie before the start.`, 'Count days from the start.');
  const { following, time } = model;
  const reached = time.value === null ? null : 1 - Math.exp(-days / time.value);
  const each = unitRatio(change.unit, 'kJ');
  const outer = {
    formula: 'change * kj_each / following * reached',
    inputs: [
      input('change', change.value, `${change.unit} a day`, FROM_LESSON),
      input('kj_each', each, `kJ per ${change.unit}`, 'definition of the units'),
      input('following', following.value, following.unit, ''),
      input('reached', reached, '', WEIGHT_MODEL, '1 − exp(−days ÷ time of the form)'),
    ],
  };
  const value =
    change.value === null || following.value === null || reached === null
      ? null
      : ((change.value * each) / following.value) * reached;
  return ok({
    quantity: value === null ? notKnown('kg') : known(value, 'kg'),
    working: substitute(outer, 'following', following.working),
    estimated: true,
  });
}

function densityAt(fat: number): number {
  const alpha = FORBES / fat;
  const energy = BUILDING.fat + ENERGY_IN.fat + alpha * (BUILDING.lean + ENERGY_IN.lean);
  return energy / (HELD * (1 + alpha));
}

function followingAt(fat: number, moving: number): number {
  const alpha = FORBES / fat;
  return ((UPKEEP.fat + alpha * UPKEEP.lean) / (1 + alpha) + moving) / HELD;
}
