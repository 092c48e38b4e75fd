import type { Reckoned } from './reckoned.js';
import { input } from './working.js';

/** The two scales that thermometers in kitchens have. A degree is no amount: it has a zero of its own. */
export type TemperatureUnit = '°F' | '°C';

/** What a limit is for: heat has to be reached, cold must not be left. */
export type TemperatureKind = 'heat' | 'cold';

/**
 * The way in which a limit is rounded when it is printed on the other scale: heat up, cold down, so that the rounded
 * figure is never less safe than the exact one. 160 °F is 71.1 °C and prints as 72 °C; 40 °F is 4.4 °C and prints as 4 °C.
 * House rule.
 */
export function safeRounding(kind: TemperatureKind): 'up' | 'down' {
  return kind === 'heat' ? 'up' : 'down';
}

/** A Celsius temperature in Fahrenheit, not rounded. Definition of the scales, NIST Special Publication 811, appendix B. */
export function toFahrenheit(celsius: number): number {
  return (celsius * 9) / 5 + 32;
}

/** A Fahrenheit temperature in Celsius, not rounded. Definition of the scales, NIST Special Publication 811, appendix B. */
export function toCelsius(fahrenheit: number): number {
  return ((fahrenheit - 32) * 5) / 9;
}

/** A temperature on the other scale, not rounded, with how it was got. `source` is where the given one stands. */
export function onOtherScale(
  given: { readonly value: number; readonly unit: TemperatureUnit },
  source: string,
): Reckoned<TemperatureUnit> {
  return given.unit === '°F'
    ? {
        value: toCelsius(given.value),
        unit: '°C',
        working: {
          formula: '(fahrenheit - 32) * 5 / 9',
          inputs: [input('fahrenheit', given.value, '°F', source)],
        },
      }
    : {
        value: toFahrenheit(given.value),
        unit: '°F',
        working: {
          formula: 'celsius * 9 / 5 + 32',
          inputs: [input('celsius', given.value, '°C', source)],
        },
      };
}
