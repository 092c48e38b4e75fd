import type { Measured, Reckoned, Worked, Working } from '../../nutrition/index.js';
import type { Shown } from './contract.js';

/** A worked quantity as a result; `per` stands after the unit, such as `a day`. */
export function ofWorked(name: string, worked: Worked, per = ''): Shown {
  const { value, unit, atLeast } = worked.quantity;
  return { name, value, unit: per === '' ? unit : `${unit} ${per}`, atLeast, working: worked.working };
}

/** A reckoned number as a result. */
export function ofReckoned(name: string, reckoned: Reckoned): Shown {
  return { name, ...reckoned };
}

/** A number as a result. */
export function ofNumber(name: string, value: number | null, unit: string, working?: Working): Shown {
  return { name, value, unit, ...(working === undefined ? {} : { working }) };
}

/** A word as a result. */
export function ofWord(name: string, value: string): Shown {
  return { name, value, unit: '' };
}

/** A range as a result; not known when an end is not. */
export function ofRange(
  name: string,
  range: { readonly low: number | null; readonly high: number | null },
  unit: string,
  working?: Working,
): Shown {
  const { low, high } = range;
  const value = low === null || high === null ? null : { low, high };
  return { name, value, unit, ...(working === undefined ? {} : { working }) };
}

/** A measured amount as a quantity of the core. */
export function quantityOf<U extends string>(measured: Measured<U>) {
  return { value: measured.value, unit: measured.unit, atLeast: false };
}

/** A name as an input is called: `saturated fat` is `saturated-fat`. */
export type Kebab<S extends string> = S extends `${infer A}, ${infer B}`
  ? `${A}-${Kebab<B>}`
  : S extends `${infer A} ${infer B}`
    ? `${A}-${Kebab<B>}`
    : S;

/** The same for a name that is at hand. */
export function kebab<S extends string>(name: S): Kebab<S> {
  return name.replaceAll(',', '').replaceAll(' ', '-') as Kebab<S>;
}
