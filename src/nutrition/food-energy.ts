import { sum } from './arithmetic.js';
import type { Checked } from './published.js';
import type { EnergyUnit, Quantity } from './quantity.js';
import { ok, type Result, refuse } from './result.js';
import { FROM_LESSON, input, nameInputs, type Worked } from './working.js';

/** What gives energy. Carbohydrate is without polyols, and in the EU's factors also without fiber. */
export const ENERGY_PARTS = [
  'fat',
  'carbohydrate',
  'protein',
  'alcohol',
  'fiber',
  'polyols',
  'erythritol',
  'organic acids',
] as const;
export type EnergyPart = (typeof ENERGY_PARTS)[number];

/** One set of factors: energy in one gram of each part. */
export interface EnergyFactors {
  readonly source: string;
  readonly checked: Checked;
  readonly perGram: Readonly<Partial<Record<EnergyUnit, Readonly<Partial<Record<EnergyPart, number>>>>>>;
}

/**
 * The sets of factors. `4-4-9-7` counts total carbohydrate, fiber with it, and knows kcal only. The EU's set has kJ
 * and kcal side by side: each is summed with its own factors, and kJ is never kcal × 4.184.
 */
export const ENERGY_FACTORS = {
  '4-4-9-7': {
    source: 'general factors, USDA Agriculture Handbook 74; 21 CFR 101.9(c)(1)(i)(B)',
    checked: 'copies',
    perGram: { kcal: { fat: 9, carbohydrate: 4, protein: 4, alcohol: 7 } },
  },
  eu: {
    source: 'Regulation (EU) 1169/2011, Annex XIV',
    checked: 'memory',
    perGram: {
      kcal: {
        fat: 9,
        carbohydrate: 4,
        protein: 4,
        alcohol: 7,
        fiber: 2,
        polyols: 2.4,
        erythritol: 0,
        'organic acids': 3,
      },
      kJ: {
        fat: 37,
        carbohydrate: 17,
        protein: 17,
        alcohol: 29,
        fiber: 8,
        polyols: 10,
        erythritol: 0,
        'organic acids': 13,
      },
    },
  },
} as const satisfies Readonly<Record<string, EnergyFactors>>;
export type EnergyMethod = keyof typeof ENERGY_FACTORS;

/**
 * The energy of a food from its parts in g: sum of grams × factor, unrounded. Leave out only what the food does not
 * hold: a part that is not known is `null` and makes the sum at least. Refuses amounts below zero, parts for which
 * the set has no factor, a set without that unit, and no parts at all. Labels may differ: other methods are lawful.
 */
export function foodEnergy<U extends EnergyUnit>(
  method: EnergyMethod,
  unit: U,
  grams: Readonly<Partial<Record<EnergyPart, number | null>>>,
): Result<Worked<U>> {
  const set: EnergyFactors = ENERGY_FACTORS[method];
  const factors = set.perGram[unit];
  if (factors === undefined) {
    return refuse(`The factors ${method} give no ${unit}.`, 'Use kcal, or the factors of the EU for kJ.');
  }
  const parts: { part: EnergyPart; amount: number | null; factor: number }[] = [];
  for (const part of ENERGY_PARTS) {
    const amount = grams[part];
    if (amount === undefined) continue;
    if (amount !== null && !(amount >= 0 && Number.isFinite(amount))) {
      return refuse(
        `${amount} g of ${part} is below zero or no number.`,
        'Write the grams, or leave them unknown.',
      );
    }
    const factor = factors[part];
    if (factor === undefined) {
      return refuse(`The factors ${method} do not count ${part}.`, 'Use the factors of the EU.');
    }
    parts.push({ part, amount, factor });
  }
  if (parts.length === 0)
    return refuse('There is nothing to count the energy from.', 'Give fat, carbohydrate and protein.');
  const quantity: Quantity<U> = sum<U>(
    unit,
    parts.map(({ amount, factor }) => ({
      value: amount === null ? null : amount * factor,
      unit: unit as NoInfer<U>,
      atLeast: false,
    })),
  );
  const shown = quantity.value === null ? parts : parts.filter(({ amount }) => amount !== null);
  const named = nameInputs(shown, ({ part }) => part);
  return ok({
    quantity,
    working: {
      formula: named.map(({ name }) => `${name} * ${name}_factor`).join(' + '),
      inputs: named.flatMap(({ name, item }) => [
        input(name, item.amount, 'g', FROM_LESSON),
        input(
          `${name}_factor`,
          item.factor,
          `${unit} per g`,
          set.source,
          set.checked === 'memory' ? 'from memory' : undefined,
        ),
      ]),
    },
    estimated: false,
  });
}
