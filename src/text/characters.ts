import type { Writing } from './catalog.js';

/** What the engine asks about a character (Unicode character database, through the platform). */
export interface CharacterFacts {
  /** ISO 15924 code; `undefined` for characters that belong to no script of their own. */
  readonly script: string | undefined;
  readonly writing: Writing | undefined;
  readonly letter: boolean;
  readonly digit: boolean;
  /** Joins the character before it. */
  readonly mark: boolean;
  /** Nothing to draw: joiners, isolates, variation selectors and no-break spaces. Any font will do. */
  readonly blank: boolean;
  /** A space at which a word ends. */
  readonly space: boolean;
}

const SCRIPTS: readonly (readonly [code: string, pattern: RegExp, writing?: Writing])[] = [
  ['Latn', /\p{Script=Latin}/u, 'latin'],
  ['Arab', /\p{Script=Arabic}/u, 'arabic'],
  ['Hani', /\p{Script=Han}/u, 'chinese'],
  ['Grek', /\p{Script=Greek}/u, 'latin'],
  ['Cyrl', /\p{Script=Cyrillic}/u, 'latin'],
  ['Hira', /\p{Script=Hiragana}/u, 'chinese'],
  ['Kana', /\p{Script=Katakana}/u, 'chinese'],
  ['Bopo', /\p{Script=Bopomofo}/u, 'chinese'],
  ['Hebr', /\p{Script=Hebrew}/u],
  ['Hang', /\p{Script=Hangul}/u],
  ['Thai', /\p{Script=Thai}/u],
  ['Deva', /\p{Script=Devanagari}/u],
];

const LETTER = /[\p{L}\p{M}]/u;
const DIGIT = /\p{N}/u;
const MARK = /\p{M}/u;
const INVISIBLE = /\p{Default_Ignorable_Code_Point}/u;
/** No-break spaces hold a word together; the byte order mark is an old word joiner. */
const HOLDS = /[\u00a0\u2007\u202f\ufeff]/;
const ENDS_WORD = /[\t-\r \u0085\u1680\u2000-\u2006\u2008-\u200a\u2028\u2029\u205f\u3000]/;

export function factsOf(codePoint: number): CharacterFacts {
  const character = String.fromCodePoint(codePoint);
  const script = SCRIPTS.find(([, pattern]) => pattern.test(character));
  return {
    script: script?.[0],
    writing: script?.[2],
    letter: LETTER.test(character),
    digit: DIGIT.test(character),
    mark: MARK.test(character),
    blank: INVISIBLE.test(character) || HOLDS.test(character),
    space: ENDS_WORD.test(character),
  };
}

/** Whether a line must end after this UTF-16 unit. */
export function isHardBreak(text: string, index: number): boolean {
  const code = text.charCodeAt(index);
  return (code >= 10 && code <= 13) || code === 0x85 || code === 0x2028 || code === 0x2029;
}

/**
 * Where the text that counts ends in a line: spaces, tabs and line breaks at the end hang outside it,
 * with the formatting characters among them (UAX #9, rule L1).
 */
export function endWithoutSpaces(text: string, start: number, end: number): number {
  let at = end;
  while (at > start && (ENDS_WORD.test(text[at - 1] ?? '') || INVISIBLE.test(text[at - 1] ?? ''))) at--;
  return at;
}

/**
 * What is shaped in place of a character that fonts leave out because another has the same look: a
 * tab or line break within a line is a space, the two hyphens are a hyphen-minus.
 */
export function standIn(codePoint: number): number | undefined {
  if ((codePoint >= 9 && codePoint <= 13) || codePoint === 0x85) return 0x20;
  if (codePoint === 0x2028 || codePoint === 0x2029) return 0x20;
  return codePoint === 0x2010 || codePoint === 0x2011 ? 0x2d : undefined;
}
