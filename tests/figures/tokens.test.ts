import { describe, expect, it } from 'vitest';
import { contrast, paletteFor } from '../../src/figures/index.js';
import { type FigureLevel, hatching, paperLines, paperType, screenType } from '../../src/figures/tokens.js';

/** WCAG 2.1: 1.4.3 Contrast (Minimum) asks 4.5 for text, 1.4.11 Non-text Contrast asks 3 for marks. */
const TEXT = 4.5;
const MARK = 3;

describe('contrast', () => {
  it('is 21 for black on white and 1 for a color on itself (WCAG 2.1, definition of contrast ratio)', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
    expect(contrast('#777777', '#777777')).toBe(1);
    // A pair that the success criterion's own notes are often shown with: #767676 is the lightest gray that passes.
    expect(contrast('#767676', '#ffffff')).toBeGreaterThan(TEXT);
    expect(contrast('#777777', '#ffffff')).toBeLessThan(TEXT);
  });

  for (const medium of ['paper', 'screen'] as const)
    for (const ink of ['color', 'one'] as const) {
      const p = paletteFor(medium, ink);
      const pairs: readonly (readonly [string, string, string, number])[] = [
        ['text on the ground', p.ink, p.ground, TEXT],
        ['text on white', p.ink, p.paper, TEXT],
        ['text on tint', p.ink, p.tint, TEXT],
        ['notes on the ground', p.slate, p.ground, TEXT],
        ['notes on tint', p.slate, p.tint, TEXT],
        ['look-here words on the ground', p.accent, p.ground, TEXT],
        ['look-here words on tint', p.accent, p.tint, TEXT],
        ['letters in dots', p.paper, p.ink, TEXT],
        ['letters in looked-at dots', p.paper, p.accent, TEXT],
        ['dots on the track', p.ink, p.tint, MARK],
        ['lane lines on the track', p.hair, p.tint, MARK],
        ['dashed bricks on the ground', p.hair, p.ground, MARK],
        ['arrows on the track', p.accent, p.tint, MARK],
      ];
      it.each(pairs)(`${medium}, ${ink}: %s`, (_, a, b, least) => {
        expect(contrast(a, b)).toBeGreaterThanOrEqual(least);
      });
    }

  it('has nothing but black and white in one ink', () => {
    for (const medium of ['paper', 'screen'] as const)
      expect([...new Set(Object.values(paletteFor(medium, 'one')))].sort()).toEqual(['#000000', '#ffffff']);
  });
});

describe('sizes of the drawn design', () => {
  it('has no text under 9 pt on paper, 18 pt in large print, 32 px on a slide', () => {
    for (const level of ['short', 'plain', 'fuller', 'large'] as const satisfies readonly FigureLevel[])
      for (const role of Object.values(paperType[level]))
        expect(role.size).toBeGreaterThanOrEqual(level === 'large' ? 18 : 9);
    for (const role of Object.values(screenType)) expect(role.size).toBeGreaterThanOrEqual(32);
  });

  it('sets no value under 14 pt bolder than 600: the stroke in the zero would fill', () => {
    for (const type of Object.values(paperType)) expect(type.value.weight).toBeLessThanOrEqual(600);
  });

  it('has hatching wide enough for a second photocopy: 1.2 mm apart', () => {
    expect((hatching.paper.pitch * 25.4) / 72).toBeGreaterThanOrEqual(1.2);
    expect(Math.min(...Object.values(paperLines))).toBeGreaterThanOrEqual(0.75);
  });
});
