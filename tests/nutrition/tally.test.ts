import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  answersInAll,
  FEWEST_FOR_PERCENT,
  isSmallCount,
  peopleABox,
  shareOfAnswers,
} from '../../src/nutrition/index.js';
import { evaluate } from './evaluate.js';

const NAMES = ['always', 'sometimes', 'never'];
const counts = (...people: number[]) =>
  people.map((count, index) => ({ name: NAMES[index] ?? 'x', people: count }));

describe('a show of hands', () => {
  it('adds up and gives shares, worked by hand', () => {
    const hands = counts(12, 24, 0);
    expect(answersInAll(hands).value).toBe(36);
    // 12 / 36 = one third; 24 / 36 = two thirds.
    expect(shareOfAnswers('always', hands)?.value).toBeCloseTo(33.3333, 4);
    expect(shareOfAnswers('sometimes', hands)?.value).toBeCloseTo(66.6667, 4);
    expect(shareOfAnswers('never', hands)?.value).toBe(0);
  });

  it('gives no share below twenty answers', () => {
    expect(shareOfAnswers('always', counts(12, 7))).toBeUndefined();
    expect(shareOfAnswers('always', counts(13, 7))?.value).toBe(65);
    expect(shareOfAnswers('else', counts(13, 7))).toBeUndefined();
  });

  // The small-cell rule of the US Centers for Medicare and Medicaid Services: no cell of 1 to 10.
  it('knows which counts are too small to keep', () => {
    expect([0, 1, 10, 11].map(isSmallCount)).toEqual([false, true, true, false]);
  });

  it('holds the largest count in its boxes', () => {
    expect([0, 15, 16, 30, 31, 75, 76, 999].map((n) => peopleABox(n, 15))).toEqual([
      1, 1, 2, 2, 5, 5, 10, 100,
    ]);
  });

  it('stands for a thousand people a box at most, and for nobody without answers', () => {
    expect(peopleABox(20_000, 15)).toBe(1000);
    expect(answersInAll([])).toMatchObject({ value: 0, working: { formula: '0' } });
  });

  it('works out as its formula says, and shares make a whole', () => {
    const people = fc.array(fc.integer({ min: 0, max: 999 }), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(people, (list) => {
        const hands = counts(...list);
        const all = answersInAll(hands);
        expect(evaluate(all.working)).toBe(all.value);
        const shares = hands.flatMap(({ name }) => shareOfAnswers(name, hands) ?? []);
        for (const share of shares) expect(evaluate(share.working)).toBeCloseTo(share.value, 9);
        expect(shares.length).toBe(all.value >= FEWEST_FOR_PERCENT ? hands.length : 0);
        if (shares.length > 0)
          expect(shares.reduce((sum, share) => sum + share.value, 0)).toBeCloseTo(100, 9);
        const each = peopleABox(Math.max(...list), 15);
        expect(Math.max(...list)).toBeLessThanOrEqual(each * 15);
      }),
    );
  });
});
