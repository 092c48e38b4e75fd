import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import type { Item, Pages } from '../../../src/layout/index.js';
import { checkPdf, pdfCodes, writePdf } from '../../../src/writers/pdf/index.js';
import { handout } from './handout.js';
import { metadataOf, open } from './read-back.js';
import { createSheet, node, pagesOf } from './sheet.js';

async function claims(bytes: Uint8Array): Promise<unknown> {
  return (await metadataOf(bytes)).xmp('pdfuaid:part');
}

function skipping(): Pages {
  const sheet = createSheet();
  sheet.say('h', 'Beans');
  sheet.say('deep', 'Ask first');
  return pagesOf([sheet], node('d', 'Document', [node('h', 'H1'), node('deep', 'H3')]));
}

function linking(href: string): Pages {
  const sheet = createSheet();
  sheet.say('a', 'here');
  const link: Item = { kind: 'link', node: 'a', href, words: 'here', x: 40, y: 40, width: 30, height: 17 };
  return pagesOf(
    [{ items: [...sheet.items, link] }],
    node('d', 'Document', [node('p', 'P', [node('a', 'Link')])]),
  );
}

describe('a file in which the check finds a fault', () => {
  it('is reported with its name, what is wrong and where to look', async () => {
    const report = createReport();
    const place = { file: 'lessons/beans/lesson.md', line: 1, column: 1 };
    await writePdf(
      skipping(),
      { name: 'handout-plain-a4.pdf', place, spoils: { levels: ['plain'] } },
      report,
    );
    expect(report.problems).toEqual([
      {
        code: 'A04',
        severity: 'stop',
        message: 'handout-plain-a4.pdf: A heading ("Ask first") jumps from level 1 to 3. (PDF/UA-1, 7.4.2)',
        hint: expect.stringContaining('mend it there'),
        place,
        spoils: { levels: ['plain'] },
      },
    ]);
    expect(pdfCodes.A04.about).toMatch(/read back and checked/);
  });

  it('comes back all the same, as a proof that claims nothing', async () => {
    const bytes = await writePdf(skipping(), { name: 'x.pdf' }, createReport());
    expect(await claims(bytes)).toBeNull();
    expect((await checkPdf(bytes)).map((finding) => finding.rule)).toEqual(['5', '7.4.2']);
  });

  it('gives the same bytes each time', async () => {
    const [a, b] = [
      await writePdf(skipping(), { name: 'x.pdf' }, createReport()),
      await writePdf(skipping(), { name: 'x.pdf' }, createReport()),
    ];
    expect(Buffer.from(a).equals(Buffer.from(b))).toBe(true);
  });

  it('claims to be PDF/UA-1 only without a fault', async () => {
    expect(await claims(await writePdf(handout(), { name: 'x.pdf' }, createReport()))).toBe('1');
  });
});

describe('addresses of links', () => {
  it.each([
    ['https://example.org/a b?q=ü', 'https://example.org/a%20b?q=%C3%BC'],
    ['http://bücher.example/', 'http://xn--bcher-kva.example/'],
    ['mailto:clinic@example.org', 'mailto:clinic@example.org'],
    ['tel:555-0100', 'tel:555-0100'],
    ['https://example.org/(a)\\b', 'https://example.org/(a)/b'],
  ])('%s is kept', async (href, address) => {
    const report = createReport();
    const pdf = await open(await writePdf(linking(href), { name: 'x.pdf' }, report));
    const [link] = await (await pdf.getPage(1)).getAnnotations();
    await pdf.destroy();
    expect(report.problems).toEqual([]);
    expect(link.unsafeUrl).toBe(address);
  });

  it.each(['javascript:alert(1)', 'file:///etc/passwd', 'data:text/html,x', 'nowhere', ''])(
    '%s is refused, its words stay',
    async (href) => {
      const report = createReport();
      const pdf = await open(await writePdf(linking(href), { name: 'x.pdf' }, report));
      const page = await pdf.getPage(1);
      expect(await page.getAnnotations()).toEqual([]);
      expect((await page.getTextContent()).items.map((item) => ('str' in item ? item.str : ''))).toContain(
        'here',
      );
      await pdf.destroy();
      expect(report.problems[0]).toMatchObject({
        code: 'A04',
        message: expect.stringContaining(`page 1: a link leads to "${href}"`),
        hint: expect.stringContaining('https://'),
      });
    },
  );
});

describe('the title', () => {
  it.each(['"Beans" & <peas>', 'الفاصوليا', 'a\u0007b\nc', '\ud800 豆'])(
    '%j is the same everywhere',
    async (title) => {
      const report = createReport();
      const bytes = await writePdf({ ...handout(), title }, { name: 'x.pdf' }, report);
      expect(report.problems).toEqual([]);
      const { info } = await metadataOf(bytes);
      expect(info.Title).toBe(title.replace(/\p{Cc}/gu, ' ').replace('\ud800', '\ufffd'));
    },
  );

  it('must not be empty', async () => {
    const report = createReport();
    await writePdf({ ...handout(), title: '' }, { name: 'x.pdf' }, report);
    expect(report.problems.map((p) => p.message).join('\n')).toMatch(/no title/);
  });
});
