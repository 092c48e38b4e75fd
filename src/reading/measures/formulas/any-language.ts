import { defineFormula } from '../formula.js';

const ANY =
  'Swedish text; used across languages with alphabets, where its words for values do not carry over';

/** Björnsson CH. Läsbarhet. Stockholm 1968. Words per sentence and percent of words over six letters. */
export const lix = defineFormula({
  id: 'lix',
  name: 'LIX',
  scale: 'index',
  source: 'Björnsson CH. Läsbarhet. Liber, Stockholm 1968',
  checked: 'copies',
  madeFor: ANY,
  inputs: ['words', 'sentences', 'longWords'],
  formula: 'words / sentences + 100 * long_words / words',
  work: (c) => c.words / c.sentences + (100 * c.longWords) / c.words,
});

/** Anderson J. Lix and Rix: variations on a little-known readability index. J Reading 1983;26:490-6. */
export const rix = defineFormula({
  id: 'rix',
  name: 'RIX',
  scale: 'index',
  source: 'Anderson J. J Reading 1983;26:490-6',
  checked: 'copies',
  madeFor: ANY,
  inputs: ['sentences', 'longWords'],
  formula: 'long_words / sentences',
  work: (c) => c.longWords / c.sentences,
});

/**
 * El-Haj M, Rayson P. OSMAN: a novel Arabic readability metric. LREC 2016. From counts only: text without its
 * short vowels hides the syllables, so no Arabic text is measured here.
 */
export const osman = defineFormula({
  id: 'osman',
  name: 'OSMAN',
  scale: 'ease',
  source: 'El-Haj M, Rayson P. LREC 2016:250-5',
  checked: 'copies',
  madeFor: 'Arabic text with all short vowels written',
  inputs: ['words', 'sentences', 'hardWords', 'syllables', 'complexWords', 'highStyleWords'],
  formula:
    '200.791 - 1.015 * words / sentences - 24.181 * (hard_words / words + syllables / words + complex_words / words + high_style_words / words)',
  work: (c) =>
    200.791 -
    (1.015 * c.words) / c.sentences -
    (24.181 * (c.hardWords + c.syllables + c.complexWords + c.highStyleWords)) / c.words,
});
