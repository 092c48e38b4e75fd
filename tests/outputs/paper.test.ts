import { describe, expect, it } from 'vitest';
import { createReport, type Problem } from '../../src/diagnostics/index.js';
import type { Sheet } from '../../src/document/index.js';
import { figureTools, type Pages } from '../../src/layout/index.js';
import { layOutSheet } from '../../src/outputs/paper.js';
import {
  collisions,
  nodesOf,
  nodesWith,
  outsideSafe,
  placedTexts,
  spoken,
  structureFaults,
} from '../layout/reading.js';
import { arabic, everything, handout, worksheet } from '../layout/sample.js';
import { fonts, plainFigures } from '../layout/tools.js';

type Options = Partial<Parameters<typeof layOutSheet>[1]>;

const real = figureTools(fonts, plainFigures.picture);

function layOut(sheet: Sheet, options: Options = {}): { pages: Pages; problems: readonly Problem[] } {
  const report = createReport();
  const pages = layOutSheet(
    sheet,
    { paper: 'letter', ink: 'color', fonts, figures: real, date: '2027-02-01', ...options },
    report,
  );
  return { pages, problems: report.problems };
}

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

describe('a handout', () => {
  const { pages } = layOut(handout('plain'));

  it('is read from title to message, cautions, sections and sources', () => {
    const order = [
      'Beans and peas, three ways',
      'Every kind of bean',
      'Stop',
      'Ask first',
      'One cup',
      'Sources',
    ];
    const places = order.map((words) => spoken(pages).indexOf(words));
    expect(places.every((p) => p >= 0)).toBe(true);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
  });

  it('has one title, and a head of the second level for each word of caution and each section', () => {
    expect(nodesWith(pages, 'H1')).toHaveLength(1);
    expect(nodesWith(pages, 'H2').map((h) => spoken(pages, h))).toEqual([
      'Stop',
      'Ask first',
      'One cup, three ways',
      'What rinsing takes away',
      'Rinse in one minute',
      'One thing I will do',
      'Sources',
    ]);
    expect(pages.outline.map((o) => o.title)[0]).toBe('Beans and peas, three ways');
  });

  it('prints every caution whole, at every level, on the first page', () => {
    for (const level of ['short', 'plain', 'fuller'] as const) {
      const sheet = handout(level);
      const built = layOut(sheet).pages;
      const first = { ...built, pages: built.pages.slice(0, 1) };
      for (const line of sheet.cautions.lines)
        expect(spoken(first)).toContain(
          line.inlines
            .map((i) => i.text)
            .join('')
            .trim(),
        );
    }
  });

  it('says a figure in words, marks its place, and gives its data as a table right after it', () => {
    const all = nodesOf(pages.structure);
    const figures = nodesWith(pages, 'Figure');
    expect(figures).toHaveLength(2);
    for (const figure of figures) {
      expect(figure.alt).toMatch(/mg/);
      expect(figure.box?.width).toBeCloseTo((183.9 * 72) / 25.4);
      const parent = all.find((node) => node.children.includes(figure));
      const next = parent?.children[(parent?.children.indexOf(figure) ?? 0) + 1];
      expect(next?.role).toBe('Table');
      expect(nodesOf(next ?? figure).filter((n) => n.role === 'TH' && !n.scope)).toEqual([]);
    }
    expect(spoken(pages, nodesWith(pages, 'Table')[0])).toContain('180 mg');
  });

  it('hides the data table within its figure', () => {
    const table = nodesOf(nodesWith(pages, 'Table')[0] ?? pages.structure).map((n) => n.id);
    const marks = pages.pages.flatMap((page) =>
      page.items.flatMap((item) => (item.kind === 'content' && table.includes(item.node) ? item.marks : [])),
    );
    expect(marks.length).toBeGreaterThan(5);
    expect(marks.every((mark) => mark.kind === 'text' && mark.hidden === true)).toBe(true);
  });

  it('repeats version, data date, review and page number at the foot of every page', () => {
    const texts = placedTexts(pages);
    pages.pages.forEach((_, page) => {
      const foot = texts.filter((t) => t.page === page).map((t) => t.text);
      expect(foot).toContain('BEANS3 · P-EN · 4F7C');
      expect(foot).toContain('Food data: 28 September 2015 · Not yet reviewed.');
      expect(foot).toContain(`Page ${page + 1} of 2`);
      expect(foot).toContain('免费口译');
    });
  });

  it('reads the foot aloud once, on the last page, each language with its tag', () => {
    const words = spoken(pages);
    expect(words.split('BEANS3 · P-EN · 4F7C')).toHaveLength(2);
    expect(words.split('Free interpreter: 555-0142')).toHaveLength(2);
    const tags = nodesWith(pages, 'Span').flatMap((span) => span.language ?? []);
    expect(tags).toEqual(['es', 'ar', 'ht', 'vi', 'zh-Hans']);
  });

  it('starts every line of text at the axis or in the rail', () => {
    const axis = (58 * 72) / 25.4;
    const margin = (16 * 72) / 25.4;
    const node = nodesWith(pages, 'H2').map((n) => n.id);
    for (const text of placedTexts(pages)) {
      if (text.node && node.includes(text.node))
        expect(text.bounds.left).toBeGreaterThanOrEqual(margin - 0.01);
    }
    const body = nodesWith(pages, 'P').map((n) => n.id);
    const starts = placedTexts(pages).filter(
      (t) => t.text.startsWith('Half a cup') && body.includes(t.node ?? ''),
    );
    expect(starts[0]?.bounds.left).toBeCloseTo(axis, 1);
  });

  it('turns to black alone in one ink', () => {
    const one = layOut(handout('plain'), { ink: 'one' }).pages;
    const colors = new Set(
      JSON.stringify(one.pages, (key, value) => (key === 'font' ? undefined : value)).match(/#[0-9a-f]{6}/g),
    );
    expect([...colors].sort()).toEqual(['#000000', '#ffffff']);
  });

  it('is laid out anew for the other paper', () => {
    const a4 = layOut(handout('plain'), { paper: 'a4' }).pages;
    expect(a4.pages[0]?.width).toBeCloseTo(595.28, 1);
    expect(a4.pages[0]?.height).toBeCloseTo(841.89, 1);
  });

  it('gives the same pages twice', () => {
    const again = layOut(handout('plain')).pages;
    const bare = (p: Pages) => JSON.stringify(p, (key, value) => (key === 'font' ? value.id : value));
    expect(bare(again)).toBe(bare(pages));
  });
});

describe('words with a look or a place of their own', () => {
  const { pages } = layOut(everything());
  const items = pages.pages.flatMap((page) => page.items);

  it('link to where they say, with a box over each of their lines', () => {
    const [link] = nodesWith(pages, 'Link');
    const areas = items.filter((item) => item.kind === 'link' && item.node === link?.id);
    expect(link && spoken(pages, link)).toBe('food table, where each row has a number');
    expect(areas.map((a) => a.kind === 'link' && [a.href, a.words])).toEqual([
      ['https://fdc.nal.usda.gov/', 'food table, where'],
      ['https://fdc.nal.usda.gov/', 'each row has a number'],
    ]);
    const texts = placedTexts(pages).filter((t) => t.node === link?.id);
    areas.forEach((area, index) => {
      if (area.kind === 'link') expect(area.x).toBeCloseTo(texts[index]?.bounds.left ?? 0);
    });
  });

  it('say their language', () => {
    const spanish = nodesWith(pages, 'Span').filter((n) => n.language === 'es');
    expect(spoken(pages, spanish[0])).toBe('frijoles');
  });

  it('are never slanted: emphasis is heavier', () => {
    const runs = items.flatMap((item) =>
      item.kind === 'content' ? item.marks.flatMap((m) => (m.kind === 'text' ? m.line.runs : [])) : [],
    );
    expect(runs.find((r) => r.text.includes('emphasis'))?.font.weight).toBe(600);
    expect(runs.find((r) => r.text.includes('strong'))?.font.weight).toBe(700);
  });

  it('start a new line where the author breaks it', () => {
    expect(placedTexts(pages).map((t) => t.text)).toContain('A new line.');
  });

  it('count on from the number where a list starts', () => {
    const labels = nodesWith(pages, 'Lbl').map((n) => spoken(pages, n));
    expect(labels).toEqual(expect.arrayContaining(['9.', '10.', 'A', 'B', '1.', '2.']));
  });
});

describe('a picture of the lesson’s own', () => {
  it('has its words and its place, and in one ink is black lines, which is said', () => {
    const colored = layOut(everything());
    const figure = nodesWith(colored.pages, 'Figure').find((n) => n.alt === 'A square');
    expect(figure?.box?.width).toBeCloseTo((141.9 * 72) / 25.4);
    expect(JSON.stringify(layOut(everything(), { ink: 'one' }).problems)).toContain(
      'figures/one-ink-converted',
    );
    expect(colored.problems).toEqual([]);
  });
});

describe('lines for everybody', () => {
  it('follow the boxes of the caution block on the same page', () => {
    const { pages } = layOut(handout('plain'));
    const texts = placedTexts(pages);
    const last = texts.find((t) => t.text.startsWith('change your salt'));
    const standing = texts.find((t) => t.text.startsWith('This sheet is for learning.'));
    expect(standing?.page).toBe(last?.page);
    expect(standing?.bounds.top).toBeGreaterThan(last?.bounds.bottom ?? 1e9);
  });
});

describe('a sheet that is too long', () => {
  const sheet = handout('fuller');
  const extra = Array.from({ length: 30 }, () => ({
    kind: 'paragraph' as const,
    inlines: [{ text: 'Beans keep for a long time in a dry place. '.repeat(4) }],
    place: { file: 'lesson.md', line: 30, column: 1 },
  }));

  it('is reported with how much is too much, and built all the same', () => {
    const { pages, problems } = layOut({ ...sheet, blocks: [...sheet.blocks, ...extra] });
    const problem = problems.find((p) => p.code === 'layout/too-long');
    expect(problem?.severity).toBe('ask');
    expect(problem?.message).toMatch(/^The sheet is \d+ lines too long for 2 sides of paper\.$/);
    expect(problem?.place?.file).toBe('lesson.md');
    expect(pages.pages.length).toBeGreaterThan(2);
    expect(spoken(pages)).toContain('Beans keep for a long time');
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

describe('stamps', () => {
  const plain = handout('plain');

  it('of a proof say on every page that it is a draft, heard once and first', () => {
    const { pages } = layOut({ ...plain, stamp: { ...plain.stamp, draft: 'Draft, do not hand out' } });
    for (const [index] of pages.pages.entries())
      expect(placedTexts(pages).some((t) => t.page === index && t.text === 'Draft, do not hand out')).toBe(
        true,
      );
    expect(spoken(pages).startsWith('Draft, do not hand out')).toBe(true);
    expect(spoken(pages).split('Draft, do not')).toHaveLength(2);
    expect(pages.pages.flatMap(outsideSafe)).toEqual([]);
    expect(structureFaults(pages)).toEqual([]);
  });

  it('of a proof leave its page breaks where they are', () => {
    const lines = (p: Pages) =>
      placedTexts(p)
        .filter((t) => t.text !== 'Draft, do not hand out')
        .map((t) => `${t.page} ${t.text}`);
    const proof = layOut({ ...plain, stamp: { ...plain.stamp, draft: 'Draft, do not hand out' } }).pages;
    expect(lines(proof)).toEqual(lines(layOut(plain).pages));
  });

  it('past the review date are white on ink', () => {
    const { pages } = layOut({
      ...plain,
      stamp: { ...plain.stamp, expired: true, review: 'Check again by 2 May 2026.' },
    });
    const white = JSON.stringify(pages.pages, (key, value) => (key === 'font' ? undefined : value));
    expect(white).toMatch(/Check again by 2 May 2026\./);
    const marks = pages.pages[0]?.items.flatMap((i) => (i.kind === 'link' ? [] : i.marks)) ?? [];
    const stamp = marks.find((m) => m.kind === 'text' && m.line.text.includes('Check again'));
    expect(stamp?.kind === 'text' && stamp.line.runs[0]?.span.data?.color).toBe('#ffffff');
  });

  it('never break a date: a long review stands on lines of its own sentences', () => {
    const review = 'Reviewed by a registered dietitian, 2 November 2026. Check again by 2 November 2027.';
    const { pages } = layOut({ ...plain, stamp: { ...plain.stamp, review } }, { paper: 'a4' });
    const texts = placedTexts(pages).map((t) => t.text);
    expect(texts.some((t) => t.includes('Reviewed by a registered dietitian, 2 November 2026.'))).toBe(true);
    expect(texts.some((t) => t.includes('Check again by 2 November 2027.'))).toBe(true);
    expect(collisions(pages)).toEqual([]);
  });
});

describe('a worksheet and its key', () => {
  const blank = layOut(worksheet('worksheet')).pages;
  const key = layOut(worksheet('key')).pages;

  it('number their tasks alike', () => {
    const heads = (p: Pages) =>
      nodesWith(p, 'H2')
        .map((h) => spoken(p, h))
        .filter((t) => /^\d/.test(t));
    expect(heads(blank)).toEqual(['1 Read two cans', '2 Rinse', '3 The least sodium', '4 My plan']);
    expect(heads(key)).toEqual(heads(blank));
  });

  it('give a name to every field, and on the blank no answer', () => {
    expect(nodesWith(blank, 'Form').map((f) => f.alt)).toEqual([
      'Serving of the first can',
      'Serving of the second can',
      'Sodium of the first can',
      'Sodium of the second can',
      '☐ A',
      '☐ B',
      '☐ C',
      'I will',
    ]);
    const all = `${spoken(blank)} ${nodesOf(blank.structure)
      .map((n) => n.alt ?? '')
      .join(' ')}`;
    expect(all).not.toMatch(/345|no salt went in|☑/);
  });

  it('tick the right box and give each reason on the key', () => {
    expect(nodesWith(key, 'Form').map((f) => f.alt)).toContain('☑ C');
    expect(nodesWith(key, 'Form').map((f) => f.alt)).toContain('Sodium of the second can: 345');
    expect(spoken(key)).toContain('C 1 mg · no salt went in');
  });

  it('say KEY at the top and on every page', () => {
    expect(spoken(key)).toContain('KEY');
    key.pages.forEach((_, index) => {
      expect(
        placedTexts(key).some(
          (t) => t.page === index && t.text === `KEY · Page ${index + 1} of ${key.pages.length}`,
        ),
      ).toBe(true);
    });
    expect(placedTexts(blank).some((t) => t.text.includes('KEY'))).toBe(false);
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
