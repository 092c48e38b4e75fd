import { expect, it } from 'vitest';
import type { Shown } from '../../../src/cli/calc/contract.js';
import { evaluate, evaluateParts } from '../../nutrition/evaluate.js';
import { calc, type Expected, resultsOf } from './expected.js';

/** Holds every call to its published values, and each value to its own working. */
export function holdsAll(cases: readonly Expected[]): void {
  it.each(cases.map((one) => [one.call.join(' '), one] as const))('%s', (_, { call, gives, source }) => {
    const results = resultsOf(call);
    for (const [name, wanted] of Object.entries(gives)) {
      const found = results.get(name);
      expect(found, `${name} is not among ${[...results.keys()].join(', ')}`).toBeDefined();
      holds(found?.value, wanted, `${name}: ${source}`);
    }
    for (const one of results.values()) followsItsWorking(one);
  });

  it.each([...new Set(cases.map(({ call }) => call[0]))])('%s runs its own example', (name) => {
    const { calculation } = calc(cases.find(({ call }) => call[0] === name)?.call ?? []);
    const results = resultsOf([name, ...calculation.example]);
    expect(results.size).toBeGreaterThan(0);
    for (const one of results.values()) followsItsWorking(one);
  });
}

function holds(found: Shown['value'] | undefined, wanted: Expected['gives'][string], why: string): void {
  if (wanted === null || typeof wanted === 'string') {
    expect(found, why).toBe(wanted);
    return;
  }
  const [value, off] = wanted;
  const theirs = typeof value === 'number' ? [value] : value;
  const ours =
    typeof found === 'number' ? [found] : found && typeof found === 'object' ? [found.low, found.high] : [];
  expect(ours, why).toHaveLength(theirs.length);
  theirs.forEach((one, at) => {
    expect(
      Math.abs(Number(ours[at]) - one),
      `${ours[at]} is not ${one} ± ${off}; ${why}`,
    ).toBeLessThanOrEqual(off + 1e-9);
  });
}

function followsItsWorking({ name, value, working }: Shown): void {
  if (working === undefined || value === null || typeof value === 'string') return;
  if (typeof value === 'number') {
    const again = evaluate(working);
    expect(
      Math.abs(again - value),
      `${name}: ${working.formula} gives ${again}, not ${value}`,
    ).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(value)));
  } else {
    const again = evaluateParts(working);
    expect(again.low).toBeCloseTo(value.low, 6);
    expect(again.high).toBeCloseTo(value.high, 6);
  }
}
