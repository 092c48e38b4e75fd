import { describe, expect, it } from 'vitest';
import { checkAlternatives, checkCodes, checkStructure } from '../../src/checks/index.js';
import type { Block, Picture, Sheet } from '../../src/document/index.js';
import type { Pages, StructureNode } from '../../src/layout/index.js';
import { asDeck, asSheet, bricks, deck, found, lanes, paginate, piecesOf, sheet } from './fixtures.js';

const picture = (): Picture => ({ kind: 'vector', width: 1, height: 1, marks: [] });
const at = { place: { file: 'lesson.md', line: 7, column: 1 } };
const blank = () =>
  lanes({
    mode: 'blank',
    alternative: {
      ...lanes().alternative,
      reading: 'An empty line from zero. Letters to place: A, B.',
      table: { caption: 'Pinto beans', head: ['Form', 'Sodium'], rows: [['Dried', 'to fill in']] },
    },
  });

describe('A03, alternatives', () => {
  const check = (kind: Sheet['kind'], ...blocks: Block[]) =>
    found((r) => checkAlternatives({ built: [asSheet(kind, sheet(kind, 'plain', { blocks }))] }, r));

  it('is content with figures that say what they show', () => {
    expect(
      found((r) =>
        checkAlternatives({ built: [asSheet('handout', sheet('handout', 'plain')), asDeck(deck())] }, r),
      ),
    ).toEqual([]);
  });

  it.each([
    ['without words', [''], /A03 @7 handout: a picture has no alternative text/],
    ['named by its file', ['cans.svg'], /is the name of a file/],
    [
      'twice with the same words',
      ['Two cans', 'Two cans'],
      /two pictures share the alternative text "Two cans"/,
    ],
  ])('a picture %s', (_, alts, expected) => {
    expect(
      check('handout', ...alts.map((alt): Block => ({ kind: 'picture', picture: picture(), alt, ...at }))),
    ).toEqual([expect.stringMatching(expected)]);
  });

  it('lets the same picture stand twice', () => {
    const same = picture();
    expect(
      check(
        'handout',
        { kind: 'picture', picture: same, alt: 'Two cans' },
        { kind: 'picture', picture: same, alt: 'Two cans' },
      ),
    ).toEqual([]);
  });

  const figure = (over: object): Block => ({
    kind: 'figure',
    figure: lanes({ alternative: { ...lanes().alternative, ...over } }),
    ...at,
  });
  it.each([
    ['no words', { reading: ' ' }, /has no alternative text/],
    ['a label that tells all', { label: 'x'.repeat(121) }, /has 121 characters/],
    [
      'a value that the figure does not show',
      { reading: 'A, Dried, 2 mg; B, Canned, 410 mg; C 33 mg.' },
      /says 33, which the figure does not show/,
    ],
    [
      'another value than the figure',
      { reading: 'A, Dried, 2 mg; B, Canned, 360 mg.' },
      /says 360, which the figure does not show/,
    ],
    ['a value left out', { reading: 'A, Dried, 2 mg.' }, /leaves out 410 mg/],
    [
      'label and reading the same',
      { label: 'A 2 mg, B 410 mg', reading: 'A 2 mg, B 410 mg' },
      /are the same words/,
    ],
    [
      'a table without heads',
      { table: { caption: 'x', head: ['Form', ''], rows: [['a', '2 mg']] } },
      /a column without a head/,
    ],
  ])('a figure with %s', (_, over, expected) => {
    expect(check('handout', figure(over)).join('\n')).toMatch(expected);
  });

  it('two figures with one label', () => {
    const other: Block = { kind: 'figure', figure: lanes({ id: 'navy' }) };
    expect(check('handout', figure({}), other)).toEqual([
      expect.stringContaining('has the same label as `pinto`'),
    ]);
  });

  describe('on a blank worksheet', () => {
    const both = (worksheet: Block, key: Block) =>
      found((r) =>
        checkAlternatives(
          {
            built: [
              asSheet('worksheet', sheet('worksheet', 'plain', { blocks: [worksheet] })),
              asSheet('key', sheet('key', 'plain', { blocks: [key] })),
            ],
          },
          r,
        ),
      );
    const keyBricks: Block = { kind: 'figure', figure: bricks({ mode: 'key' }) };
    const blankBricks = (reading: string): Block => ({
      kind: 'figure',
      figure: bricks({
        mode: 'blank',
        rows: bricks().rows.map((row, i) =>
          i === 0 ? row : { name: row.name, note: '', sign: row.sign, total: 460, sure: 271, possible: 368 },
        ),
        alternative: {
          label: 'Bricks',
          reading,
          table: { caption: 'x', head: ['Row', 'mg'], rows: [['On the label', '460 mg']] },
        },
      }),
    });

    it('an alternative may say what is given, not what is to be found', () => {
      expect(both(blankBricks('Each brick is 20 mg. Before: 460 mg. Cross out bricks.'), keyBricks)).toEqual(
        [],
      );
      expect(both(blankBricks('Before: 460 mg. After: 270 to 370.'), keyBricks)).toEqual([
        expect.stringContaining(
          'the alternative of the figure `rinse` says 270, which is to be found by the learner.',
        ),
        expect.stringContaining('says 370'),
      ]);
    });

    it('does not take a longer number for the answer', () => {
      expect(both(blankBricks('The can holds 2700 mg or 1.270 g or 370,000.'), keyBricks)).toEqual([]);
    });

    it('dots keep their values to themselves', () => {
      expect(check('worksheet', { kind: 'figure', figure: blank() })).toEqual([]);
      const leak = { ...blank(), alternative: { ...blank().alternative, reading: 'Place A at 2 mg.' } };
      expect(check('worksheet', { kind: 'figure', figure: leak })).toEqual([
        expect.stringContaining('says 2 mg'),
      ]);
    });

    it('choices, fields and reasons hold no answers', () => {
      const question: Block = {
        kind: 'question',
        id: 'q1',
        prompt: [],
        choices: [{ letter: 'A', inlines: [], key: { right: true, value: '1 mg', why: 'x' } }],
      };
      expect(check('worksheet', question)).toEqual([expect.stringContaining('`q1` holds its answer')]);
      expect(check('key', question)).toEqual([]);
      expect(check('worksheet', { kind: 'why', inlines: [{ text: 'because' }] })).toHaveLength(1);
      const table = (label: string, answer?: string): Block => ({
        kind: 'table',
        head: [{ inlines: [{ text: 'Sodium' }] }],
        rows: [[{ inlines: [], field: { label, ...(answer ? { answer } : {}) } }]],
        rowHeads: false,
      });
      expect(both(table('Sodium on the label'), table('Sodium on the label', '460 mg'))).toEqual([]);
      expect(both(table('Sodium, 460 mg'), table('Sodium, 460 mg', '460 mg'))).toEqual([
        expect.stringContaining('says its answer'),
      ]);
    });

    it('a picture does not either', () => {
      const leak: Block = { kind: 'picture', picture: picture(), alt: 'A can that says 270 after rinsing' };
      expect(both(leak, keyBricks)).toEqual([
        expect.stringContaining('the alternative of a picture says 270'),
      ]);
    });
  });

  it('a slide that asks does not hold the answer', () => {
    const d = deck();
    const question = {
      kind: 'question' as const,
      id: 'q1',
      prompt: [],
      choices: [{ letter: 'A', inlines: [], key: { right: true, value: '1 mg', why: '' } }],
    };
    const slides = d.slides.map((s) =>
      s.id === 's4' ? { ...s, stage: { kind: 'ask' as const, question } } : s,
    );
    expect(found((r) => checkAlternatives({ built: [asDeck({ ...d, slides })] }, r))).toEqual([
      'A03 slides: slide 4 asks `q1` and holds its answer.',
    ]);
  });
});

describe('A04, structure', () => {
  const check = (s: Sheet, pages?: Pages) =>
    found((r) => checkStructure({ built: [asSheet('handout', s, pages)] }, r));
  const good = sheet('handout', 'plain');
  const heading = (level: 2 | 3 | 4, text = 'Head'): Block => ({
    kind: 'heading',
    level,
    inlines: [{ text }],
    ...at,
  });

  it('is content with a sheet, its pages and a deck', () => {
    expect(check(good, paginate(piecesOf(good)))).toEqual([]);
    expect(found((r) => checkStructure({ built: [asDeck(deck())] }, r))).toEqual([]);
  });

  it.each([
    [
      'a heading that jumps',
      { blocks: [heading(2), heading(4)] },
      'A04 @7 handout: the heading "Head" is level 4 after level 2.',
    ],
    [
      'a first heading that jumps',
      { blocks: [heading(3)] },
      'A04 @7 handout: the heading "Head" is level 3 after level 1.',
    ],
    ['a heading without words', { blocks: [heading(2, ' ')] }, 'A04 @7 handout: a heading has no words.'],
    ['no title', { title: '' }, 'A04 handout: it has no title.'],
    ['no language', { language: '' }, 'A04 handout: it has no language.'],
  ])('%s', (_, over, problem) => {
    expect(check({ ...good, ...over } as Sheet)).toContain(problem);
  });

  it('headings may step back up by any number', () => {
    expect(check({ ...good, blocks: [heading(2), heading(3), heading(4), heading(2)] })).toEqual([]);
  });

  const table = (head: string[], rows: number, rowHeads = false): Block => ({
    kind: 'table',
    head: head.map((text) => ({ inlines: [{ text }] })),
    rows: [Array.from({ length: rows }, () => ({ inlines: [{ text: 'x' }] }))],
    rowHeads,
    ...at,
  });
  it.each([
    ['without heads', table([], 0), ['A04 @7 handout: a table has a column without a head.']],
    ['with an empty head', table(['Food', ''], 2), ['A04 @7 handout: a table has a column without a head.']],
    [
      'with a row too short',
      table(['Food', 'mg'], 1),
      ['A04 @7 handout: a table has a row with more or fewer cells than its head.'],
    ],
    ['with an empty corner over row heads', table(['', 'mg'], 2, true), []],
    ['with all heads', table(['Food', 'mg'], 2), []],
  ])('a table %s', (_, block, expected) => {
    expect(check({ ...good, blocks: [block] })).toEqual(expected);
  });

  it('a slide without a title', () => {
    const d = deck();
    expect(
      found((r) =>
        checkStructure(
          {
            built: [asDeck({ ...d, slides: d.slides.map((s) => (s.id === 's3' ? { ...s, title: [] } : s)) })],
          },
          r,
        ),
      ),
    ).toEqual(['A04 slides: slide 3 has no title.']);
  });

  describe('on pages', () => {
    const pages = paginate(piecesOf(good));
    const change = (f: (n: StructureNode) => StructureNode): Pages => ({
      ...pages,
      structure: { ...pages.structure, children: pages.structure.children.map(f) },
    });
    it.each([
      [
        'a figure without alternative',
        change((n) => (n.role === 'Figure' ? { ...n, alt: '' } : n)),
        'a figure on a page has no alternative text.',
      ],
      ['a figure without a place', change(({ box: _, ...n }) => n), 'a figure on a page has no place.'],
      [
        'untagged content',
        { ...pages, structure: { ...pages.structure, children: pages.structure.children.slice(1) } },
        'something on a page belongs to `n0`, which the structure does not have.',
      ],
      [
        'an element twice',
        {
          ...pages,
          structure: {
            ...pages.structure,
            children: [...pages.structure.children, ...pages.structure.children.slice(-1)],
          },
        },
        'an element of the structure stands twice.',
      ],
      [
        'a heading that jumps',
        change((n) => (n.role === 'H2' ? { ...n, role: 'H4' } : n)),
        'the pages step from heading level 1 to 4.',
      ],
      ['no title', { ...pages, title: '' }, 'the pages have no title.'],
      ['no language', { ...pages, language: '' }, 'the pages have no language.'],
      [
        'a table without header cells',
        change((n) => (n.role === 'P' ? { ...n, role: 'Table' } : n)),
        'a table on a page has no header cells.',
      ],
      [
        'a header cell without scope',
        change((n) => (n.role === 'P' ? { ...n, role: 'TH' } : n)),
        'a header cell does not say what it heads.',
      ],
    ] as [string, Pages, string][])('%s', (_, wrong, problem) => {
      expect(check(good, wrong)).toContain(`A04 handout: ${problem}`);
    });
  });
});

describe('the codes', () => {
  it('tell rule, reason and way out, each a Stop or an Ask as the editor’s list has it', () => {
    // S07 is told by the refusal R02, at the swap that meets it.
    const safety = ['01', '02', '03', '04', '05', '06', '08', '09', '10', '11', '12', '13', '14', '15', '16'];
    const numbers = ['N02', 'N03', 'N04', 'N18'];
    expect(Object.keys(checkCodes)).toEqual([
      ...numbers,
      'E09',
      'E03',
      ...safety.map((number) => `S${number}`),
      ...['S17', 'S18', 'S19', 'weight-free/word', 'P10', 'P12', 'A03', 'A04'],
    ]);
    for (const [code, info] of Object.entries(checkCodes)) {
      expect(info.severity).toBe(['S19', 'E09', 'P10'].includes(code) ? 'ask' : 'stop');
      expect(info.rule).toMatch(/\.$/);
      expect(info.about.split('. ').length).toBeGreaterThanOrEqual(2);
    }
  });
});
