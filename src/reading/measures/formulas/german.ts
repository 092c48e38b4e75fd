import { defineFormula } from '../formula.js';

/** Amstad T. Wie verständlich sind unsere Zeitungen? Thesis, Zürich 1978. */
export const amstad = defineFormula({
  id: 'amstad',
  name: 'Amstad reading ease',
  scale: 'ease',
  source: 'Amstad T. Thesis, Zürich 1978',
  checked: 'copies',
  madeFor: 'running German text; normed on newspapers',
  inputs: ['words', 'sentences', 'syllables'],
  formula: '180 - words / sentences - 58.5 * syllables / words',
  work: (c) => 180 - c.words / c.sentences - (58.5 * c.syllables) / c.words,
});

/** Words of three syllables and more, long words and words of one syllable, all in percent; words per sentence. */
const VIENNA = {
  scale: 'grade',
  source: 'Bamberger R, Vanecek E. Lesen, Verstehen, Lernen, Schreiben. Wien 1984',
  checked: 'copies',
  madeFor: 'German factual prose for school grades 4 to 15',
} as const;

/** Bamberger & Vanecek 1984, first Wiener Sachtextformel. A school grade. */
export const wiener1 = defineFormula({
  ...VIENNA,
  id: 'wiener-1',
  name: 'first Wiener Sachtextformel',
  inputs: ['words', 'sentences', 'polysyllables', 'longWords', 'monosyllables'],
  formula:
    '0.1935 * 100 * polysyllables / words + 0.1672 * words / sentences + 0.1297 * 100 * long_words / words - 0.0327 * 100 * monosyllables / words - 0.875',
  work: (c) =>
    (19.35 * c.polysyllables) / c.words +
    (0.1672 * c.words) / c.sentences +
    (12.97 * c.longWords) / c.words -
    (3.27 * c.monosyllables) / c.words -
    0.875,
});

/** Bamberger & Vanecek 1984, second formula, without words of one syllable. */
export const wiener2 = defineFormula({
  ...VIENNA,
  id: 'wiener-2',
  name: 'second Wiener Sachtextformel',
  inputs: ['words', 'sentences', 'polysyllables', 'longWords'],
  formula:
    '0.2007 * 100 * polysyllables / words + 0.1682 * words / sentences + 0.1373 * 100 * long_words / words - 2.779',
  work: (c) =>
    (20.07 * c.polysyllables) / c.words +
    (0.1682 * c.words) / c.sentences +
    (13.73 * c.longWords) / c.words -
    2.779,
});

/** Bamberger & Vanecek 1984, third formula. */
export const wiener3 = defineFormula({
  ...VIENNA,
  id: 'wiener-3',
  name: 'third Wiener Sachtextformel',
  inputs: ['words', 'sentences', 'polysyllables'],
  formula: '0.2963 * 100 * polysyllables / words + 0.1905 * words / sentences - 1.1144',
  work: (c) => (29.63 * c.polysyllables) / c.words + (0.1905 * c.words) / c.sentences - 1.1144,
});

/** Bamberger & Vanecek 1984, fourth formula. */
export const wiener4 = defineFormula({
  ...VIENNA,
  id: 'wiener-4',
  name: 'fourth Wiener Sachtextformel',
  inputs: ['words', 'sentences', 'polysyllables'],
  formula: '0.2744 * 100 * polysyllables / words + 0.2656 * words / sentences - 1.693',
  work: (c) => (27.44 * c.polysyllables) / c.words + (0.2656 * c.words) / c.sentences - 1.693,
});
