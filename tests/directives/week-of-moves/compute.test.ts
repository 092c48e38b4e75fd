import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import { computeParts } from '../desk.js';
import { part } from '../parts.js';

function week(rows: readonly string[], attributes: Readonly<Record<string, string>> = {}) {
  const report = createReport();
  const computed = computeParts([part('week-of-moves', { id: 'x', ...attributes }, rows)], report);
  const value = (name: string) => computed.numbers.get(`x.${name}`)?.value;
  return {
    report,
    value,
    result: computed.entries[0]?.computed as { aerobic?: string; balance?: boolean | null },
  };
}

describe('a week', () => {
  // Physical Activity Guidelines for Americans, 2nd edition, 2018: 150 moderate minutes, or 75 vigorous, or a mix.
  it.each([
    ['moderate only', ['Mon: walk = 75 min moderate', 'Fri: walk = 75 min moderate'], 'yes'],
    ['vigorous only', ['Mon: run = 75 min vigorous'], 'yes'],
    ['a mix', ['Mon: run = 30 min vigorous', 'Fri: walk = 90 min moderate'], 'yes'],
    ['one minute short', ['Mon: run = 30 min vigorous', 'Fri: walk = 89 min moderate'], 'no'],
    ['strength does not add minutes', ['Mon: bands = 200 min strength'], 'no'],
  ])('%s', (_, rows, met) => {
    expect(week(rows).result.aerobic).toBe(met);
  });

  it('asks for balance work of older adults only', () => {
    const rows = ['Mon: walk = 20 min moderate'];
    expect(week(rows).result.balance).toBeNull();
    expect(week(rows, { for: 'older-adult' }).result.balance).toBe(false);
    expect(week(['Mon: heel-to-toe walk = 5 min balance'], { for: 'older-adult' }).result.balance).toBe(true);
  });

  it('counts what is done sitting like anything else', () => {
    const { value } = week(['Mon: chair dance = 20 min moderate', 'Tue: dance = 20 min moderate seated']);
    expect([value('total'), value('seated')]).toEqual([40, 2]);
  });

  it('counts a day with two kinds of strength work once', () => {
    expect(week(['Mon: bands = 9 min strength ; squats = 9 min strength']).value('strength-days')).toBe(1);
  });

  it('adds up whatever its order, and what is missing is never below zero', () => {
    const row = fc.tuple(
      fc.constantFrom('Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'),
      fc.integer({ min: 1, max: 60 }),
      fc.constantFrom('moderate', 'vigorous', 'light', 'strength', 'balance'),
    );
    fc.assert(
      fc.property(fc.uniqueArray(row, { selector: ([day]) => day, minLength: 1 }), (rows) => {
        const lines = rows.map(([day, minutes, kind]) => `${day}: move = ${minutes} min ${kind}`);
        const { value } = week(lines);
        const sum = rows.reduce(
          (so, [, minutes, kind]) =>
            so + (kind === 'moderate' ? minutes : kind === 'vigorous' ? 2 * minutes : 0),
          0,
        );
        expect(value('total')).toBe(sum);
        expect(week(lines.toReversed()).value('total')).toBe(sum);
        expect(value('missing')).toBe(Math.max(0, 150 - sum));
      }),
      { numRuns: 60 },
    );
  });
});
