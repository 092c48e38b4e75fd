import { describe, expect, it } from 'vitest';
import { smog, smogQuick } from '../../src/reading/measures/formulas/english.js';
import { amstad, wiener1, wiener2, wiener3, wiener4 } from '../../src/reading/measures/formulas/german.js';
import { FORMULAS } from '../../src/reading/measures/formulas/index.js';
import { gulpease } from '../../src/reading/measures/formulas/romance.js';
import { daleChall } from '../../src/reading/measures/formulas/word-lists.js';
import { MEASURED } from '../../src/reading/measures/index.js';
import { ENGLISH, OTHERS } from './passages.js';
import { measured, workedAgain } from './scores.js';

const TEXTS = { ...OTHERS, en: ENGLISH[0] };

describe('each formula', () => {
  it.each(MEASURED)('for %s carries a text that gives its value', (language) => {
    for (const score of measured(TEXTS[language], language).scores) {
      expect(workedAgain(score), score.id).toBeCloseTo(Number(score.value), 9);
      expect(score.source, score.id).toMatch(/\d{4}/);
      expect(score.madeFor.length, score.id).toBeGreaterThan(10);
    }
  });

  it.each(MEASURED)('for %s has its own id', (language) => {
    const ids = FORMULAS[language].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('has no value, and says why, where a count is missing or zero', () => {
    expect(amstad.score({ words: 10, sentences: 1, syllables: null })).toMatchObject({
      value: null,
      why: 'Not counted here: syllables.',
    });
    const empty = amstad.score({ words: 0, sentences: 0, syllables: 0 });
    expect(empty.value).toBeNull();
    expect(empty.why).toContain('no words');
    expect(smogQuick({ polysyllables: 3, sentences: 0 })).toBeNull();
  });
});

describe('German factual prose, by hand', () => {
  // 20 percent of three syllables and more, 12 words a sentence, 25 percent long, 50 percent of one syllable.
  const counts = { words: 120, sentences: 10, polysyllables: 24, longWords: 30, monosyllables: 60 };
  it.each([
    // 3.87 + 2.0064 + 3.2425 − 1.635 − 0.875
    [wiener1, 6.6089],
    // 4.014 + 2.0184 + 3.4325 − 2.779
    [wiener2, 6.6859],
    // 5.926 + 2.286 − 1.1144
    [wiener3, 7.0976],
    // 5.488 + 3.1872 − 1.693
    [wiener4, 6.9822],
  ] as const)('%o is %d', (formula, value) => {
    const score = formula.score(counts);
    expect(score.value).toBeCloseTo(value, 4);
    expect(workedAgain(score)).toBeCloseTo(value, 4);
  });
});

describe('Italian, by hand', () => {
  it.each([
    // 89 + (300 × 10 − 10 × 500) ÷ 100
    [10, 500, 69, 'hard for readers who finished primary school'],
    [5, 500, 54, 'hard for readers who finished lower secondary school'],
    [1, 530, 39, 'hard for readers who finished upper secondary school'],
    [16, 420, 95, 'easy for readers who finished primary school'],
  ])('%d sentences and %d letters in 100 words are %d: %s', (sentences, letters, value, band) => {
    expect(gulpease.score({ words: 100, sentences, letters })).toMatchObject({ value, band });
  });
});

describe('bounds', () => {
  it('of SMOG: scaled from 10 to 29 sentences with a warning, from 30 without', () => {
    const codes = [9, 10, 29, 30].map((sentences) =>
      smog.score({ polysyllables: 9, sentences }).warnings.map(({ code }) => code),
    );
    expect(codes).toEqual([['unreliable'], ['few-sentences'], ['few-sentences'], []]);
  });

  it('of Dale-Chall: the constant only above 5 percent, and the grades of the paper', () => {
    const at = (difficultWords: number) => daleChall.score({ words: 100, sentences: 10, difficultWords });
    // 0.1579 × 5 + 0.0496 × 10
    expect(at(5).value).toBeCloseTo(1.2855, 6);
    // 0.1579 × 6 + 0.496 + 3.6365
    expect(at(6).value).toBeCloseTo(5.0799, 6);
    expect([at(5).band, at(6).band, at(40).band]).toEqual([
      'grade 4 and below',
      'grades 5 and 6',
      'grade 16 and above',
    ]);
  });
});
