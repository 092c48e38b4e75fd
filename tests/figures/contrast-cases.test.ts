import { describe, expect } from 'vitest';
import { contrast } from '../../src/figures/index.js';
import { type PublishedCase, runCases, within } from '../nutrition/published-case.js';

/** WCAG 2.1: 1.4.3 text, 1.4.3 large text (18 pt, or 14 pt bold), 1.4.6 enhanced, 1.4.11 graphics. */
const TEXT = 4.5;
const LARGE = 3;
const ENHANCED = 7;
const GRAPHIC = 3;

const CASES: readonly PublishedCase[] = [
  {
    id: 'I-CON-01',
    title: 'contrast ratios of grays on white',
    source: 'WCAG 2.2, success criterion 1.4.3 and definition of relative luminance',
    status: 'computed by hand, formula verified',
    holds: () => {
      const ratios = [
        ['#000000', 21],
        ['#767676', 4.54],
        ['#777777', 4.48],
        ['#595959', 7],
        ['#949494', 3.03],
      ] as const;
      for (const [color, ratio] of ratios) {
        within(contrast(color, '#ffffff'), ratio, 0.01);
        expect(contrast('#ffffff', color)).toBe(contrast(color, '#ffffff'));
      }
    },
  },
  {
    id: 'I-CON-03',
    title: 'what passes and what fails, never rounded up',
    source: 'WCAG 2.2, success criteria 1.4.3, 1.4.6 and 1.4.11',
    status: 'computed by hand, formula verified',
    holds: () => {
      const on = (color: `#${string}`) => contrast(color, '#ffffff');
      expect(on('#777777') >= TEXT).toBe(false);
      expect(on('#767676') >= TEXT).toBe(true);
      expect(on('#949494') >= LARGE).toBe(true);
      expect(on('#595959') >= ENHANCED).toBe(true);
      // The next lighter gray stands at 2.99 and fails for graphics.
      within(on('#959595'), 2.99, 0.01);
      expect(on('#959595') >= GRAPHIC).toBe(false);
    },
  },
];

describe('published values of contrast', () => {
  runCases(CASES);
});
