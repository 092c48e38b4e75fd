import { expect, it } from 'vitest';

/** How the expected value of a case is known. */
export type CaseStatus =
  | 'value printed in the source'
  | 'value of the source, from memory'
  | 'computed by hand, formula verified'
  | 'computed by hand, formula from memory';

/** One published or hand-computed value that the core is held against. */
export interface PublishedCase {
  readonly id: string;
  readonly title: string;
  readonly source: string;
  readonly status: CaseStatus;
  readonly holds: () => void;
}

/** Runs cases; the name of each test gives id, status and source. */
export function runCases(cases: readonly PublishedCase[]): void {
  it.each(cases)('$id $title [$status; $source]', ({ holds }) => {
    expect.hasAssertions();
    holds();
  });
}

/** Holds a number to an absolute tolerance. */
export function within(actual: number | null | undefined, expected: number, tolerance: number): void {
  expect(actual).toBeTypeOf('number');
  expect(
    Math.abs(Number(actual) - expected),
    `${actual} is not ${expected} ± ${tolerance}`,
  ).toBeLessThanOrEqual(tolerance);
}
