import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  displayStep,
  formatDate,
  formatDigits,
  formatList,
  formatQuantity,
  outward,
  roundToStep,
} from '../../src/languages/index.js';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const q = (value: number | null, unit = 'mg', more = {}) =>
  plain(formatQuantity({ value, unit, ...more }, 'en'));

describe('a quantity as it is printed', () => {
  it.each([
    [643.2, 'mg', '640 mg'],
    [2.2, 'mg', '2 mg'],
    [15.39, 'g', '15 g'],
    [99.6, 'mg', '100 mg'],
    [2345, 'mg', '2,300 mg'],
    [0, 'g', '0 g'],
    [0.3, 'g', 'less than 1 g'],
    [0.5, 'g', '1 g'],
    [1, 'cup', '1 cup'],
    [2, 'cup', '2 cups'],
    [245.1, 'kcal', '250 calories'],
  ])('%s %s prints as %s', (value, unit, shown) => {
    expect(q(value, unit)).toBe(shown);
  });

  it.each([
    [155, 'min', 0, '155 minutes'],
    [1, 'day', 0, '1 day'],
    [1350, 'kcal', 0, '1,350 calories'],
    [0.3, 'min', 0, '0 minutes'],
    [2.3714, '', 1, '2.4'],
    [3, '', 1, '3'],
    [0.25, '', 1, '0.3'],
    [4.999, '', 2, '5'],
  ])('%s %s with %s decimals prints as %s', (value, unit, decimals, shown) => {
    expect(q(value, unit, { decimals })).toBe(shown);
  });

  it('rounds the ends of a range outward to so many decimals', () => {
    expect(q(null, '%', { low: 44.6, high: 65, decimals: 0 })).toBe('44 to 65%');
    expect(outward(0.31, 0.72, 1)).toEqual([0.3, 0.8]);
  });

  it('says what is not known, and never zero', () => {
    expect(q(null)).toBe('not known');
  });

  it('says at least when a part is not known', () => {
    expect(q(120, 'mg', { atLeast: true })).toBe('at least 120 mg');
  });

  it('prints a range with both ends rounded outward', () => {
    expect(q(null, 'mg', { low: 271.4, high: 368 })).toBe('270 to 370 mg');
    expect(q(null, 'mg', { low: 270, high: 370 })).toBe('270 to 370 mg');
  });

  it('keeps number and unit on one line', () => {
    expect(formatQuantity({ value: 360, unit: 'mg' }, 'en')).toBe('360\u00a0mg');
  });

  it('refuses a language without a policy rather than falling back', () => {
    expect(() => formatQuantity({ value: 1, unit: 'mg' }, 'ht')).toThrow('ht');
  });
});

describe('properties of rounding', () => {
  const value = fc.double({ min: 0.5, max: 1e6, noNaN: true });
  it('is off by at most half a step', () => {
    fc.assert(
      fc.property(value, (v) => Math.abs(roundToStep(v, displayStep(v)) - v) <= displayStep(v) / 2 + 1e-6),
    );
  });
  it('shows at most two significant figures from 100 on', () => {
    fc.assert(
      fc.property(fc.double({ min: 100, max: 1e6, noNaN: true }), (v) =>
        /^\d{2}0*$|^\d0+$/.test(String(roundToStep(v, displayStep(v)))),
      ),
    );
  });
  it('never narrows a range', () => {
    fc.assert(
      fc.property(value, value, (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const [shownLow, shownHigh] = outward(low, high);
        return shownLow <= low + 1e-6 && shownHigh >= high - 1e-6;
      }),
    );
  });
});

describe('amounts to pour and limits', () => {
  const print = (value: number, unit: string, more: object = {}) =>
    formatQuantity({ value, unit, ...more }, 'en').replaceAll('\u00a0', ' ');

  it('prints measures in the fractions that they come in', () => {
    expect(print(1 / 2, 'cup')).toBe('1/2 cup');
    expect(print(2 / 3, 'cup')).toBe('2/3 cup');
    expect(print(1.5, 'cup')).toBe('1 1/2 cups');
    expect(print(1, 'tbsp')).toBe('1 tablespoon');
    expect(print(1 / 8, 'tsp')).toBe('1/8 teaspoon');
    expect(print(0.29, 'cup')).toBe('less than 1 cup');
  });

  // 165, 160 and 145 °F are 73.9, 71.1 and 62.8 °C; 40 and 0 °F are 4.4 and −17.8 °C.
  it.each([
    [73.888, 'up', '74 °C'],
    [71.111, 'up', '72 °C'],
    [62.777, 'up', '63 °C'],
    [60, 'up', '60 °C'],
    [4.444, 'down', '4 °C'],
    [-17.777, 'down', '\u221218 °C'],
  ] as const)('rounds %d %s to %s and never the other way', (value, rounds, words) => {
    expect(print(value, '°C', { decimals: 0, rounds })).toBe(words);
  });

  it('keeps the figures of a limit that is counted', () => {
    expect(print(165, '°F', { decimals: 0, rounds: 'up' })).toBe('165 °F');
    expect(print(2, 'h', { decimals: 0 })).toBe('2 hours');
    expect(print(1, 'days', { decimals: 0 })).toBe('1 day');
  });
});

describe('digits, dates and lists', () => {
  it('groups thousands and uses a true minus', () => {
    expect(formatDigits(1234567, 'en')).toBe('1,234,567');
    expect(formatDigits(-0.5, 'en')).toBe('\u22120.5');
  });
  it('writes the month in words', () => {
    expect(plain(formatDate('2027-03-01', 'en'))).toBe('1 March 2027');
    expect(plain(formatDate('2015-09', 'en'))).toBe('September 2015');
    expect(formatDate('2015', 'en')).toBe('2015');
    expect(() => formatDate('2027-13-01', 'en')).toThrow('2027-13-01');
  });
  it('joins a list', () => {
    expect([[], ['a'], ['a', 'b'], ['a', 'b', 'c']].map((l) => formatList(l, 'en'))).toEqual([
      '',
      'a',
      'a and b',
      'a, b, and c',
    ]);
  });
});
