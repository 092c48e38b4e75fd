import { ENERGY_FACTORS } from './food-energy.js';
import type { Published } from './published.js';
import { ok, type Result, refuse } from './result.js';
import { FROM_LESSON, input, type Working } from './working.js';

const FACTORS = ENERGY_FACTORS['4-4-9-7'].perGram.kcal;

/** What the energy of a diet is split into. */
export const ENERGY_SHARES = ['carbohydrate', 'protein', 'fat', 'alcohol'] as const;
export type EnergyShare = (typeof ENERGY_SHARES)[number];

/** Where energy comes from, unrounded, in percent; the shares add up to 100. */
export interface EnergySplit {
  readonly percent: Readonly<Record<EnergyShare, number>>;
  readonly workings: Readonly<Record<EnergyShare, Working>>;
}

/**
 * The split of the energy by 4-4-9-7: grams × factor ÷ the sum × 100. The grams of all four have to be known; no
 * alcohol is written as 0. Refuses amounts below zero and food without energy.
 */
export function splitEnergy(grams: Readonly<Record<EnergyShare, number>>): Result<EnergySplit> {
  const bad = ENERGY_SHARES.find((share) => !(grams[share] >= 0 && Number.isFinite(grams[share])));
  if (bad !== undefined)
    return refuse(`${grams[bad]} g of ${bad} is below zero or no number.`, 'Write the grams.');
  const total = ENERGY_SHARES.reduce((so, share) => so + grams[share] * FACTORS[share], 0);
  if (total === 0) return refuse('There is no energy to split.', 'Give the grams of what the food holds.');
  const inputs = ENERGY_SHARES.map((share) => input(share, grams[share], 'g', FROM_LESSON));
  const parts = ENERGY_SHARES.map((share) => `${share} * ${FACTORS[share]}`).join(' + ');
  const by = <T>(make: (share: EnergyShare) => T): Record<EnergyShare, T> => ({
    carbohydrate: make('carbohydrate'),
    protein: make('protein'),
    fat: make('fat'),
    alcohol: make('alcohol'),
  });
  return ok({
    percent: by((share) => ((grams[share] * FACTORS[share]) / total) * 100),
    workings: by((share) => ({ formula: `${share} * ${FACTORS[share]} / (${parts}) * 100`, inputs })),
  });
}

/** An acceptable share of the energy, in percent. */
export interface AcceptableShare extends Published {
  readonly low: number;
  readonly high: number;
}

/** Ages that the acceptable shares are set for. */
export type ShareAges = '1 to 3 years' | '4 to 18 years' | 'adults';

const SOURCE = 'nasem-dri 2005';
const adults = (low: number, high: number): AcceptableShare => ({
  low,
  high,
  source: SOURCE,
  checked: 'copies',
});
const young = (low: number, high: number): AcceptableShare => ({
  low,
  high,
  source: SOURCE,
  checked: 'memory',
});

/** Acceptable macronutrient distribution ranges. Source: DRI for macronutrients, 2002/2005; children from memory. */
export const ACCEPTABLE_SHARES: Readonly<
  Record<ShareAges, Readonly<Record<Exclude<EnergyShare, 'alcohol'>, AcceptableShare>>>
> = {
  adults: { carbohydrate: adults(45, 65), protein: adults(10, 35), fat: adults(20, 35) },
  '4 to 18 years': { carbohydrate: young(45, 65), protein: young(10, 30), fat: young(25, 35) },
  '1 to 3 years': { carbohydrate: young(45, 65), protein: young(5, 20), fat: young(30, 40) },
};

/** Grams from `low` to `high`, unrounded. */
export interface ShareGrams {
  readonly low: number;
  readonly high: number;
  readonly unit: 'g';
  /** Two parts, `low = …; high = …`. */
  readonly working: Working;
}

/** An acceptable share at an energy as grams: energy × percent ÷ 100 ÷ factor. Refuses energy that is not above zero. */
export function acceptableGrams(
  of: Exclude<EnergyShare, 'alcohol'>,
  kcal: number,
  ages: ShareAges = 'adults',
): Result<ShareGrams> {
  if (!(kcal > 0 && Number.isFinite(kcal))) {
    return refuse(`An energy of ${kcal} kcal is not above zero.`, 'Write the energy of a day in kcal.');
  }
  const { low, high, source, checked } = ACCEPTABLE_SHARES[ages][of];
  const factor = FACTORS[of];
  const note = checked === 'memory' ? `${ages}; from memory` : ages;
  return ok({
    low: (kcal * low) / 100 / factor,
    high: (kcal * high) / 100 / factor,
    unit: 'g',
    working: {
      formula: 'low = energy * low_share / 100 / factor; high = energy * high_share / 100 / factor',
      inputs: [
        input('energy', kcal, 'kcal', FROM_LESSON),
        input('low_share', low, 'percent', source, note),
        input('high_share', high, 'percent', source, note),
        input('factor', factor, 'kcal per g', ENERGY_FACTORS['4-4-9-7'].source),
      ],
    },
  });
}

/** A ketogenic ratio with the share of the energy that its fat gives. */
export interface KetogenicRatio {
  /** Grams of fat for one gram of protein and carbohydrate together; 3 is written 3:1. */
  readonly ratio: number;
  readonly percentFromFat: number;
  readonly working: Working;
}

/**
 * The ketogenic ratio: g fat ÷ (g protein + g carbohydrate), and the share of its energy from fat by 9 and 4. Names a
 * diet that is prescribed and followed by a team; it is no advice. Refuses amounts below zero and no protein and
 * carbohydrate at all.
 */
export function ketogenicRatio(fat: number, protein: number, carbohydrate: number): Result<KetogenicRatio> {
  const rest = protein + carbohydrate;
  if (!(fat >= 0 && protein >= 0 && carbohydrate >= 0 && rest > 0 && Number.isFinite(fat + rest))) {
    return refuse(
      'A ratio needs grams of zero or more, with some protein or carbohydrate.',
      'Write the grams.',
    );
  }
  const ratio = fat / rest;
  return ok({
    ratio,
    percentFromFat: energyFromFat(ratio),
    working: {
      formula: 'fat / (protein + carbohydrate)',
      inputs: [
        input('fat', fat, 'g', FROM_LESSON),
        input('protein', protein, 'g', FROM_LESSON),
        input('carbohydrate', carbohydrate, 'g', FROM_LESSON),
      ],
    },
  });
}

/** The share of the energy from fat at a ketogenic ratio of zero or more: 9 r ÷ (9 r + 4) × 100, in percent. */
export function energyFromFat(ratio: number): number {
  const fat = FACTORS.fat * ratio;
  return (fat / (fat + FACTORS.protein)) * 100;
}
