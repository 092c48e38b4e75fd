import { describe, expect, it } from 'vitest';
import type { Sheet } from '../../src/document/index.js';
import type { Pages } from '../../src/layout/index.js';
import {
  collisions,
  nodesWith,
  outsideSafe,
  placedTexts,
  spoken,
  structureFaults,
} from '../layout/reading.js';
import { arabic, everything, handout, worksheet } from '../layout/sample.js';
import { plainFigures } from '../layout/tools.js';
import { layOut } from './lay-out.js';

const sheets: readonly (readonly [string, Sheet])[] = [
  ['short handout', handout('short')],
  ['plain handout', handout('plain')],
  ['fuller handout', handout('fuller')],
  ['worksheet', worksheet('worksheet')],
  ['key', worksheet('key')],
  ['Arabic handout', arabic()],
  ['handout of every block', everything()],
  ['key of every block', everything('key')],
];

describe.each(sheets)('the %s', (_, sheet) => {
  describe.each(['letter', 'a4'] as const)('on %s', (paper) => {
    it.each(['color', 'one'] as const)('keeps letters apart and inside the safe margin (%s)', (ink) => {
      const { pages } = layOut(sheet, { paper, ink });
      expect(pages.pages.flatMap(outsideSafe)).toEqual([]);
      expect(collisions(pages)).toEqual([]);
    });

    it('has a whole structure, read in the order of the pages', () => {
      expect(structureFaults(layOut(sheet, { paper }).pages)).toEqual([]);
    });

    it('takes one piece of paper and nothing is reported', () => {
      const { pages, problems } = layOut(sheet, { paper });
      expect(problems.filter((p) => p.code.startsWith('layout/'))).toEqual([]);
      expect(pages.pages.length).toBeLessThanOrEqual(2);
    });
  });
});

describe('a sheet that is too long', () => {
  const sheet = handout('fuller');
  const extra = Array.from({ length: 30 }, (_, index) => ({
    kind: 'paragraph' as const,
    inlines: [{ text: `${index} beans keep. ${'They like a dry place. '.repeat(8)}` }],
    place: { file: 'lesson.md', line: 100 + index, column: 1 },
  }));

  it('is reported with how much is too much, and built all the same', () => {
    const { pages, problems } = layOut({ ...sheet, blocks: [...sheet.blocks, ...extra] });
    const problem = problems.find((p) => p.code === 'layout/too-long');
    expect(problem?.severity).toBe('ask');
    expect(problem?.message).toMatch(/^The sheet is \d+ lines too long for 2 sides of paper\.$/);
    // The place is the first paragraph that starts on the third page.
    const first = placedTexts(pages).find((t) => t.page === 2 && / beans keep/.test(t.text));
    expect(problem?.place?.line).toBe(100 + Number.parseInt(first?.text ?? '', 10));
    expect(pages.pages.length).toBeGreaterThan(2);
    expect(spoken(pages)).toContain('29 beans keep.');
  });

  it('is told of its notices too, and says each of them once', () => {
    const notice = [{ text: 'Notice: ', strong: true }, { text: 'The market opens in June. '.repeat(40) }];
    const { pages, problems } = layOut({ ...handout('plain'), notices: [notice, notice, notice] });
    const problem = problems.find((p) => p.code === 'layout/too-long');
    expect(problem?.hint).toContain('The notices take room too');
    expect(spoken(pages).split('Notice:')).toHaveLength(4);
    expect(layOut(handout('plain')).problems.find((p) => p.code === 'layout/too-long')).toBeUndefined();
  });

  it('is no fault for a worksheet or a staff page', () => {
    for (const kind of ['worksheet', 'staff'] as const)
      expect(
        layOut({ ...sheet, kind, blocks: [...sheet.blocks, ...extra] }).problems.filter(
          (p) => p.code === 'layout/too-long',
        ),
      ).toEqual([]);
  });

  it('says so when a caution block does not fit on a page, and never splits it', () => {
    const line = {
      id: 'x',
      heading: 'Stop' as const,
      word: 'Stop',
      inlines: [{ text: 'Do not taste it. '.repeat(30) }],
    };
    const lines = Array.from({ length: 9 }, (_, i) => ({ ...line, id: `x${i}` }));
    const { pages, problems } = layOut({ ...sheet, cautions: { lines, whoToAsk: '' } });
    expect(problems.map((p) => p.code)).toContain('layout/too-tall');
    const words = lines.map(() => 'Do not taste it.');
    const holders = pages.pages.filter((page) =>
      spoken({ ...pages, pages: [page] }).includes('Do not taste'),
    );
    expect(holders).toHaveLength(1);
    expect(spoken(pages).split('Do not taste it.').length - 1).toBe(words.length * 30);
  });
});

describe('a right-to-left sheet', () => {
  it('is the mirror image: what starts at the left there ends at the right here', () => {
    const sheet = { ...handout('plain'), interpreter: { parts: [] } };
    const left = layOut(sheet, { figures: plainFigures }).pages;
    const right = layOut({ ...sheet, direction: 'rtl' }, { figures: plainFigures }).pages;
    const rails = (p: Pages) =>
      placedTexts(p)
        .filter((t) => nodesWith(p, 'H2').some((h) => h.id === t.node))
        .map((t) => t.bounds);
    const width = left.pages[0]?.width ?? 0;
    const mirrored = rails(right).map((b) => width - b.right);
    expect(mirrored.map((x) => x.toFixed(1))).toEqual(rails(left).map((b) => b.left.toFixed(1)));
  });

  it('keeps the halves of a phone number in their order', () => {
    const { pages } = layOut(arabic());
    const marks = pages.pages.flatMap((p) => p.items.flatMap((i) => (i.kind === 'link' ? [] : i.marks)));
    const line = marks.find((m) => m.kind === 'text' && m.line.text.includes('555'));
    const digits = line?.kind === 'text' ? line.line.runs.filter((r) => /\d/.test(r.text)) : [];
    expect(digits.map((r) => r.text.replace(/[\u2066-\u2069]/g, '')).join('')).toBe('555-0142');
    expect(digits.every((r) => !r.rtl)).toBe(true);
  });
});
