import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import type { Pages } from '../../../src/layout/index.js';
import { writePdf } from '../../../src/writers/pdf/index.js';
import { contentOf } from './objects.js';
import { glyphTexts, readTree, textsOf } from './read-back.js';
import { createSheet, node, pagesOf } from './sheet.js';
import { ask, describeWith, drawn } from './tools.js';

interface Sample {
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  readonly text: string;
}

const SAMPLES: readonly Sample[] = [
  {
    language: 'en',
    direction: 'ltr',
    text: 'Beans fill you up for little money. One office affords waffles — AVATAR To Wo: a cup, ½ cup, ≤ 5 mg → done. Fiber 15 g, and a line that is long enough to wrap.',
  },
  {
    language: 'ar',
    direction: 'rtl',
    text: 'تناول الفواكه والخضروات كل يوم: نصف طبقك يجب أن يكون من الخضار (نحو 400 غرام). اشرب الماء بدلاً من cola في كل وجبة، ولا تنسَ حصتين. لا إله إلا الله، السَّلامُ عليكم قليلًا.',
  },
  {
    language: 'vi',
    direction: 'ltr',
    text: 'Ăn nhiều rau củ quả mỗi ngày: nửa đĩa là rau xanh. Uống nước thay vì nước ngọt, người lớn và trẻ em đều được.',
  },
  {
    language: 'zh-Hans',
    direction: 'ltr',
    text: '每天吃五份水果和蔬菜，半盘蔬菜，四分之一全谷物，四分之一蛋白质。用水代替含糖饮料（例如 cola）；每周至少运动150分钟。',
  },
];

function onePage({ language, direction, text }: Sample): Pages {
  const sheet = createSheet();
  sheet.say('p', text, { language, direction });
  return pagesOf([sheet], node('d', 'Document', [node('p', 'P')]), { language, direction, title: 'Text' });
}

async function written(pages: Pages): Promise<Uint8Array> {
  const report = createReport();
  const bytes = await writePdf(pages, { name: 'text.pdf' }, report);
  expect(report.problems).toEqual([]);
  return bytes;
}

/** What the glyphs should say one after another: right-to-left runs stand from left to right. */
function inOrderOfGlyphs(pages: Pages): string {
  let out = '';
  for (const item of pages.pages[0]?.items ?? [])
    for (const mark of item.kind === 'content' ? item.marks : []) {
      if (mark.kind !== 'text') continue;
      for (const run of [...mark.line.runs].sort((a, b) => a.start - b.start)) {
        const said = run.text.replace(/\p{Bidi_Control}/gu, '').replace(/\s/g, ' ');
        out += run.rtl ? [...said].reverse().join('') : said;
      }
    }
  return out;
}

const bare = (text: string) => text.replace(/\s+/g, '');

describe('text of a finished file, read by pdf.js', () => {
  it.each(SAMPLES)('every glyph says its letters, spaces too: $language', async (sample) => {
    const pages = onePage(sample);
    const said = (await glyphTexts(await written(pages), 1)).join('');
    expect(said).toBe(inOrderOfGlyphs(pages));
    if (sample.direction === 'ltr') expect(said).toBe(sample.text);
    expect(said.length).toBe(sample.text.length);
  });

  it.each(SAMPLES)('reads in order: $language', async (sample) => {
    const [text] = [...(await textsOf(await written(onePage(sample)), 1)).values()];
    expect(text).toBe(bare(sample.text));
  });

  it('says right-to-left text outright, for readers that cannot guess its order', async () => {
    const [, arabic] = SAMPLES;
    const tree = arabic && (await readTree(await written(onePage(arabic)), 1));
    // pdf.js gives an element's ActualText as its alternative.
    expect(tree?.[0]?.kids[0]).toMatchObject({ role: 'P', alt: arabic?.text });
  });

  it('does not hide a link behind such text', async () => {
    const sheet = createSheet();
    sheet.say('p', 'اقرأ ', { language: 'ar', direction: 'rtl' });
    sheet.say('a', 'المزيد', { language: 'ar', direction: 'rtl' });
    sheet.items.push({
      kind: 'link',
      node: 'a',
      href: 'tel:5550100',
      words: 'المزيد',
      x: 40,
      y: 60,
      width: 60,
      height: 17,
    });
    const pages = pagesOf([sheet], node('d', 'Document', [node('p', 'P', [node('a', 'Link')])]), {
      language: 'ar',
      direction: 'rtl',
    });
    const tree = await readTree(await written(pages), 1);
    expect(tree[0]?.kids).toEqual([{ role: 'P', kids: ['اقرأ', { role: 'Link', kids: ['المزيد', '→'] }] }]);
  });

  it('keeps words apart at a line break that is not drawn', async () => {
    const pages = onePage({ language: 'en', direction: 'ltr', text: 'one\ntwo three\nfour' });
    expect((await glyphTexts(await written(pages), 1)).join('')).toBe('one two three four');
  });

  it('leaves out marks that only steer direction', async () => {
    const pages = onePage({ language: 'en', direction: 'ltr', text: 'Call \u2068555-0100\u2069 now.' });
    expect((await glyphTexts(await written(pages), 1)).join('')).toBe('Call 555-0100 now.');
  });

  it('says letters that were written in pieces as they are drawn', async () => {
    const text = 'Ăn nhiều rau củ quả mỗi ngày, được';
    const pages = onePage({ language: 'vi', direction: 'ltr', text: text.normalize('NFD') });
    const bytes = await written(pages);
    expect((await glyphTexts(bytes, 1)).join('')).toBe(text);
    expect([...(await textsOf(bytes, 1)).values()]).toEqual([bare(text)]);
  });

  it('marks words of another language', async () => {
    const sheet = createSheet();
    sheet.say('p', [
      { text: 'They say ', data: { color: '#000000' } },
      { text: 'frijoles', language: 'es', data: { color: '#000000' } },
      { text: ' 12 ', language: 'ht', data: { color: '#000000' } },
      { text: 'there.', data: { color: '#000000' } },
    ]);
    const pages = pagesOf([sheet], node('d', 'Document', [node('p', 'P')]));
    const content = await contentOf(await written(pages));
    // Digits sound like the text around them.
    expect(content.match(/\/Span <<[^>]*>>/g)).toEqual(['/Span <</Lang (es)>>']);
  });

  it('does not show hidden words, and says them', async () => {
    const sheet = createSheet();
    sheet.say('p', 'Seen.');
    sheet.say('q', 'Only heard.', { hidden: true });
    const pages = pagesOf([sheet], node('d', 'Document', [node('p', 'P'), node('q', 'P')]));
    const bytes = await written(pages);
    expect([...(await textsOf(bytes, 1)).values()]).toEqual(['Seen.', 'Onlyheard.']);
    expect(await contentOf(bytes)).toMatch(/BT\n3 Tr\n[\s\S]*0 Tr\nET/);
  });

  it('never loses or adds a letter, whatever the scripts', async () => {
    const letter = fc.constantFrom(
      ...[
        'a',
        'fi',
        'ffl',
        'é',
        'e\u0301',
        'ộ',
        'o\u0323\u0302',
        'đ',
        ' ',
        ' ',
        '1',
        '½',
        '(',
        ')',
        '.',
        '-',
      ],
      ...['ب', 'لا', 'لًا', 'سَّ', 'الله', 'ة', '٣', '،', '水', '。', '→', '≤'],
    );
    const texts = fc.array(letter, { minLength: 1, maxLength: 30 }).map((parts) => `x${parts.join('')}`);
    await fc.assert(
      fc.asyncProperty(texts, fc.constantFrom('ltr', 'rtl' as const), async (text, direction) => {
        const pages = onePage({ language: direction === 'rtl' ? 'ar' : 'vi', direction, text });
        const said = (await glyphTexts(await written(pages), 1)).join('');
        const letters = (s: string) =>
          [...s.normalize('NFD')]
            .filter((c) => c.trim() !== '')
            .sort()
            .join('');
        expect(letters(said)).toBe(letters(text));
      }),
      { numRuns: 25, seed: 7 },
    );
  });
});

describeWith(['pdftotext'], 'text of a finished file, read by poppler', () => {
  it.each(SAMPLES)('is the text that was set: $language', async (sample) => {
    const text = ask('pdftotext', await written(onePage(sample)), ['-enc', 'UTF-8', '{}', '-']).toString();
    const lines = text
      .replace(/[\u202a-\u202e]/g, '')
      .trim()
      .split(/\s*\n\s*/);
    // Chinese has no spaces between words, so its lines join without any.
    const joined = lines.join(sample.language === 'zh-Hans' ? '' : ' ');
    const words = (said: string) => said.match(/[\p{Script=Arabic}\p{M}]+|\p{Script=Latin}+|\p{N}+/gu);
    // In right-to-left text poppler puts the space beside a full stop or a Latin word on its wrong side.
    if (sample.direction === 'rtl') expect(words(joined)).toEqual(words(sample.text));
    else expect(joined).toBe(sample.text);
    expect(lines.length).toBeGreaterThan(1);
  });
});

describeWith(['pdftoppm'], 'text of a finished file, drawn by poppler', () => {
  it('shows marks over letters, though they are shapes', async () => {
    const dark = async (text: string) => {
      const picture = drawn(await written(onePage({ language: 'ar', direction: 'rtl', text })), 1, 288);
      let count = 0;
      for (let y = 0; y < picture.height / 8; y++)
        for (let x = 0; x < picture.width; x++) if (picture.at(x, y)[0] < 128) count++;
      return count;
    };
    // Shadda and fatha over the letter add ink.
    expect(await dark('سَّ')).toBeGreaterThan((await dark('س')) * 1.1);
  });

  it('shows no hidden words', async () => {
    const sheet = createSheet();
    sheet.say('p', 'Only heard.', { hidden: true });
    const picture = drawn(await written(pagesOf([sheet], node('d', 'Document', [node('p', 'P')]))));
    const inks = new Set<string>();
    for (let y = 0; y < 80; y++) for (let x = 0; x < picture.width; x++) inks.add(picture.at(x, y).join());
    expect(inks).toEqual(new Set(['255,255,255']));
  });
});
