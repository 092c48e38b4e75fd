import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convertTime, isTimeUnit, type TimeUnit, withinTime } from '../../src/nutrition/index.js';

describe('times', () => {
  // SI brochure, 9th edition, table 8: 1 min = 60 s, 1 h = 3600 s, 1 d = 86 400 s.
  it.each([
    [1, 'min', 60],
    [1, 'h', 3600],
    [1, 'days', 86_400],
    [20, 's', 20],
  ] as const)('%d %s is %d s', (value, unit, seconds) => {
    expect(convertTime({ value, unit }, 's')).toEqual({ value: seconds, unit: 's' });
  });

  it('come back to where they were', () => {
    const unit = fc.constantFrom<TimeUnit>('s', 'min', 'h', 'days');
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e6, noNaN: true }), unit, unit, (value, from, to) => {
        expect(convertTime(convertTime({ value, unit: from }, to), from).value).toBeCloseTo(value, 6);
      }),
    );
  });

  it('know their units', () => {
    expect(['s', 'min', 'h', 'days', 'weeks', 'constructor'].filter(isTimeUnit)).toEqual([
      's',
      'min',
      'h',
      'days',
    ]);
  });

  it('within a limit: on it yes, over it no, whatever the units', () => {
    const limit = { value: 2, unit: 'h' } as const;
    expect(withinTime({ value: 2, unit: 'h' }, limit)).toEqual({ ok: true, value: true });
    expect(withinTime({ value: 120, unit: 'min' }, limit)).toEqual({ ok: true, value: true });
    expect(withinTime({ value: 121, unit: 'min' }, limit)).toEqual({ ok: true, value: false });
  });

  it('a time that is none never passes as safe', () => {
    for (const value of [-1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(withinTime({ value, unit: 'h' }, { value: 2, unit: 'h' }).ok).toBe(false);
    expect(withinTime({ value: 1, unit: 'h' }, { value: 0, unit: 'h' }).ok).toBe(false);
  });
});
