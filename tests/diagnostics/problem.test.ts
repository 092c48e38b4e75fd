import { describe, expect, it } from 'vitest';
import {
  createReport,
  formatProblem,
  formatSummary,
  nearest,
  problemsOf,
  sortProblems,
} from '../../src/diagnostics/index.js';

const problem = problemsOf({
  'x/one': { severity: 'stop', rule: 'r', about: 'a' },
  'x/two': { severity: 'hint', rule: 'r', about: 'a' },
});
const at = (line: number, column: number) => ({ file: 'lesson.md', line, column });

describe('problems', () => {
  it('print with their place, the line, a mark under the spot and what to do', () => {
    const text = formatProblem(
      problem('x/one', 'There is no food "pnto".', {
        place: { ...at(2, 3), endLine: 2, endColumn: 7 },
        hint: 'Write "pinto".',
      }),
      { source: () => 'a\n- pnto beans' },
    );
    expect(text).toBe(
      'lesson.md:2:3  Stop x/one\n  There is no food "pnto".\n    - pnto beans\n      ^^^^\n  To do: Write "pinto".',
    );
  });

  it('never send control characters of a lesson to a terminal', () => {
    expect(
      formatProblem(problem('x/one', 'm', { place: at(1, 1) }), { source: () => 'a\u001b[31mred' }),
    ).not.toContain('\u001b');
  });

  it('stand once, in the order of the text', () => {
    const report = createReport();
    for (const p of [
      problem('x/two', 'm', { place: at(9, 1) }),
      problem('x/one', 'm', { place: at(2, 4) }),
      problem('x/one', 'm', { place: at(2, 4) }),
    ])
      report.add(p);
    expect(sortProblems(report.problems).map((p) => p.place?.line)).toEqual([2, 9]);
    expect(formatSummary(report.problems)).toBe('1 stop, 1 hint');
    expect(formatSummary([])).toBe('No problems.');
  });
});

describe('the nearest right name', () => {
  it.each([
    ['form-compair', ['form-compare', 'rinse-drop'], 'form-compare'],
    ['pinto', ['pinto beans', 'black beans'], 'pinto beans'],
    ['sodum', ['sodium', 'potassium'], 'sodium'],
  ])('%s', (written, names, expected) => {
    expect(nearest(written, names)).toEqual([expected]);
  });
  it('is nothing when nothing is near', () => {
    expect(nearest('zzz', ['sodium'])).toEqual([]);
  });
});
