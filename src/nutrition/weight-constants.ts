/**
 * Constants of the body-weight model. Source: Hall KD, Sacks G, Chandramohan D, Chow CC, Wang YC, Gortmaker SL,
 * Swinburn BA. Quantification of the effect of energy imbalance on bodyweight. Lancet 2011;378:826-837, web
 * appendix (as independent transcriptions of it agree). kJ, kg, days.
 */
export const WEIGHT_MODEL = 'hall-2011';

/** Energy held by a kg of fat, lean tissue and glycogen, kJ/kg. */
export const ENERGY_IN = { fat: 39_500, lean: 7600, glycogen: 17_600 } as const;
/** Energy that a kg of tissue uses in a day, kJ/kg/d. */
export const UPKEEP = { fat: 13, lean: 92 } as const;
/** Energy that it takes to build a kg of tissue, kJ/kg. */
export const BUILDING = { fat: 750, lean: 960 } as const;
/** Share of a change in intake that the handling of food answers with. */
export const FOOD_HANDLING = 0.1;
/** Share of a change in intake by which expenditure adapts in the end, and the days in which it does so. */
export const ADAPTATION = { share: 0.14, days: 14 } as const;
/** Glycogen at the start, kg, and the kg of water that come with each kg of it. */
export const GLYCOGEN = { start: 0.5, water: 2.7 } as const;
/**
 * Extracellular fluid: mg of sodium in a liter, mg of sodium a day that each extra liter sends out, and mg of sodium
 * a day that intake of carbohydrate holds back.
 */
export const FLUID = { sodium: 3220, perLiter: 3000, byCarbohydrate: 4000 } as const;
/**
 * Forbes' constant, kg of lean tissue, and the same as it splits energy: 10.4 × 7.6 ÷ 39.5 = 2.001 kg. Some code
 * takes 10.4 for the second, which is wrong.
 */
export const FORBES = 10.4;
export const FORBES_ENERGY = (FORBES * ENERGY_IN.lean) / ENERGY_IN.fat;
/** Fat is kept within 0 to 60 percent of weight at the start (common practice with this model). */
export const MOST_FAT_PERCENT = 60;

/** Fat in percent of weight: perYear × age + perLog × ln(BMI) − less. Source: Jackson AS et al. Int J Obes 2002;26:789-796. */
export const FAT_AT_START = {
  male: { perYear: 0.14, perLog: 37.31, less: 103.94 },
  female: { perYear: 0.14, perLog: 39.96, less: 102.01 },
} as const;
/** Extracellular fluid in kg. Source: Silva AM et al. Int J Obes 2007;31 (as the model's appendix cites it). */
export const FLUID_AT_START = {
  male: { perYear: 0.025, perMeter: 9.57, perKg: 0.191, constant: -12.4 },
  female: { perYear: 0, perMeter: 5.98, perKg: 0.167, constant: -4 },
} as const;

/** Share of an energy gap that lean tissue takes or gives, by the fat there is, kg: C ÷ (C + fat), C = 2.001 kg. */
export function leanShare(fat: number): number {
  return FORBES_ENERGY / (FORBES_ENERGY + fat);
}
