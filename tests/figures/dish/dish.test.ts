import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layDish, placesOf } from '../../../src/figures/dish/places.js';
import {
  type DrawOptions,
  draw,
  type FigureSpec,
  isOneInk,
  type Mark,
  textBoxes,
} from '../../../src/figures/index.js';
import { paper, screen } from '../samples.js';
import { blankSupper, dishOf, picture, SHAPES, supper, turn } from './samples.js';

const LEVELS = ['short', 'plain', 'fuller', 'large'] as const;
const codes = (spec: FigureSpec, options: DrawOptions) =>
  draw(spec, options).problems.map(({ code }) => code);
const words = (spec: FigureSpec, options: DrawOptions) =>
  textBoxes(draw(spec, options).drawing.marks).map((b) => b.words);

/** Sizes of all letters of a drawing. */
function sizes(marks: readonly Mark[]): number[] {
  return marks.flatMap((mark) =>
    mark.kind === 'text'
      ? mark.line.runs.map(({ size }) => size)
      : mark.kind === 'group'
        ? sizes(mark.marks)
        : [],
  );
}

/** Twelve counters shared out among so many foods, kinds in their order. */
const twelve = fc
  .tuple(
    fc.integer({ min: 0, max: 12 }),
    fc.integer({ min: 0, max: 12 }),
    fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 1, maxLength: 9 }),
  )
  .map(([a, b, cuts]) => {
    const [first, second] = a < b ? [a, b] : [b, a];
    const edges = [...new Set([0, first, second, ...cuts, 12])].sort((x, y) => x - y);
    return edges.slice(1).map((edge, i): readonly [string, number, number] => {
      const from = edges[i] ?? 0;
      return [`Food ${'abcdefghijklm'[i]}`, from < first ? 0 : from < second ? 1 : 2, edge - from];
    });
  });

describe('twelve counters', () => {
  it('stand in rows of 2, 4, 4, 2 or of 3', () => {
    expect(placesOf('plate').map(({ row }) => row)).toEqual([0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3]);
    expect(placesOf('tray').map(({ row }) => row)).toEqual([0, 0, 0, 1, 1, 1, 2, 2, 2, 3, 3, 3]);
  });

  it('are filled from the lowest row upward, and each food keeps its count', () => {
    fc.assert(
      fc.property(fc.constantFrom(...SHAPES), twelve, fc.boolean(), (shape, foods, both) => {
        const parts = foods.map(([, , own]) => own);
        const { counters, leads } = layDish(shape, parts, both ? ['end', 'start'] : ['end']);
        parts.forEach((own, i) => expect(counters.filter(({ member }) => member === i)).toHaveLength(own));
        const lowest = (i: number) =>
          Math.max(...counters.filter(({ member }) => member === i).map(({ row }) => row));
        parts.forEach((_, i) => i > 0 && expect(lowest(i)).toBeLessThanOrEqual(lowest(i - 1)));
        // Words lead to an end of a row that the food itself holds, and no end is shared.
        const ends = (leads ?? []).map(({ member, at }) => {
          expect(counters.find(({ row, end }) => row === at.row && end === at.end)?.member).toBe(member);
          return `${at.row} ${at.end}`;
        });
        expect(new Set(ends).size).toBe(ends.length);
      }),
    );
  });
});

describe('a dish in every build', () => {
  for (const [name, spec] of [
    ['supper', supper],
    ['blank', blankSupper],
    ['turn', turn],
  ] as const)
    for (const ink of ['color', 'one'] as const)
      for (const direction of ['ltr', 'rtl'] as const)
        it.each(SHAPES)(`${name}, ${ink}, ${direction}, %s`, (shape) => {
          for (const level of LEVELS) {
            const { drawing, problems } = draw({ ...spec, shape }, paper({ level, ink, direction, picture }));
            expect(problems).toEqual([]);
            if (ink === 'one') expect(isOneInk(drawing.marks)).toBe(true);
            for (const size of sizes(drawing.marks)) expect(size).toBeGreaterThanOrEqual(9);
          }
          const { drawing, problems } = draw({ ...spec, shape }, screen({ ink, direction, picture }));
          expect(problems).toEqual([]);
          for (const size of sizes(drawing.marks)) expect(size).toBeGreaterThanOrEqual(32);
        });

  it('never lays words over words, whatever is in it', () => {
    const name = fc.oneof(
      fc.string({ unit: fc.constantFrom(...'abcdefghij ,-'), minLength: 1, maxLength: 60 }),
      fc.constant('Pinto beans, canned, drained and rinsed'),
    );
    fc.assert(
      fc.property(
        twelve,
        fc.array(name, { minLength: 13, maxLength: 13 }),
        fc.constantFrom(...SHAPES),
        fc.constantFrom(...LEVELS),
        (foods, names, shape, level) => {
          const spec = dishOf(
            foods.map(([, kind, parts], i) => [names[i] ?? '', kind, parts] as const),
            { shape },
          );
          // A word wider than the page is told; nothing ever lies on anything.
          for (const by of ['food', 'kind'] as const)
            for (const code of codes({ ...spec, by }, paper({ level })))
              expect(code).toBe('figures/does-not-fit');
          for (const code of codes({ ...spec, kinds: spec.kinds }, screen()))
            expect(code).not.toBe('figures/labels-collide');
        },
      ),
      { numRuns: 60 },
    );
  });

  it('names every food once, or every kind', () => {
    const said = words(supper, paper());
    for (const food of ['Green peppers', 'Mango', 'Pinto beans', 'Brown rice']) expect(said).toContain(food);
    expect(words({ ...supper, by: 'kind' }, paper()).join(' ')).toContain('3 of 12: protein');
  });

  it('tells what cannot be drawn', () => {
    expect(codes(dishOf([['Mango', 0, 7]]), paper())).toContain('figures/not-drawable');
    expect(
      codes(
        dishOf([
          ['Mango', 0, 12.5],
          ['Rice', 2, -0.5],
        ]),
        screen(),
      ),
    ).toContain('figures/not-drawable');
    const odd = { ...supper, foods: supper.foods.map((food) => ({ ...food, picture: 'no-such-picture' })) };
    expect(codes(odd, paper({ picture }))).toEqual(['figures/no-picture']);
    expect(codes(odd, screen({ picture }))).toEqual(['figures/no-picture']);
    expect(codes(supper, screen({ height: 200 }))).toContain('figures/too-high');
    expect(codes({ ...supper, beside: 'beside it: '.repeat(9) }, screen())).toContain('figures/does-not-fit');
  });

  it('draws the same blank whatever the answer is', () => {
    const shapes = (spec: FigureSpec) =>
      JSON.stringify(draw(spec, paper()).drawing.marks.filter((m) => m.kind === 'shape'));
    expect(shapes({ ...supper, mode: 'blank' })).toBe(
      shapes({ ...dishOf([['Rice', 2, 12]]), mode: 'blank' }),
    );
    expect(words(blankSupper, paper()).join(' ')).not.toMatch(/parts|Mango/);
  });
});

describe('a slide that fills', () => {
  it('says only what is there', () => {
    const steps = supper.kinds.map((kind, i) => ({
      ...kind,
      look: i === 0 ? ('new' as const) : ('waiting' as const),
    }));
    const said = words({ ...supper, kinds: steps }, screen()).join(' ');
    expect(said).toContain('6 of 12: vegetables and fruit');
    expect(said).not.toContain('protein');
    expect(said).not.toContain('beside it');
  });
});

describe('a turned dish', () => {
  it('puts more swaps below the dishes, and leaves the dishes out for beginning readers', () => {
    const [swap] = turn.swaps;
    if (!swap) throw new Error('no swap');
    const many = { ...turn, swaps: Array.from({ length: 5 }, () => swap) };
    expect(codes(many, paper())).toEqual([]);
    expect(codes(many, screen())).toContain('figures/too-many');
    const short = words({ ...turn, dishes: false, lanes: [] }, paper({ level: 'short' }));
    expect(short).toContain('Lentils');
    expect(short).not.toContain('Vegan and gluten-free');
  });

  it('prints both values of every lane', () => {
    for (const level of LEVELS)
      for (const { text } of turn.lanes) expect(words(turn, paper({ level }))).toContain(text);
  });

  it('tells what does not fit', () => {
    const long = 'An example of a word that is far too long for its place '.repeat(4);
    const [swap] = turn.swaps;
    const [lane] = turn.lanes;
    if (!swap || !lane) throw new Error('no swap');
    const wide = { ...turn, lanes: [{ ...lane, text: long }] };
    expect(codes(wide, paper())).toContain('figures/does-not-fit');
    expect(codes({ ...turn, before: { ...turn.before, title: long } }, screen())).toContain(
      'figures/does-not-fit',
    );
    expect(codes(turn, screen({ height: 300 }))).toContain('figures/too-high');
  });
});
