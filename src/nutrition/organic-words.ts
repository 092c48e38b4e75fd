import type { Published } from './published.js';
import { ok, type Result, refuse } from './result.js';
import { FROM_LESSON, input, type Working } from './working.js';

/** What a US label may say by the share of organic ingredients, strongest first. */
export const ORGANIC_WORDS = [
  { words: '100 percent organic', from: 100 },
  { words: 'organic', from: 95 },
  { words: 'made with organic (specified ingredients)', from: 70 },
  { words: 'ingredient list only', from: 0 },
] as const;
export type OrganicWords = (typeof ORGANIC_WORDS)[number]['words'];

/** The wording and the rule behind it. */
export interface OrganicVerdict extends Published {
  readonly words: OrganicWords;
}

/** The noise of binary fractions, in percent. */
const NOISE = 1e-9;

/**
 * The wording for a share of certified organic ingredients in percent, water and salt left out. Organic is about
 * farming and says nothing of nutrition. Source: 7 CFR 205.301, from memory. Refuses a share outside 0 to 100.
 */
export function organicWords(percent: number): Result<OrganicVerdict> {
  const row = percent <= 100 ? ORGANIC_WORDS.find(({ from }) => percent >= from - NOISE) : undefined;
  return row === undefined
    ? refuse(
        `A share of ${percent} percent is not between 0 and 100.`,
        'Write organic ÷ all ingredients × 100.',
      )
    : ok({ words: row.words, source: '7 CFR 205.301', checked: 'memory' });
}

/**
 * The share of organic ingredients by weight, in percent, with water and salt left out of the whole. Refuses
 * weights below zero and an organic part that is heavier than the whole without water and salt.
 */
export function organicShare(grams: {
  readonly organic: number;
  readonly all: number;
  readonly waterAndSalt: number;
}): Result<{ readonly percent: number; readonly working: Working }> {
  const { organic, all, waterAndSalt } = grams;
  const whole = all - waterAndSalt;
  if (!(organic >= 0 && waterAndSalt >= 0 && whole > 0 && organic <= whole)) {
    return refuse(
      'The organic part must weigh no more than all ingredients without water and salt.',
      'Weigh the organic ingredients, all ingredients, and water and salt together.',
    );
  }
  return ok({
    percent: (organic / whole) * 100,
    working: {
      formula: 'organic / (all_ingredients - water_and_salt) * 100',
      inputs: [
        input('organic', organic, 'g', FROM_LESSON),
        input('all_ingredients', all, 'g', FROM_LESSON),
        input('water_and_salt', waterAndSalt, 'g', FROM_LESSON),
      ],
    },
  });
}
