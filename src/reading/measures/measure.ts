import { type Counts, countReading } from './counts.js';
import type { Score, Warning } from './formula.js';
import { FORMULAS } from './formulas/index.js';
import { type Piece, piecesOf } from './pieces.js';
import { type MeasuredLanguage, measuredLanguage, noMeasure } from './spoken-in.js';

/** The formulas are for running text of at least this many words. */
export const ENOUGH_WORDS = 100;

/** A passage that was measured: what was counted, and every formula made for its language. */
export interface Measured {
  readonly measured: true;
  readonly language: MeasuredLanguage;
  readonly counts: Counts;
  readonly scores: readonly Score[];
  /** What limits all the scores: a short passage. A score has its own warnings besides. */
  readonly warnings: readonly Warning[];
}

/** A passage without a measure, and why, as a sentence for editors. */
export interface NotMeasured {
  readonly measured: false;
  readonly reason: 'no-measure-for-language' | 'no-words';
  readonly says: string;
}

/**
 * How hard a passage is to read by the published formulas of its language. `text` is plain text, cut by
 * `piecesOf`, or pieces whose kinds are known. A language without a trustworthy formula, and a text without
 * words, give a plain refusal; nothing is thrown for any text. A score is a sum over counts, not proof that
 * anybody understands.
 */
export function measureReading(text: string | readonly Piece[], tag: string): Measured | NotMeasured {
  const language = measuredLanguage(tag);
  if (language === undefined)
    return { measured: false, reason: 'no-measure-for-language', says: noMeasure(tag) };
  const counts = countReading(typeof text === 'string' ? piecesOf(text) : text, language);
  if (counts.words === 0)
    return {
      measured: false,
      reason: 'no-words',
      says: 'There are no words to measure: headings are not counted.',
    };
  const scores = FORMULAS[language].map((formula) => formula.score(counts));
  return { measured: true, language, counts, scores, warnings: shortPassage(counts) };
}

function shortPassage({ words }: Counts): readonly Warning[] {
  if (words >= ENOUGH_WORDS) return [];
  const says = `The passage has ${words} of the ${ENOUGH_WORDS} words that the formulas need: look at the counts, not at the scores.`;
  return [{ code: 'short-passage', says }];
}
