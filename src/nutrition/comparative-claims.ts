import type { Contains } from './food.js';
import type { Published } from './published.js';
import type { EnergyUnit, MassUnit, Quantity } from './quantity.js';
import { ok, type Result, refuse } from './result.js';
import { dimensionOf, unitRatio } from './units.js';
import { FROM_LESSON, input, type Working } from './working.js';

/** How much less a food holds than the food that it names, by the rules of US labels. */
export interface LessClaim extends Published {
  /** Unrounded, in percent of the reference food; below zero when there is more. `null` is not known. */
  readonly lessPercent: number | null;
  /** At least 25 percent less: "reduced" or "less". */
  readonly reduced: Contains;
  /** At least 50 percent less; on sodium this is "light in sodium". */
  readonly half: Contains;
  readonly working: Working;
}

/** Share by which two numbers may differ and still count as the same: the noise of binary fractions. */
const NOISE = 1e-9;

/**
 * A claim of "reduced" or "less": (reference − food) ÷ reference × 100, per reference amount, for meals per 100 g, on
 * unrounded amounts. The reference food may not itself be low in the nutrient, and it must be said whether it is.
 * Source: 21 CFR 101.60(b)(4), 101.61(b)(6), 101.62(b)(4), (c)(4) and (d)(4); light in sodium 101.56(c). Refuses a
 * reference food that holds none, units that differ in kind, amounts below zero, and low reference foods.
 */
export function lessClaim(
  food: Quantity<MassUnit | EnergyUnit>,
  reference: Quantity<MassUnit | EnergyUnit>,
  referenceIsLow: Contains,
): Result<LessClaim> {
  if (referenceIsLow === 'yes') {
    return refuse(
      'The food compared with is itself low in this.',
      'Compare with a food that is not low, or make no claim.',
    );
  }
  if (dimensionOf(food.unit) !== dimensionOf(reference.unit)) {
    return refuse(
      `${food.unit} cannot be compared with ${reference.unit}.`,
      'Write both amounts in one unit.',
    );
  }
  const ratio = unitRatio(food.unit, reference.unit);
  const [a, b] = [food.value, reference.value];
  if ((a !== null && !(a >= 0)) || (b !== null && !(b > 0))) {
    return refuse(
      'The amounts must be zero or more, and the food compared with must hold some.',
      'Correct the amounts.',
    );
  }
  const inexact = food.atLeast || reference.atLeast;
  const lessPercent = a === null || b === null || inexact ? null : ((b - a * ratio) / b) * 100;
  const sure = (least: number): Contains => {
    if (lessPercent === null) return 'unknown';
    if (lessPercent < least - NOISE) return 'no';
    return referenceIsLow === 'unknown' ? 'unknown' : 'yes';
  };
  return ok({
    lessPercent,
    reduced: sure(25),
    half: sure(50),
    working: {
      formula: '(reference - food * ratio) / reference * 100',
      inputs: [
        input('reference', reference.value, reference.unit, FROM_LESSON),
        input('food', food.value, food.unit, FROM_LESSON),
        input('ratio', ratio, `${reference.unit} per ${food.unit}`, 'definition of the units'),
      ],
    },
    source: '21 CFR 101.60 to 101.62; light in sodium 101.56(c)',
    checked: 'copies',
  });
}

/** A food and the food that it is compared with, per reference amount. */
export interface FatAndEnergy {
  readonly fatGrams: number;
  readonly kcal: number;
}

/** Whether a food may be called light. */
export interface LightClaim extends Published {
  readonly allowed: boolean;
  /** Share of the reference food's energy that comes from fat, in percent. */
  readonly fromFatPercent: number;
  readonly lessFatPercent: number;
  readonly lessEnergyPercent: number;
}

/**
 * "Light" (or "lite"): when at least half of the reference food's energy comes from fat, the fat must be down by at
 * least 50 percent; otherwise the fat by at least 50 percent or the energy by at least one third. Source: 21 CFR
 * 101.56(b). Refuses amounts that are not known to be zero or more, and a reference food without energy or fat.
 */
export function lightClaim(food: FatAndEnergy, reference: FatAndEnergy): Result<LightClaim> {
  if (!(food.fatGrams >= 0 && food.kcal >= 0 && reference.fatGrams > 0 && reference.kcal > 0)) {
    return refuse(
      'The amounts must be zero or more, and the food compared with must hold fat and energy.',
      'Correct the amounts.',
    );
  }
  const fromFatPercent = ((reference.fatGrams * 9) / reference.kcal) * 100;
  const lessFatPercent = (1 - food.fatGrams / reference.fatGrams) * 100;
  const lessEnergyPercent = (1 - food.kcal / reference.kcal) * 100;
  const lessFat = lessFatPercent >= 50 - NOISE;
  const lessEnergy = fromFatPercent < 50 - NOISE && lessEnergyPercent >= 100 / 3 - NOISE;
  return ok({
    allowed: lessFat || lessEnergy,
    fromFatPercent,
    lessFatPercent,
    lessEnergyPercent,
    source: '21 CFR 101.56(b)',
    checked: 'copies',
  });
}
