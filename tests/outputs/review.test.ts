import { describe, expect, it } from 'vitest';
import { createReport } from '../../src/diagnostics/index.js';
import type { Block, ShownNumber } from '../../src/document/index.js';
import { layOutSheet } from '../../src/outputs/paper.js';
import { reviewBlocks } from '../../src/outputs/review/index.js';
import {
  collisions,
  nodesWith,
  outsideSafe,
  placedTexts,
  spoken,
  structureFaults,
} from '../layout/reading.js';
import { fonts, plainFigures } from '../layout/tools.js';
import { review, WORDS } from './review-sample.js';

function cellsOf(blocks: readonly Block[], table: number): string[][] {
  const found = blocks.filter((b) => b.kind === 'table')[table];
  return found?.kind === 'table'
    ? found.rows.map((row) => row.map((cell) => cell.inlines.map((i) => i.text).join(' | ')))
    : [];
}

const number: ShownNumber = {
  id: 'rinse.left',
  value: null,
  low: 271.4,
  high: 368,
  text: '270 to 370 mg',
  unit: 'mg',
  formula: 'low = label * (1 - 0.41); high = label * (1 - 0.2)',
  inputs: [
    { name: 'label', value: 460, unit: 'mg', source: 'lesson' },
    { name: 'iodine', value: null, unit: 'µg', source: 'usda-sr28' },
  ],
  sources: ['duyff-2011'],
  what: 'sodium left after rinsing',
};

const { low: _low, high: _high, ...unknown } = number;

describe('blocks of the review sheet', () => {
  const blocks = reviewBlocks({
    numbers: [number, { ...unknown, id: 'a' }],
    cautions: [
      {
        id: 'c1',
        heading: 'Stop',
        wordings: [{ level: 'short', text: 'Do not taste it.' }],
        pulledBy: ['topic: cans'],
        toConfirm: 'the dent',
      },
      {
        id: 'c2',
        heading: 'Stop',
        wordings: [],
        pulledBy: [],
        toConfirm: '',
        confirmed: 'registered dietitian, 2 May 2026',
      },
    ],
    problems: [
      {
        code: 'N18',
        severity: 'ask',
        message: 'Too close.',
        place: { file: 'lesson.md', line: 4, column: 2 },
      },
    ],
    words: WORDS,
    sourceOf: (id) => `source ${id}`,
  });

  it('give each number with its shown and unrounded value, formula, inputs and sources', () => {
    expect(cellsOf(blocks, 2)[0]).toEqual([
      'sodium left after rinsing | rinse.left',
      '270 to 370 mg | unrounded 271.4 … 368 mg',
      'low = label * (1 - 0.41); high = label * (1 - 0.2) | label = 460 mg [lesson]; iodine = not known [usda-sr28]',
    ]);
    expect(JSON.stringify(blocks.at(-1))).toContain('duyff-2011: source duyff-2011');
  });

  it('never show an unknown value as zero', () => {
    expect(cellsOf(blocks, 2)[1]?.[1]).toBe('270 to 370 mg | unrounded not known');
  });

  it('say of each caution what pulled it and what awaits confirmation', () => {
    expect(cellsOf(blocks, 0)).toEqual([
      ['Stop | c1', 'short: Do not taste it.', 'topic: cans', 'unconfirmed | the dent'],
      ['Stop | c2', '', '', 'registered dietitian, 2 May 2026'],
    ]);
  });

  it('name each problem with its place', () => {
    expect(cellsOf(blocks, 1)).toEqual([['N18 | Too close.', '', 'lesson.md:4:2']]);
  });

  it('say that there is none rather than leave an empty table', () => {
    const empty = reviewBlocks({
      numbers: [],
      cautions: [],
      problems: [],
      words: WORDS,
      sourceOf: (id) => id,
    });
    expect(empty.map((b) => b.kind)).toEqual([
      'heading',
      'paragraph',
      'heading',
      'paragraph',
      'heading',
      'paragraph',
    ]);
  });
});

describe.each(['letter', 'a4'] as const)('the review sheet on %s', (paper) => {
  const report = createReport();
  const options = { paper, ink: 'color' as const, fonts, figures: plainFigures, date: '2027-02-01' };
  const pages = layOutSheet(review(60), options, report);

  it('runs over many pages, each with the header of its table, and nothing is reported', () => {
    expect(report.problems).toEqual([]);
    expect(pages.pages.length).toBeGreaterThan(5);
    const texts = placedTexts(pages);
    const last = texts.filter((t) => t.page === pages.pages.length - 2).map((t) => t.text);
    expect(last).toContain('How it is worked out');
    expect(spoken(pages).split('How it is worked out')).toHaveLength(2);
  });

  it('keeps its letters apart, inside the margin, and its structure whole', () => {
    expect(collisions(pages)).toEqual([]);
    expect(pages.pages.flatMap(outsideSafe)).toEqual([]);
    expect(structureFaults(pages)).toEqual([]);
    expect(nodesWith(pages, 'TR').length).toBe(60 + 1 + 6 + 1 + 1 + 1);
  });
});
