import type { Working } from './working.js';

/** A measured amount that somebody may not know; `null` is not known, never zero. */
export interface Measured<U extends string = string> {
  readonly value: number | null;
  readonly unit: U;
}

/**
 * A computed number that is no quantity of a food (a rate, an index, minutes), unrounded, with how it was got.
 * `value` is `null` when something that it needs is not known.
 */
export interface Reckoned<U extends string = string> extends Measured<U> {
  readonly working: Working;
}

/** What `compute` makes of named values, or `null` when one of them is not known. */
export function whenKnown<K extends string>(
  values: Readonly<Record<K, number | null>>,
  compute: (known: Readonly<Record<K, number>>) => number,
): number | null {
  return allKnown(values) ? compute(values) : null;
}

function allKnown<K extends string>(
  values: Readonly<Record<K, number | null>>,
): values is Readonly<Record<K, number>> {
  return Object.values(values).every((value) => value !== null);
}
