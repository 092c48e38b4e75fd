import { describe, expect } from 'vitest';
import { aboveGrade, GRADE_LIMIT, LEVELS } from '../../src/reading/index.js';
import { type PublishedCase, runCases } from '../nutrition/published-case.js';

const CASES: readonly PublishedCase[] = [
  {
    id: 'I-GRD-01',
    title: 'grade 6 runs from 6.0 to under 7',
    source: 'American Medical Association: sixth grade; NIH: sixth to eighth',
    status: 'value of the source, from memory',
    holds: () => {
      const grades = [5.9, 6, 6.9, 7, 8.2];
      expect(grades.map((grade) => aboveGrade(grade, 6))).toEqual([false, false, false, true, true]);
      expect(grades.map((grade) => aboveGrade(grade, 6, true))).toEqual([false, false, true, true, true]);
    },
  },
  {
    id: 'level-limits',
    title: 'each level for readers has a limit, and leaders have none',
    source: 'house rule',
    status: 'computed by hand, formula verified',
    holds: () => {
      expect(LEVELS.map((level) => GRADE_LIMIT[level])).toEqual([4, 6, 8, null]);
      expect(aboveGrade(20, GRADE_LIMIT.staff)).toBe(false);
    },
  },
];

describe('the gate for grades', () => {
  runCases(CASES);
});
