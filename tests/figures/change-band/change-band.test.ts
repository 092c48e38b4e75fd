import { describe, expect, it } from 'vitest';
import { type ChangeBand, draw, isOneInk, type LineChoice, textBoxes } from '../../../src/figures/index.js';
import { band, lineChoice, paper, screen } from '../samples.js';

const LEVELS = ['short', 'plain', 'fuller', 'large', 'screen'] as const;
const words = (spec: ChangeBand | LineChoice, options = paper()) =>
  textBoxes(draw(spec, options).drawing.marks).map((box) => box.words);
const key: LineChoice = {
  ...lineChoice,
  mode: 'key',
  lines: lineChoice.lines.map((line, index) => ({
    ...line,
    verdict: { real: index === 2, words: index === 2 ? 'real' : 'not real' },
  })),
};
const [first, second] = band.posts;
const stopped = (at: number): ChangeBand => ({
  ...band,
  points: band.points.filter(({ month }) => month <= at),
  marks: [10, 20, 30, 40].map((mark) => ({ at: mark, words: `${mark} lb less` })),
  posts: [...(first ? [{ ...first, month: at, least: 5, most: 9 }] : [])],
  stop: { head: 'Stops here.', why: 'Weighing less would not be safe for this made-up woman.' },
});
const SPECS = {
  band,
  'a band between rules': { ...band, between: { low: 5, high: 9, words: 'health gains start here' } },
  'a band that stops early': stopped(4),
  'a band that stops late': stopped(10),
  lines: lineChoice,
  'lines on the key': key,
} as const;

describe.each(Object.entries(SPECS))('%s', (_, spec) => {
  for (const ink of ['color', 'one'] as const)
    for (const direction of ['ltr', 'rtl'] as const)
      it.each(LEVELS)(`draws without a problem: ${ink}, ${direction}, %s`, (at) => {
        const options = at === 'screen' ? screen({ ink, direction }) : paper({ level: at, ink, direction });
        const { drawing, problems } = draw(spec, options);
        expect(problems).toEqual([]);
        if (ink === 'one') expect(isOneInk(drawing.marks)).toBe(true);
      });
});

it('prints each range, month and mark of a band once', () => {
  const said = words(band);
  for (const one of [...band.posts, ...band.ticks, ...band.marks])
    expect(said.filter((w) => w === one.words)).toHaveLength(1);
});

it('says beside the stop why nothing comes after it', () => {
  expect(words(stopped(4)).join(' ')).toContain('Stops here. Weighing less would not be safe');
});

it('tells on a blank no line from another', () => {
  expect(words(lineChoice).filter((said) => /^(not )?real$/.test(said))).toEqual([]);
  expect(words(key).filter((said) => said === 'not real')).toHaveLength(2);
  const looks = draw(lineChoice, paper()).drawing.marks.flatMap((mark) =>
    mark.kind === 'shape' && mark.stroke?.width === 2.6 ? [JSON.stringify(mark.stroke)] : [],
  );
  expect(looks).toHaveLength(3);
  expect(new Set(looks).size).toBe(1);
});

it.each([Number.NaN, -1])('refuses a band at %d', (least) => {
  const posts = second ? [{ ...second, least }] : [];
  expect(draw({ ...band, posts }, paper()).problems.map(({ code }) => code)).toContain(
    'figures/not-drawable',
  );
});

it('refuses a line that leaves its place', () => {
  const lines = [
    {
      letter: 'A',
      points: [
        { along: 0, down: 0 },
        { along: 1, down: 1.2 },
      ],
    },
  ];
  expect(draw({ ...lineChoice, lines }, screen()).problems.map(({ code }) => code)).toEqual([
    'figures/not-drawable',
  ]);
});
