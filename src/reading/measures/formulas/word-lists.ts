import { bandOf, defineFormula } from '../formula.js';

const DIFFICULT_SHARE = 0.1579;

/** Grades of the score, as the 1948 paper prints them, from memory. */
const GRADES = [
  [9.9999, 'grade 16 and above'],
  [8.9999, 'grades 13 to 15'],
  [7.9999, 'grades 11 and 12'],
  [6.9999, 'grades 9 and 10'],
  [5.9999, 'grades 7 and 8'],
  [4.9999, 'grades 5 and 6'],
  [Number.NEGATIVE_INFINITY, 'grade 4 and below'],
] as const;

/**
 * Dale E, Chall JS. Educ Res Bull 1948;27:11-20 and 37-54, with the word list of Chall & Dale 1995, which
 * itself reads grades from tables. The constant is added when more than 5 percent of the words are difficult.
 */
export const daleChall = defineFormula({
  id: 'dale-chall',
  name: 'Dale-Chall score',
  scale: 'index',
  source: 'Dale E, Chall JS. Educ Res Bull 1948;27:11-20; list of Chall & Dale 1995',
  checked: 'copies',
  madeFor: 'English text above grade 4',
  inputs: ['words', 'sentences', 'difficultWords'],
  formula: (c) =>
    `${DIFFICULT_SHARE} * 100 * difficult_words / words + 0.0496 * words / sentences${c.difficultWords / c.words > 0.05 ? ' + 3.6365' : ''}`,
  work: (c) =>
    (DIFFICULT_SHARE * 100 * c.difficultWords) / c.words +
    (0.0496 * c.words) / c.sentences +
    (c.difficultWords / c.words > 0.05 ? 3.6365 : 0),
  band: (value) => bandOf(value, GRADES),
});

/**
 * Spache G. Good Reading for Poor Readers, revised formula, 1974. The paper counts an unfamiliar word once in
 * a sample of 100 words; here each counts as often as it stands, so that a long passage does not look easier.
 */
export const spache = defineFormula({
  id: 'spache',
  name: 'Spache grade, revised',
  scale: 'grade',
  source: 'Spache G. Good Reading for Poor Readers, revised 9th edition, 1974',
  checked: 'memory',
  madeFor: 'English texts for grades 1 to 3',
  inputs: ['words', 'sentences', 'unfamiliarWords'],
  formula: '0.121 * words / sentences + 0.082 * 100 * unfamiliar_words / words + 0.659',
  work: (c) => (0.121 * c.words) / c.sentences + (8.2 * c.unfamiliarWords) / c.words + 0.659,
});

/** The first form, Spache G. Elem School J 1953;53:410-3, kept to tell it from the revised one. */
export const spache1953 = defineFormula({
  id: 'spache-1953',
  name: 'Spache grade of 1953',
  scale: 'grade',
  source: 'Spache G. Elem School J 1953;53:410-3',
  checked: 'memory',
  madeFor: 'English texts for grades 1 to 3',
  inputs: ['words', 'sentences', 'unfamiliarWords'],
  formula: '0.141 * words / sentences + 0.086 * 100 * unfamiliar_words / words + 0.839',
  work: (c) => (0.141 * c.words) / c.sentences + (8.6 * c.unfamiliarWords) / c.words + 0.839,
});
