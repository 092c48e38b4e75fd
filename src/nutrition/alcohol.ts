import { ENERGY_FACTORS } from './food-energy.js';
import { ok, type Result, refuse } from './result.js';
import { FROM_LESSON, input, type Working } from './working.js';

/** Weight of one mL of ethanol in g; from memory. */
export const ETHANOL_GRAMS_PER_ML = 0.789;
/** Ethanol of one drink in g, by what each country counts: a US standard drink, a UK unit. From memory. */
export const STANDARD_DRINKS = { us: 14, uk: 8 } as const;

/** The alcohol in a drink. */
export interface Alcohol {
  readonly grams: number;
  /** Energy from the alcohol alone, at 7 kcal a gram. */
  readonly kcal: number;
  /** How many standard drinks of the country it is. */
  readonly drinks: number;
  /** Of the grams. */
  readonly working: Working;
}

/**
 * The alcohol in a volume in mL at a strength in percent by volume: mL × strength ÷ 100 × 0.789 g. Sources: the US
 * standard drink of 14 g (NIAAA) and the UK unit of 8 g, from memory. Refuses a volume below zero and a strength
 * outside 0 to 100. Says nothing of how much is safe.
 */
export function alcoholIn(
  milliliters: number,
  strength: number,
  country: keyof typeof STANDARD_DRINKS = 'us',
): Result<Alcohol> {
  if (!(milliliters >= 0 && Number.isFinite(milliliters) && strength >= 0 && strength <= 100)) {
    return refuse(
      `${milliliters} mL at ${strength} percent is no drink.`,
      'Write the volume in mL and the strength from 0 to 100 percent.',
    );
  }
  const grams = (milliliters * strength * ETHANOL_GRAMS_PER_ML) / 100;
  return ok({
    grams,
    kcal: grams * ENERGY_FACTORS['4-4-9-7'].perGram.kcal.alcohol,
    drinks: grams / STANDARD_DRINKS[country],
    working: {
      formula: 'volume * strength * density / 100',
      inputs: [
        input('volume', milliliters, 'mL', FROM_LESSON),
        input('strength', strength, 'percent by volume', FROM_LESSON),
        input('density', ETHANOL_GRAMS_PER_ML, 'g per mL', 'density of ethanol', 'from memory'),
      ],
    },
  });
}
