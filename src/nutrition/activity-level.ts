import { inWords, ok, type Result, refuse } from './result.js';

/** The edition of the energy-need equations; their words and limits for activity differ. */
export type NeedEdition = 2023 | 2005;

/** How active somebody is over the whole day, by edition, from least to most. */
export const ACTIVITY_LEVELS = {
  2023: ['inactive', 'low active', 'active', 'very active'],
  2005: ['sedentary', 'low active', 'active', 'very active'],
} as const;
export type ActivityLevel<E extends NeedEdition = NeedEdition> = (typeof ACTIVITY_LEVELS)[E][number];

/**
 * The lowest physical activity level (energy of the day ÷ basal energy) of each word, ages 19 and over. A level ends
 * where the next begins; the last ends below 2.50. Sources: Health Canada, DRI tables, equations to
 * estimate energy requirement (2023 edition); IOM DRI Macronutrients 2002/2005, EER table.
 */
export const LEVEL_STARTS = { 2023: [1, 1.53, 1.68, 1.85], 2005: [1, 1.4, 1.6, 1.9] } as const;
const LEVELS_END = 2.5;

/** What each level of 2023 looks like in a day, in own words. Source: Health Canada, as above. */
export const LEVEL_MEANS: Readonly<Record<ActivityLevel<2023>, string>> = {
  inactive: 'daily living only',
  'low active': 'daily living and 60 to 80 minutes of walking at 5 to 7 km/h',
  active:
    'daily living and 30 to 50 minutes of walking, 45 minutes of moderate cycling and 40 minutes of doubles tennis',
  'very active':
    'as active, and 45 minutes of cycling, 25 minutes of jogging at 10 km/h and 40 minutes of tennis',
};

/** The word for a physical activity level. Refuses levels below 1.00 and from 2.50. */
export function activityLevelOf<E extends NeedEdition>(level: number, edition: E): Result<ActivityLevel<E>> {
  const starts: readonly number[] = LEVEL_STARTS[edition];
  const words: readonly ActivityLevel<E>[] = ACTIVITY_LEVELS[edition];
  const word = level < LEVELS_END ? words[starts.findLastIndex((start) => level >= start)] : undefined;
  if (word === undefined) {
    return refuse(
      `A physical activity level of ${level} is not between 1.00 and 2.50.`,
      `Use a level in that range, or one of ${inWords(words)}.`,
    );
  }
  return ok(word);
}
