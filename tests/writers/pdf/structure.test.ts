import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import type { Pages } from '../../../src/layout/index.js';
import { checkPdf, writePdf } from '../../../src/writers/pdf/index.js';
import { handout } from './handout.js';
import { expectedTree, metadataOf, open, readTree } from './read-back.js';
import { createSheet, node, pagesOf } from './sheet.js';
import { ask, describeWith } from './tools.js';

/** Writes pages that must be without fault. */
async function written(pages: Pages): Promise<Uint8Array> {
  const report = createReport();
  const bytes = await writePdf(pages, { name: 'handout.pdf' }, report);
  expect(report.problems).toEqual([]);
  return bytes;
}

describe('the structure of a finished file, read back by pdf.js', () => {
  it.each([1, 2])('is that of the pages, page %i', async (page) => {
    const pages = handout();
    const tree = await readTree(await written(pages), page);
    expect(tree).toEqual(expectedTree(pages, page));
    expect(JSON.stringify(tree).length).toBeGreaterThan(300);
  });

  it('keeps a link between the words around it', async () => {
    const tree = await readTree(await written(handout()), 1);
    const intro = tree[0]?.kids[1];
    expect(intro).toEqual({
      role: 'P',
      kids: [
        'Beansfillyouupforlittlemoney.InSpanishtheyarecalled',
        { role: 'Span', lang: 'es', kids: ['frijoles'] },
        ';readmoreonthe',
        { role: 'Link', kids: ['pageaboutbeans', '→'] },
      ],
    });
  });

  it('puts the box of a figure into PDF coordinates', async () => {
    const tree = await readTree(await written(handout()), 1);
    const figure = tree[0]?.kids.find((kid) => typeof kid !== 'string' && kid.role === 'Figure');
    // 800 points high: 470 + 60 from the top is 270 from the foot.
    expect(figure).toMatchObject({ box: [40, 270, 160, 330], kids: ['120mg'] });
  });

  it('says language, title and that it is tagged', async () => {
    const bytes = await written(handout());
    const { info, xmp } = await metadataOf(bytes);
    expect(info).toMatchObject({
      Title: 'Beans & peas <three ways>',
      Subject: 'Beans',
      Language: 'en',
      CreationDate: 'D:20260301000000Z',
      ModDate: 'D:20260301000000Z',
      PDFFormatVersion: '1.7',
      IsLinearized: false,
    });
    expect(xmp('dc:title')).toBe('Beans & peas <three ways>');
    expect(xmp('dc:description')).toBe('Beans');
    expect(xmp('pdfuaid:part')).toBe('1');
    expect(xmp('xmp:createdate')).toBe('2026-03-01T00:00:00Z');
    const pdf = await open(bytes);
    expect(await pdf.getMarkInfo()).toMatchObject({ Marked: true });
    expect(await pdf.getViewerPreferences()).toEqual({ DisplayDocTitle: true });
    expect(await pdf.getJSActions()).toBeNull();
    await pdf.destroy();
  });

  it('leads links where they say, with words and without a border', async () => {
    const pdf = await open(await written(handout()));
    const [link] = await (await pdf.getPage(1)).getAnnotations();
    expect(link).toMatchObject({
      subtype: 'Link',
      url: 'https://example.org/beans?q=(a)',
      contentsObj: { str: 'page about beans' },
    });
    expect(link.borderStyle.width).toBe(0);
    await pdf.destroy();
  });

  it('has bookmarks', async () => {
    const pdf = await open(await written(handout()));
    const outline = await pdf.getOutline();
    expect(outline.map((entry) => entry.title)).toEqual(['Beans and peas, three ways', 'Ask first']);
    const dest = outline[1]?.dest;
    const ref = Array.isArray(dest) ? dest[0] : undefined;
    expect(await pdf.getPageIndex(ref)).toBe(1);
    await pdf.destroy();
  });

  it('reads from right to left where the pages do', async () => {
    const sheet = createSheet();
    sheet.say('h', 'الفاصوليا', { language: 'ar', direction: 'rtl' });
    const pages = pagesOf([sheet], node('d', 'Document', [node('h', 'H1')]), {
      language: 'ar',
      direction: 'rtl',
      title: 'الفاصوليا',
    });
    const pdf = await open(await written(pages));
    expect(await pdf.getViewerPreferences()).toEqual({ DisplayDocTitle: true, Direction: 'R2L' });
    await pdf.destroy();
  });
});

describe('pages that contradict themselves are a bug', () => {
  const sheet = createSheet();
  sheet.say('p', 'Beans.');

  it.each<[string, () => Pages, RegExp]>([
    [
      'content of an element that is not there',
      () => pagesOf([sheet], node('d', 'Document', [node('q', 'P')])),
      /Page 1 holds content of "p"/,
    ],
    [
      'an element that stands twice',
      () => pagesOf([sheet], node('d', 'Document', [node('p', 'P'), node('p', 'P')])),
      /"p" twice/,
    ],
    [
      'a link of an element that is none',
      () =>
        pagesOf(
          [
            {
              items: [
                {
                  kind: 'link',
                  node: 'p',
                  href: 'https://example.org',
                  words: 'x',
                  x: 0,
                  y: 0,
                  width: 1,
                  height: 1,
                },
              ],
            },
          ],
          node('d', 'Document', [node('p', 'P')]),
        ),
      /"p", which is no Link/,
    ],
    [
      'a bookmark to a page that is not there',
      () =>
        pagesOf([sheet], node('d', 'Document', [node('p', 'P')]), { outline: [{ title: 'Two', page: 1 }] }),
      /bookmark "Two" leads to page 2/,
    ],
    [
      'a figure on a page that is not there',
      () =>
        pagesOf(
          [sheet],
          node('d', 'Document', [
            node('p', 'Figure', [], { alt: 'x', box: { page: 3, x: 0, y: 0, width: 1, height: 1 } }),
          ]),
        ),
      /stands on page 4/,
    ],
    ['no page at all', () => pagesOf([], node('d', 'Document')), /at least one page/],
  ])('%s', async (_, pages, message) => {
    await expect(writePdf(pages(), { name: 'x.pdf' }, createReport())).rejects.toThrow(message);
  });
});

describe('the same pages', () => {
  it('give the same bytes', async () => {
    const [a, b] = [await written(handout()), await written(handout())];
    expect(Buffer.from(a).equals(Buffer.from(b))).toBe(true);
  });

  it('give another identifier when a word changes', async () => {
    const id = (bytes: Uint8Array) =>
      open(bytes).then(async (pdf) => {
        const { fingerprints } = pdf;
        await pdf.destroy();
        return fingerprints[0];
      });
    const changed = { ...handout(), title: 'Beans' };
    expect(await id(await written(handout()))).not.toBe(await id(await written(changed)));
  });
});

describeWith(['qpdf', 'pdfinfo', 'pdffonts'], 'other programs', () => {
  it('find no fault in the file', async () => {
    const bytes = await written(handout());
    expect(ask('qpdf', bytes, ['--check', '{}']).toString()).toContain('No syntax or stream encoding errors');
    expect(await checkPdf(bytes)).toEqual([]);
  });

  it('see a tagged file without scripts, with both pages', async () => {
    const info = ask('pdfinfo', await written(handout()), ['{}']).toString();
    expect(info).toMatch(/Tagged:\s+yes/);
    expect(info).toMatch(/JavaScript:\s+no/);
    expect(info).toMatch(/Form:\s+none/);
    expect(info).toMatch(/Pages:\s+2/);
    expect(info).toMatch(/PDF version:\s+1\.7/);
  });

  it('see every font embedded, cut and with its letters', async () => {
    const fonts = ask('pdffonts', await written(handout()), ['{}'])
      .toString()
      .trim()
      .split('\n')
      .slice(2);
    expect(fonts.length).toBeGreaterThan(2);
    for (const font of fonts)
      expect(font).toMatch(/^[A-Z]{6}\+\S+\s+CID TrueType\s+Identity-H\s+yes yes yes/);
  });
});
