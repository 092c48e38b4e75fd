import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { breaksOf } from '../../src/text/breaks.js';
import { measure, type Paragraph, setParagraph, type TextStyle } from '../../src/text/index.js';
import { fontsOnDisk, style } from './fonts-on-disk.js';

const fonts = fontsOnDisk();
const ARABIC = style({ language: 'ar', direction: 'rtl' });
const SENTENCE =
  'Rinsing canned beans sends some of the salt down the drain. One cup has 460\u00a0mg of sodium before, and less after.';
const IN_ARABIC =
  'اغسل الفاصولياء المعلبة بالماء. في الكوب \u2068460\u00a0mg\u2069 من الصوديوم قبل الغسل، وأقل بعده.';
const IN_CHINESE = '罐装豆子含有460毫克钠。“冲洗”后可减少，详见 USDA（2025）的说明。多吃蔬菜，少吃盐。';
const IN_VIETNAMESE =
  'Đậu đóng hộp: rửa kỹ với nước trước khi nấu để bớt muối. Một chén có 460\u00a0mg natri.';
const SAMPLES: readonly (readonly [string, TextStyle])[] = [
  [SENTENCE, style()],
  [IN_ARABIC, ARABIC],
  [IN_CHINESE, style({ language: 'zh-Hans' })],
  [IN_VIETNAMESE, style({ language: 'vi' })],
];

const set = (text: string, width: number, how: TextStyle = style(), more = {}) =>
  setParagraph(fonts, [{ text }], how, { width, ...more });
const texts = (paragraph: Paragraph) => paragraph.lines.map((line) => line.text);
const anyWidth = fc.integer({ min: 60, max: 400 });

describe('lines', () => {
  it('are broken where words end', () => {
    expect(texts(set(SENTENCE, 220))).toEqual([
      'Rinsing canned beans sends some of ',
      'the salt down the drain. One cup has ',
      '460\u00a0mg of sodium before, and less ',
      'after.',
    ]);
  });

  it('say together what was given, fit the measure and could not hold one word more', () => {
    fc.assert(
      fc.property(fc.constantFrom(...SAMPLES), anyWidth, ([text, how], width) => {
        const paragraph = set(text, width, how);
        expect(texts(paragraph).join('')).toBe(text);
        expect(paragraph.overflow).toBe(false);
        expect(paragraph.width).toBe(Math.max(...paragraph.lines.map((line) => line.width)));
        const places = breaksOf(text).map((b) => b.position);
        let end = 0;
        for (const line of paragraph.lines) {
          const start = end;
          end += line.text.length;
          expect(line.width).toBeLessThanOrEqual(width + 0.01);
          const next = places.find((place) => place > end);
          if (next) expect(measure(fonts, text.slice(start, next), how)).toBeGreaterThan(width);
        }
      }),
    );
  });

  it('carry every letter in their runs', () => {
    fc.assert(
      fc.property(fc.constantFrom(...SAMPLES), anyWidth, ([text, how], width) => {
        for (const line of set(text, width, how).lines) {
          const runs = [...line.runs].sort((a, b) => a.start - b.start);
          expect(runs.map((run) => run.text).join('')).toBe(line.text);
        }
      }),
    );
  });

  it('are as wide as the same words set alone', () => {
    for (const [text, how] of SAMPLES)
      for (const line of set(text, 150, how).lines)
        expect(line.width).toBeCloseTo(measure(fonts, line.text, how), 6);
  });

  it('never part a number from its unit, nor a date', () => {
    fc.assert(
      fc.property(fc.integer({ min: 40, max: 300 }), (width) => {
        const text = 'Eat 1\u202f500\u00a0mg or 270–370 by 11/25/2025, or \u206825/11/2025\u2069 at most';
        for (const line of texts(set(text, width)))
          for (const whole of ['1\u202f500\u00a0mg', '270–370', '11/25/2025', '25/11/2025'])
            for (let cut = 1; cut < whole.length; cut++)
              expect(line.trimEnd().endsWith(` ${whole.slice(0, cut)}`)).toBe(false);
      }),
    );
  });

  it('end at line breaks of every kind', () => {
    expect(texts(set('one\ntwo\r\nthree\u2028four', 300))).toEqual([
      'one\n',
      'two\r\n',
      'three\u2028',
      'four',
    ]);
    expect(texts(set('one\n\ntwo', 300))).toEqual(['one\n', '\n', 'two']);
    const [first, empty] = set('one\n\ntwo', 300).lines;
    expect(first?.runs.map((run) => run.text)).toEqual(['one']);
    expect(empty).toMatchObject({ runs: [], width: 0, height: 17 });
  });

  it('are none for no text', () => {
    const nothing = { lines: [], width: 0, height: 0, overflow: false, excess: 0, missing: [] };
    expect(setParagraph(fonts, [], style(), { width: 100 })).toEqual(nothing);
    expect(setParagraph(fonts, [{ text: '' }], style(), { width: 100 })).toEqual(nothing);
  });

  it('stand on baselines that other fonts do not move', () => {
    const plain = set('salt', 300).lines[0];
    const mixed = set('salt ملح 钠 ⅓ →', 300).lines[0];
    expect(mixed?.baseline).toBe(plain?.baseline);
    expect(mixed?.height).toBe(17);
    expect(mixed?.ascent).toBeGreaterThan(plain?.ascent ?? 0);
    // Half of the leading above and half below, as in CSS 2.2, section 10.8.1; tables give 984 and 316.
    expect(plain?.baseline).toBeCloseTo((17 - 12.5 * (0.984 + 0.316)) / 2 + 12.5 * 0.984, 6);
    expect(set(SENTENCE, 200).height).toBe(17 * set(SENTENCE, 200).lines.length);
  });

  it('hand back what a span carries', () => {
    const link = { href: 'https://example.org' };
    const spans = [{ text: 'See ' }, { text: 'the long source list', data: link }, { text: ' first.' }];
    const runs = setParagraph(fonts, spans, style(), { width: 90 }).lines.flatMap((line) => line.runs);
    const linked = runs.filter((run) => run.span.data === link).map((run) => run.text);
    expect(linked.length).toBeGreaterThan(1);
    expect(linked.join('')).toBe('the long source list');
  });
});

describe('alignment', () => {
  const edges = (paragraph: Paragraph) =>
    paragraph.lines.map((line) => [line.x, line.x + line.width, line.runs[0]?.x] as const);

  it('starts at the left, or at the right in right-to-left text', () => {
    for (const [left, , run] of edges(set(SENTENCE, 200))) expect([left, run]).toEqual([0, 0]);
    for (const [left, right, run] of edges(set(IN_ARABIC, 200, ARABIC))) {
      expect(right).toBeCloseTo(200, 6);
      expect(run).toBe(left);
    }
  });

  it('ends at the other side', () => {
    for (const [, right] of edges(set(SENTENCE, 200, style(), { align: 'end' })))
      expect(right).toBeCloseTo(200, 6);
    for (const [left] of edges(set(IN_ARABIC, 200, ARABIC, { align: 'end' }))) expect(left).toBe(0);
  });

  it('centers each line', () => {
    for (const [left, right] of edges(set(IN_ARABIC, 200, ARABIC, { align: 'center' })))
      expect(left).toBeCloseTo(200 - right, 6);
  });
});

describe('balance', () => {
  it('needs no more lines, says the same and is no wider', () => {
    fc.assert(
      fc.property(fc.constantFrom(...SAMPLES), anyWidth, ([text, how], width) => {
        const plain = set(text, width, how);
        const even = set(text, width, how, { balance: true });
        expect(even.lines).toHaveLength(plain.lines.length);
        expect(texts(even).join('')).toBe(text);
        expect(even.width).toBeLessThanOrEqual(plain.width + 0.01);
        expect(even.overflow).toBe(false);
      }),
    );
  });

  it('evens out a short last line', () => {
    expect(texts(set('Beans and peas, three ways', 150))).toEqual(['Beans and peas, three ', 'ways']);
    expect(texts(set('Beans and peas, three ways', 150, style(), { balance: true }))).toEqual([
      'Beans and peas, ',
      'three ways',
    ]);
  });

  it('aligns in the whole measure', () => {
    const { lines } = set('Beans and peas, three ways', 150, style(), { balance: true, align: 'end' });
    for (const line of lines) expect(line.x + line.width).toBeCloseTo(150, 6);
  });
});

describe('text that does not fit', () => {
  it('stands whole on its own line and is told', () => {
    const paragraph = set('a Fruchtsaftkonzentratbehälter b', 60);
    expect(texts(paragraph)).toEqual(['a ', 'Fruchtsaftkonzentratbehälter ', 'b']);
    expect(paragraph.overflow).toBe(true);
    expect(paragraph.width).toBeGreaterThan(60);
  });

  it('is told of by numbers that may not be cut', () => {
    expect(set('1\u00a0234\u00a0mg', 20).overflow).toBe(true);
    expect(texts(set('1\u00a0234\u00a0mg', 20))).toEqual(['1\u00a0234\u00a0mg']);
  });

  it('sets the lines beyond the most that are wanted, and counts them', () => {
    const lines = set(SENTENCE, 150).lines.length;
    expect(set(SENTENCE, 150, style(), { maxLines: 2 })).toMatchObject({ excess: lines - 2 });
    expect(texts(set(SENTENCE, 150, style(), { maxLines: 2 })).join('')).toBe(SENTENCE);
    expect(set(SENTENCE, 150, style(), { maxLines: lines }).excess).toBe(0);
  });

  it('ends with any measure, even none', () => {
    for (const width of [0, -5, 0.001])
      expect(texts(set('a b\u00a0c d', width))).toEqual(['a ', 'b\u00a0c ', 'd']);
  });
});

describe('any text at all', () => {
  it('comes back whole, in lines, without a crash', () => {
    const anyText = fc.string({ unit: 'binary', maxLength: 40 });
    const how = fc.constantFrom(...SAMPLES.map(([, s]) => s));
    fc.assert(
      fc.property(
        fc.array(anyText, { maxLength: 3 }),
        how,
        anyWidth,
        fc.boolean(),
        (parts, s, width, balance) => {
          const spans = parts.map((text) => ({ text }));
          const paragraph = setParagraph(fonts, spans, s, { width, balance });
          expect(texts(paragraph).join('')).toBe(parts.join(''));
          for (const line of paragraph.lines)
            for (const run of line.runs)
              for (const glyph of run.glyphs) {
                expect(Number.isFinite(glyph.advance)).toBe(true);
                expect(glyph.cluster).toBeGreaterThanOrEqual(0);
                expect(glyph.cluster).toBeLessThan(run.text.length);
              }
        },
      ),
      { numRuns: 200 },
    );
  });
});
