import {
  cautionBlock,
  figureCautionBlocks,
  type Output,
  type Pulled,
  pull,
  slideCautions,
  slideFigureCautions,
  standingBlock,
  standingLines,
} from '../../src/cautions/index.js';
import type { Built } from '../../src/checks/index.js';
import { createReport, type Problem, type Report } from '../../src/diagnostics/index.js';
import {
  type Block,
  type Deck,
  type Inline,
  type Numbers,
  numbersOf,
  type Sheet,
  type ShownNumber,
  type Slide,
  type Stamp,
} from '../../src/document/index.js';
import type { BrickRows, DotLanes, Mark, TextInk } from '../../src/figures/index.js';
import type { Item, Page, Pages, StructureNode } from '../../src/layout/index.js';
import type { Level } from '../../src/reading/index.js';
import type { Line } from '../../src/text/index.js';
import { BEANS, register, setting } from '../cautions/register-files.js';

export const place = (line: number, column = 1) => ({ file: 'lesson.md', line, column });

/** What a check reports, one line a problem. */
export function found(check: (report: Report) => void): string[] {
  const report = createReport();
  check(report);
  return report.problems.map((p) => `${p.code}${p.place ? ` @${p.place.line}` : ''} ${p.message}`);
}
export function problems(check: (report: Report) => void): readonly Problem[] {
  const report = createReport();
  check(report);
  return report.problems;
}

const STAMP: Stamp = { version: 'X', dataDate: '', review: '', page: '', expired: false };
export const pulled: readonly Pulled[] = pull(register, BEANS, createReport());

/** Values as the release has them for half a cup and a cup of pinto beans; here only their shape matters. */
export const NUMBERS: readonly ShownNumber[] = [
  number('pinto.dried.sodium', 2, '2 mg'),
  number('pinto.canned.sodium', 412.4, '410 mg'),
  number('pinto.rinsed.sodium', null, 'not known'),
  { ...number('rinse.after', null, '270 to 370 mg'), low: 271.4, high: 368 },
  { ...number('day.sodium', 1234, 'at least 1,200 mg'), atLeast: true },
  number('q1.canned.sodium', 206.2, '210 mg'),
  number('q1.dried.sodium', 1, '1 mg'),
];
export const numbers: Numbers = numbersOf(NUMBERS);

export function number(id: string, value: number | null, text: string): ShownNumber {
  const what = `${id.split('.').at(-1)} in 1 cup of ${id.split('.')[1]}`;
  return {
    id,
    value,
    text,
    unit: 'mg',
    formula: 'x',
    inputs: [{ name: 'x', value, unit: 'mg', source: 'usda-sr28' }],
    sources: [],
    what,
  };
}

export function lanes(over: Partial<DotLanes> = {}): DotLanes {
  return {
    kind: 'dot-lanes',
    id: 'pinto',
    numbers: [],
    mode: 'shown',
    rows: [
      { letter: 'A', sign: 'bag', words: 'Dried' },
      { letter: 'B', sign: 'can', words: 'Canned' },
    ],
    lanes: [
      {
        name: 'Sodium',
        dots: [
          { letter: 'A', value: 2, text: '2 mg', number: 'pinto.dried.sodium' },
          { letter: 'B', value: 412.4, text: '410 mg', number: 'pinto.canned.sodium' },
        ],
      },
    ],
    alternative: {
      label: 'Pinto beans on a line: sodium. 1 cup.',
      reading: 'Sodium, lowest to highest: A, Dried, 2 mg; B, Canned, 410 mg.',
      table: {
        caption: 'Pinto beans, 1 cup',
        head: ['Form', 'Sodium'],
        rows: [
          ['Dried', '2 mg'],
          ['Canned', '410 mg'],
        ],
      },
    },
    ...over,
  };
}

export function bricks(over: Partial<BrickRows> = {}): BrickRows {
  return {
    kind: 'brick-rows',
    id: 'rinse',
    numbers: [],
    mode: 'shown',
    worth: 20,
    rows: [
      { name: 'On the label', note: '460 mg', sign: 'can', total: 460, sure: 460, possible: 460 },
      {
        name: 'After rinsing',
        note: '270 to 370 mg',
        sign: 'strainer',
        total: 460,
        sure: 271.4,
        possible: 368,
        ends: { low: '270', high: '370', words: '270 to 370 mg' },
      },
    ],
    words: { sure: 'left', unsure: 'may be left', gone: 'gone' },
    alternative: {
      label: 'Sodium in half a cup of black beans, in bricks.',
      reading: 'Before: 460 mg. After rinsing: somewhere from 270 to 370 mg.',
      table: {
        caption: 'Black beans',
        head: ['Row', 'Sodium'],
        rows: [
          ['On the label', '460 mg'],
          ['After rinsing', '270 to 370 mg'],
        ],
      },
    },
    ...over,
  };
}

export function inline(text: string, id: string): Inline {
  return { text, number: id };
}

/** A whole sheet of the beans lesson with its two figures, cautions in their places. */
export function sheet(kind: Sheet['kind'], level: Level, over: Partial<Sheet> = {}): Sheet {
  const output = kind as Output;
  const at = setting({ output, level });
  const report = createReport();
  const standing = standingBlock(standingLines(pulled, BEANS, at), at, report);
  const blocks: Block[] = [
    ...(standing ? [standing] : []),
    { kind: 'heading', level: 2, inlines: [{ text: 'One cup, two ways' }] },
    {
      kind: 'paragraph',
      inlines: [{ text: 'A can has ' }, inline('410 mg', 'pinto.canned.sodium'), { text: ' of sodium.' }],
    },
    { kind: 'figure', figure: lanes() },
    ...figureCautionBlocks(pulled, 'pinto', at, report),
    { kind: 'heading', level: 3, inlines: [{ text: 'What rinsing takes away' }] },
    { kind: 'figure', figure: bricks() },
    ...figureCautionBlocks(pulled, 'rinse', at, report),
  ];
  return {
    kind,
    language: 'en',
    direction: 'ltr',
    level,
    title: 'Beans and peas, three ways',
    strip: { start: '', end: '' },
    emblem: 'bean-bowl',
    message: [{ text: 'Drain it and rinse it.' }],
    cautions: cautionBlock(pulled, at, report),
    blocks,
    sources: [],
    stamp: STAMP,
    words: { sources: 'Sources', key: 'KEY' },
    ...over,
  };
}

export function deck(over: Partial<Deck> = {}): Deck {
  const at = setting({ output: 'slides' });
  const report = createReport();
  const lines = standingLines(pulled, BEANS, at);
  const shelf = standingBlock(lines, at, report);
  const make = (
    id: string,
    count: number,
    title: string,
    stage: Slide['stage'],
    more: Partial<Slide> = {},
  ): Slide => ({
    id,
    number: count,
    title: [{ text: title }],
    stage,
    shelf: [],
    minutes: 2,
    say: [],
    do: [],
    ...more,
  });
  const notes = (id: string): Inline[] =>
    slideFigureCautions(pulled, id, at, report).notes.flatMap((n) => [...n.inlines, { text: ' ' }]);
  const slides = [
    make(
      's1',
      1,
      'Beans',
      { kind: 'open', audience: 'adults', pictures: [] },
      { shelf: shelf?.kind === 'figure-caution' ? shelf.inlines : [] },
    ),
    ...slideCautions(pulled, at, report).map((block, i) =>
      make(`c${i}`, 2, `Before you change (${i})`, { kind: 'caution', block }),
    ),
    make(
      's3',
      3,
      'Which can?',
      { kind: 'show', block: { kind: 'figure', figure: lanes() } },
      { shelf: notes('pinto') },
    ),
    make(
      's4',
      4,
      'Rinse it',
      { kind: 'show', block: { kind: 'figure', figure: bricks() } },
      { shelf: notes('rinse') },
    ),
  ];
  return { language: 'en', direction: 'ltr', title: 'Beans', slides, stamp: STAMP, ...over };
}

export const asSheet = (name: string, s: Sheet, pages?: Pages): Built => ({
  kind: 'sheet',
  name,
  sheet: s,
  ...(pages ? { pages } : {}),
});
export const asDeck = (d: Deck, pages?: Pages): Built => ({
  kind: 'deck',
  name: 'slides',
  deck: d,
  ...(pages ? { pages } : {}),
});
export const standingOf = (built: Built): readonly Pulled[] =>
  standingLines(
    pulled,
    BEANS,
    built.kind === 'deck'
      ? setting({ output: 'slides' })
      : setting({ output: built.sheet.kind as Output, level: built.sheet.level }),
  );

/** Only what the checks read of a line. */
function line(text: string): Line<TextInk> {
  return { runs: [], x: 0, width: 0, ascent: 0, descent: 0, baseline: 0, height: 0, text };
}

interface Piece {
  readonly role: StructureNode['role'];
  readonly text: string;
  readonly more?: Partial<StructureNode>;
}

/** Simple pages: every piece is a tagged node, its words broken into short lines, so many pieces a page. */
export function paginate(pieces: readonly Piece[], perPage = 1000): Pages {
  const pages: Page[] = [];
  const children: StructureNode[] = [];
  for (let i = 0; i < pieces.length; i += perPage) {
    const items: Item[] = pieces.slice(i, i + perPage).map((piece, k) => {
      const id = `n${i + k}`;
      children.push({ id, role: piece.role, children: [], ...piece.more });
      const marks: Mark[] = brokenLines(piece.text).map((t) => ({
        kind: 'text',
        x: 0,
        baseline: 0,
        line: line(t),
      }));
      return { kind: 'content', node: id, marks: [{ kind: 'group', marks }] };
    });
    pages.push({ width: 612, height: 792, items });
  }
  return {
    title: 'Beans',
    language: 'en',
    direction: 'ltr',
    pages,
    structure: { id: 'root', role: 'Document', children },
    outline: [],
    date: '2026-12-01',
  };
}

function brokenLines(text: string): string[] {
  return text.match(/.{1,30}(?:\s|$)/g) ?? [text];
}

/** The pieces of a sheet in reading order: title, message, cautions, blocks. */
export function piecesOf(s: Sheet): Piece[] {
  const words = (inlines: readonly { text: string }[]) => inlines.map((i) => i.text).join('');
  return [
    { role: 'H1', text: s.title },
    { role: 'P', text: words(s.message) },
    ...s.cautions.lines.map((l): Piece => ({ role: 'LBody', text: words(l.inlines) })),
    ...s.blocks.flatMap((b): Piece[] => {
      if (b.kind === 'heading') return [{ role: b.level === 2 ? 'H2' : 'H3', text: words(b.inlines) }];
      if (b.kind === 'paragraph' || b.kind === 'figure-caution')
        return [{ role: 'P', text: words(b.inlines) }];
      if (b.kind === 'figure')
        return [
          {
            role: 'Figure',
            text: 'A B',
            more: { alt: b.figure.alternative.label, box: { page: 0, x: 0, y: 0, width: 1, height: 1 } },
          },
        ];
      return [];
    }),
  ];
}
