import { expect } from 'vitest';
import { evaluate, type Given } from '../nutrition/evaluate.js';

/** How the expected value of a case is known. */
export type CaseStatus =
  | 'value printed in the source'
  | 'value of the source, from memory'
  | 'computed by hand, formula verified'
  | 'computed by hand, formula from memory';

export const PRINTED: CaseStatus = 'value printed in the source';
export const RECALLED: CaseStatus = 'value of the source, from memory';
export const BY_HAND: CaseStatus = 'computed by hand, formula verified';
export const BY_HAND_RECALLED: CaseStatus = 'computed by hand, formula from memory';

type Tolerance = number | Readonly<Record<string, number>>;

/** What is known about a value outside the project, or about a set of values. */
interface Known<Inputs> {
  /** The area's letter, a short name and a number. */
  readonly id: string;
  readonly what: string;
  readonly given: Inputs;
  readonly expected: unknown;
  /** How far a number may be off: one for all, or one for each part. Without it, values are exact. */
  readonly tolerance?: Tolerance;
  readonly source: string;
  readonly status: CaseStatus;
}

export interface PublishedCase extends Known<unknown> {
  readonly find: () => unknown;
}

/** A row of the table: what is known, and how the program finds the same from the same inputs. */
export function row<const Inputs>(
  one: Known<Inputs> & { readonly find: (given: Inputs) => unknown },
): PublishedCase {
  return { ...one, find: () => one.find(one.given) };
}

/** Holds what was found to what is expected, part by part. */
export function hold(found: unknown, expected: unknown, tolerance?: Tolerance): void {
  if (tolerance === undefined) {
    expect(found).toEqual(expected);
  } else if (typeof expected === 'object' && expected !== null) {
    const parts = Object(found) as Readonly<Record<string, unknown>>;
    expect(Object.keys(parts)).toEqual(Object.keys(expected));
    for (const [part, value] of Object.entries(expected))
      hold(parts[part], value, typeof tolerance === 'number' ? tolerance : tolerance[part]);
  } else if (typeof expected === 'number') {
    expect(found).toBeTypeOf('number');
    expect(
      Math.abs(Number(found) - expected),
      `${found} is not ${expected} ± ${tolerance}`,
    ).toBeLessThanOrEqual(
      // Room for the last binary digit, where a value lies just on the border.
      Number(tolerance) + 1e-9,
    );
  } else {
    expect(found).toBe(expected);
  }
}

/** A value, once its own written formula has given it again. */
export function again(value: number | null, working: Given): number {
  expect(evaluate(working)).toBeCloseTo(Number(value), 6);
  return Number(value);
}

/** The value of a result that carries its working. */
export function worked(one: {
  readonly quantity: { readonly value: number | null };
  readonly working: Given;
}): number {
  return again(one.quantity.value, one.working);
}
