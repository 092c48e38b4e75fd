import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { onOtherScale, safeRounding, toCelsius, toFahrenheit } from '../../src/nutrition/index.js';
import { evaluate } from './evaluate.js';

describe('the two scales', () => {
  // NIST Special Publication 811 (2008), appendix B.8 and B.9: t/°C = (t/°F − 32)/1.8. Fixed points from memory:
  // water freezes at 32 °F and boils at 212 °F; the scales meet at −40.
  it.each([
    [32, 0],
    [212, 100],
    [-40, -40],
    [98.6, 37],
  ])('%d °F is %d °C', (fahrenheit, celsius) => {
    expect(toCelsius(fahrenheit)).toBeCloseTo(celsius, 10);
    expect(toFahrenheit(celsius)).toBeCloseTo(fahrenheit, 10);
  });

  // US consumer chart of safe cooking temperatures, as restated on public pages with one decimal: 145 °F (62.8 °C),
  // 160 °F (71.1 °C), 165 °F (73.9 °C), 140 °F (60 °C).
  it.each([
    [145, 62.8],
    [160, 71.1],
    [165, 73.9],
    [140, 60],
  ])('%d °F prints as %d °C in the chart', (fahrenheit, celsius) => {
    expect(toCelsius(fahrenheit)).toBeCloseTo(celsius, 1);
  });

  it('come back to where they were, with a formula that gives the same', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -60, max: 500, noNaN: true }),
        fc.constantFrom('°F', '°C'),
        (value, unit) => {
          const other = onOtherScale({ value, unit }, 'x');
          expect(evaluate(other.working)).toBeCloseTo(other.value ?? Number.NaN, 9);
          const back = onOtherScale({ value: other.value ?? Number.NaN, unit: other.unit }, 'x');
          expect(back.unit).toBe(unit);
          expect(back.value).toBeCloseTo(value, 9);
        },
      ),
    );
  });

  it('round heat up and cold down', () => {
    expect([safeRounding('heat'), safeRounding('cold')]).toEqual(['up', 'down']);
  });
});
