import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  activityEnergy,
  activityWeek,
  aerobicWeek,
  childWeek,
  intensityOf,
  MET_ROWS,
  type Move,
  type MoveKind,
  metOf,
  unitRatio,
} from '../../src/nutrition/index.js';
import { evaluate } from './evaluate.js';
import { refusalOf, valueIn } from './expect-result.js';

const SEVENTY = { value: 70, unit: 'kg' } as const;
const walking = valueIn(metOf('17190', 2024));

const KINDS: readonly MoveKind[] = ['light', 'moderate', 'vigorous', 'strength', 'balance'];
const anyMove: fc.Arbitrary<Move> = fc.record({
  day: fc.integer({ min: 1, max: 7 }),
  kind: fc.constantFrom(...KINDS),
  minutes: fc.option(fc.integer({ min: 0, max: 120 })),
});

describe('a week of moves', () => {
  it('adds up the same in any order, and light, strength and balance minutes add nothing aerobic', () => {
    fc.assert(
      fc.property(fc.array(anyMove, { maxLength: 10 }), (moves) => {
        const week = valueIn(activityWeek(moves, 'older adult'));
        expect(valueIn(activityWeek([...moves].reverse(), 'older adult'))).toEqual(week);
        const aerobic = moves.filter(({ kind }) => kind === 'moderate' || kind === 'vigorous');
        expect(valueIn(activityWeek(aerobic, 'older adult')).equivalent).toEqual(week.equivalent);
        if (week.equivalent.value !== null)
          expect(evaluate(week.equivalent.working)).toBe(week.equivalent.value);
      }),
    );
  });

  it('never goes down with one move more', () => {
    fc.assert(
      fc.property(fc.array(anyMove, { maxLength: 10 }), anyMove, (moves, one) => {
        const before = valueIn(activityWeek(moves, 'adult'));
        const after = valueIn(activityWeek([...moves, one], 'adult'));
        if (before.equivalent.value !== null && after.equivalent.value !== null)
          expect(after.equivalent.value).toBeGreaterThanOrEqual(before.equivalent.value);
        expect(after.strengthDays).toBeGreaterThanOrEqual(before.strengthDays);
        if (before.meetsAerobic === 'yes') expect(after.meetsAerobic).toBe('yes');
      }),
    );
  });

  it('keeps what is not known apart from zero', () => {
    expect(valueIn(aerobicWeek([null], [null]))).toMatchObject({
      equivalent: { value: null },
      meetsAerobic: 'not known',
      missing: null,
      atLeast: false,
    });
    expect(valueIn(aerobicWeek([100, null], []))).toMatchObject({
      equivalent: { value: 100 },
      meetsAerobic: 'not known',
      missing: null,
      atLeast: true,
    });
    expect(valueIn(aerobicWeek([160], [null]))).toMatchObject({
      meetsAerobic: 'yes',
      missing: 0,
      atLeast: true,
    });
    expect(valueIn(aerobicWeek([], []))).toMatchObject({
      equivalent: { value: 0 },
      meetsAerobic: 'no',
      missing: 150,
      atLeast: false,
    });
  });

  it('counts a day of strength once, and asks balance of older adults only', () => {
    const twice: readonly Move[] = [
      { day: 2, kind: 'strength', minutes: 10 },
      { day: 2, kind: 'strength', minutes: null },
      { day: 4, kind: 'balance', minutes: 10 },
    ];
    expect(valueIn(activityWeek(twice, 'adult'))).toMatchObject({
      strengthDays: 1,
      meetsStrength: false,
      meetsBalance: null,
    });
    expect(valueIn(activityWeek(twice, 'older adult')).meetsBalance).toBe(true);
    expect(valueIn(activityWeek([], 'older adult')).meetsBalance).toBe(false);
  });

  it.each([
    [{ day: 0, kind: 'moderate', minutes: 10 }, 'Day 0 is not a day of the week.'],
    [{ day: 8, kind: 'moderate', minutes: 10 }, 'Day 8'],
    [{ day: 1.5, kind: 'moderate', minutes: 10 }, 'Day 1.5'],
    [{ day: 1, kind: 'light', minutes: -10 }, '-10 is no number of minutes.'],
    [{ day: 1, kind: 'strength', minutes: Number.NaN }, 'NaN is no number of minutes.'],
    [{ day: 1, kind: 'moderate', minutes: 1441 }, '1441 minutes do not fit into one day.'],
  ] as const)('refuses %j', (move, reason) => {
    expect(refusalOf(activityWeek([move], 'adult')).reason).toContain(reason);
  });

  it('refuses minutes that no week has', () => {
    expect(refusalOf(aerobicWeek([10_081], [])).reason).toBe('10081 minutes do not fit into a week.');
    expect(refusalOf(aerobicWeek([10], [-1])).reason).toContain('-1 is no number');
    expect(aerobicWeek([10_080], []).ok).toBe(true);
  });

  it('of a child counts days of 60 minutes', () => {
    // Physical Activity Guidelines 2018: 60 minutes a day at 6 to 17 years (from memory).
    expect(valueIn(childWeek([60, 59, 90, null, 0]))).toEqual({ reached: 2, notKnown: 1, days: 5 });
    expect(refusalOf(childWeek([1, 2, 3, 4, 5, 6, 7, 8])).reason).toBe('A week has no 8 days.');
    expect(refusalOf(childWeek([-1])).reason).toContain('-1');
    expect(refusalOf(childWeek([2000])).reason).toContain('one day');
  });
});

describe('MET values', () => {
  // 2024 Adult Compendium, as its public lists give them; 2011 where the code was seen too. Typed again.
  it.each([
    ['17165', 3, 3],
    ['17170', 3, 3],
    ['17190', 3.8, 3.5],
    ['17200', 4.8, 4.3],
    ['17220', 5.5, 5],
    ['01014', 7, null],
    ['01015', null, 7.5],
    ['01018', 3.5, 3.5],
    ['01011', 6.8, 6.8],
    ['01040', 10, 10],
    ['12050', 9.3, 9.8],
    ['12080', 11.8, null],
    ['18310', 6, 6],
    ['02150', 2.3, 2.5],
    ['02175', 2.3, null],
    ['15675', 6.8, 7.3],
    ['15660', 4, 4],
    ['15720', 3, 3],
  ] as const)('of code %s', (code, in2024, in2011) => {
    const met = (edition: 2011 | 2024) => {
      const row = metOf(code, edition);
      return row.ok ? row.value.met : null;
    };
    expect([met(2024), met(2011)]).toEqual([in2024, in2011]);
  });

  it('stand once in each edition, with what rests on memory marked', () => {
    const keys = MET_ROWS.map(({ edition, code, activity }) => `${edition} ${code ?? activity}`);
    expect(new Set(keys).size).toBe(keys.length);
    expect(valueIn(metOf('15675', 2011)).checked).toBe('memory');
    expect(valueIn(metOf('vacuuming', 2011))).toMatchObject({ met: 3.3, code: null, checked: 'copies' });
  });

  it('are never taken from the other edition', () => {
    const refused = refusalOf(metOf('01014', 2011));
    expect(refused.reason).toBe('The 2011 compendium has no "01014" in this table.');
    expect(refused.hint).toBe('The 2024 edition has it; editions are not mixed.');
    expect(refusalOf(metOf('99999', 2024)).hint).toContain('five-digit code');
  });

  it.each([
    // Physical Activity Guidelines 2018: moderate 3.0 to 5.9 MET, vigorous 6.0 and more (from memory).
    [2.9, 'light'],
    [3, 'moderate'],
    [5.9, 'moderate'],
    [6, 'vigorous'],
    [11.8, 'vigorous'],
  ] as const)('%d is %s', (met, word) => {
    expect(intensityOf(met)).toBe(word);
  });
});

describe('energy of an activity', () => {
  it('is the same in pounds, in proportion to time, less when net, and worked out as written', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...MET_ROWS),
        fc.integer({ min: 40, max: 150 }),
        fc.integer({ min: 1, max: 240 }),
        fc.constantFrom('by kilogram', 'by oxygen'),
        fc.boolean(),
        (row, kg, minutes, form, net) => {
          const of = (time: number, options: { net: boolean }, unit: 'kg' | 'lb' = 'kg') =>
            valueIn(
              activityEnergy(row, { value: kg * unitRatio('kg', unit), unit }, time, { form, ...options }),
            );
          const one = of(minutes, { net });
          expect(evaluate(one.working)).toBeCloseTo(Number(one.quantity.value), 6);
          const pounds = of(minutes, { net }, 'lb');
          expect(pounds.quantity.value).toBeCloseTo(Number(one.quantity.value), 6);
          expect(evaluate(pounds.working)).toBeCloseTo(Number(one.quantity.value), 6);
          expect(of(minutes * 2, { net }).quantity.value).toBeCloseTo(2 * Number(one.quantity.value), 6);
          const difference =
            Number(of(minutes, { net: false }).quantity.value) -
            Number(of(minutes, { net: true }).quantity.value);
          const quiet = form === 'by kilogram' ? (kg * minutes) / 60 : (kg * minutes * 3.5) / 200;
          expect(difference).toBeCloseTo(quiet, 6);
          expect(one).toMatchObject({ estimated: true, quantity: { unit: 'kcal' } });
        },
      ),
    );
  });

  it('names the edition and the code in its working', () => {
    const source = (code: string, edition: 2011 | 2024) =>
      valueIn(activityEnergy(valueIn(metOf(code, edition)), SEVENTY, 10)).working.inputs[0]?.source;
    expect(source('17190', 2024)).toBe('compendium-2024 17190');
    expect(source('vacuuming', 2011)).toBe('compendium-2011');
  });

  it('is not known when weight or minutes are not', () => {
    expect(valueIn(activityEnergy(walking, { value: null, unit: 'lb' }, 30)).quantity.value).toBeNull();
    expect(valueIn(activityEnergy(walking, SEVENTY, null)).quantity.value).toBeNull();
  });

  it('refuses what cannot be, and ages that the 2024 edition leaves to another table', () => {
    expect(refusalOf(activityEnergy(walking, { value: 7, unit: 'kg' }, 30)).reason).toContain(
      'A weight of 7 kg',
    );
    for (const minutes of [-1, 1441, Number.NaN])
      expect(refusalOf(activityEnergy(walking, SEVENTY, minutes)).reason).toContain('number of minutes');
    for (const age of [18, 60, Number.NaN])
      expect(refusalOf(activityEnergy(walking, SEVENTY, 30, { age })).reason).toContain('ages 19 to 59');
    expect(activityEnergy(walking, SEVENTY, 30, { age: 59.9 }).ok).toBe(true);
    expect(activityEnergy(valueIn(metOf('17190', 2011)), SEVENTY, 30, { age: 70 }).ok).toBe(true);
  });
});
