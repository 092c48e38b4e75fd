import { calculationNamed, readGiven } from '../../../src/cli/calc/call.js';
import type { Answer, Calculation, Shelf, Shown } from '../../../src/cli/calc/contract.js';
import { finite } from '../../../src/cli/calc/finite.js';
import { openShelf } from '../../../src/cli/calc/shelf.js';
import type { Result } from '../../../src/nutrition/index.js';
import { ROOT } from '../../house/source.js';

/** A call with what a source says has to come of it. */
export interface Expected {
  /** Where the values were printed, or by which rule they were worked out by hand. */
  readonly source: string;
  readonly call: readonly [string, ...string[]];
  /** By the name of the result: a word, or a value (or both ends) and how far off it may be. */
  readonly gives: Readonly<
    Record<string, string | null | readonly [value: number | readonly [number, number], off: number]>
  >;
}

const opened = openShelf(ROOT);
/** Looking for what comes near takes long, and many tests ask for the same. */
const shelf: Shelf = { food: once(opened.food), forms: once(opened.forms) };

function once<T>(find: (name: string) => T): (name: string) => T {
  const found = new Map<string, T>();
  return (name) => {
    const known = found.get(name) ?? find(name);
    found.set(name, known);
    return known;
  };
}

/** Runs a call inside the tests; only an unknown name throws. */
export function calc([name, ...words]: readonly string[]): {
  calculation: Calculation;
  result: Result<Answer>;
} {
  const named = calculationNamed(name ?? '');
  if (!named.ok) throw new Error(named.reason);
  const { values } = readGiven(named.value, words);
  const result = values.ok ? named.value.compute(values.value, shelf) : values;
  return { calculation: named.value, result: result.ok ? finite(result.value) : result };
}

export function resultsOf(call: readonly string[]): ReadonlyMap<string, Shown> {
  const { result } = calc(call);
  if (!result.ok) throw new Error(`${call.join(' ')} was refused: ${result.reason}`);
  return new Map(result.value.results.map((one) => [one.name, one]));
}
