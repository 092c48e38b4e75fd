import { type Measured, ok, type Refusal, type Result, refuse } from '../../nutrition/index.js';
import type { Field } from './contract.js';
import { readWritten, type Written } from './numbers.js';

/** More about a field of numbers. */
export interface NumberOptions {
  readonly range?: string;
  /** Whether numbers below zero may be written. */
  readonly signed?: true;
}

/** A number in one unit, which may be left unwritten because no other fits; `''` is a pure number. */
export function number(unit: string, help: string, options: NumberOptions = {}): Field<number> {
  const { range, signed } = options;
  return {
    help,
    units: unit === '' ? [] : [unit],
    ...(range === undefined ? {} : { range }),
    read: (text) => {
      const read = fitting(text, unit === '' ? [] : [unit], signed === true);
      return read.ok ? ok(read.value.value) : read;
    },
  };
}

/** An amount in one of several units. The unit has to be written, but for zero. */
export function amount<const U extends string>(
  units: readonly [U, ...U[]],
  help: string,
  options: NumberOptions = {},
): Field<{ readonly value: number; readonly unit: U }> {
  const { range, signed } = options;
  return {
    help,
    units,
    ...(range === undefined ? {} : { range }),
    read: (text) => {
      const read = fitting(text, units, signed === true);
      if (!read.ok) return read;
      const { value, unit } = read.value;
      return ok({ value, unit: units.find((one) => one === unit) ?? units[0] });
    },
  };
}

/** An amount that somebody may not know. */
export function measured<const U extends string>(
  units: readonly [U, ...U[]],
  help: string,
  options: NumberOptions = {},
): Field<Measured<U>> {
  return orUnknown(amount<U>(units, help, options), { value: null, unit: units[0] });
}

/** A number that somebody may not know. */
export function numberOrUnknown(
  unit: string,
  help: string,
  options: NumberOptions = {},
): Field<number | null> {
  return orUnknown(number(unit, help, options), null);
}

function orUnknown<T, N>(field: Field<T>, unknown: N): Field<T | N> {
  const { otherwise: _, ...rest } = field;
  return {
    ...rest,
    orUnknown: true,
    read: (text) => (/^(?:unknown|not known)$/i.test(text.trim()) ? ok(unknown) : field.read(text)),
  };
}

/** Words as they stand. */
export function words(help: string): Field<string> {
  return {
    help,
    units: [],
    read: (text) => (text.trim() === '' ? refuse('Nothing is written.') : ok(text.trim())),
  };
}

/** A field that may be left out. */
export function optional<T>(field: Field<T>, words = 'nothing'): Field<T | undefined> {
  return { ...field, otherwise: { value: undefined, words } };
}

/** A field that has a value when it is left out. */
export function byDefault<T>(field: Field<T>, value: NoInfer<T>, words = String(value)): Field<T> {
  return { ...field, otherwise: { value, words } };
}

function fitting(text: string, units: readonly string[], signed: boolean): Result<Written> {
  const read = readWritten(text, signed);
  const which =
    units.length === 0 ? 'a number without a unit' : units.join(', ').replace(/, ([^,]*)$/, ' or $1');
  if (!read.ok)
    return { ...read, hint: read.hint ?? `Write ${units.length === 0 ? which : `it in ${which}`}.` };
  const { unit, value } = read.value;
  const refusal = (reason: string): Refusal =>
    refuse(reason, `Write ${units.length === 0 ? which : `it in ${which}`}.`);
  if (unit === null)
    return units.length < 2 || value === 0 ? read : refusal(`The unit of ${text.trim()} is missing.`);
  return units.includes(unit) ? read : refusal(`The unit ${unit} does not fit here.`);
}
