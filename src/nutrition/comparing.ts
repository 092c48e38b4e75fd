import type { Quantity, Range, Unit } from './quantity.js';
import { inWords, ok, type Result, refuse } from './result.js';
import { asGiven, combine, FROM_LESSON, input, nameInputs, type Working } from './working.js';

/**
 * Two values closer than this share of the larger are too close to call. House rule: food records give
 * no standard errors, and foods vary from batch to batch by more.
 */
export const TOO_CLOSE = 0.1;

/** How `a` stands to `b`. */
export type Comparison = 'less' | 'more' | 'too close' | 'not known';

export interface CompareOptions {
  /** A difference smaller than this, in the values' unit, is too close whatever its share. Default 0. */
  readonly least?: number;
}

/**
 * Compares two quantities or ranges of the same unit. Ranges that overlap, or ends that lie closer than
 * `TOO_CLOSE`, are too close. A quantity that is at least so much is known to be more than a smaller one, and
 * never known to be less; against one that is not known, nothing is known.
 */
export function compare<U extends Unit>(
  a: Quantity<U> | Range<U>,
  b: Quantity<NoInfer<U>> | Range<NoInfer<U>>,
  options: CompareOptions = {},
): Comparison {
  if (a.unit !== b.unit) throw new Error(`${a.unit} and ${b.unit} cannot be compared.`);
  const one = spanOf(a);
  const other = spanOf(b);
  const least = options.least ?? 0;
  if (clearlyBelow(one.high, other.low, least)) return 'less';
  if (clearlyBelow(other.high, one.low, least)) return 'more';
  const open = [one.low, one.high, other.low, other.high].some((end) => !Number.isFinite(end));
  return open ? 'not known' : 'too close';
}

/** One of several things to choose from. */
export interface Candidate<U extends Unit> {
  /** The name used in refusals and, in its plain letters, in the formula. */
  readonly name: string;
  readonly value: Quantity<U> | Range<U>;
  readonly working?: Working;
}

/** The one that stands clear of all others. */
export interface Winner<U extends Unit> {
  readonly name: string;
  readonly value: Quantity<U> | Range<U>;
  /** Place among the candidates, from 0. */
  readonly index: number;
  /** `min(…)` or `max(…)` over the ends that decided it. */
  readonly working: Working;
}

/**
 * The one with the smallest value. Refused when fewer than two are given, when a value that is not known
 * could be smaller, or when the next is too close to call; the refusal names them.
 */
export function smallestOf<U extends Unit>(
  candidates: readonly Candidate<U>[],
  options: CompareOptions = {},
): Result<Winner<U>> {
  return clearOf('less', candidates, options);
}

/** The one with the largest value, with the refusals of `smallestOf`. */
export function largestOf<U extends Unit>(
  candidates: readonly Candidate<U>[],
  options: CompareOptions = {},
): Result<Winner<U>> {
  return clearOf('more', candidates, options);
}

function clearOf<U extends Unit>(
  wanted: 'less' | 'more',
  candidates: readonly Candidate<U>[],
  options: CompareOptions,
): Result<Winner<U>> {
  const word = wanted === 'less' ? 'smallest' : 'largest';
  if (candidates.length < 2) {
    return refuse(`There is no ${word} among fewer than two.`, 'Write two rows or more.');
  }
  const best = candidates.findIndex((one, i) =>
    candidates.every((other, j) => i === j || compare<U>(one.value, other.value, options) === wanted),
  );
  const found = candidates[best];
  if (found !== undefined) {
    return ok({
      name: found.name,
      value: found.value,
      index: best,
      working: workingOf(wanted, candidates, best),
    });
  }
  return noneIsClear(wanted, word, candidates, options);
}

/** Says which values stand in the way: those in the lead among themselves. */
function noneIsClear<U extends Unit>(
  wanted: 'less' | 'more',
  word: string,
  candidates: readonly Candidate<U>[],
  options: CompareOptions,
): Result<never> {
  const against = wanted === 'less' ? 'more' : 'less';
  const leaders = candidates.filter((one) =>
    candidates.every((other) => compare<U>(one.value, other.value, options) !== against || one === other),
  );
  const open = leaders.filter(({ value }) => 'atLeast' in value && (value.value === null || value.atLeast));
  if (open.length > 0) {
    const names = inWords(open.map((one) => `"${one.name}"`));
    return refuse(
      `The ${word} cannot be told: the value of ${names} is not fully known.`,
      'Leave it out, or ask about another nutrient.',
    );
  }
  return refuse(
    `Too close to call: ${inWords(leaders.map((one) => `"${one.name}"`))} lie within ${TOO_CLOSE * 100}% of each other.`,
    'Ask about values that lie further apart.',
  );
}

function workingOf<U extends Unit>(
  wanted: 'less' | 'more',
  candidates: readonly Candidate<U>[],
  best: number,
): Working {
  const named = nameInputs(candidates, (one) => one.name);
  const parts = named.map(({ name, item }, i) => {
    if (item.working !== undefined && 'value' in item.value) return { name, item: item.working };
    const span = spanOf(item.value);
    const end = (wanted === 'less') === (i === best) ? span.high : span.low;
    return { name, item: asGiven(input(name, end, item.value.unit, FROM_LESSON)) };
  });
  const formula = named.map(({ name }) => name).join(', ');
  return combine(`${wanted === 'less' ? 'min' : 'max'}(${formula})`, parts);
}

function spanOf(value: Quantity | Range): { readonly low: number; readonly high: number } {
  if ('low' in value) return { low: value.low, high: value.high };
  if (value.value === null) return { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };
  return { low: value.value, high: value.atLeast ? Number.POSITIVE_INFINITY : value.value };
}

/** The margin allows for the noise of binary fractions, so that 0.9 and 1.0 are ten percent apart. */
function clearlyBelow(high: number, low: number, least: number): boolean {
  const gap = low - high;
  if (!(gap > 0) || !Number.isFinite(gap)) return false;
  const larger = Math.max(Math.abs(low), Math.abs(high));
  return gap >= TOO_CLOSE * larger * (1 - 1e-9) && gap >= least;
}
