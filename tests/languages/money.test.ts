import { describe, expect, it } from 'vitest';
import { formatQuantity } from '../../src/languages/index.js';

const said = (value: number, unit = 'USD cents') =>
  formatQuantity({ value, unit }, 'en').replaceAll('\u00a0', ' ');

describe('money', () => {
  it.each([
    [28, '28¢'],
    [25.92, '26¢'],
    [0.3, 'less than 1¢'],
    [0, '0¢'],
    [99.4, '99¢'],
    [99.6, '$1.00'],
    [105, '$1.05'],
    [173.25, '$1.73'],
    [123456, '$1,234.56'],
    [-50, '−50¢'],
  ])('%s cents are written %s', (value, words) => expect(said(value)).toBe(words));

  // 1.005 dollars is 100.49999999999999 in binary; it is half a cent all the same.
  it('rounds half a coin up, through binary noise', () => expect(said(1.005 * 100)).toBe('$1.01'));

  it('has the signs of each currency, and the code where a language has none', () => {
    expect(said(85, 'GBP cents')).toBe('85p');
    expect(said(240, 'GBP cents')).toBe('£2.40');
    expect(said(240, 'MXN cents')).toBe('MXN 2.40');
  });

  it('is not known where nobody knows it', () => {
    expect(formatQuantity({ value: null, unit: 'USD cents' }, 'en')).toBe('not known');
  });
});
