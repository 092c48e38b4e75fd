import type { MeasuredLanguage } from '../spoken-in.js';
import { englishSyllables } from './english.js';
import { frenchSyllables } from './french.js';
import { germanSyllables } from './german.js';
import { portugueseSyllables } from './portuguese.js';
import { spanishSyllables } from './spanish.js';

/** Syllables of one word. Italian has none: its formula counts letters, and its spelling hides the hiatus. */
export const COUNTERS: Readonly<Partial<Record<MeasuredLanguage, (word: string) => number>>> = {
  en: englishSyllables,
  es: spanishSyllables,
  pt: portugueseSyllables,
  fr: frenchSyllables,
  de: germanSyllables,
};
