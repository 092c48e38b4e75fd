import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { centeredPicture, type Mark, type Paint, readSvg } from '../../../src/figures/index.js';
import { apart, distance, pdfOf, svgPicture, WIDTH } from './compare.js';
import { contentOf, dictionariesWith, load } from './objects.js';
import { rectangle, words } from './sheet.js';
import { describeWith, drawn } from './tools.js';

const STAR = 'M120 10L160 140L40 60L200 60L80 140Z';
const CIRCLE = 'M0 -40C22 -40 40 -22 40 0C40 22 22 40 0 40C-22 40 -40 22 -40 0C-40 -22 -22 -40 0 -40Z';
const square = rectangle(20, 20, 200, 120);

const across: Paint = {
  kind: 'linear',
  from: [20, 20],
  to: [220, 140],
  stops: [
    { offset: 0.1, color: '#c00000' },
    { offset: 0.5, color: '#00a000' },
    { offset: 0.5, color: '#ffffff' },
    { offset: 0.9, color: '#0000c0' },
  ],
};
const fading: Paint = {
  kind: 'linear',
  from: [20, 0],
  to: [220, 0],
  stops: [
    { offset: 0, color: '#c00000', opacity: 1 },
    { offset: 1, color: '#0000c0', opacity: 0 },
  ],
};
const round: Paint = {
  kind: 'radial',
  center: [0, 0],
  radius: 1,
  at: [90, 20, -20, 50, 120, 80],
  stops: [
    { offset: 0, color: '#ffff00' },
    { offset: 0.6, color: '#804000', opacity: 0.5 },
    { offset: 1, color: '#000000' },
  ],
};

const CASES: readonly (readonly [what: string, marks: readonly Mark[]])[] = [
  ['a filled shape', [{ kind: 'shape', path: STAR, fill: '#205080' }]],
  ['a shape filled by the even-odd rule', [{ kind: 'shape', path: STAR, fill: '#205080', evenOdd: true }]],
  [
    'fill and stroke',
    [{ kind: 'shape', path: STAR, fill: '#f0e0c0', stroke: { color: '#205080', width: 6, join: 'round' } }],
  ],
  ['sharp corners', [{ kind: 'shape', path: STAR, stroke: { color: '#000000', width: 8 } }]],
  ['cut corners', [{ kind: 'shape', path: STAR, stroke: { color: '#000000', width: 8, join: 'bevel' } }]],
  ...(['butt', 'round', 'square'] as const).map((cap): readonly [string, readonly Mark[]] => [
    `dashes with ${cap} ends`,
    [
      {
        kind: 'shape',
        path: 'M20 40L220 40M20 80C80 20 160 140 220 80',
        stroke: { color: '#000000', width: 8, dash: [20, 15], cap },
      },
      { kind: 'shape', path: 'M20 130L220 130', stroke: { color: '#000000', width: 8, cap } },
    ],
  ]),
  [
    'a shape that lets the ground show',
    [
      { kind: 'shape', path: rectangle(60, 0, 60, 160), fill: '#c00000' },
      {
        kind: 'shape',
        path: square,
        fill: '#0000c0',
        fillOpacity: 0.4,
        stroke: { color: '#000000', width: 4 },
      },
    ],
  ],
  [
    'groups in groups, turned and clipped',
    [
      {
        kind: 'group',
        at: [0.9, 0.3, -0.3, 0.9, 40, -10],
        clip: rectangle(30, 30, 150, 80),
        marks: [
          { kind: 'shape', path: square, fill: '#d0d0d0' },
          {
            kind: 'group',
            at: [0.5, 0, 0, 0.5, 100, 60],
            marks: [{ kind: 'shape', path: CIRCLE, fill: '#205080' }],
          },
        ],
      },
    ],
  ],
  [
    'a group that fades as one thing',
    [
      { kind: 'shape', path: rectangle(0, 70, 240, 20), fill: '#c00000' },
      {
        kind: 'group',
        at: [1.2, 0, 0, 1.2, 110, 80],
        opacity: 0.5,
        marks: [
          { kind: 'shape', path: CIRCLE, fill: '#205080' },
          {
            kind: 'group',
            at: [1, 0, 0, 1, 30, 0],
            opacity: 0.8,
            marks: [{ kind: 'shape', path: CIRCLE, fill: '#f0c000' }],
          },
        ],
      },
    ],
  ],
  [
    'a drawing on a tiny grid, much enlarged',
    [
      {
        kind: 'group',
        at: [200, 0, 0, 120, 20, 20],
        marks: [
          { kind: 'shape', path: 'M0 0C0.25 0.125 0.375 1.0625 1 1L1 0.333Z', fill: '#205080' },
          { kind: 'shape', path: 'M0.1 0.9L0.9 0.1', stroke: { color: '#c00000', width: 0.02 } },
        ],
      },
    ],
  ],
  [
    'a mirrored drawing',
    [
      {
        kind: 'group',
        at: [-1, 0, 0, 1, WIDTH, 0],
        marks: [{ kind: 'shape', path: 'M20 20L200 20L20 140Z', fill: across }],
      },
    ],
  ],
  ['a linear gradient with a hard edge', [{ kind: 'shape', path: square, fill: across }]],
  [
    'a gradient that fades',
    [
      { kind: 'shape', path: rectangle(0, 60, 240, 40), fill: '#00a000' },
      { kind: 'shape', path: square, fill: fading, stroke: { color: '#000000', width: 3 } },
    ],
  ],
  ['a radial gradient with a matrix', [{ kind: 'shape', path: square, fill: round }]],
  [
    'a gradient in a turned group, faded again',
    [
      {
        kind: 'group',
        at: [0.8, 0.4, -0.4, 0.8, 60, -20],
        opacity: 0.7,
        marks: [{ kind: 'shape', path: STAR, fill: fading, fillOpacity: 0.8, evenOdd: true }],
      },
    ],
  ],
  [
    'a clip of no area',
    [{ kind: 'group', clip: '', marks: [{ kind: 'shape', path: square, fill: '#000000' }] }],
  ],
  ['English text', words('Beans & peas: AVATAR, office', 60, { x: 20, width: 210, size: 14 }).marks],
  [
    'Arabic text',
    words('بدلاً من السَّلامُ 400 غرام', 60, { x: 20, width: 210, size: 14, language: 'ar', direction: 'rtl' })
      .marks,
  ],
  [
    'Vietnamese text',
    words('Ăn nhiều rau củ quả mỗi ngày', 60, { x: 20, width: 210, size: 14, language: 'vi' }).marks,
  ],
  [
    'Chinese text',
    words('每天吃五份水果和蔬菜', 60, { x: 20, width: 210, size: 14, language: 'zh-Hans' }).marks,
  ],
  [
    'a link in a turned group',
    [
      {
        kind: 'group',
        at: [0.9, 0.2, -0.2, 0.9, 30, 0],
        marks: words([{ text: 'read more here', data: { color: '#1a4fa0', underline: true } }], 60, {
          x: 20,
          size: 20,
        }).marks,
      },
    ],
  ],
];

describeWith(['pdftoppm'], 'marks, as poppler draws the PDF and resvg the SVG', () => {
  it.each(CASES)('%s', async (_, marks) => {
    const { mean, wrong } = await apart(marks);
    expect(mean).toBeLessThan(2);
    expect(wrong).toBeLessThan(0.01);
  });

  it('would be seen to differ', async () => {
    const full: Mark = { kind: 'shape', path: STAR, fill: '#205080' };
    const hollow = drawn(await pdfOf([{ ...full, evenOdd: true }]), 1, 144);
    const { mean, wrong } = distance(hollow, svgPicture([full], 144));
    expect(mean).toBeGreaterThan(4);
    expect(wrong).toBeGreaterThan(0.03);
  });
});

describeWith(['pdftoppm'], 'pictures of the assets, as poppler draws the PDF and resvg the SVG', () => {
  it.each(['steaming-bowl.svg', 'lentils-bowl.svg', 'pinto-beans-can.one.svg', 'strainer.svg'])(
    '%s',
    async (name) => {
      const { picture } = readSvg(
        readFileSync(new URL(`../../../assets/pictures/${name}`, import.meta.url), 'utf8'),
      );
      if (!picture) throw new Error(`${name} cannot be read.`);
      const { mean, wrong } = await apart([
        { kind: 'group', at: [1, 0, 0, 1, 45, 5], marks: [centeredPicture(picture, 150)] },
      ]);
      expect(mean).toBeLessThan(1);
      expect(wrong).toBeLessThan(0.005);
    },
  );
});

describe('operators of marks', () => {
  it('write black, white and grays as gray, so that one ink stays one ink', async () => {
    const bytes = await pdfOf([
      { kind: 'shape', path: square, fill: '#ffffff', stroke: { color: '#000000', width: 1 } },
      { kind: 'shape', path: square, fill: '#808080' },
      {
        kind: 'shape',
        path: square,
        fill: {
          ...fading,
          stops: [
            { offset: 0, color: '#000000' },
            { offset: 1, color: '#ffffff', opacity: 0.5 },
          ],
        },
      },
      { kind: 'group', opacity: 0.5, marks: [{ kind: 'shape', path: square, fill: '#000000' }] },
      ...words('Beans', 20).marks,
    ]);
    const content = await contentOf(bytes);
    expect(content).toMatch(/^1 g$/m);
    expect(content).toMatch(/^0 G$/m);
    expect(content).toMatch(/^0\.502 g$/m);
    expect(content).not.toMatch(/ (rg|RG|k|K|cs|CS)\n/);
    const file = Buffer.from(await (await load(bytes)).save({ useObjectStreams: false })).toString('latin1');
    expect(file).not.toMatch(/DeviceRGB|DeviceCMYK/);
  });

  it('write colors as red, green and blue', async () => {
    const content = await contentOf(await pdfOf([{ kind: 'shape', path: square, fill: '#336699' }]));
    expect(content).toContain('0.2 0.4 0.6 rg\n');
  });

  it('name a thing once, however often it is drawn', async () => {
    const one: Mark = { kind: 'shape', path: square, fill: fading };
    const document = await load(await pdfOf([one, one, { kind: 'group', opacity: 0.5, marks: [one] }]));
    expect(dictionariesWith(document, 'Type', 'ExtGState')).toHaveLength(2);
    expect(dictionariesWith(document, 'ColorSpace', 'DeviceRGB')).toHaveLength(1);
  });

  it.each<[string, Mark, RegExp]>([
    [
      'a path with an arc',
      { kind: 'shape', path: 'M0 0A1 1 0 0 1 2 2', fill: '#000000' },
      /M, L, C and Z only, and has "A"/,
    ],
    ['a path that stops', { kind: 'shape', path: 'M0 0L5', fill: '#000000' }, /stops inside L/],
    ['a path without a command', { kind: 'shape', path: '5 5', fill: '#000000' }, /M, L, C and Z only/],
    ['a color by name', { kind: 'shape', path: square, fill: 'red' }, /#rrggbb, not "red"/],
    [
      'a width that is no number',
      { kind: 'shape', path: square, stroke: { color: '#000000', width: Number.POSITIVE_INFINITY } },
      /not a number/,
    ],
    [
      'a gradient without stops',
      { kind: 'shape', path: square, fill: { ...fading, stops: [] } },
      /at least one stop/,
    ],
  ])('%s is a bug', async (_, mark, message) => {
    await expect(pdfOf([mark])).rejects.toThrow(message);
  });
});
