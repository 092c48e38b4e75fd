import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  add,
  amountOf,
  known,
  notKnown,
  type Quantity,
  ratio,
  scale,
  subtract,
  sum,
  times,
  type Unit,
} from '../../src/nutrition/index.js';

const value = fc.double({ min: 0, max: 1e6, noNaN: true });
const quantity: fc.Arbitrary<Quantity<'mg'>> = fc.oneof(
  value.map((n) => known(n, 'mg')),
  fc.constant(notKnown('mg')),
  value.map((n) => ({ value: n, unit: 'mg' as const, atLeast: true })),
);

describe('amounts', () => {
  it('adds, takes away, multiplies and divides within one unit', () => {
    const a = amountOf(3, 'oz');
    const b = amountOf(1.5, 'oz');
    expect(add(a, b)).toEqual({ value: 4.5, unit: 'oz' });
    expect(subtract(a, b)).toEqual({ value: 1.5, unit: 'oz' });
    expect(times(a, 4)).toEqual({ value: 12, unit: 'oz' });
    expect(ratio(a, b)).toBe(2);
  });

  it('throws on our own bugs: numbers that are none, units that slipped through, a ratio to zero', () => {
    expect(() => amountOf(Number.NaN, 'g')).toThrow('no amount');
    expect(() => add({ value: 1, unit: 'g' as Unit }, { value: 1, unit: 'kcal' })).toThrow('g and kcal');
    expect(() => ratio(amountOf(1, 'g'), amountOf(0, 'g'))).toThrow('ratio to zero');
  });
});

describe('sums', () => {
  it('keeps what is not known apart from zero', () => {
    expect(sum('mg', [known(2, 'mg'), known(3, 'mg')])).toEqual({ value: 5, unit: 'mg', atLeast: false });
    expect(sum('mg', [known(2, 'mg'), notKnown('mg')])).toEqual({ value: 2, unit: 'mg', atLeast: true });
    expect(sum('mg', [known(0, 'mg'), notKnown('mg')])).toEqual({ value: 0, unit: 'mg', atLeast: true });
    expect(sum('mg', [notKnown('mg'), notKnown('mg')])).toEqual(notKnown('mg'));
    expect(sum('mg', [])).toEqual({ value: 0, unit: 'mg', atLeast: false });
  });

  it('carries "at least" on', () => {
    const part = { value: 4, unit: 'mg', atLeast: true } as const;
    expect(sum('mg', [part, known(1, 'mg')])).toEqual({ value: 5, unit: 'mg', atLeast: true });
  });

  it('does not mix units that slipped through', () => {
    const part = { value: 1, unit: 'kcal' as Unit, atLeast: false };
    expect(() => sum('g' as Unit, [part])).toThrow('g and kcal');
  });

  it('is the same in any order, to the last digit', () => {
    const shuffled = fc
      .array(quantity, { maxLength: 12 })
      .chain((parts) =>
        fc.tuple(fc.constant(parts), fc.shuffledSubarray(parts, { minLength: parts.length })),
      );
    fc.assert(
      fc.property(shuffled, ([parts, other]) => {
        expect(sum('mg', other)).toEqual(sum('mg', parts));
      }),
    );
  });

  it('says "at least" or "not known" as soon as one part is not known', () => {
    fc.assert(
      fc.property(fc.array(quantity, { maxLength: 8 }), (parts) => {
        const total = sum('mg', [...parts, notKnown('mg')]);
        expect(total.value === null || total.atLeast).toBe(true);
        expect(total.value).toBe(parts.some((part) => part.value !== null) ? sum('mg', parts).value : null);
      }),
    );
  });
});

describe('scaling', () => {
  it('is linear, and leaves what is not known not known', () => {
    fc.assert(
      fc.property(quantity, fc.double({ min: 0, max: 1000, noNaN: true }), (one, factor) => {
        const scaled = scale(one, factor);
        expect(scaled.value).toBe(one.value === null ? null : one.value * factor);
        expect(scaled.atLeast).toBe(one.atLeast);
      }),
    );
  });

  it('throws on a factor below zero or none', () => {
    expect(() => scale(known(1, 'g'), -1)).toThrow('Cannot scale');
    expect(() => scale(known(1, 'g'), Number.NaN)).toThrow('Cannot scale');
    expect(() => scale(known(1, 'g'), Number.POSITIVE_INFINITY)).toThrow('Cannot scale');
  });
});
