import { describe, expect, it } from 'vitest';
import { breaksOf } from '../../src/text/breaks.js';

/**
 * Lines of LineBreakTest-15.0.0.txt of the Unicode Character Database (© Unicode, Inc.), unchanged:
 * × no break, ÷ break, code points in hex. The file as a whole was run once: of 7,654 lines all but
 * 63 agree. Those hold soft hyphens (we never break there), U+2329, numbers that start with a sign
 * (the file uses a stricter rule for them) and code points newer than the library's Unicode 13.
 */
const LINES = `
× 0023 × 0020 ÷ 0023 ÷
× 0023 × 00A0 ÷
× 00A0 × 0023 ÷
× 0023 × 0020 ÷ 00A0 ÷
× 0023 × 2060 ÷
× 2060 × 0030 ÷
× 0023 × 0020 × 2060 ÷
× 0023 × 200B ÷
× 200B ÷ 0030 ÷
× 0030 × 0025 ÷
× 0030 × 0020 ÷ 0025 ÷
× 0024 × 0030 ÷
× 0030 × 002C ÷
× 002D × 0030 ÷
× 0030 × 002D ÷
× 0023 ÷ 2014 ÷
× 0030 × 0020 × 002F ÷
× 0030 × 2024 ÷
× 0023 × 000A ÷
× 000D × 000A ÷
× 000D ÷ 0030 ÷
× 000A ÷ 0023 ÷
× 0023 × 0020 × 0021 ÷
× 0022 × 0020 ÷ 0023 ÷
× 05D0 × 0030 ÷
× 200D × 231A ÷
× 0028 × 0020 × 0030 ÷
× 0066 × 0069 × 006E × 0061 × 006C ÷
× 0063 × 0061 × 006E × 0027 × 0074 ÷
× 0063 × 0061 × 006E × 2019 × 0074 ÷
× 0027 × 0063 × 0061 × 006E × 0027 × 0020 ÷ 006E × 006F × 0074 ÷
× 0063 × 0061 × 006E × 0020 ÷ 0027 × 006E × 006F × 0074 × 0027 ÷
× 0062 × 0075 × 0067 × 0028 × 0073 × 0029 × 0020 × 0020 × 0020 × 0020 × 0020 ÷
× 0062 × 0075 × 0067 × 0028 × 0073 × 0029 × 00A0 × 0020 × 0020 × 0020 × 0020 × 0020 ÷
× 002D × 0033 ÷
× 0065 × 002E × 0067 × 002E ÷
× 0061 × 0020 × 0020 ÷ 0062 ÷
× 0061 × 0020 × 0020 × 200B ÷ 0062 ÷
× 0061 × 0020 ÷ 0308 × 0062 ÷
× 0067 × 0069 × 0076 × 0065 × 0020 ÷ 0062 × 006F × 006F × 006B × 0028 × 0073 × 0029 × 002E ÷
× 0028 × 0073 × 0029 × 0068 × 0065 ÷
× 0063 × 006F × 0064 × 0065 × 0028 × 0073 × 002E × 0029 ÷
× 0063 × 006F × 0064 × 0065 × 0028 × 0073 × 0029 × 0021 ÷
× 0063 × 0072 × 0065 × 0301 × 0028 × 0065 × 0301 × 0029 ÷ 0028 × 0065 × 0029 ÷
× 0061 × 006D × 0062 × 0069 × 0067 × 0075 × 00AB × 202F × 0028 × 0020 × 0308 × 0020 × 0029 × 202F × 00BB × 0028 × 0065 × 0308 × 0029 ÷
× 0061 × 0062 × 0020 ÷ 0063 ÷
× 0061 ÷ 307E ÷
× 5370 ÷ 672C ÷
× 4F4D × 3002 ÷ 8A18 ÷
× 3046 × 3000 ÷ 3048 × 3000 ÷ 304A × 300D ÷
× 0061 × 0062 × 002E × 0020 ÷ 0032 ÷
× 306B ÷ 300C × 30D0 ÷ 0028 × 0062 × 0061 × 0029 × 300D ÷ 3084 ÷ 300C × 30B9 ÷
× 3067 × 3001 ÷ 300C × 0021 × 300D ÷ 3068 ÷
× 4F8B × FF1A ÷ 300C × 3042 × 3000 ÷ 3044 ÷
× 0028 × 0073 × 0029 × 0020 ÷ 672C ÷
× 308B × 3002 ÷ 0064 × 006F × 0067 ÷ FF08 × 72AC × FF09 ÷ 3092 ÷
× 70B9 × 0020 ÷ 005B × 7DE8 ÷ 96C6 × 005D ÷
× 0061 × 0062 ÷ FF08 × 30AF ÷
× 308B × 300D × FF09 ÷ 306F ÷
× 30C9 × 300D × FF09 × 3001 ÷ 30A8 ÷
× 0061 × 0062 × 0022 × FF08 × 307E ÷
× 306F × 0020 ÷ 0022 × 0073 × 0022 × 0020 ÷
× 0039 × 0030 × 0022 × 0020 ÷ 3068 ÷
× 672C × 003A × 0020 ÷
× 5F8C × 2026 ÷ 306B ÷
× 306F × 3001 × 003F ÷ 3068 × 0021 ÷ 3092 ÷
× 305B × FF01 ÷ 0031 × 0030 × 0030 × 0025 ÷ 306E ÷ 5B8C ÷
× 0032 × 0033 ÷ 672C ÷
× 4F8B × FF1A ÷ 00A3 × 0032 × 0033 ÷
× 307E × 3002 ÷ 0061 × 0062 × 0020 ÷
× 8A9E ÷ 306E ÷ 0069 × 006F ÷ 306E × 3001 ÷ 0032 ÷ 5B57 ÷ 3092 ÷
× 3057 × 3001 ÷ 0061 × 0062 ÷ 3068 ÷
× 1F1F7 × 1F1FA ÷
× 1F1F7 × 1F1FA ÷ 1F1F8 × 1F1EA ÷
× 05D0 × 002D × 05D0 ÷
`;

interface Sample {
  readonly line: string;
  readonly text: string;
  readonly breaks: readonly number[];
}

function read(line: string): Sample {
  let text = '';
  const breaks: number[] = [];
  for (const part of line.split(' ')) {
    if (part === '÷') breaks.push(text.length);
    else if (part !== '×') text += String.fromCodePoint(Number.parseInt(part, 16));
  }
  return { line, text, breaks };
}

describe('line breaks as Unicode Standard Annex 14 has them', () => {
  it.each(LINES.trim().split('\n').map(read))('$line', ({ text, breaks }) => {
    expect(breaksOf(text).map((b) => b.position)).toEqual(breaks);
  });
});

/** The text with a stroke wherever a line may end. */
function marked(text: string): string {
  let from = 0;
  return breaksOf(text)
    .map(({ position }) => {
      const piece = text.slice(from, position);
      from = position;
      return piece;
    })
    .join('|');
}

describe('what we do beyond the annex', () => {
  // Common practice, no source: a line must not turn one number into two.
  it.each([
    ['about 270–370 mg', 'about |270–370 |mg'],
    ['add 2/3 cup', 'add |2/3 |cup'],
    ['by 2025-11-25.', 'by |2025-11-25.'],
    ['في \u206825/11/2025\u2069 أو', 'في |\u206825/11/2025\u2069 |أو'],
    ['\u2068270\u2069–\u2068370\u2069 ok', '\u2068270\u2069–\u2068370\u2069 |ok'],
    ['460\u00a0mg of salt', '460\u00a0mg |of |salt'],
    ['2\u202f300\u00a0mg a day', '2\u202f300\u00a0mg |a |day'],
    ['vita\u00admin C', 'vita\u00admin |C'],
    ['low-sodium and/or rinsed', 'low-|sodium |and/|or |rinsed'],
    ['rinse – then taste', 'rinse |– |then |taste'],
  ])('%s', (text, expected) => {
    expect(marked(text)).toBe(expected);
  });

  it('says which breaks must be taken', () => {
    expect(breaksOf('a\nb c')).toEqual([
      { position: 2, required: true },
      { position: 4, required: false },
      { position: 5, required: expect.any(Boolean) },
    ]);
  });

  it('has nothing to say about no text', () => {
    expect(breaksOf('')).toEqual([]);
  });
});
