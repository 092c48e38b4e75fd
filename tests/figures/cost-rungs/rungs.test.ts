import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bricksOf, drawableRungs } from '../../../src/figures/cost-rungs/rungs.js';
import { type DrawOptions, draw } from '../../../src/figures/index.js';
import { arabicRungs, paper, rungs, screen } from '../samples.js';

const cost = (value: number | null, whole = false) => {
  const [first] = rungs.rungs;
  if (!first) throw new Error('no rung');
  return bricksOf({ ...first, value }, { ...rungs, whole });
};

describe('bricks of a rung', () => {
  it('cut the last one at its true place', () => {
    expect(cost(28)).toEqual([1, 28 / 25 - 1]);
    expect(cost(50)).toEqual([1, 1]);
    expect(cost(null)).toEqual([]);
  });

  it('are whole for readers who count, and never none', () => {
    expect(cost(28, true)).toEqual([1]);
    expect(cost(68, true)).toEqual([1, 1, 1]);
    expect(cost(5, true)).toEqual([0.2]);
  });

  it('add up to the cost, whatever it is', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 900, noNaN: true }), (value) => {
        expect(cost(value).reduce((a, b) => a + b, 0) * 25).toBeCloseTo(value, 6);
      }),
    );
  });

  it('are told when they cannot be drawn', () => {
    const problems: Parameters<typeof drawableRungs>[1] = [];
    const [first] = rungs.rungs;
    if (!first) throw new Error('no rung');
    const odd = {
      ...rungs,
      worth: 0,
      rungs: [
        { ...first, value: Number.NaN },
        { ...first, value: -1 },
      ],
    };
    expect(drawableRungs(odd, problems).rungs).toEqual([]);
    expect(problems.map(({ code }) => code)).toEqual(Array.from({ length: 3 }, () => 'figures/not-drawable'));
  });
});

const PAPER: readonly Partial<DrawOptions>[] = (['short', 'plain', 'fuller', 'large'] as const).flatMap(
  (level) =>
    (['color', 'one'] as const).flatMap((ink) => [
      { level, ink },
      { level, ink, slack: 0 },
    ]),
);

describe('the ladder', () => {
  it.each(PAPER.map((change) => [JSON.stringify(change), change] as const))(
    'stands on paper, %s',
    (_, change) => {
      for (const whole of [true, false])
        expect(draw({ ...rungs, whole }, paper(change)).problems, String(whole)).toEqual([]);
    },
  );

  it('stands on paper from right to left', () => {
    const drawn = draw(arabicRungs, paper({ direction: 'rtl', language: 'ar' }));
    expect(drawn.problems).toEqual([]);
  });

  it('stands on a slide with three rungs, and says when there are more', () => {
    const three = { ...rungs, rungs: rungs.rungs.slice(0, 3), posts: [] };
    expect(draw(three, screen()).problems).toEqual([]);
    expect(draw({ ...three, rungs: rungs.rungs.slice(1) }, screen({ ink: 'one' })).problems).toEqual([]);
    expect(draw(rungs, screen()).problems.map(({ code }) => code)).toContain('figures/too-many');
  });

  it('shows neither bricks nor costs on a blank', () => {
    const blank = draw({ ...rungs, mode: 'blank' }, paper());
    expect(blank.problems).toEqual([]);
    expect(JSON.stringify(blank.drawing)).not.toMatch(/28¢|68¢/);
  });
});
