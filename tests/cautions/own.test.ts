import { describe, expect, it } from 'vitest';
import {
  cautionBlock,
  NO_FACTS,
  type OwnContext,
  pull,
  readCaution,
  type WrittenCaution,
} from '../../src/cautions/index.js';
import { createReport } from '../../src/diagnostics/index.js';
import { DAY, register, setting } from './register-files.js';

const place = (line: number, column = 1) => ({ file: 'lesson.md', line, column });

function written(attributes: Record<string, string>, rows: string[]): WrittenCaution {
  return {
    ...(attributes.id === undefined ? {} : { id: attributes.id }),
    attributes: new Map(
      Object.entries(attributes).map(([k, value], i) => [k, { value, place: place(10, 12 + i) }]),
    ),
    rows: rows.map((text, i) => ({ text, place: place(11 + i, 3) })),
    place: place(10),
  };
}
const WELL = { id: 'well-water', severity: 'ask first', source: 'well-notice', 'review-by': '2027-03-01' };
const ROWS = [
  'short = Water from your own well? Ask the health line before you mix baby food.',
  'plain = Do you use water from your own well? Ask the health line if it has been tested.',
  'fuller = Do you use water from your own well? Ask the health line if it has been tested, and for what.',
];
function read(attributes: Record<string, string>, rows: string[], over: Partial<OwnContext> = {}) {
  const report = createReport();
  const result = readCaution(
    written(attributes, rows),
    { register, language: 'en', on: DAY, ...over },
    report,
  );
  return {
    result,
    problems: report.problems.map((p) => `${p.place?.line}:${p.place?.column} ${p.code} ${p.message}`),
  };
}

describe('a lesson’s own caution', () => {
  it('with all it needs prints like an entry of the register', () => {
    const { result, problems } = read(WELL, ROWS);
    expect(problems).toEqual([]);
    if (result?.kind !== 'own') throw new Error('not its own');
    const pulled = pull(register, { ...NO_FACTS, own: [result.caution] }, createReport());
    const block = cautionBlock(pulled, setting({ level: 'short' }), createReport());
    expect(block.lines).toEqual([
      {
        id: 'well-water',
        heading: 'Ask first',
        word: 'Ask first',
        inlines: [
          { text: 'Water from your own well? ', strong: true },
          { text: 'Ask the health line before you mix baby food.' },
        ],
      },
    ]);
  });

  it('stands after the register’s lines of the same heading', () => {
    const { result } = read(WELL, ROWS);
    if (result?.kind !== 'own') throw new Error('not its own');
    const pulled = pull(
      register,
      { ...NO_FACTS, own: [result.caution], called: [{ id: 'fiber-slowly' }] },
      createReport(),
    );
    expect(cautionBlock(pulled, setting(), createReport()).lines.map((l) => l.id)).toEqual([
      'fluids-limit',
      'fiber-slowly',
      'well-water',
    ]);
  });

  it.each([
    [
      'no severity',
      { ...WELL, severity: '' },
      ROWS,
      '10:13 cautions/own The caution `well-water` has no `severity`.',
    ],
    [
      'a wrong severity',
      { ...WELL, severity: 'ask frist' },
      ROWS,
      '10:13 cautions/own "ask frist" is no severity.',
    ],
    [
      'no source',
      { ...WELL, source: '' },
      ROWS,
      '10:14 cautions/own The caution `well-water` has no `source`.',
    ],
    [
      'no real day',
      { ...WELL, 'review-by': '2027-02-30' },
      ROWS,
      '10:15 cautions/own "2027-02-30" is no day.',
    ],
    [
      'a day that is past',
      { ...WELL, 'review-by': '2026-11-30' },
      ROWS,
      '10:15 cautions/review-past The caution `well-water` was to be reviewed by 2026-11-30; the build is of 2026-12-01.',
    ],
    [
      'a missing wording',
      WELL,
      ROWS.slice(0, 2),
      '10:1 cautions/own The caution `well-water` has no fuller wording.',
    ],
    ['a wording twice', WELL, [...ROWS, ROWS[0] ?? ''], '14:3 cautions/own The short wording stands twice.'],
    [
      'a misspelt wording',
      WELL,
      [...ROWS, 'shrt = x'],
      '14:3 cautions/own `shrt` is no wording of a caution.',
    ],
    [
      'a slot',
      WELL,
      ['short = Call {poison-line}.', ...ROWS.slice(1)],
      '11:3 cautions/own A lesson’s own caution cannot have slots.',
    ],
    [
      'an id of the register',
      { ...WELL, id: 'cook-heat' },
      ROWS,
      '10:1 cautions/own The register has a caution `cook-heat` already.',
    ],
  ])('with %s is reported at its place', (_, attributes, rows, problem) => {
    expect(read(attributes, rows).problems).toContain(problem);
  });

  it('is good on its review day itself', () => {
    expect(read({ ...WELL, 'review-by': DAY }, ROWS).problems).toEqual([]);
  });

  it('has an id of its own', () => {
    const { result } = read(WELL, ROWS);
    if (result?.kind !== 'own') throw new Error('not its own');
    const report = createReport();
    pull(register, { ...NO_FACTS, own: [result.caution, { ...result.caution, at: place(20) }] }, report);
    expect(report.problems).toMatchObject([{ code: 'cautions/own', place: { line: 20 } }]);
  });

  it('names a source that exists', () => {
    expect(read(WELL, ROWS, { hasSource: () => false }).problems).toEqual([
      '10:14 cautions/own There is no source `well-notice`.',
    ]);
  });

  it('still prints on the proof while a wording is missing', () => {
    const { result } = read(WELL, ROWS.slice(0, 1));
    expect(result?.kind === 'own' && result.caution.wordings.en?.fuller).toMatch(/^Water from your own well/);
  });
});

describe('a call', () => {
  it('is an id alone', () => {
    expect(read({ id: 'potassium-salt' }, [])).toEqual({
      result: { kind: 'called', id: 'potassium-salt', place: place(10) },
      problems: [],
    });
  });
  it('without an id is reported', () => {
    expect(read({}, []).problems).toEqual(['10:1 cautions/own This caution has no id.']);
  });
});

describe('a level block', () => {
  const reworded = read(
    { id: 'fiber-slowly' },
    ['short = Go slow with fiber. Gut trouble? Ask your care team first.'],
    { level: 'short' },
  );

  it('rewords a caution at its level and removes nothing', () => {
    expect(reworded.problems).toEqual([]);
    if (reworded.result?.kind !== 'reworded') throw new Error('not reworded');
    const report = createReport();
    const pulled = pull(
      register,
      { ...NO_FACTS, topics: [{ name: 'fiber up' }], rewordings: reworded.result.rewordings },
      report,
    );
    const lines = (level: 'short' | 'plain') =>
      cautionBlock(pulled, setting({ level }), createReport()).lines.map((l) =>
        l.inlines.map((i) => i.text).join(''),
      );
    expect(lines('short')[1]).toBe('Go slow with fiber. Gut trouble? Ask your care team first.');
    expect(lines('plain')[1]).toMatch(/^Add fiber slowly/);
    expect(report.problems).toMatchObject([
      { code: 'cautions/reworded', severity: 'ask', spoils: { levels: ['short'] } },
    ]);
  });

  it('brings the caution in, even when nothing else does', () => {
    if (reworded.result?.kind !== 'reworded') throw new Error('not reworded');
    const facts = { ...NO_FACTS, rewordings: reworded.result.rewordings };
    expect(pull(register, facts, createReport()).map((p) => p.caution.id)).toContain('fiber-slowly');
  });

  it('takes the wording of its own level only', () => {
    const { problems } = read({ id: 'fiber-slowly' }, ['plain = x y z.'], { level: 'short' });
    expect(problems).toEqual(['11:3 cautions/own The plain wording stands in the block of level short.']);
  });
});
