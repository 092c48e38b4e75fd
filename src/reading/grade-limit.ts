import type { Level } from './levels.js';

/** The highest grade that a level may reach by Flesch-Kincaid; a house rule. `staff` has none. */
export const GRADE_LIMIT: Readonly<Record<Level, number | null>> = {
  short: 4,
  plain: 6,
  fuller: 8,
  staff: null,
};

/**
 * Whether a grade lies above a limit: grade 6 runs from 6.0 up to, but not at, 7. `strict` takes the limit as
 * 6.0 itself. Never above when there is no limit.
 */
export function aboveGrade(grade: number, limit: number | null, strict = false): boolean {
  return limit !== null && (strict ? grade > limit : grade >= limit + 1);
}
