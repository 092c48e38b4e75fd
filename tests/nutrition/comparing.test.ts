import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  asGiven,
  type Candidate,
  compare,
  input,
  known,
  largestOf,
  notKnown,
  type Quantity,
  type Range,
  smallestOf,
  TOO_CLOSE,
  type Unit,
} from '../../src/nutrition/index.js';
import { evaluate } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';

const mg = (value: number) => known(value, 'mg');
const atLeast = (value: number): Quantity<'mg'> => ({ value, unit: 'mg', atLeast: true });
const between = (low: number, high: number): Range<'mg'> => ({ low, high, unit: 'mg' });
const unknown = notKnown('mg');

describe('comparing two', () => {
  it.each([
    // House rule: closer than 10% of the larger is too close to call.
    [mg(89), mg(100), 'less'],
    [mg(90), mg(100), 'less'],
    [mg(0.9), mg(1), 'less'],
    [mg(91), mg(100), 'too close'],
    [mg(100), mg(100), 'too close'],
    [mg(100), mg(91), 'too close'],
    [mg(100), mg(80), 'more'],
    [mg(0), mg(0), 'too close'],
    [mg(0), mg(1), 'less'],
    [unknown, mg(1), 'not known'],
    [mg(1), unknown, 'not known'],
    [unknown, unknown, 'not known'],
    [atLeast(100), mg(10), 'more'],
    [mg(10), atLeast(100), 'less'],
    [atLeast(10), mg(100), 'not known'],
    [atLeast(10), atLeast(100), 'not known'],
    [between(271, 368), mg(460), 'less'],
    [between(271, 368), mg(240), 'more'],
    [between(271, 368), mg(300), 'too close'],
    [between(271, 368), between(350, 500), 'too close'],
    [between(271, 368), between(420, 500), 'less'],
    [between(271, 368), unknown, 'not known'],
  ] as const)('%o and %o: %s', (a, b, comparison) => {
    expect(compare<'mg'>(a, b)).toBe(comparison);
  });

  it('can hold small differences too close whatever their share', () => {
    expect(compare(mg(1), mg(4))).toBe('less');
    expect(compare(mg(1), mg(4), { least: 5 })).toBe('too close');
    expect(compare(mg(1), mg(6), { least: 5 })).toBe('less');
  });

  it('throws on units that slipped through', () => {
    expect(() => compare(known(1, 'g' as Unit), known(1, 'kcal' as Unit))).toThrow('g and kcal');
  });

  it('says the opposite the other way round, and never calls two within 10 percent', () => {
    const number = fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max: 1e6, noNaN: true }));
    const value = fc.oneof(number.map(mg), number.map(atLeast), fc.constant(unknown));
    const turned = {
      less: 'more',
      more: 'less',
      'too close': 'too close',
      'not known': 'not known',
    } as const;
    fc.assert(
      fc.property(value, value, (a, b) => {
        const found = compare(a, b);
        expect(compare(b, a)).toBe(turned[found]);
        if (a.value === null || b.value === null) expect(found).toBe('not known');
        else if (found === 'less')
          expect(a.value).toBeLessThanOrEqual(b.value * (1 - TOO_CLOSE) * (1 + 1e-8));
      }),
    );
  });
});

describe('the smallest and the largest of several', () => {
  const rows = (...values: readonly (Quantity<'mg'> | Range<'mg'>)[]): Candidate<'mg'>[] =>
    values.map((value, i) => ({ name: `row ${i + 1}`, value }));

  it('is the one that stands clear of all others', () => {
    const least = valueIn(smallestOf(rows(mg(239), mg(212), mg(1))));
    expect([least.name, least.index, least.value]).toEqual(['row 3', 2, mg(1)]);
    expect(least.working.formula).toBe('min(row_1, row_2, row_3)');
    expect(evaluate(least.working)).toBe(1);
    const most = valueIn(largestOf(rows(mg(200), mg(268), mg(1))));
    expect(most.name).toBe('row 2');
    expect(evaluate(most.working)).toBe(268);
  });

  it('refuses a near tie and names those in it', () => {
    expect(refusalOf(smallestOf(rows(mg(100), mg(95), mg(400))))).toMatchObject({
      reason: 'Too close to call: "row 1" and "row 2" lie within 10% of each other.',
    });
    expect(refusalOf(largestOf(rows(mg(100), mg(95), mg(90), mg(1)))).reason).toContain(
      '"row 1" and "row 2"',
    );
    expect(smallestOf(rows(mg(1), mg(3), mg(400)), { least: 5 }).ok).toBe(false);
    expect(smallestOf(rows(mg(100), mg(395), mg(400))).ok).toBe(true);
  });

  it('refuses when a value that is not known could win', () => {
    expect(refusalOf(smallestOf(rows(mg(1), unknown, mg(400)))).reason).toBe(
      'The smallest cannot be told: the value of "row 2" is not fully known.',
    );
    expect(refusalOf(largestOf(rows(mg(1), mg(400), atLeast(20)))).reason).toContain(
      '"row 3" is not fully known',
    );
  });

  it('may leave aside what is known to be out of the running', () => {
    const least = valueIn(smallestOf(rows(mg(1), mg(400), atLeast(20))));
    expect(least.name).toBe('row 1');
    expect(evaluate(least.working)).toBe(1);
    const most = valueIn(largestOf(rows(mg(1), mg(40), atLeast(200))));
    expect(most.name).toBe('row 3');
    expect(evaluate(most.working)).toBe(200);
  });

  it('works on ranges by the ends that decide', () => {
    const least = valueIn(smallestOf(rows(between(271, 368), mg(460))));
    expect(least.name).toBe('row 1');
    expect(evaluate(least.working)).toBe(368);
    const most = valueIn(largestOf(rows(between(271, 368), mg(100))));
    expect(evaluate(most.working)).toBe(271);
    expect(refusalOf(smallestOf(rows(between(1, 50), between(40, 80)))).reason).toContain('Too close');
  });

  it('takes in how each value was got', () => {
    const working = (per100: number) => ({
      formula: 'per100 * grams / 100',
      inputs: [input('per100', per100, 'mg per 100 g', 'table'), input('grams', 50, 'g', 'lesson')],
    });
    const found = valueIn(
      smallestOf([
        { name: 'rinsed', value: mg(106), working: working(212) },
        { name: 'boiled', value: mg(0.5), working: working(1) },
        { name: 'label', value: mg(460), working: asGiven(input('label', 460, 'mg', 'label')) },
      ]),
    );
    expect(found.working.formula).toBe('min((per100 * grams / 100), (per100_2 * grams / 100), label)');
    expect(evaluate(found.working)).toBe(0.5);
  });

  it('needs two', () => {
    expect(refusalOf(smallestOf(rows(mg(1)))).reason).toBe('There is no smallest among fewer than two.');
    expect(refusalOf(largestOf(rows())).reason).toBe('There is no largest among fewer than two.');
  });

  it('does not depend on the order, and its formula gives the winner', () => {
    const value = fc.oneof(
      { weight: 6, arbitrary: fc.integer({ min: 0, max: 1000 }).map(mg) },
      { weight: 1, arbitrary: fc.integer({ min: 0, max: 1000 }).map(atLeast) },
      { weight: 1, arbitrary: fc.constant(unknown) },
    );
    fc.assert(
      fc.property(fc.array(value, { minLength: 2, maxLength: 5 }), (values) => {
        const forth = smallestOf(rows(...values));
        const back = smallestOf(rows(...values).reverse());
        expect(back.ok).toBe(forth.ok);
        if (!forth.ok) return;
        expect(valueIn(back).name).toBe(forth.value.name);
        expect('value' in forth.value.value && forth.value.value.value).toBe(evaluate(forth.value.working));
        expect(values.filter((one) => one.value === null)).toEqual([]);
      }),
    );
  });
});
