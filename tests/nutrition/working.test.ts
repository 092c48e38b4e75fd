import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asGiven, combine, input, nameInputs, substitute, type Working } from '../../src/nutrition/index.js';
import { evaluate, evaluateParts } from './evaluate.js';

const LETTERS = ['a', 'b', 'count', 'grams_each', 'per100'] as const;
const working: fc.Arbitrary<Working> = fc
  .uniqueArray(fc.constantFrom(...LETTERS), { minLength: 1, maxLength: 4 })
  .chain((chosen) =>
    fc.tuple(
      fc.constant(chosen),
      fc.array(fc.integer({ min: 1, max: 9 }), { minLength: chosen.length, maxLength: chosen.length }),
      fc.array(fc.constantFrom(' + ', ' - ', ' * ', ' / '), { minLength: 4, maxLength: 4 }),
    ),
  )
  .map(([chosen, values, signs]) => ({
    formula: chosen.map((name, i) => (i === 0 ? name : `${signs[i]}${name}`)).join(''),
    inputs: chosen.map((name, i) => input(name, values[i] ?? 1, 'g', 'test')),
  }));

describe('putting one working into another', () => {
  it('gives what working out both in turn gives, whatever names they share', () => {
    fc.assert(
      fc.property(working, working, (outer, inner) => {
        const name = outer.inputs[0]?.name ?? '';
        const value = evaluate(inner);
        const inTurn = evaluate({
          formula: outer.formula,
          inputs: outer.inputs.map((one) => (one.name === name ? { ...one, value } : one)),
        });
        const together = evaluate(substitute(outer, name, inner));
        expect(together).toBeCloseTo(inTurn, 9);
      }),
    );
  });

  it('keeps an input that means the same once, and renames one that does not', () => {
    const outer: Working = {
      formula: 'x * count',
      inputs: [input('x', null, '', ''), input('count', 2, 'cup', 'lesson')],
    };
    const same: Working = { formula: 'count + 1', inputs: [input('count', 2, 'cup', 'lesson')] };
    expect(substitute(outer, 'x', same)).toEqual({
      formula: '(count + 1) * count',
      inputs: [input('count', 2, 'cup', 'lesson')],
    });
    const other: Working = {
      formula: 'count * count_2',
      inputs: [input('count', 3, 'tbsp', 'lesson'), input('count_2', 5, 'g', 'table')],
    };
    const joined = substitute(outer, 'x', other);
    expect(joined.formula).toBe('(count_3 * count_2) * count');
    expect(evaluate(joined)).toBe(30);
  });

  it('throws when there is no such input', () => {
    expect(() => substitute(asGiven(input('a', 1, 'g', '')), 'b', asGiven(input('c', 1, 'g', '')))).toThrow(
      'no input "b"',
    );
  });

  it('combines several under one formula', () => {
    const one = asGiven(input('grams', 1, 'g', 'lesson'));
    const two = asGiven(input('grams', 2, 'g', 'lesson'));
    const both = combine('rice + beans', [
      { name: 'rice', item: one },
      { name: 'beans', item: two },
    ]);
    expect(both.formula).toBe('grams + grams_2');
    expect(evaluate(both)).toBe(3);
  });
});

describe('names of inputs', () => {
  const names = (words: readonly string[]) => nameInputs(words, (word) => word).map(({ name }) => name);

  it('are plain and different from one another', () => {
    expect(names(['Pinto beans, dry', 'pinto beans dry', '2% milk', 'فول', '豆', 'min', 'low'])).toEqual([
      'pinto_beans_dry',
      'pinto_beans_dry_2',
      'n_2_milk',
      'part',
      'part_2',
      'min_2',
      'low_2',
    ]);
  });

  it('are always fit for a formula', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: 'binary' }), { maxLength: 6 }), (words) => {
        const made = names(words);
        expect(new Set(made).size).toBe(words.length);
        for (const name of made) expect(input(name, 1, 'g', '').name).toMatch(/^[a-z][a-z0-9_]*$/);
      }),
    );
  });

  it('are refused when they are not', () => {
    for (const name of ['', '2x', 'A', 'a b', 'a-b', 'min', 'low'])
      expect(() => input(name, 1, 'g', '')).toThrow('cannot name');
  });
});

describe('the evaluator of these tests', () => {
  it('keeps to the rules of arithmetic', () => {
    const inputs = [input('a', 2, '', ''), input('b', 3, '', '')];
    expect(evaluate({ formula: 'a + b * 4 - 10 / 5', inputs })).toBe(12);
    expect(evaluate({ formula: '(a + b) * (4 - 1)', inputs })).toBe(15);
    expect(evaluate({ formula: 'min(a * 4, b, 9) + max(a, (b + 1))', inputs })).toBe(7);
    expect(evaluate({ formula: '10 - 4 - 3', inputs })).toBe(3);
    expect(evaluateParts({ formula: 'low = a * 2; high = b / 0.5', inputs })).toEqual({ low: 4, high: 6 });
    expect(() => evaluate({ formula: 'c', inputs })).toThrow('No input c');
    expect(() => evaluate({ formula: 'a b', inputs })).toThrow('Not a formula');
    expect(() => evaluate({ formula: 'a % b', inputs })).toThrow('Not a plain formula');
  });
});
