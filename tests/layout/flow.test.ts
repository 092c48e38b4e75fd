import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Box, breakPages } from '../../src/layout/flow.js';

type Named = Box<string[]> & { readonly name: string };

function box(name: string, more: Partial<Box<string[]>> = {}): Named {
  return { name, height: 10, before: 2, keep: false, cost: 28, paint: (page) => page.push(name), ...more };
}

const opening = { height: 3, paint: (page: string[]) => page.push('rule') };

function namesOf(boxes: readonly Named[], height: number): string[][] {
  return breakPages(boxes, { height, opening }).pages.map((page) =>
    page.boxes.map((p) => (p.box as Named).name),
  );
}

describe('breaking boxes into pages', () => {
  it('makes no page of nothing', () => {
    expect(breakPages([], { height: 100, opening })).toEqual({ pages: [], cost: 0 });
  });

  it('leaves out the space above the first box of a page', () => {
    const { pages } = breakPages([box('a', { opens: true, railFrom: 0 }), box('b')], {
      height: 100,
      opening,
    });
    expect(pages[0]?.boxes.map((p) => p.top)).toEqual([0, 12]);
  });

  it('keeps a head with the first lines of its text', () => {
    const boxes = [
      box('a'),
      box('b'),
      box('head', { keep: 'must' }),
      box('line 1', { keep: 'must' }),
      box('line 2'),
    ];
    expect(namesOf(boxes, 47)).toEqual([
      ['a', 'b'],
      ['head', 'line 1', 'line 2'],
    ]);
  });

  it('breaks above a section rather than inside one', () => {
    const boxes = [
      box('a'),
      box('b'),
      box('x'),
      box('section', { cost: 0, opens: true, railFrom: 0 }),
      box('c'),
      box('d'),
      box('e'),
    ];
    expect(namesOf(boxes, 48)).toEqual([
      ['a', 'b', 'x'],
      ['section', 'c', 'd', 'e'],
    ]);
  });

  it('fills a page inside a section rather than leave most of it empty', () => {
    const boxes = [
      box('a'),
      box('section', { cost: 0, opens: true, railFrom: 0 }),
      ...['b', 'c', 'd', 'e', 'f', 'g'].map((n) => box(n)),
    ];
    expect(namesOf(boxes, 70)[0]).toEqual(['a', 'section', 'b', 'c', 'd', 'e']);
  });

  it('draws the rule again on a page that goes on with a section, and never above a section', () => {
    const goesOn = breakPages([box('a'), box('b')], { height: 13, opening });
    expect(goesOn.pages.map((p) => p.openings.length)).toEqual([0, 1]);
    expect(goesOn.pages[1]?.boxes[0]?.top).toBe(3);
    const opens = breakPages([box('a'), box('b', { opens: true, railFrom: 0 })], { height: 13, opening });
    expect(opens.pages.map((p) => p.openings.length)).toEqual([0, 0]);
  });

  it('repeats the header of a table on each page that goes on with it', () => {
    const again = { height: 4, paint: (page: string[]) => page.push('header') };
    const rows = Array.from({ length: 5 }, (_, i) => box(`row ${i}`, { before: 0, again }));
    const { pages } = breakPages([box('header', { keep: 'must' }), ...rows], { height: 32, opening });
    expect(pages.map((p) => p.openings.length)).toEqual([0, 2, 2]);
    expect(pages[1]?.boxes[0]?.top).toBe(7);
  });

  it('starts beside a deep head and waits for its end only where the rail is needed', () => {
    const head = box('head', { height: 4, keep: 'must', opens: true, railFrom: 0, railUntil: 40 });
    const tops = (boxes: Named[]) =>
      breakPages(boxes, { height: 200, opening }).pages[0]?.boxes.map((p) => p.top);
    expect(tops([head, box('text', { before: 0 }), box('figure', { railFrom: 0 })])).toEqual([0, 4, 42]);
    // The first 15 of this figure leave the rail free, so it slides up beside the head.
    expect(tops([head, box('text', { before: 0 }), box('figure', { railFrom: 15 })])).toEqual([0, 4, 27]);
    expect(tops([head, box('text', { before: 0 }), box('more')])).toEqual([0, 4, 16]);
  });

  it('counts a head that reaches below the text beside it', () => {
    const head = box('head', { height: 4, keep: 'must', opens: true, railFrom: 0, railUntil: 40 });
    expect(breakPages([head, box('text', { before: 0 })], { height: 100, opening }).pages[0]?.depth).toBe(40);
  });

  it('sets what is taller than a page on one of its own and says so', () => {
    const { pages } = breakPages([box('a'), box('tall', { height: 90 }), box('b')], { height: 50, opening });
    expect(pages.map((p) => [p.boxes.map((x) => (x.box as Named).name), p.over])).toEqual([
      [['a'], false],
      [['tall'], true],
      [['b'], false],
    ]);
  });
});

describe('boxes that are kept together', () => {
  const names = (keeps: readonly (false | 'wish' | 'must')[], height: number) =>
    namesOf(
      keeps.map((keep, index) => box(String(index), { keep })),
      height,
    );

  it('are parted at a wish when no page can hold them, as late as can be', () => {
    expect(names(['wish', 'wish', 'must', 'must', 'wish', false], 46)).toEqual([
      ['0', '1'],
      ['2', '3', '4'],
      ['5'],
    ]);
  });

  it('are parted anywhere rather than run off the page', () => {
    expect(names(['must', 'must', 'must', 'must', 'must', false], 34).map((page) => page.length)).toEqual([
      3, 2, 1,
    ]);
  });
});

describe('any boxes', () => {
  const anyBox = fc.record({
    height: fc.integer({ min: 1, max: 30 }),
    before: fc.integer({ min: 0, max: 5 }),
    keep: fc.constantFrom(false as const, false as const, 'wish' as const, 'must' as const),
    cost: fc.constantFrom(0, 12, 28, 60),
    railUntil: fc.option(fc.integer({ min: 1, max: 30 }), { nil: undefined }),
    railFrom: fc.option(fc.integer({ min: 0, max: 10 }), { nil: undefined }),
  });
  const boxesOf = (specs: readonly (typeof anyBox extends fc.Arbitrary<infer T> ? T : never)[]): Named[] =>
    specs.map(({ railUntil, railFrom, ...rest }, index) =>
      box(String(index), {
        ...rest,
        ...(railUntil === undefined ? {} : { railUntil }),
        ...(railFrom === undefined ? {} : { railFrom }),
      }),
    );

  it('stand all on the pages, once and in order', () => {
    fc.assert(
      fc.property(fc.array(anyBox, { maxLength: 40 }), (specs) => {
        const boxes = boxesOf(specs);
        expect(namesOf(boxes, 60).flat()).toEqual(boxes.map((b) => b.name));
      }),
    );
  });

  it('stay on the page of what they are kept with where a page can hold both, and inside it', () => {
    fc.assert(
      fc.property(fc.array(anyBox, { maxLength: 40 }), (specs) => {
        const { pages } = breakPages(boxesOf(specs), { height: 80, opening });
        for (const [index, page] of pages.entries()) {
          const last = page.boxes.at(-1);
          const whole = page.boxes.every((p) => p.box.keep);
          if (index < pages.length - 1 && !whole) expect(last?.box.keep).toBe(false);
          const depth = Math.max(...page.boxes.map((p) => p.top + p.box.height));
          expect(depth <= 80.01 || page.over).toBe(true);
        }
      }),
    );
  });

  it('never lie on each other, nor on the head in the rail', () => {
    fc.assert(
      fc.property(fc.array(anyBox, { maxLength: 40 }), (specs) => {
        for (const page of breakPages(boxesOf(specs), { height: 80, opening }).pages) {
          let column = 0;
          let rail = 0;
          for (const { box: b, top } of page.boxes) {
            expect(top).toBeGreaterThanOrEqual(column);
            if (b.railFrom !== undefined) {
              expect(top + b.railFrom).toBeGreaterThanOrEqual(rail);
              rail = 0;
            }
            column = top + b.height;
            if (b.railUntil !== undefined) rail = top + b.railUntil;
          }
        }
      }),
    );
  });
});
