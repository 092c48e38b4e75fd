import type { DailyGroup } from './guidance-patterns.js';

/**
 * What is known of the daily servings of the Dietary Guidelines for Americans, 2025-2030, published 7 January 2026:
 * from press and professional summaries at 2000 kcal. They are servings, not cup-equivalents. The edition prints
 * twelve energy levels; the others, and the groups that are missing here, are not known.
 */
export const PATTERN_2025: {
  readonly kcal: number;
  readonly daily: Readonly<Partial<Record<DailyGroup, { readonly low: number; readonly high: number }>>>;
} = {
  kcal: 2000,
  daily: {
    vegetables: { low: 3, high: 3 },
    fruit: { low: 2, high: 2 },
    dairy: { low: 3, high: 3 },
    'whole grains': { low: 2, high: 4 },
  },
};
