import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draw, isOneInk, textBoxes, type WeekBricks } from '../../../src/figures/index.js';
import { BRICK_MINUTES, stretchesOf } from '../../../src/figures/week-bricks/minutes.js';
import { paper, screen, week } from '../samples.js';

const LEVELS = ['short', 'plain', 'fuller', 'large'] as const;
const words = (spec: WeekBricks, options = paper()) =>
  textBoxes(draw(spec, options).drawing.marks).map((box) => box.words);
const codes = (spec: WeekBricks, options = paper()) => draw(spec, options).problems.map(({ code }) => code);
const onMonday = (moderate: number, vigorous = 0): WeekBricks => ({
  ...week,
  days: week.days.map((day, i) => (i === 0 ? { ...day, moderate, vigorous } : day)),
});

describe('a week in bricks', () => {
  for (const mode of ['shown', 'blank', 'key'] as const)
    for (const ink of ['color', 'one'] as const)
      for (const direction of ['ltr', 'rtl'] as const)
        it.each([...LEVELS, 'screen'] as const)(
          `draws without a problem: ${mode}, ${ink}, ${direction}, %s`,
          (at) => {
            const options =
              at === 'screen' ? screen({ ink, direction }) : paper({ level: at, ink, direction });
            const { drawing, problems } = draw({ ...week, mode }, options);
            expect(problems).toEqual([]);
            if (ink === 'one') expect(isOneInk(drawing.marks)).toBe(true);
          },
        );

  it('prints the minutes of each day, their sum and both goals', () => {
    for (const options of [paper(), screen()])
      expect(words(week, options)).toEqual(
        expect.arrayContaining(['25', '10', '65', '100 minutes', '150', '300']),
      );
  });

  it('is the same on a blank, whatever the week was', () => {
    const blank = (spec: WeekBricks) =>
      JSON.stringify(draw({ ...spec, mode: 'blank' }, paper()).drawing.marks);
    expect(blank(onMonday(120))).toBe(blank(onMonday(0)));
    expect(words({ ...week, mode: 'blank' })).not.toContain('25');
  });

  it('counts every minute once, in its own look', () => {
    const minutes = fc.integer({ min: 0, max: 240 });
    fc.assert(
      fc.property(minutes, minutes, (moderate, vigorous) => {
        const stretches = stretchesOf({ moderate, vigorous, text: '', number: '' }, 100);
        const sum = (kind: string) =>
          stretches
            .filter((one) => one.kind === kind)
            .reduce((so, { from, to }) => so + (to - from) * BRICK_MINUTES, 0);
        expect(sum('moderate')).toBeCloseTo(moderate, 6);
        expect(sum('vigorous')).toBeCloseTo(vigorous, 6);
      }),
    );
  });

  it('holds a day of four hours on paper and on a slide, and refuses more', () => {
    for (const options of [paper(), screen()]) {
      expect(codes(onMonday(240), options)).not.toContain('figures/too-many');
      expect(codes(onMonday(120, 121), options)).toContain('figures/too-many');
    }
  });

  it.each([-1, Number.NaN])('refuses %d minutes', (minutes) => {
    expect(codes(onMonday(minutes))).toContain('figures/not-drawable');
    expect(codes(onMonday(minutes), screen())).toContain('figures/not-drawable');
  });
});
