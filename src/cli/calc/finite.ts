import { ok, type Result, refuse } from '../../nutrition/index.js';
import type { Answer, Shown } from './contract.js';

/** The answer when every number of it is one; what was too large or too small to work with is refused. */
export function finite(answer: Answer): Result<Answer> {
  const off = answer.results.find((one) => !numbersOf(one).every(Number.isFinite));
  return off === undefined
    ? ok(answer)
    : refuse(`The ${off.name} is no number: an input is too large or too small.`, 'Write everyday amounts.');
}

function numbersOf({ value, working }: Shown): number[] {
  const ends = typeof value === 'object' && value !== null ? [value.low, value.high] : [value];
  const inputs = working?.inputs.map((one) => one.value) ?? [];
  return [...ends, ...inputs].filter((one) => typeof one === 'number');
}
