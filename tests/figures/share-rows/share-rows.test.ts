import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draw, isOneInk, type ShareRows, textBoxes } from '../../../src/figures/index.js';
import { paper, screen, shares } from '../samples.js';

const LEVELS = ['short', 'plain', 'fuller', 'large'] as const;
const words = (spec: ShareRows) => textBoxes(draw(spec, paper()).drawing.marks).map((box) => box.words);
const shapes = (spec: ShareRows, options = paper()) =>
  JSON.stringify(draw(spec, options).drawing.marks.filter(({ kind }) => kind === 'shape'));
const withShare = (share: number | null, mode: ShareRows['mode'] = 'shown'): ShareRows => ({
  ...shares,
  mode,
  rows: shares.rows.map((row) => ({ ...row, share })),
});

describe('shares in bricks', () => {
  for (const mode of ['shown', 'blank', 'key'] as const)
    for (const ink of ['color', 'one'] as const)
      for (const direction of ['ltr', 'rtl'] as const)
        it.each([...LEVELS, 'screen'] as const)(
          `draws without a problem: ${mode}, ${ink}, ${direction}, %s`,
          (at) => {
            const options =
              at === 'screen' ? screen({ ink, direction }) : paper({ level: at, ink, direction });
            const { drawing, problems } = draw({ ...shares, mode }, options);
            expect(problems).toEqual([]);
            if (ink === 'one') expect(isOneInk(drawing.marks)).toBe(true);
          },
        );

  it('prints every share and every range', () => {
    expect(words(shares)).toEqual(
      expect.arrayContaining(['7%', '22%', 'not known', '45 to 65%', '10 to 35%']),
    );
  });

  it('gives no share away on a blank, in words or in bricks', () => {
    for (const options of [paper(), screen()])
      expect(shapes(withShare(7, 'blank'), options)).toBe(shapes(withShare(90, 'blank'), options));
    expect(words({ ...shares, mode: 'blank' })).not.toContain('7%');
  });

  it('draws what is not known dashed, unlike zero', () => {
    expect(shapes(withShare(null))).toContain('dash');
    expect(shapes(withShare(0))).not.toContain('dash');
  });

  it('fills as much as the share says', () => {
    const solid = (share: number) => {
      const spec = { ...shares, rows: shares.rows.slice(0, 1).map((row) => ({ ...row, share })) };
      return draw(spec, screen()).drawing.marks.reduce((sum, mark) => {
        if (mark.kind !== 'shape' || mark.fill !== '#14212b') return sum;
        const xs = [...mark.path.matchAll(/(-?[\d.]+) -?[\d.]+/g)].map((found) => Number(found[1]));
        return sum + Math.max(...xs) - Math.min(...xs);
      }, 0);
    };
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100 }), (share) => {
        expect(solid(share)).toBeCloseTo((solid(100) * share) / 100, 0);
      }),
      { numRuns: 30 },
    );
  });

  it.each([-1, 101, Number.NaN])('refuses a share of %d', (share) => {
    for (const options of [paper(), screen()])
      expect(draw(withShare(share), options).problems.map(({ code }) => code)).toContain(
        'figures/not-drawable',
      );
  });

  it('names words that do not fit', () => {
    const long = 'Kohlenhydratverbindungszusammenstellung';
    const spec = { ...shares, rows: shares.rows.map((row) => ({ ...row, name: long })) };
    for (const options of [paper(), screen()])
      expect(draw(spec, options).problems.some(({ message }) => message.includes(long))).toBe(true);
  });
});
