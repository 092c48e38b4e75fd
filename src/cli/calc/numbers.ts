import { ok, type Result, refuse } from '../../nutrition/index.js';
import { readMeasure } from '../../nutrition/measure-reading.js';
import { readNumber } from '../../nutrition/written-number.js';

/** Units beside those that amounts of food are written in, with the ways of writing them. */
const SPELLINGS: Readonly<Record<string, readonly string[]>> = {
  cm: ['cm', 'centimeter', 'centimeters'],
  m: ['m', 'meter', 'meters'],
  in: ['in', 'inch', 'inches', '"'],
  ft: ['ft', 'foot', 'feet', "'"],
  kcal: ['kcal', 'kilocalorie', 'kilocalories', 'calories'],
  kJ: ['kj', 'kilojoule', 'kilojoules'],
  years: ['years', 'year', 'y'],
  days: ['days', 'day', 'd'],
  months: ['months', 'month'],
  min: ['min', 'minutes', 'minute'],
  percent: ['percent', '%'],
  IU: ['iu'],
  ppm: ['ppm'],
};
const UNIT_OF = new Map(Object.entries(SPELLINGS).flatMap(([unit, all]) => all.map((one) => [one, unit])));

/** A number as written, and the words after it. */
export interface Written {
  readonly value: number;
  readonly unit: string | null;
}

/**
 * Reads a number, with its unit behind it if there is one: `80kg`, `176 lb`, `1 1/2 cups`, `-500 kcal`, `45`,
 * `5 ft 9 in`. Fractions, commas and slips are read or refused as in amounts of food; zero and, where `signed`,
 * numbers below zero are read too. Refuses what is no number, and units that nobody knows.
 */
export function readWritten(text: string, signed: boolean): Result<Written> {
  const plain = text.trim().replaceAll('%', ' percent');
  const feet = /^([0-9]+)\s*(?:ft|feet|')\s*([0-9]+(?:[.][0-9]+)?)\s*(?:in|inches|")?$/i.exec(plain);
  if (feet !== null) return ok({ value: Number(feet[1]) * 12 + Number(feet[2]), unit: 'in' });
  const sign = signed ? /^[-−–+]\s*/.exec(plain)?.[0] : undefined;
  const rest = plain.slice(sign?.length ?? 0);
  const number = numberAt(rest);
  if (!number.ok) return number;
  const unit = unitNamed(rest.slice(number.value.length).trim());
  if (!unit.ok) return unit;
  const less = sign !== undefined && !sign.startsWith('+');
  return ok({ value: less ? 0 - number.value.value : number.value.value, unit: unit.value });
}

/** The unit of a word: `null` for no word. */
export function unitNamed(word: string): Result<string | null> {
  if (word === '') return ok(null);
  const own = UNIT_OF.get(word.toLowerCase());
  if (own !== undefined) return ok(own);
  const measure = readMeasure(word);
  if (measure !== null && 'ok' in measure) return measure;
  if (measure?.unit && measure.length === word.length) return ok(measure.unit);
  return refuse(`"${word}" is no unit.`);
}

function numberAt(text: string): Result<{ readonly value: number; readonly length: number }> {
  const zero = /^0*[.]?0+(?![0-9./⁄])/.exec(text);
  if (zero !== null) return ok({ value: 0, length: zero[0].length });
  if (/^[0-9]*[.]?[0-9]+e[-+]?[0-9]/i.test(text))
    return refuse('Powers of ten are not read.', 'Write the number out, such as 0.002 or 1500.');
  const number = readNumber(text);
  if (number.kind === 'wrong') return number.refusal;
  if (number.kind === 'none')
    return refuse(`"${text}" is no number.`, 'Write a number such as 2, 1.5 or 1/2.');
  return ok({ value: number.value, length: number.length });
}
