import { describe, expect, it } from 'vitest';
import type { Pages } from '../../src/layout/index.js';
import { nodesOf, nodesWith, placedTexts, spoken } from '../layout/reading.js';
import { everything, handout } from '../layout/sample.js';
import { layOut } from './lay-out.js';

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
