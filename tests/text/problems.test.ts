import { describe, expect, it } from 'vitest';
import { noGlyph, setLine, setParagraph, textCodes } from '../../src/text/index.js';
import { fontsOnDisk, style } from './fonts-on-disk.js';

const fonts = fontsOnDisk();

describe('a character that no font has', () => {
  it('is named once, with the box drawn in its place', () => {
    const line = setLine(fonts, 'Rinse 🙂 and taste 🙂 ꙮ', style());
    expect(line.missing).toEqual([
      { character: '🙂', codePoint: 0x1f642 },
      { character: 'ꙮ', codePoint: 0xa66e },
    ]);
    expect(line.runs.flatMap((run) => run.glyphs).filter((glyph) => glyph.id === 0)).toHaveLength(3);
  });

  it('is found in a paragraph and in any language', () => {
    for (const language of ['en', 'es', 'ht', 'vi', 'ar', 'zh-Hans']) {
      const set = setParagraph(fonts, [{ text: 'a ' }, { text: '🍲' }], style({ language }), { width: 99 });
      expect(set.missing.map((m) => m.character)).toEqual(['🍲']);
    }
  });

  it('may be a lone half of a pair, a control character or a mark', () => {
    expect(setLine(fonts, 'a\ud83d', style()).missing).toEqual([{ character: '\ud83d', codePoint: 0xd83d }]);
    expect(setLine(fonts, 'a\u0007', style()).missing).toEqual([{ character: '\u0007', codePoint: 7 }]);
    expect(setLine(fonts, 'a\u0f71', style()).missing).toEqual([{ character: '\u0f71', codePoint: 0xf71 }]);
  });

  it('is nothing that any of our languages writes', () => {
    for (const text of [
      'One cup: 2,300 mg; ½, ⅓, 1¾ × 2 ÷ 4 − 1 ≤ 5 ≥ 6 ≈ 7 °F 37 °C 5 µg ±2 % & # / \\ @ [x] {y} "q" ‘s’ “d” – — …',
      'Añade ¿cuánta? ¡Qué ricos frijoles! pingüino «así»',
      'Manje, bwè, fè egzèsis: òt, kò, à',
      'Ăn đậu, rửa kỹ; ẳẵặếềểễệ ỉịọỏốồổỗộớờởỡợ ụủứừửữự ỳỵỷỹ ₫',
      'اغسل الفاصولياء؟ نعم، ٢٣٠٠ ملغ؛ ٥٠٪ «هكذا» (أو) لا… مُفِيدٌ',
      '罐装豆子：含钠２３００毫克。（冲洗）、“请问”医生！《说明》…',
      '→ ← ↑ ↓ ✓ ☐ ☑',
    ])
      expect(setLine(fonts, text, style()).missing).toEqual([]);
  });
});

describe('the problem made of it', () => {
  it('names the characters and what to do, at the place it is given', () => {
    const { missing } = setLine(fonts, '🙂 ꙮ', style());
    const place = { file: 'lesson.md', line: 3, column: 5 };
    expect(noGlyph(missing, place)).toEqual({
      code: 'text/no-glyph',
      severity: 'stop',
      message: 'No font has a drawing for “🙂” (U+1F642), “ꙮ” (U+A66E).',
      hint: 'Write them in words or with other characters.',
      actual: '🙂 ꙮ',
      place,
    });
  });

  it('gives only the number of what would not show', () => {
    const problem = noGlyph([{ character: '\u0007', codePoint: 7 }]);
    expect(problem?.message).toBe('No font has a drawing for U+0007.');
    expect(problem?.hint).toBe('Write it in words or with other characters.');
  });

  it('is not there when nothing is missing', () => {
    expect(noGlyph([])).toBeUndefined();
  });

  it('has a rule and a reason for its code', () => {
    for (const [code, info] of Object.entries(textCodes)) {
      expect(code).toMatch(/^text\/[a-z-]+$/);
      expect(info.rule).toMatch(/\.$/);
      expect(info.about.length).toBeGreaterThan(80);
    }
  });
});
