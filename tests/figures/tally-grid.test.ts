import { describe, expect, it } from 'vitest';
import { draw, isOneInk, type TallyGrid, textBoxes } from '../../src/figures/index.js';
import { paper, screen } from './samples.js';

const alternative = {
  label: 'Show of hands',
  reading: 'A row of boxes for each answer. Nobody has counted yet.',
  table: { caption: 'Answers', head: ['Answer', 'People'], rows: [['always', 'not counted yet']] },
};
const names = ['always', 'now and then', 'never', 'another way'];
const open = { word: '', people: null, text: '', percent: '' };
const count = (people: number, percent = '', word = '') => ({ word, people, text: String(people), percent });

function grid(lines: readonly TallyGrid['rows'][number]['lines'][], worth = 1): TallyGrid {
  return {
    kind: 'tally-grid',
    id: 'hands',
    mode: 'shown',
    alternative,
    numbers: [],
    rows: lines.map((row, i) => ({ letter: 'ABCD'[i] ?? '', name: names[i] ?? '', lines: row })),
    worth,
    words: { box: worth > 1 ? `One box is ${worth} people.` : '' },
  };
}

const GRIDS = {
  empty: grid([[open], [open], [open]]),
  'four empty': grid([[open], [open], [open], [open]]),
  counted: grid([[count(12, '33%')], [count(24, '67%')], [count(0, '0%')]]),
  'in tens': grid([[count(257, '100%')], [count(0, '0%')]], 10),
  'before and after': grid(
    [
      [count(12, '37%', 'before'), count(24, '75%', 'after')],
      [count(20, '63%', 'before'), count(11, '25%', 'after')],
    ],
    2,
  ),
} as const;

describe.each(Object.entries(GRIDS))('a tally, %s', (_, spec) => {
  for (const ink of ['color', 'one'] as const)
    for (const direction of ['ltr', 'rtl'] as const) {
      it.each(['short', 'plain', 'fuller', 'large'] as const)(
        `on paper, ${ink}, ${direction}, %s`,
        (level) => {
          const { drawing, problems } = draw(spec, paper({ level, ink, direction }));
          expect(problems).toEqual([]);
          if (ink === 'one') expect(isOneInk(drawing.marks)).toBe(true);
          for (const { box } of textBoxes(drawing.marks)) expect(box.bottom).toBeLessThan(drawing.height + 1);
        },
      );
      it(`on a slide, ${ink}, ${direction}`, () => {
        const { drawing, problems } = draw(spec, screen({ ink, direction }));
        expect(problems).toEqual([]);
        if (ink === 'one') expect(isOneInk(drawing.marks)).toBe(true);
      });
    }
});

describe('a tally', () => {
  it('fills as many boxes as there are people', () => {
    const filled = (spec: TallyGrid) =>
      draw(spec, screen()).drawing.marks.filter((m) => m.kind === 'shape' && m.fill === '#14212b').length;
    expect(filled(GRIDS.counted) - filled(GRIDS.empty)).toBe(36);
    // 257 people in boxes of ten: 25 whole ones and a part of one.
    expect(filled(GRIDS['in tens'])).toBe(26);
  });

  it('refuses counts that do not fit into its boxes', () => {
    const codes = (spec: TallyGrid) => draw(spec, paper()).problems.map(({ code }) => code);
    expect(codes(grid([[count(31)], [count(0)]]))).toEqual(['figures/not-drawable']);
    expect(codes(grid([[count(-1)], [count(0)]]))).toEqual(['figures/not-drawable']);
    expect(codes(grid([[count(Number.NaN)], [count(0)]]))).toEqual(['figures/not-drawable']);
  });

  it('says so when a slide cannot hold its rows', () => {
    const five = { ...GRIDS.empty, rows: [...GRIDS['four empty'].rows, ...GRIDS.empty.rows.slice(0, 1)] };
    expect(draw(five, screen()).problems.map(({ code }) => code)).toContain('figures/too-many');
    expect(draw(GRIDS['four empty'], screen({ height: 200 })).problems.map(({ code }) => code)).toContain(
      'figures/too-high',
    );
  });
});
