import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundOutward, roundTo } from '../../src/nutrition/index.js';

describe('roundTo', () => {
  it.each([
    // By hand; halves go away from zero.
    [271.4, 10, 270],
    [368, 10, 370],
    [2.5, 1, 3],
    [-2.5, 1, -3],
    [2.675, 0.01, 2.68],
    [1.005, 0.01, 1.01],
    [0.3, 0.1, 0.3],
    [0.15, 0.1, 0.2],
    [7.4, 5, 5],
    [7.5, 5, 10],
    [1.25, 0.25, 1.25],
    [-0.2, 1, 0],
    [1e-7, 1e-8, 1e-7],
    [123456, 1000, 123000],
  ])('%d to steps of %d', (value, step, rounded) => {
    expect(roundTo(value, step)).toBe(rounded);
  });

  it('is at most half a step off, and leaves what is rounded as it is', () => {
    const step = fc.constantFrom(0.01, 0.1, 0.25, 0.5, 1, 5, 10, 25);
    fc.assert(
      fc.property(fc.double({ min: -1e5, max: 1e5, noNaN: true }), step, (value, one) => {
        const rounded = roundTo(value, one);
        expect(Math.abs(rounded - value)).toBeLessThanOrEqual(one / 2 + 1e-6);
        expect(roundTo(rounded, one)).toBe(rounded);
      }),
    );
  });

  it('throws on steps and values that are none', () => {
    for (const step of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => roundTo(1, step)).toThrow('steps');
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => roundTo(value, 1)).toThrow('Cannot round');
  });
});

describe('roundOutward', () => {
  it('puts the low end down and the high end up, and leaves ends on a step', () => {
    expect(roundOutward({ low: 271.4, high: 368 }, 10)).toEqual({ low: 270, high: 370 });
    expect(roundOutward({ low: 0.3, high: 0.7 }, 0.1)).toEqual({ low: 0.3, high: 0.7 });
    expect(roundOutward({ low: -1.2, high: -1.1 }, 1)).toEqual({ low: -2, high: -1 });
  });

  it('never loses a part of the range', () => {
    const step = fc.constantFrom(0.1, 1, 5, 10);
    const end = fc.double({ min: -1e5, max: 1e5, noNaN: true });
    fc.assert(
      fc.property(end, end, step, (a, b, one) => {
        const range = { low: Math.min(a, b), high: Math.max(a, b) };
        const wide = roundOutward(range, one);
        const noise = 2e-9 * Math.max(one, Math.abs(range.low), Math.abs(range.high));
        expect(wide.low).toBeLessThanOrEqual(range.low + noise);
        expect(wide.high).toBeGreaterThanOrEqual(range.high - noise);
        expect(wide.high - wide.low).toBeLessThanOrEqual(range.high - range.low + 2 * one + noise);
      }),
    );
  });
});
