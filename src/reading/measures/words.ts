import type { MeasuredLanguage } from './spoken-in.js';

/** A word as the formulas count it. */
export interface Word {
  readonly text: string;
  /** The parts between hyphens; one for most words. */
  readonly parts: readonly string[];
  /** True for what holds digits and no letters: `1,500`, `1/2`, `½`. */
  readonly numeral: boolean;
  /** True for a capital letter inside a sentence: a name, in languages that write nouns small. */
  readonly namelike: boolean;
}

const segmenters = new Map<MeasuredLanguage, Intl.Segmenter>();

function segmenter(language: MeasuredLanguage): Intl.Segmenter {
  const found = segmenters.get(language) ?? new Intl.Segmenter(language, { granularity: 'word' });
  segmenters.set(language, found);
  return found;
}

const HYPHEN = /^[-\u2010\u2011]$/u;
const WORDLIKE = /[\p{L}\p{N}]/u;
const NUMERAL = /^[^\p{L}]*\p{N}[^\p{L}]*$/u;

/**
 * Words of one sentence by UAX #29. Joined by a hyphen they are one word ("low-sodium"), as in Flesch's
 * rules of 1948; a contraction or an elided article is one word ("don't", "l'eau"); a numeral with its
 * decimals, thousands or fraction is one word. Signs alone are none.
 */
export function wordsOf(sentence: string, language: MeasuredLanguage): Word[] {
  const groups: string[][] = [];
  // What stands before the segment: a word, and after it at most one sign that can join.
  let [last, sign] = ['', ' '];
  for (const { segment } of segmenter(language).segment(sentence)) {
    if (!WORDLIKE.test(segment)) {
      sign = sign === '' ? segment : ' ';
      continue;
    }
    const group = groups.at(-1);
    const digits = NUMERAL.test(segment) && NUMERAL.test(last);
    if (group && HYPHEN.test(sign)) group.push(segment);
    else if (group && digits && /^[/⁄]?$/u.test(sign))
      group[group.length - 1] = `${group.at(-1)}${sign}${segment}`;
    else groups.push([segment]);
    [last, sign] = [segment, ''];
  }
  return groups.map(wordFrom);
}

function wordFrom(parts: readonly string[], index: number): Word {
  const text = parts.join('-');
  return {
    text,
    parts,
    numeral: NUMERAL.test(text),
    namelike: index > 0 && /^\p{Lu}/u.test(text),
  };
}

export const lettersIn = (text: string): number => text.match(/\p{L}/gu)?.length ?? 0;
export const digitsIn = (text: string): number => text.match(/\p{N}/gu)?.length ?? 0;
