import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type GlyphRun, type Line, measure, setLine, type TextStyle } from '../../src/text/index.js';
import { fontsOnDisk, style } from './fonts-on-disk.js';

const fonts = fontsOnDisk();
const ARABIC = style({ language: 'ar', direction: 'rtl' });

const set = (text: string, how: TextStyle = style()) => setLine(fonts, text, how);
const glyphs = (line: Line) => line.runs.flatMap((run) => run.glyphs);
const ids = (text: string, how?: TextStyle) => glyphs(set(text, how)).map((glyph) => glyph.id);
const familiesOf = (line: Line) => line.runs.map((run) => run.font.id.replace(/-\d+$/, ''));

/** What each glyph stands for, from left to right as drawn. */
function seen(line: Line): string {
  const ofRun = (run: GlyphRun) => {
    const starts = [...new Set(run.glyphs.map((glyph) => glyph.cluster))].sort((a, b) => a - b);
    const order = [...new Set(run.glyphs.map((glyph) => glyph.cluster))];
    return order
      .map((start) => run.text.slice(start, starts[starts.indexOf(start) + 1] ?? run.text.length))
      .join('');
  };
  return line.runs.map(ofRun).join('');
}

describe('families by language', () => {
  it.each([
    ['Rinse the beans', 'en', ['atkinson-hyperlegible-next']],
    ['pingüino', 'es', ['atkinson-hyperlegible-next']],
    ['fè egzèsis', 'ht', ['atkinson-hyperlegible-next']],
    ['rửa kỹ 2 lần', 'vi', ['noto-sans']],
    ['毫克', 'zh-Hans', ['noto-sans-sc']],
    ['含钠460毫克', 'zh-Hans', ['noto-sans-sc', 'atkinson-hyperlegible-next', 'noto-sans-sc']],
    ['“请问”', 'zh-Hans', ['noto-sans-sc']],
    ['看 USDA。', 'zh-Hans', ['noto-sans-sc', 'atkinson-hyperlegible-next', 'noto-sans-sc']],
  ])('%s in %s', (text, language, expected) => {
    expect(familiesOf(set(text, style({ language })))).toEqual(expected);
  });

  it('sets Arabic, its digits and its signs in one family, and Latin words in another', () => {
    expect(familiesOf(set('ملح 460 (كوب).', ARABIC)).every((f) => f === 'vazirmatn')).toBe(true);
    const mixed = set('من (USDA).', ARABIC);
    expect(mixed.runs.map((run) => [run.text, run.font.id])).toEqual([
      [').', 'vazirmatn-400'],
      ['USDA', 'atkinson-hyperlegible-next-400'],
      ['من (', 'vazirmatn-400'],
    ]);
  });

  it('never patches a word together letter by letter', () => {
    // Atkinson Hyperlegible Next has all of these letters but ở, ử, ệ and µ.
    for (const word of ['phở', 'sửa', 'Việt', '5µg', 'β-carotene'])
      expect(new Set(familiesOf(set(word))), word).toEqual(new Set(['noto-sans']));
  });

  it('takes a sign that the family lacks from another, and only the sign', () => {
    expect(set('1⅓ cups').runs.map((run) => [run.text, run.font.id])).toEqual([
      ['1', 'atkinson-hyperlegible-next-400'],
      ['⅓', 'noto-sans-400'],
      [' cups', 'atkinson-hyperlegible-next-400'],
    ]);
    expect(familiesOf(set('a → b'))).toEqual([
      'atkinson-hyperlegible-next',
      'noto-sans-math',
      'atkinson-hyperlegible-next',
    ]);
  });

  it('follows the language and weight of a span', () => {
    const line = setLine(
      fonts,
      [
        { text: 'Free: ' },
        { text: 'miễn phí', language: 'vi', weight: 700 },
        { text: ' 免费', language: 'zh-Hans' },
      ],
      style(),
    );
    expect(line.runs.map((run) => [run.font.id, run.language])).toEqual([
      ['atkinson-hyperlegible-next-400', 'en'],
      ['noto-sans-700', 'vi'],
      ['noto-sans-sc-400', 'zh-Hans'],
    ]);
  });
});

describe('Arabic', () => {
  // The Unicode Standard, section 9.2: letters have up to four forms by what they join to.
  it('gives a letter its four forms', () => {
    const [last, middle, first] = ids('ببب', ARABIC);
    expect(new Set([last, middle, first, ...ids('ب', ARABIC)]).size).toBe(4);
  });

  // The Unicode Standard, section 9.2: the ligatures of lam and alef are required.
  it('joins lam and alef to one glyph that stands for both', () => {
    const [run] = set('لا', ARABIC).runs;
    expect(run?.glyphs.map((glyph) => glyph.cluster)).toEqual([0]);
    expect(run?.rtl).toBe(true);
  });

  it('joins letters over the border of two spans', () => {
    const whole = ids('محمد', ARABIC);
    const parts = setLine(fonts, [{ text: 'مح' }, { text: 'مد' }], ARABIC);
    expect(glyphs(parts).map((glyph) => glyph.id)).toEqual(whole);
    expect(parts.runs.map((run) => run.text)).toEqual(['مد', 'مح']);
  });

  it('does not join over a zero width non-joiner, as Persian writes', () => {
    const persian = style({ language: 'fa', direction: 'rtl' });
    const visible = (text: string) =>
      glyphs(set(text, persian))
        .filter((g) => g.advance > 0)
        .map((g) => g.id);
    expect(visible('می\u200cخورم')).not.toEqual(visible('میخورم'));
    expect(visible('می\u200cخورم')).toHaveLength(6);
  });

  it('puts vowel signs on their letter, without width', () => {
    const bare = set('محمد', ARABIC);
    const full = set('مُحَمَّد', ARABIC);
    expect(full.width).toBeCloseTo(bare.width, 6);
    const marks = glyphs(full).filter((glyph) => glyph.advance === 0);
    expect(marks.length).toBeGreaterThanOrEqual(3);
    for (const mark of marks) expect(mark.dx).toBeGreaterThan(0);
    // Grapheme clusters: a mark has the number of its letter.
    const letters = glyphs(full)
      .filter((glyph) => glyph.advance > 0)
      .map((glyph) => glyph.cluster);
    for (const mark of marks) expect(letters).toContain(mark.cluster);
  });

  it('is never tracked', () => {
    expect(set('الملح', { ...ARABIC, tracking: 0.1 }).width).toBeCloseTo(set('الملح', ARABIC).width, 6);
  });
});

describe('reading order', () => {
  // Expected orders follow Unicode Standard Annex 9; see bidi.test.ts for its published lines.
  it.each([
    ['digits keep their order among Arabic words', 'في 460 ملغ', 'rtl', 'غلم 460 يف'],
    ['a date in isolates stays whole', 'يوم \u206825/11/2025\u2069.', 'rtl', '.\u206925/11/2025\u2068 موي'],
    ['brackets face each other', 'ملح (USDA)', 'rtl', ')USDA( حلم'],
    ['Arabic in an English line', 'say ملح now', 'ltr', 'say حلم now'],
    ['a stop belongs to the English line', 'say ملح.', 'ltr', 'say حلم.'],
    ['English in an Arabic line', 'قل salt now الآن', 'rtl', 'نآلا salt now لق'],
  ] as const)('%s', (_, text, direction, expected) => {
    const line = set(text, style({ language: direction === 'rtl' ? 'ar' : 'en', direction }));
    // Lam and alef are one glyph, so its two letters stand in reading order.
    expect(seen(line).replace('لآ', 'آل')).toBe(expected);
  });

  it('mirrors brackets in Arabic', () => {
    const open = ids('(', style({ language: 'ar', direction: 'ltr' }));
    expect(ids(')', ARABIC)).toEqual(open);
  });

  it('keeps runs side by side from left to right', () => {
    for (const line of [set('في 460 ملغ (USDA 2025) و', ARABIC), set('say ملح 20 now ⅓')]) {
      let x = line.x;
      for (const run of line.runs) {
        expect(run.x).toBeCloseTo(x, 6);
        x += run.width;
      }
      expect(x - line.x).toBeCloseTo(line.width, 6);
    }
  });
});

describe('letters and marks', () => {
  it('sets a letter the same, however its accents are written', () => {
    // Unicode Standard Annex 15: canonically equivalent texts look alike.
    for (const [text, language] of [
      ['ệ ỗ ấ', 'vi'],
      ['é ñ ü', 'es'],
      ['è ò', 'ht'],
    ] as const) {
      const how = style({ language });
      expect(ids(text.normalize('NFD'), how)).toEqual(ids(text.normalize('NFC'), how));
    }
  });

  it('kerns', () => {
    const apart = measure(fonts, 'A', style()) + measure(fonts, 'V', style());
    expect(measure(fonts, 'AV', style())).toBeLessThan(apart - 0.1);
  });

  it('gives each letter of left-to-right text its own number', () => {
    expect(glyphs(set('sodium')).map((glyph) => glyph.cluster)).toEqual([0, 1, 2, 3, 4, 5]);
    expect(glyphs(set('a🙂b')).map((glyph) => glyph.cluster)).toEqual([0, 1, 3]);
  });

  it('adds tracking to each letter and to no mark', () => {
    const wide = measure(fonts, 'abc', style({ tracking: 0.1 }));
    expect(wide).toBeCloseTo(measure(fonts, 'abc', style()) + 3 * 1.25, 6);
    const marked = setLine(fonts, 'x\u0323', style({ language: 'vi', tracking: 0.1 }));
    expect(marked.width).toBeCloseTo(measure(fonts, 'x', style({ language: 'vi', tracking: 0.1 })), 6);
  });

  it('has digits of one width for columns', () => {
    const width = (digit: string, tabular: boolean) => measure(fonts, digit, style({ tabular }));
    const columns = new Set([...'0123456789'].map((digit) => width(digit, true).toFixed(6)));
    expect(columns.size).toBe(1);
    expect(width('1', false)).toBeLessThan(width('0', false));
  });
});

describe('what does not show', () => {
  const VISIBLE = '460mg';
  it.each([
    ['no-break space', '\u00a0', 0.28],
    ['narrow no-break space', '\u202f', 0.14],
    ['word joiner', '\u2060', 0],
    ['left-to-right isolate', '\u2066', 0],
    ['right-to-left isolate', '\u2067', 0],
    ['first strong isolate', '\u2068', 0],
    ['end of isolate', '\u2069', 0],
    ['zero width space', '\u200b', 0],
    ['zero width joiner', '\u200d', 0],
    ['soft hyphen', '\u00ad', 0],
    ['left-to-right mark', '\u200e', 0],
    ['variation selector', '\ufe0f', 0],
  ])('%s', (_, character, em) => {
    const line = set(`460${character}mg`);
    expect(line.missing).toEqual([]);
    expect(line.runs.flatMap((run) => run.glyphs).some((glyph) => glyph.id === 0)).toBe(false);
    expect(line.runs.map((run) => run.font.path(run.glyphs[3]?.id ?? 0))).toContain('');
    expect(line.width).toBeCloseTo(measure(fonts, VISIBLE, style()) + em * 12.5, 2);
  });

  it.each([
    ['tab', 'a\tb', 'a b'],
    ['line break', 'a\nb', 'a b'],
    ['hyphen', 'low‐salt', 'low-salt'],
    ['no-break hyphen', 'low‑salt', 'low-salt'],
  ])('a %s on one line is drawn as its look-alike', (_, text, like) => {
    expect(ids(text)).toEqual(ids(like));
    expect(set(text).missing).toEqual([]);
    expect(set(text).text).toBe(text);
  });
});

describe('measures', () => {
  const word = fc.stringMatching(/^[a-z]{1,9}$/);

  it('grow in step with the size', () => {
    fc.assert(
      fc.property(word, fc.integer({ min: 1, max: 90 }), (text, size) => {
        expect(measure(fonts, text, style({ size }))).toBeCloseTo(
          size * measure(fonts, text, style({ size: 1 })),
          6,
        );
      }),
    );
  });

  it('add up over spans, which are shaped apart', () => {
    fc.assert(
      fc.property(fc.array(word, { maxLength: 6 }), (words) => {
        const sum = words.reduce((total, w) => total + measure(fonts, w, style()), 0);
        const spans = words.map((text) => ({ text }));
        expect(setLine(fonts, spans, style()).width).toBeCloseTo(sum, 6);
      }),
    );
  });

  it('are the sum of the advances', () => {
    fc.assert(
      fc.property(fc.constantFrom(style(), ARABIC), fc.string({ unit: 'grapheme' }), (how, text) => {
        const line = set(text, how);
        const sum = glyphs(line).reduce((total, glyph) => total + glyph.advance, 0);
        expect(sum).toBeCloseTo(line.width, 6);
        expect(line.runs.map((run) => text.slice(run.start, run.start + run.text.length))).toEqual(
          line.runs.map((run) => run.text),
        );
      }),
    );
  });

  it('do not count spaces at the end, in either direction', () => {
    for (const [text, how] of [
      ['salt', style()],
      ['ملح', ARABIC],
      ['ملح', style()],
      ['salt', ARABIC],
    ] as const) {
      const spaced = set(`${text}  `, how);
      expect(spaced.width).toBeCloseTo(set(text, how).width, 6);
      expect(spaced.runs.reduce((length, run) => length + run.text.length, 0)).toBe(text.length + 2);
    }
  });

  it('of nothing are nothing', () => {
    expect(set('')).toMatchObject({ runs: [], width: 0, height: 17, text: '', missing: [] });
    expect(measure(fonts, '   ', style())).toBe(0);
  });
});

describe('what was learned', () => {
  it('does not change what is set next', () => {
    const fresh = fontsOnDisk();
    const texts = ['Rinse 460\u00a0mg', 'AV', 'ﬁ fi', 'كتاب', 'Rinse 460\u00a0mg'];
    const again = texts.map((text) => setLine(fresh, text, style()));
    const alone = texts.map((text) => setLine(fontsOnDisk(), text, style()));
    const plain = (lines: readonly Line[]) => lines.map((line) => glyphs(line));
    expect(plain(again)).toEqual(plain(alone));
  });

  it('keeps joined and lone pieces of Arabic apart', () => {
    const lone = ids('كت', ARABIC);
    const parts = setLine(fonts, [{ text: 'كت' }, { text: 'اب' }], ARABIC);
    expect(parts.runs.find((run) => run.text === 'كت')?.glyphs.map((g) => g.id)).not.toEqual(lone);
    expect(ids('كت', ARABIC)).toEqual(lone);
  });
});
