import type { ActivityLevel } from './activity-level.js';
import { type Adult, readAdult, type Sex } from './adult.js';
import { known, notKnown } from './arithmetic.js';
import { bmiOf } from './body-mass-index.js';
import type { EnergyEstimate } from './energy-equation.js';
import { KEEPS_WEIGHT, NEED_AGES } from './energy-need.js';
import type { Checked } from './published.js';
import { whenKnown } from './reckoned.js';
import { ok, type Result, refuse } from './result.js';
import { roundTo } from './rounding.js';
import { input, substitute, type Working } from './working.js';

/** constant + per year × age + activity × (per kg × weight + per m × height), kcal a day. */
interface NeedRow2005 {
  readonly checked: Checked;
  readonly note?: string;
  readonly constant: number;
  readonly perYear: number;
  readonly perKg: number;
  readonly perMeter: number;
  /** The activity factor of each level; men and women have their own. */
  readonly activity: Readonly<Record<ActivityLevel<2005>, number>>;
}
export type WeightRange2005 = 'normal weight' | 'overweight';

/** The printed footnote of the table lists only the women's factors; its men's column was made with the men's. */
export const NEED_ROWS_2005: Readonly<Record<WeightRange2005, Readonly<Record<Sex, NeedRow2005>>>> = {
  'normal weight': {
    male: row('copies', 662, -9.53, 15.91, 539.6, [1, 1.11, 1.25, 1.48]),
    female: row('copies', 354, -6.91, 9.36, 726, [1, 1.12, 1.27, 1.45]),
  },
  overweight: {
    male: row('memory', 1086, -10.1, 13.7, 416, [1, 1.12, 1.29, 1.59], 'the copy that was seen is garbled'),
    female: row('memory', 448, -7.95, 11.4, 619, [1, 1.16, 1.27, 1.44], 'not compared with the report'),
  },
};
const LOWEST = 18.5;
const OVERWEIGHT = 25;

/**
 * Energy in kcal a day that keeps the weight of an adult as it is, by the equations of 2002/2005, kept beside those
 * of 2023 for older material. Domain: 19 years and over; body mass index from 18.5 to below 25 takes the
 * normal-weight row, from 25 the overweight row (which rests on memory and says so). Below 18.5 is refused, and so
 * are younger ages, pregnancy and breastfeeding. The table gives the index to two decimals, so the limits are
 * applied to two decimals. When height or weight is not known no row can be chosen and the result is
 * not known. Standard error of fit 199 (men) and 162 (women) kcal a day (from memory).
 * Source: Institute of Medicine. Dietary Reference Intakes for Energy, Carbohydrate, Fiber, Fat, Fatty Acids,
 * Cholesterol, Protein, and Amino Acids. 2002/2005.
 */
export function energyNeed2005(adult: Adult, level: ActivityLevel<2005>): Result<EnergyEstimate> {
  const read = readAdult(adult, NEED_AGES);
  if (!read.ok) return read;
  const { age, height, weight } = read.value;
  const bmi = whenKnown({ kg: weight.value, cm: height.value }, ({ kg, cm }) => roundTo(bmiOf(kg, cm), 0.01));
  if (bmi !== null && bmi < LOWEST) {
    return refuse(
      `The equations of 2005 begin at a body mass index of 18.5; this example has ${bmi.toFixed(2)}.`,
      'Choose another invented example.',
    );
  }
  const range: WeightRange2005 = bmi !== null && bmi >= OVERWEIGHT ? 'overweight' : 'normal weight';
  const chosen = NEED_ROWS_2005[range][adult.sex];
  const { constant, perYear, perKg, perMeter, checked, note } = chosen;
  const activity = chosen.activity[level];
  const from = (name: string, value: number, unit: string) =>
    input(name, value, unit, 'dri-macronutrients-2005', note);
  const outer: Working = {
    formula: 'constant + per_year * age + activity * (per_kg * weight + per_m * height / 100)',
    inputs: [
      from('constant', constant, 'kcal'),
      from('per_year', perYear, 'kcal per year'),
      input('age', age.value, 'years', ''),
      from('activity', activity, `factor, ${level}`),
      from('per_kg', perKg, 'kcal per kg'),
      input('weight', weight.value, 'kg', ''),
      from('per_m', perMeter, 'kcal per m'),
      input('height', height.value, 'cm', ''),
    ],
  };
  const value = whenKnown(
    { years: age.value, kg: weight.value, cm: height.value },
    ({ years, kg, cm }) => constant + perYear * years + activity * (perKg * kg + (perMeter * cm) / 100),
  );
  const working = (['age', 'weight', 'height'] as const).reduce(
    (so, name) => substitute(so, name, read.value[name].working),
    outer,
  );
  const cautions = note === undefined ? [KEEPS_WEIGHT] : [KEEPS_WEIGHT, `Row from memory (${note}).`];
  return ok({
    quantity: value === null ? notKnown('kcal') : known(value, 'kcal'),
    working,
    estimated: true,
    checked,
    equation: `Estimated energy requirement 2005, ${range}, ${level}`,
    cautions,
  });
}

function row(
  checked: Checked,
  constant: number,
  perYear: number,
  perKg: number,
  perMeter: number,
  [sedentary, low, active, very]: readonly [number, number, number, number],
  note?: string,
): NeedRow2005 {
  const activity = { sedentary, 'low active': low, active, 'very active': very };
  return {
    checked,
    constant,
    perYear,
    perKg,
    perMeter,
    activity,
    ...(note === undefined ? {} : { note }),
  };
}
