import { beforeAll, describe, expect, it } from 'vitest';
import { contrast, paletteFor } from '../../../src/figures/index.js';
import { deck, EVERY_KIND } from './decks.js';
import {
  faults,
  idsOf,
  type Laid,
  layOut,
  marksOf,
  outlineOf,
  shapesOn,
  shelfOf,
  textOf,
  wordsOn,
} from './look.js';

let laid: Laid;
beforeAll(async () => {
  laid = await layOut(deck(EVERY_KIND));
}, 60_000);

const page = (number: number) => laid.pages.pages[number - 1];

describe('a deck with a slide of each kind', () => {
  it('has no problem, no word under 24 points, none outside its place and none on another', () => {
    expect(laid.codes).toEqual([]);
    expect(faults(laid.pages)).toEqual([]);
  });

  it('is 16 to 9, a page a step, a bookmark a slide', () => {
    expect(laid.pages.pages).toHaveLength(EVERY_KIND.length);
    expect(laid.pages.pages.every(({ width, height }) => width === 960 && height === 540)).toBe(true);
    expect(laid.pages.outline.map(({ title, page: at }) => [title, at])).toEqual([
      ['1. Beans and peas, three ways', 0],
      ['2. Who rinses?', 1],
      ['3. One cup of beans brings 15 grams of fiber.', 2],
      ['4. Before we start', 3],
      ['5. Rinsed, a cup still has 360 mg of sodium', 5],
      ['6. Rinsing sends 90 to 190 mg down the drain', 6],
      ['7. Read two cans', 7],
      ['8. Drain, rinse, shake', 8],
      ['9. Half a cup of pinto beans. Which has the least sodium?', 9],
      ['10. Where the numbers come from', 11],
    ]);
  });

  it('prints the number of its slide on every page', () => {
    const numbers = laid.pages.pages.map((p) => wordsOn(p).findLast(({ text }) => /^\d+$/.test(text))?.text);
    expect(numbers).toEqual(EVERY_KIND.map(({ number }) => String(number)));
  });

  it('has each element once, and content for elements that exist', () => {
    const ids = idsOf(laid.pages.structure);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { items } of laid.pages.pages)
      for (const item of items) if (item.kind === 'content') expect(ids).toContain(item.node);
  });

  it('has its content in the order of the structure', () => {
    const ids = idsOf(laid.pages.structure);
    for (const { items } of laid.pages.pages) {
      const order = items.flatMap((item) => (item.kind === 'content' ? [ids.indexOf(item.node)] : []));
      expect(order).toEqual([...order].sort((a, b) => a - b));
    }
  });
});

describe('the reading order', () => {
  it('of a figure is title, notes, figure, table, basis and sources', () => {
    expect(outlineOf(laid.pages, 5)).toEqual([
      'H2 Rinsed, a cup still has 360 mg of sodium',
      'P Brands differ. Check your own can. Ask first: slide 4.',
      expect.stringMatching(/^Figure /),
      'Table',
      '  Caption One cup of pinto beans',
      '  THead',
      '    TR',
      '      TH Form',
      '      TH Sodium',
      '      TH Fiber',
      '  TBody',
      '    TR',
      '      TH Dried, cooked at home',
      '      TD 2 mg',
      '      TD 15 g',
      '    TR',
      '      TH Canned, drained',
      '      TD 640 mg',
      '      TD 9 g',
      '    TR',
      '      TH Canned, drained and rinsed',
      '      TD 360 mg',
      '      TD not known',
      'P Pinto beans: 1 cup, ready to eat. Source 1.',
    ]);
  });

  it('of the first slide begins with the only heading of level 1', () => {
    expect(outlineOf(laid.pages, 0)).toEqual([
      'H1 Beans and peas, three ways',
      'P A talk for adults who shop and cook',
      'P It does not treat you. Ask your care team what fits you.',
    ]);
    const heads = laid.pages.pages.map((_, index) => outlineOf(laid.pages, index)[0]?.split(' ')[0]);
    expect(heads).toEqual(['H1', ...Array.from({ length: heads.length - 1 }, () => 'H2')]);
  });

  it('of an activity has its minutes before its steps', () => {
    expect(outlineOf(laid.pages, 7)).toEqual([
      'H2 Read two cans',
      'P 8 minutes',
      'L',
      '  LI',
      '    Lbl 1',
      '    LBody Take two cans from the table.',
      '  LI',
      '    Lbl 2',
      '    LBody Find the sodium line on each.',
      '  LI',
      '    Lbl 3',
      '    LBody Tell your neighbor which one you would buy, and why.',
    ]);
  });

  it('of cautions is a heading that is heard, then each word with its lines, then the shelf', () => {
    const outline = outlineOf(laid.pages, 3);
    expect(outline.slice(0, 4)).toEqual([
      'H2 Before we start',
      'Sect',
      '  P Stop',
      '  P Is the can swollen, leaking or badly dented? Do not open it. Throw it out.',
    ]);
    expect(outline.at(-1)).toBe('P Your care team can be your doctor, nurse or pharmacist.');
    expect(wordsOn(page(4)).map(({ text }) => text)).not.toContain('Before we start');
  });

  it('of sources is a numbered list', () => {
    expect(outlineOf(laid.pages, 11).slice(0, 5)).toEqual([
      'H2 Where the numbers come from',
      'L',
      '  LI',
      '    Lbl 1',
      '    LBody Food composition table, part 1Read on 4 January 2027',
    ]);
  });
});

describe('what stands where', () => {
  const petrol = paletteFor('screen', 'color').accent;

  it('the shelf has the height of its lines', () => {
    // 124 for two lines, as the grid of the drawn design has it.
    expect(shelfOf(page(1))).toBeCloseTo(596);
    expect(shelfOf(page(2))).toBeCloseTo(596);
  });

  it('a vessel stands on the shelf and on nothing else', () => {
    // The bag's foot is a curve, whose handles lie below it.
    for (const number of [2, 3, 8, 9, 10]) {
      const shelf = shelfOf(page(number));
      const black = shapesOn(marksOf(page(number))).filter(
        ({ stroke, fill, bottom, top }) =>
          stroke && fill === '#ffffff' && bottom - top > 15 && bottom > shelf - 12,
      );
      const feet = black.map(({ bottom, stroke }) => bottom + (stroke?.width ?? 0) / 2);
      expect(Math.max(...feet), `page ${number}`).toBeCloseTo(shelf, 0);
    }
  });

  it('a brick of 40 by 44 stands for each minute', () => {
    const bricks = shapesOn(marksOf(page(8))).filter(
      ({ left, right, top, bottom }) =>
        Math.abs(right - left - 40) < 0.1 && Math.abs(bottom - top - 44) < 0.1,
    );
    expect(bricks).toHaveLength(8);
    expect(Math.max(...bricks.map(({ right }) => right))).toBeCloseTo(1224);
    expect(
      bricks
        .map(({ left }) => left)
        .sort((a, b) => a - b)
        .map((x, i, all) => (i > 0 ? x - (all[i - 1] ?? 0) : 46)),
    ).toEqual(bricks.map(() => expect.closeTo(46)));
  });

  it('the caution box fills the stage but 24 above the shelf, and has a bar of 44 at its start', () => {
    const shelf = shelfOf(page(4));
    const shapes = shapesOn(marksOf(page(4)));
    const box = shapes.find(({ fill, stroke }) => fill === '#ffffff' && stroke);
    expect(box).toMatchObject({
      left: 58.5,
      top: 46.5,
      right: 1221.5,
      bottom: expect.closeTo(shelf - 24 - 2.5),
    });
    expect(shapes.filter(({ left, right }) => left === 56 && right === 100)).toHaveLength(1);
  });

  it('numbers of a title are petrol, and nothing else of it is', () => {
    const runs = marksOf(page(6)).flatMap((mark) => (mark.kind === 'group' ? mark.marks : []));
    const title = runs
      .flatMap((mark) => (mark.kind === 'text' ? mark.line.runs : []))
      .filter((run) => run.size === 56);
    expect(title.map((run) => [run.text.trim().replace('\u00a0', ' '), run.span.data?.color])).toEqual([
      ['Rinsed, a cup still has', '#14212b'],
      ['360 mg', petrol],
      ['of sodium', '#14212b'],
    ]);
  });

  it('a caution is strong up to its last sentence', () => {
    const runs = marksOf(page(4))
      .flatMap((mark) => (mark.kind === 'group' ? mark.marks : []))
      .flatMap((mark) => (mark.kind === 'text' ? mark.line.runs : []));
    const weight = (text: string) => runs.find((run) => run.text.includes(text))?.font.weight;
    expect([weight('swollen'), weight('Throw')]).toEqual([800, 500]);
  });

  it('sources on the shelf are strong, notes are not', () => {
    const runs = marksOf(page(6))
      .flatMap((mark) => (mark.kind === 'group' ? mark.marks : []))
      .flatMap((mark) => (mark.kind === 'text' ? mark.line.runs : []));
    const weight = (text: string) => runs.find((run) => run.text.includes(text))?.font.weight;
    expect([weight('Brands'), weight('Source')]).toEqual([500, 800]);
  });

  it('a number and its unit, and "slide 4", stay on one line', () => {
    const text = textOf(marksOf(page(6)));
    expect(text).toContain('slide\u00a04.');
    expect(text).toContain('1\u00a0cup');
  });

  it('keeps the words of steps in their places', () => {
    const places = (number: number) =>
      wordsOn(page(number))
        .filter(({ text }) => /^(Pinto|canned|drained|rinsed|dried|at home|[ABC]$)/.test(text))
        .map(({ text, left, top }) => [text, left, top]);
    expect(places(10).length).toBeGreaterThan(8);
    expect(places(11)).toEqual(places(10));
  });
});

describe('colors of words on what they stand on', () => {
  const { ink, accent, slate, ground, tint, paper } = paletteFor('screen', 'color');
  // WCAG 2.1, 1.4.6: 7 to 1 is the enhanced contrast; 1.4.3 asks for 4.5.
  it.each([
    ['ink on the wall', ink, ground, 7],
    ['ink on the shelf', ink, tint, 7],
    ['ink in the box', ink, paper, 7],
    ['petrol on the wall', accent, ground, 7],
    ['petrol in the box', accent, paper, 7],
    ['slate on the wall', slate, ground, 4.5],
    ['white in the tab', paper, ink, 7],
  ])('%s', (_, text, behind, least) => {
    expect(contrast(text, behind)).toBeGreaterThanOrEqual(least);
  });
});
