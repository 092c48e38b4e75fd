import { expect, it } from 'vitest';
import { aboveGrade, GRADE_LIMIT, LEVELS } from '../../src/reading/index.js';

it('each level for readers has a limit, and leaders have none', () => {
  // House rule.
  expect(LEVELS.map((level) => GRADE_LIMIT[level])).toEqual([4, 6, 8, null]);
  expect(aboveGrade(20, GRADE_LIMIT.staff)).toBe(false);
});

it('taken strictly, a grade is above from its first tenth', () => {
  // Stricter houses take sixth grade as 6.0 at most (common practice, no source).
  const grades = [5.9, 6, 6.1, 6.9, 7];
  expect(grades.map((grade) => aboveGrade(grade, 6, true))).toEqual([false, false, true, true, true]);
});
