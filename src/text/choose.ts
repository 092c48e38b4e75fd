import { type Family, familiesFor, type Writing } from './catalog.js';
import { standIn } from './characters.js';
import type { Fonts } from './fonts.js';
import type { MissingCharacter, Weight } from './types.js';

/** A stretch of the text with its own weight and language. */
export interface Part {
  readonly start: number;
  readonly end: number;
  readonly weight: Weight;
  readonly language: string;
}

/** A character with the marks on it. */
interface Unit {
  readonly start: number;
  readonly end: number;
  readonly codes: readonly number[];
  readonly letter: boolean;
  readonly digit: boolean;
  /** Any font will do. */
  readonly blank: boolean;
}

/** Letters of one kind of writing with the digits and signs among them, or signs that stand outside. */
interface Word {
  readonly writing: Writing | undefined;
  readonly units: readonly Unit[];
}

/**
 * The family for each UTF-16 unit of the text. The letters of a word all get the same family: the
 * first in the language's order that has them all, so that no word is patched together letter by
 * letter. Digits and signs follow their word where its family has them; spaces follow the words
 * around them.
 */
export function chooseFamilies(
  text: string,
  parts: readonly Part[],
  fonts: Fonts,
): { readonly families: readonly Family[]; readonly missing: readonly MissingCharacter[] } {
  const chosen = new Array<Family | undefined>(text.length).fill(undefined);
  const missing = new Map<number, MissingCharacter>();
  for (const part of parts)
    for (const word of wordsOf(text, part, fonts)) {
      for (const [unit, family] of familiesOf(word, part, fonts, missing))
        chosen.fill(family, unit.start, unit.end);
    }
  return { families: fillSpaces(chosen, parts), missing: [...missing.values()] };
}

/**
 * Words of a part. A word ends at a space and where the writing changes. Signs at its edges stand
 * outside: the brackets of `(USDA)` and the stop after it belong to the language of the part.
 */
function wordsOf(text: string, part: Part, fonts: Fonts): Word[] {
  const words: Word[] = [];
  let units: Unit[] = [];
  let writing: Writing | undefined;
  const close = () => {
    const inside = (unit: Unit) => unit.letter || unit.digit;
    const from = units.findIndex(inside);
    const to = units.findLastIndex(inside) + 1;
    const signs = from < 0 ? units : [...units.slice(0, from), ...units.slice(to)];
    if (from >= 0) words.push({ writing, units: units.slice(from, to) });
    if (signs.some((unit) => !unit.blank))
      words.push({ writing: undefined, units: signs.filter((u) => !u.blank) });
    units = [];
    writing = undefined;
  };
  for (let at = part.start; at < part.end; ) {
    const start = at;
    const code = text.codePointAt(at) ?? 0;
    const facts = fonts.facts(code);
    at += code > 0xffff ? 2 : 1;
    if (facts.space) {
      close();
      continue;
    }
    const codes = [code];
    while (at < part.end) {
      const next = text.codePointAt(at) ?? 0;
      const mark = fonts.facts(next);
      if (!mark.mark) break;
      if (!mark.blank) codes.push(next);
      at += next > 0xffff ? 2 : 1;
    }
    if (facts.writing && writing && facts.writing !== writing) close();
    writing ??= facts.writing;
    units.push({
      start,
      end: at,
      codes,
      letter: facts.letter && !facts.blank,
      digit: facts.digit,
      blank: facts.blank && codes.length === 1,
    });
  }
  close();
  return words;
}

function familiesOf(
  word: Word,
  part: Part,
  fonts: Fonts,
  missing: Map<number, MissingCharacter>,
): (readonly [Unit, Family])[] {
  const order = familiesFor(part.language, word.writing ?? 'signs');
  const latin = familiesFor(part.language, 'latin');
  const has = (family: Family, unit: Unit) => covers(fonts, family, part.weight, unit);
  const common = familyOfLetters(
    word.units.filter((unit) => unit.letter),
    order,
    has,
  );
  let last = common;
  return word.units.map((unit) => {
    if (!unit.blank) {
      // Digits and ASCII signs between Chinese characters are set in the Latin family.
      const western = order[0] === 'chinese' && !unit.letter && (unit.codes[0] ?? 0) < 0x80;
      const wanted = western ? latin : [common, ...order];
      const family = wanted.find((f) => has(f, unit));
      if (family === undefined) reportMissing(unit, fonts, part.weight, missing);
      last = family ?? common;
    }
    return [unit, last];
  });
}

/** The first family that has all letters; failing that, the first of those that have most. */
function familyOfLetters(
  letters: readonly Unit[],
  order: readonly Family[],
  has: (family: Family, unit: Unit) => boolean,
): Family {
  let best = order[0] ?? 'atkinson';
  if (letters.length === 0) return best;
  let most = -1;
  for (const family of order) {
    const count = letters.filter((unit) => has(family, unit)).length;
    if (count === letters.length) return family;
    if (count > most) [best, most] = [family, count];
  }
  return best;
}

/** A letter with marks counts as covered when the font has the parts or the whole (é). */
function covers(fonts: Fonts, family: Family, weight: Weight, unit: Unit): boolean {
  const face = fonts.face(family, weight);
  const one = (code: number) => face.covers(code) || face.covers(standIn(code) ?? code);
  if (unit.codes.every(one)) return true;
  if (unit.codes.length === 1) return false;
  const whole = String.fromCodePoint(...unit.codes).normalize('NFC');
  return [...whole].every((character) => one(character.codePointAt(0) ?? 0));
}

/** Names what no font has: of a letter with marks, the letter or the marks, or both when each exists alone. */
function reportMissing(
  unit: Unit,
  fonts: Fonts,
  weight: Weight,
  missing: Map<number, MissingCharacter>,
): void {
  const nowhere = unit.codes.filter(
    (code) => !familiesFor('en', 'signs').some((family) => fonts.face(family, weight).covers(code)),
  );
  for (const codePoint of nowhere.length > 0 ? nowhere : unit.codes)
    missing.set(codePoint, { character: String.fromCodePoint(codePoint), codePoint });
}

/** A space takes the family on both of its sides when they agree, otherwise its language's own. */
function fillSpaces(chosen: readonly (Family | undefined)[], parts: readonly Part[]): Family[] {
  const families: Family[] = [];
  for (const part of parts) {
    const primary = familiesFor(part.language, 'signs')[0] ?? 'atkinson';
    for (let at = part.start; at < part.end; at++) {
      const family = chosen[at];
      if (family !== undefined) {
        families.push(family);
        continue;
      }
      let next = at + 1;
      while (next < part.end && chosen[next] === undefined) next++;
      const before = at > part.start ? families[at - 1] : undefined;
      const after = next < part.end ? chosen[next] : undefined;
      const same = before !== undefined && before === after;
      for (; at < next; at++) families.push(same ? before : primary);
      at--;
    }
  }
  return families;
}
