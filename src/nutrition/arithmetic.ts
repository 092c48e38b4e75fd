import type { Amount, Quantity, Unit } from './quantity.js';

/**
 * Arithmetic with units. The second operand never decides the unit (`NoInfer`), so grams + kilocalories do
 * not compile, and neither do grams + milligrams: turn one into the other's unit first.
 */

/** Makes an amount; a value that is not finite is a bug of ours and throws. */
export function amountOf<U extends Unit>(value: number, unit: U): Amount<U> {
  if (!Number.isFinite(value)) throw new RangeError(`${value} ${unit} is no amount.`);
  return { value, unit };
}

export function add<U extends Unit>(a: Amount<U>, b: Amount<NoInfer<U>>): Amount<U> {
  sameUnit(a, b);
  return amountOf(a.value + b.value, a.unit);
}

export function subtract<U extends Unit>(a: Amount<U>, b: Amount<NoInfer<U>>): Amount<U> {
  sameUnit(a, b);
  return amountOf(a.value - b.value, a.unit);
}

export function times<U extends Unit>(a: Amount<U>, factor: number): Amount<U> {
  return amountOf(a.value * factor, a.unit);
}

/** How many times `b` is in `a`; `b` must not be zero. */
export function ratio<U extends Unit>(a: Amount<U>, b: Amount<NoInfer<U>>): number {
  sameUnit(a, b);
  if (b.value === 0) throw new RangeError('A ratio to zero has no value.');
  return a.value / b.value;
}

/** A quantity that is known. */
export function known<U extends Unit>(value: number, unit: U): Quantity<U> {
  return { ...amountOf(value, unit), atLeast: false };
}

/** A quantity that is not known, which is not zero. */
export function notKnown<U extends Unit>(unit: U): Quantity<U> {
  return { value: null, unit, atLeast: false };
}

/**
 * The sum of quantities. Unknown parts are left out and the sum says `atLeast`; when no part is known the
 * sum is not known; no parts at all sum to a known zero. The order of the parts makes no difference,
 * not even in the last binary digit, because the values are added from the smallest up.
 */
export function sum<U extends Unit>(unit: U, parts: readonly Quantity<NoInfer<U>>[]): Quantity<U> {
  const values: number[] = [];
  for (const part of parts) {
    sameUnit({ unit }, part);
    if (part.value !== null) values.push(part.value);
  }
  if (values.length === 0 && parts.length > 0) return notKnown(unit);
  values.sort((a, b) => a - b);
  const atLeast = values.length < parts.length || parts.some((part) => part.atLeast);
  const total = values.reduce((so, value) => so + value, 0);
  return { ...amountOf(total, unit), atLeast };
}

/** A quantity times a factor of zero or more; not known stays not known, at least stays at least. */
export function scale<U extends Unit>(quantity: Quantity<U>, factor: number): Quantity<U> {
  if (!(factor >= 0) || !Number.isFinite(factor)) throw new RangeError(`Cannot scale by ${factor}.`);
  if (quantity.value === null) return quantity;
  return { ...amountOf(quantity.value * factor, quantity.unit), atLeast: quantity.atLeast };
}

function sameUnit(a: { readonly unit: Unit }, b: { readonly unit: Unit }): void {
  if (a.unit !== b.unit) throw new Error(`${a.unit} and ${b.unit} cannot be combined.`);
}
