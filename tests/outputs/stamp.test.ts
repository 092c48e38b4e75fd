import { describe, expect, it } from 'vitest';
import type { Pages } from '../../src/layout/index.js';
import { collisions, outsideSafe, placedTexts, spoken, structureFaults } from '../layout/reading.js';
import { handout } from '../layout/sample.js';
import { layOut } from './lay-out.js';

describe('stamps', () => {
  const plain = handout('plain');

  it('of a proof say on every page that it is a draft, heard once and first', () => {
    const { pages } = layOut({ ...plain, stamp: { ...plain.stamp, draft: 'Draft, do not hand out' } });
    for (const [index] of pages.pages.entries())
      expect(placedTexts(pages).some((t) => t.page === index && t.text === 'Draft, do not hand out')).toBe(
        true,
      );
    expect(spoken(pages).startsWith('Draft, do not hand out')).toBe(true);
    expect(spoken(pages).split('Draft, do not')).toHaveLength(2);
    expect(pages.pages.flatMap(outsideSafe)).toEqual([]);
    expect(structureFaults(pages)).toEqual([]);
  });

  it('of a proof leave its page breaks where they are', () => {
    const lines = (p: Pages) =>
      placedTexts(p)
        .filter((t) => t.text !== 'Draft, do not hand out')
        .map((t) => `${t.page} ${t.text}`);
    const proof = layOut({ ...plain, stamp: { ...plain.stamp, draft: 'Draft, do not hand out' } }).pages;
    expect(lines(proof)).toEqual(lines(layOut(plain).pages));
  });

  it('past the review date are white on ink', () => {
    const { pages } = layOut({
      ...plain,
      stamp: { ...plain.stamp, expired: true, review: 'Check again by 2 May 2026.' },
    });
    const white = JSON.stringify(pages.pages, (key, value) => (key === 'font' ? undefined : value));
    expect(white).toMatch(/Check again by 2 May 2026\./);
    const marks = pages.pages[0]?.items.flatMap((i) => (i.kind === 'link' ? [] : i.marks)) ?? [];
    const stamp = marks.find((m) => m.kind === 'text' && m.line.text.includes('Check again'));
    expect(stamp?.kind === 'text' && stamp.line.runs[0]?.span.data?.color).toBe('#ffffff');
  });

  it('never break a date: a long review stands on lines of its own sentences', () => {
    const review = 'Reviewed by a registered dietitian, 2 November 2026. Check again by 2 November 2027.';
    const { pages } = layOut({ ...plain, stamp: { ...plain.stamp, review } }, { paper: 'a4' });
    const texts = placedTexts(pages).map((t) => t.text);
    expect(texts.some((t) => t.includes('Reviewed by a registered dietitian, 2 November 2026.'))).toBe(true);
    expect(texts.some((t) => t.includes('Check again by 2 November 2027.'))).toBe(true);
    expect(collisions(pages)).toEqual([]);
  });
});
