import { beforeAll, describe, expect, it } from 'vitest';
import { deck, EVERY_KIND } from './decks.js';
import { faults, type Laid, layOut, marksOf, shapesOn, wordsOn } from './look.js';

let laid: Laid;
let color: Laid;
beforeAll(async () => {
  laid = await layOut(deck(EVERY_KIND, { draft: 'Draft, do not hand out' }), 'one');
  color = await layOut(deck(EVERY_KIND, { draft: 'Draft, do not hand out' }));
}, 60_000);

/** Every color of a page's marks, those of pictures and of words too. */
function colorsOf(value: unknown): string[] {
  const text = JSON.stringify(value, (key, inner) =>
    key === 'font' || key === 'glyphs' ? undefined : inner,
  );
  return [...new Set(text.match(/#[0-9a-f]{3,8}/gi) ?? [])];
}

describe('a deck in one ink', () => {
  it('has black and white and nothing between', () => {
    expect(laid.codes).toEqual([]);
    for (const [index, page] of laid.pages.pages.entries()) {
      const colors = colorsOf(marksOf(page));
      expect(
        colors.filter((one) => one !== '#000000' && one !== '#ffffff'),
        `page ${index + 1}`,
      ).toEqual([]);
      expect(JSON.stringify(marksOf(page))).not.toMatch(/"(opacity|fillOpacity)":0?\.\d/);
    }
  });

  it('would have more in color', () => {
    expect(colorsOf(color.pages.pages.map(marksOf)).length).toBeGreaterThan(6);
  });

  it('has all words where they are in color', () => {
    expect(faults(laid.pages)).toEqual([]);
    expect(laid.pages.pages.map(wordsOn)).toEqual(color.pages.pages.map(wordsOn));
  });

  it('underlines the words of a title that are looked at by 6 pixels, and no others', () => {
    const lines = laid.pages.pages.map((page) =>
      shapesOn(marksOf(page)).filter(
        ({ top, bottom, stroke, left, right }) =>
          top === bottom && Math.abs((stroke?.width ?? 0) - 6) < 0.01 && right - left < 1000,
      ),
    );
    const numbers = EVERY_KIND.map(({ title }) => title.filter((inline) => inline.number).length);
    const titles = lines.map(
      (found, index) =>
        found.filter(({ top }) => top < (EVERY_KIND[index]?.stage.kind === 'say' ? 596 : 120)).length,
    );
    // The petrol words of a caution slide's title are not seen.
    expect(titles).toEqual(
      numbers.map((count, index) => (EVERY_KIND[index]?.stage.kind === 'caution' ? 0 : count)),
    );
    const figure = lines[5]?.[0];
    const number = wordsOn(laid.pages.pages[5]).find(({ text }) => text.startsWith('Rinsed'));
    expect(figure?.top).toBeGreaterThan(number?.bottom ?? 720);
  });

  it('fills the disc of the answer and frames its column more heavily', () => {
    const page = laid.pages.pages[10];
    const columns = shapesOn(marksOf(page)).filter(
      ({ stroke, left, right }) => stroke && right - left > 350 && right - left < 380,
    );
    expect(columns.map(({ stroke }) => Math.round(stroke?.width ?? 0))).toEqual([5, 5, 9]);
  });
});

describe('a draft', () => {
  it('says so at the top end of every slide, clear of the title', () => {
    for (const [index, page] of color.pages.pages.entries()) {
      const tab = wordsOn(page).find(({ text }) => text === 'Draft, do not hand out');
      expect(tab, `page ${index + 1}`).toBeDefined();
      expect(tab?.bottom).toBeLessThan(42);
      expect(Math.abs((tab?.right ?? 0) - (1224 - 16))).toBeLessThan(3);
    }
    expect(faults(color.pages)).toEqual([]);
  });
});
