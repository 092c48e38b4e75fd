import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FORMULAS } from '../../src/reading/measures/formulas/index.js';
import {
  type Counts,
  MEASURED,
  type MeasuredLanguage,
  measureReading,
} from '../../src/reading/measures/index.js';
import { ENGLISH, OTHERS } from './passages.js';
import { measured } from './scores.js';

const TEXTS: Readonly<Record<MeasuredLanguage, readonly string[]>> = {
  en: ENGLISH,
  es: [OTHERS.es],
  fr: [OTHERS.fr],
  pt: [OTHERS.pt],
  de: [OTHERS.de],
  it: [OTHERS.it],
};

/** The same measure as a number that grows with hardness. */
function hardness(scores: ReturnType<typeof measured>['scores']): readonly (number | null)[] {
  return scores.map(({ value, scale }) => (value === null ? null : scale === 'ease' ? -value : value));
}

describe('whatever the text', () => {
  it('nothing is thrown, and every value is a number or says why not', () => {
    const anything = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 300 }),
      fc.string({ unit: fc.constantFrom(...'aeB1.!?-\n •’#½é漢ا  '), maxLength: 200 }),
    );
    fc.assert(
      fc.property(anything, fc.oneof(fc.constantFrom(...MEASURED), fc.string()), (text, tag) => {
        const found = measureReading(text, tag);
        if (!found.measured) expect(found.says).not.toBe('');
        else
          for (const { value, why } of found.scores)
            expect(value === null ? why : Number.isFinite(value)).toBeTruthy();
      }),
      { numRuns: 500 },
    );
  });

  it.each(['', ' \n\t ', '—!?', '# Only a heading', '🫘🫘'])('%j has no words to measure', (text) => {
    expect(measureReading(text, 'en')).toMatchObject({ measured: false, reason: 'no-words' });
  });

  it.each(['zh-Hans', 'vi', 'so', 'ht', 'tl', 'ar', 'ar-EG', 'xx', '', 'not a tag'])(
    '%j gets a refusal and never a grade',
    (tag) => {
      const found = measureReading(ENGLISH[0], tag);
      expect(found).toMatchObject({ measured: false, reason: 'no-measure-for-language' });
      expect(found).not.toHaveProperty('scores');
      expect(found.measured ? '' : found.says).toMatch(/^No grade is given for /);
    },
  );

  it('a huge text is measured quickly', () => {
    const found = measured(`${ENGLISH[0]}\n\n`.repeat(200), 'en');
    expect(found.counts.words).toBe(measured(ENGLISH[0], 'en').counts.words * 200);
  });
});

describe('properties of every formula', () => {
  const cases = MEASURED.flatMap((language) => TEXTS[language].map((text) => [language, text] as const));

  it.each(cases)('%s: a passage twice over scores the same', (language, text) => {
    const once = hardness(measured(text, language).scores);
    const twice = hardness(measured(`${text}\n\n${text}`, language).scores);
    twice.forEach((value, i) => expect(value).toBeCloseTo(Number(once[i]), 9));
  });

  it.each(cases)('%s: the same words in longer sentences are never easier', (language, text) => {
    const before = hardness(measured(text, language).scores);
    // Two sentences become one when a comma takes the place of the full stop.
    const joined = text.replace(/\. (\p{Lu})/u, (_, letter: string) => `, ${letter.toLowerCase()}`);
    const after = hardness(measured(joined, language).scores);
    after.forEach((value, i) => expect(value).toBeGreaterThanOrEqual(Number(before[i]) - 1e-9));
  });

  it.each(MEASURED)('%s: fewer sentences for the same counts are never easier', (language) => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 60 }),
        fc.integer({ min: 2, max: 40 }),
        share,
        (sentences, each, part) => {
          const words = sentences * each;
          const some = Math.round(words * part);
          const counts: Counts = {
            sentences,
            words,
            letters: words * 4,
            characters: words * 4,
            numerals: 0,
            longWords: some,
            syllables: words + some,
            monosyllables: words - some,
            polysyllables: some,
            complexWords: some,
            difficultWords: some,
            unfamiliarWords: some,
          };
          for (const formula of FORMULAS[language]) {
            const [long] = hardness([formula.score({ ...counts, sentences: sentences - 1 })]);
            const [short] = hardness([formula.score(counts)]);
            expect(Number(long), formula.id).toBeGreaterThanOrEqual(Number(short) - 1e-9);
          }
        },
      ),
    );
  });

  it('a passage under 100 words is marked', () => {
    expect(measured(ENGLISH[2], 'en').warnings.map(({ code }) => code)).toEqual(['short-passage']);
    expect(measured(`${ENGLISH[0]} ${ENGLISH[1]}`, 'en').warnings).toEqual([]);
  });
});
