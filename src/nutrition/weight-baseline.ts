import { type Adult, type AdultFigures, readAdult, type Sex } from './adult.js';
import { known } from './arithmetic.js';
import { bmiOf, LOWEST_BMI, reaches } from './body-mass-index.js';
import type { Reckoned } from './reckoned.js';
import { MIFFLIN_AGES, restingEnergyOf } from './resting-energy.js';
import { ok, type Result, refuse } from './result.js';
import { KJ_PER_KCAL } from './units.js';
import {
  FAT_AT_START,
  FLUID_AT_START,
  FOOD_HANDLING,
  GLYCOGEN,
  MOST_FAT_PERCENT,
  UPKEEP,
  WEIGHT_MODEL,
} from './weight-constants.js';
import { FROM_LESSON, input, substitute, type Worked, type Working } from './working.js';

/** What the weight model is told about an invented adult. */
export interface WeightExample {
  readonly adult: Adult;
  /** Physical activity level: energy of the day ÷ resting energy, from 1.2 to below 2.5. */
  readonly activity: number;
  /** Share of energy from carbohydrate, above 0 to below 1; 0.5 when left out. Weight hardly depends on it. */
  readonly carbohydrate?: number;
  /** Percentage points of fat more (or less) than the regression gives, from −5 to 5; 0 when left out. */
  readonly fatPoints?: number;
}

/** The body at the start and the numbers that stay with it. */
export interface WeightBaseline {
  readonly figures: AdultFigures;
  /** Height in cm and weight in kg as plain numbers, for the equations. */
  readonly heightCm: number;
  readonly weight: number;
  /** kg of fat, of extracellular fluid, and of lean tissue without fluid, glycogen and the water with it. */
  readonly fat: Reckoned<'kg'> & { readonly value: number };
  readonly fluid: number;
  readonly lean: number;
  /** Energy that keeps the weight, kcal a day: activity × resting energy in the regression form. */
  readonly intake: Worked<'kcal'>;
  /** The same in kJ a day. */
  readonly intakeKj: number;
  /** Energy of moving about per kg of weight. */
  readonly moving: Reckoned<'kJ per kg a day'> & { readonly value: number };
  /** What is left of the energy of the day, so that the start is in balance. */
  readonly rest: Reckoned<'kJ a day'> & { readonly value: number };
  readonly carbohydrate: number;
}

const ACTIVITY = { low: 1.2, high: 2.5 };
const POINTS = 5;

/**
 * The body of an invented adult before anything changes, as the weight model sees it. Domain: 19 to 78 years (those
 * of the resting-energy equation), body mass index from 18.5, not pregnant or breastfeeding; refused
 * otherwise, and also when a figure is not known, because a curve needs them all.
 */
export function weightBaseline(example: WeightExample): Result<WeightBaseline> {
  const { adult, activity, carbohydrate = 0.5, fatPoints = 0 } = example;
  const read = readAdult(adult, MIFFLIN_AGES);
  if (!read.ok) return read;
  const resting = restingEnergyOf(read.value, adult.sex, 'regression');
  const { age, height, weight } = read.value;
  const burned = resting.quantity.value;
  if (age.value === null || height.value === null || weight.value === null || burned === null)
    return refuse(
      'The weight model needs age, height and weight.',
      'Give all three of the invented example.',
    );
  if (!(activity >= ACTIVITY.low && activity < ACTIVITY.high)) {
    return refuse(
      `A physical activity level of ${activity} is not between ${ACTIVITY.low} and ${ACTIVITY.high}.`,
      'Most adults are between 1.4 and 2.0.',
    );
  }
  if (!(carbohydrate > 0 && carbohydrate < 1))
    return refuse(`A carbohydrate share of ${carbohydrate} is not between 0 and 1.`, 'Write half as 0.5.');
  if (!(Math.abs(fatPoints) <= POINTS))
    return refuse(
      `${fatPoints} points of fat are more than ${POINTS} either way.`,
      'Use a number from −5 to 5.',
    );
  const bmi = bmiOf(weight.value, height.value);
  if (!reaches(bmi, LOWEST_BMI)) {
    return refuse(
      `The example starts at a body mass index of ${bmi.toFixed(1)}, below ${LOWEST_BMI}; the model does not apply.`,
      'Choose another invented example.',
    );
  }
  const years = age.value;
  const kg = weight.value;
  const parts = FLUID_AT_START[adult.sex];
  const fluid =
    parts.perYear * years + (parts.perMeter * height.value) / 100 + parts.perKg * kg + parts.constant;
  const fat = fatAtStart(adult.sex, read.value, years, kg, bmi, fatPoints);
  const lean = kg - fat.value - fluid - (1 + GLYCOGEN.water) * GLYCOGEN.start;
  const intake: Worked<'kcal'> = {
    quantity: known(activity * burned, 'kcal'),
    working: substitute(
      {
        formula: 'activity * resting',
        inputs: [
          input('activity', activity, 'physical activity level', FROM_LESSON),
          input('resting', burned, 'kcal', ''),
        ],
      },
      'resting',
      resting.working,
    ),
    estimated: true,
  };
  const intakeKj = activity * burned * KJ_PER_KCAL;
  const moving = movingPerKg(activity, burned, kg);
  const rest = restOfDay(intakeKj, fat.value, lean, kg, moving.value);
  return ok({
    figures: read.value,
    heightCm: height.value,
    weight: kg,
    fat,
    fluid,
    lean,
    intake,
    intakeKj,
    moving,
    rest,
    carbohydrate,
  });
}

function fatAtStart(
  sex: Sex,
  figures: AdultFigures,
  years: number,
  kg: number,
  bmi: number,
  points: number,
): WeightBaseline['fat'] {
  const { perYear, perLog, less } = FAT_AT_START[sex];
  const from = 'jackson-2002';
  const percent = perYear * years + perLog * Math.log(bmi) - less + points;
  const outer: Working = {
    formula: 'weight / 100 * min(most, per_year * age + per_log * log_bmi - less + points)',
    inputs: [
      input('weight', kg, 'kg', ''),
      input('most', MOST_FAT_PERCENT, 'percent', 'common practice'),
      input('per_year', perYear, 'percent per year', from),
      input('age', years, 'years', ''),
      input('per_log', perLog, 'percent', from),
      input('log_bmi', Math.log(bmi), '', from, 'natural logarithm of weight / (height in m)²'),
      input('less', less, 'percent', from),
      input('points', points, 'percent', FROM_LESSON, 'points of fat more or less than the regression'),
    ],
  };
  return {
    value: (kg / 100) * Math.min(MOST_FAT_PERCENT, percent),
    unit: 'kg',
    working: substitute(substitute(outer, 'weight', figures.weight.working), 'age', figures.age.working),
  };
}

/** δ = ((1 − βTEF) × activity − 1) × resting energy ÷ weight. */
function movingPerKg(activity: number, resting: number, kg: number): WeightBaseline['moving'] {
  return {
    value: (((1 - FOOD_HANDLING) * activity - 1) * resting * KJ_PER_KCAL) / kg,
    unit: 'kJ per kg a day',
    working: {
      formula: '((1 - handling) * activity - 1) * resting * kj_each / weight',
      inputs: [
        input('handling', FOOD_HANDLING, '', WEIGHT_MODEL),
        input('activity', activity, 'physical activity level', FROM_LESSON),
        input('resting', resting, 'kcal', 'mifflin-1990', 'regression form'),
        input('kj_each', KJ_PER_KCAL, 'kJ per kcal', 'definition of the units'),
        input('weight', kg, 'kg', FROM_LESSON),
      ],
    },
  };
}

/** K, from expenditure = intake at the start. */
function restOfDay(
  intakeKj: number,
  fat: number,
  lean: number,
  kg: number,
  moving: number,
): WeightBaseline['rest'] {
  return {
    value: intakeKj - UPKEEP.fat * fat - UPKEEP.lean * lean - moving * kg,
    unit: 'kJ a day',
    working: {
      formula: 'intake - fat_upkeep * fat - lean_upkeep * lean - moving * weight',
      inputs: [
        input('intake', intakeKj, 'kJ', WEIGHT_MODEL, 'activity × resting energy'),
        input('fat_upkeep', UPKEEP.fat, 'kJ per kg', WEIGHT_MODEL),
        input('fat', fat, 'kg', 'jackson-2002'),
        input('lean_upkeep', UPKEEP.lean, 'kJ per kg', WEIGHT_MODEL),
        input(
          'lean',
          lean,
          'kg',
          WEIGHT_MODEL,
          'weight less fat, fluid (silva-2007), glycogen and its water',
        ),
        input('moving', moving, 'kJ per kg', WEIGHT_MODEL),
        input('weight', kg, 'kg', FROM_LESSON),
      ],
    },
  };
}
