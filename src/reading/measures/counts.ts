import { isFamiliar } from './familiar.js';
import type { Piece } from './pieces.js';
import { sentencesOf } from './sentences.js';
import type { MeasuredLanguage } from './spoken-in.js';
import { COUNTERS } from './syllables/index.js';
import { digitsIn, lettersIn, type Word, wordsOf } from './words.js';

/**
 * What the formulas are worked out from. `null` is a count that is not made in this language, never zero.
 * A numeral is one word of one syllable, however it is read aloud.
 */
export interface Counts {
  readonly sentences: number;
  readonly words: number;
  /** Letters alone. */
  readonly letters: number;
  /** Letters and digits. */
  readonly characters: number;
  readonly numerals: number;
  /** Words of more than six letters. */
  readonly longWords: number;
  readonly syllables: number | null;
  readonly monosyllables: number | null;
  /** Words of three syllables or more. */
  readonly polysyllables: number | null;
  /** Words of three syllables or more that are hard in Gunning's sense. English only. */
  readonly complexWords: number | null;
  /** Words that are not on the list of Dale and Chall, each as often as it stands. English only. */
  readonly difficultWords: number | null;
  /** Words that are not on Spache's list, each as often as it stands. English only. */
  readonly unfamiliarWords: number | null;
}

/** Counts over the running text of a passage: headings are left out. All zero for a passage without words. */
export function countReading(pieces: readonly Piece[], language: MeasuredLanguage): Counts {
  const sentences = pieces
    .filter(({ kind }) => kind !== 'heading')
    .flatMap(({ text }) => sentencesOf(text, language))
    .map((sentence) => wordsOf(sentence, language))
    .filter((words) => words.length > 0);
  const words = sentences.flat();
  const counter = remembering(COUNTERS[language]);
  const spoken = counter && words.map((word) => syllablesOf(word, counter));
  const english = language === 'en';
  return {
    sentences: sentences.length,
    words: words.length,
    letters: sum(words.map((w) => lettersIn(w.text))),
    characters: sum(words.map((w) => lettersIn(w.text) + digitsIn(w.text))),
    numerals: words.filter((w) => w.numeral).length,
    longWords: words.filter((w) => lettersIn(w.text) > 6).length,
    syllables: spoken ? sum(spoken) : null,
    monosyllables: spoken ? spoken.filter((n) => n === 1).length : null,
    polysyllables: spoken ? spoken.filter((n) => n >= 3).length : null,
    complexWords: english && counter ? words.filter((w) => isComplex(w, counter)).length : null,
    difficultWords: english ? words.filter((w) => !isFamiliar(w, 'dale-chall')).length : null,
    unfamiliarWords: english ? words.filter((w) => !isFamiliar(w, 'spache')).length : null,
  };
}

type Counter = (word: string) => number;

/** Words come back often: each is counted once in a passage. */
function remembering(counter: Counter | undefined): Counter | undefined {
  const counts = new Map<string, number>();
  return (
    counter &&
    ((word) => {
      const count = counts.get(word) ?? counter(word);
      counts.set(word, count);
      return count;
    })
  );
}

/** Syllables of a word, one at least. Parts between hyphens are counted each on its own. */
export function syllablesOf(word: Word, counter: Counter): number {
  if (word.numeral) return 1;
  const each = word.parts.map((part) =>
    // Letters and digits in turn: B12 is "B" and a numeral.
    sum((part.match(/[^\p{N}]+|\p{N}+/gu) ?? []).map((run) => (/\p{N}/u.test(run) ? 1 : counter(run)))),
  );
  return Math.max(1, sum(each));
}

/**
 * Gunning's hard word: three syllables or more, without names, words joined from easy words by a hyphen, and
 * words that have their third syllable from -es, -ed or -ing.
 */
function isComplex(word: Word, counter: Counter): boolean {
  if (word.numeral || word.namelike) return false;
  return word.parts.some((part) => {
    if (counter(part) < 3) return false;
    const stem = /^(.{2,})(?:es|ed|ing)$/iu.exec(part)?.[1];
    return stem === undefined || counter(stem) >= 3;
  });
}

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);
