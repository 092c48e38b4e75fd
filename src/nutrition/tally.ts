import type { Reckoned } from './reckoned.js';
import { FROM_LESSON, type Input, input, type Working } from './working.js';

/** Below so many answers a percentage says more than was asked (house rule). */
export const FEWEST_FOR_PERCENT = 20;
/**
 * Counts from 1 up to this may point to somebody in a small group, so that none is kept or printed. Source: the
 * small-cell rule of the US Centers for Medicare and Medicaid Services, which withholds counts of 1 to 10.
 */
export const LARGEST_SMALL_COUNT = 10;
/** More people than a room holds is a slip. */
export const MOST_PEOPLE = 999;

/** One answer of a show of hands with the people who gave it. */
export interface Count {
  /** Name in the formula. */
  readonly name: string;
  /** A whole number from 0. */
  readonly people: number;
}

/** Whether a count is so small that it may point to somebody. Nobody points to nobody, so that 0 is not small. */
export function isSmallCount(people: number): boolean {
  return people >= 1 && people <= LARGEST_SMALL_COUNT;
}

/** All answers of one show of hands: the sum of the counts. */
export function answersInAll(counts: readonly Count[]): Reckoned<'people'> & { readonly value: number } {
  return { value: sumOf(counts), unit: 'people', working: working(sumFormula(counts), counts) };
}

/**
 * The share of one answer, in percent of all answers: `one / (a + b + …) * 100`. Nothing when fewer than
 * `FEWEST_FOR_PERCENT` people answered, or when the answer is none of the counts.
 */
export function shareOfAnswers(
  name: string,
  counts: readonly Count[],
): (Reckoned<'%'> & { readonly value: number }) | undefined {
  const one = counts.find((count) => count.name === name);
  const all = sumOf(counts);
  if (!one || all < FEWEST_FOR_PERCENT) return undefined;
  return {
    value: (one.people / all) * 100,
    unit: '%',
    working: working(`${name} / (${sumFormula(counts)}) * 100`, counts),
  };
}

/** People that one box of a tally stands for, so that the largest count takes at most `boxes`: 1, 2, 5, 10 … */
export function peopleABox(largest: number, boxes: number): number {
  const steps = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];
  return steps.find((step) => largest <= step * boxes) ?? 1000;
}

function sumOf(counts: readonly Count[]): number {
  return counts.reduce((sum, { people }) => sum + people, 0);
}

function sumFormula(counts: readonly Count[]): string {
  return counts.map(({ name }) => name).join(' + ') || '0';
}

function working(formula: string, counts: readonly Count[]): Working {
  const inputs = counts.map(({ name, people }): Input => input(name, people, 'people', FROM_LESSON));
  return { formula, inputs };
}
