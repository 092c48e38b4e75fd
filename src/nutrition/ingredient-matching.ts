import {
  INGREDIENT_GROUPS,
  INGREDIENT_WORDS,
  type IngredientGroup,
  PLAIN_INGREDIENTS,
} from './ingredient-words.js';

/** Words of a text that stand for a group. */
export interface IngredientHit {
  readonly group: IngredientGroup;
  /** `is`: it is in. `maybe`: it depends on the maker, or the words say that it is left out or may be in. */
  readonly sure: 'is' | 'maybe';
  /** The words as they stand in the text. */
  readonly words: string;
  /** Where they start and end in the text, in UTF-16 units. */
  readonly start: number;
  readonly end: number;
}

interface Token {
  /** The word in plain lower-case letters, and what it may be the plural of. */
  readonly forms: readonly string[];
  readonly start: number;
  readonly end: number;
}

type Sureness = 'is' | 'maybe' | 'not';

interface Phrase {
  readonly tokens: readonly string[];
  readonly sure: Sureness;
}

/** A phrase of a group. */
interface Entry extends Phrase {
  readonly group: IngredientGroup;
}

/** A word with the `'s` at its end. */
const WORD = /[\p{L}\p{M}\p{N}]+(?:['’]s\b)?/gu;
const SURENESS: readonly Sureness[] = ['not', 'is', 'maybe'];
const ENTRIES: ReadonlyMap<string, readonly Entry[]> = readEntries();
const PLAIN: ReadonlyMap<string, readonly Phrase[]> = byFirstWord(phrasesOf(PLAIN_INGREDIENTS, 'is'));
/** Words that only say how something was made or cut; they hide nothing. */
const PLAIN_WORDS: ReadonlySet<string> = new Set(
  'and or of the with in fresh dried dry organic ground whole chopped diced sliced crushed cooked raw frozen canned enriched powder powdered extra virgin red green yellow white black purple baby large small medium'.split(
    ' ',
  ),
);

/**
 * What an ingredient text names, by whole words: `buckwheat` is not wheat, `malt` is barley, `peanut butter` is no milk.
 * The longest words win within a group. One and many count the same, in any case, with or without accents. Words that
 * are said to be left out (`dairy-free`, `no egg`, `vegan …`) are only maybe, and so is everything after `may contain` up
 * to the end of the sentence. `gluten-free` clears the gluten words of its ingredient,
 * because the word is defined by rule; it does not clear wheat. In order of place, then of group.
 */
export function findIngredients(text: string): readonly IngredientHit[] {
  const hits: IngredientHit[] = [];
  for (const part of partsOf(text)) {
    for (const { phrase, from } of match(part.tokens, ENTRIES, ({ group }) => group)) {
      const { group, sure } = phrase;
      const first = part.tokens[from];
      const last = part.tokens[from + phrase.tokens.length - 1];
      if (sure === 'not' || first === undefined || last === undefined) continue;
      const claimed = isClaimedWithout(group, part.tokens);
      if (group === 'gluten' && claimed) continue;
      const open = part.precaution || claimed || isLeftOut(part.tokens, from, phrase.tokens.length);
      hits.push({
        group,
        sure: open ? 'maybe' : sure,
        words: text.slice(first.start, last.end),
        start: first.start,
        end: last.end,
      });
    }
  }
  const place = (group: IngredientGroup) => INGREDIENT_GROUPS.indexOf(group);
  return hits.sort((a, b) => a.start - b.start || place(a.group) - place(b.group));
}

/** The ingredients of a list that no list here knows: neither a group nor plain. Not known is not safe. */
export function unknownIngredients(text: string): readonly string[] {
  const hits = findIngredients(text);
  return partsOf(text).flatMap(({ tokens, start, end }) => {
    const plain = new Set(
      match(tokens, PLAIN, () => '').flatMap(({ phrase, from }) => phrase.tokens.map((_, i) => from + i)),
    );
    const open = tokens.filter(
      (token, i) =>
        !plain.has(i) &&
        !token.forms.some((form) => PLAIN_WORDS.has(form)) &&
        !hits.some((hit) => token.start >= hit.start && token.end <= hit.end),
    );
    return open.length === 0 ? [] : [text.slice(start, end).trim()];
  });
}

interface Part {
  readonly tokens: readonly Token[];
  readonly precaution: boolean;
  readonly start: number;
  readonly end: number;
}

/** The ingredients of a list: parted by commas, semicolons, colons, brackets and the ends of lines and sentences. */
function partsOf(text: string): Part[] {
  const parts: Part[] = [];
  let precaution = false;
  for (const found of text.matchAll(/[^,;:()[\]\n.]+|[.\n]/g)) {
    if (/^[.\n]$/.test(found[0])) {
      precaution = false;
      continue;
    }
    const start = found.index;
    precaution ||= /\b(?:may contain|may also contain|traces? of)\b/i.test(found[0]);
    const tokens = [...found[0].matchAll(WORD)].map((word) => ({
      forms: formsOf(word[0]),
      start: start + word.index,
      end: start + word.index + word[0].length,
    }));
    if (tokens.length > 0) parts.push({ tokens, precaution, start, end: start + found[0].length });
  }
  return parts;
}

/**
 * The phrases that stand in the tokens: the longest first, none over another of the same `apart` (a group has its words
 * to itself).
 */
function match<P extends Phrase>(
  tokens: readonly Token[],
  index: ReadonlyMap<string, readonly P[]>,
  apart: (phrase: P) => string,
): { phrase: P; from: number }[] {
  const standing = tokens.flatMap((token, from) =>
    token.forms.flatMap((form) =>
      (index.get(form) ?? []).flatMap((phrase) => (fits(phrase, tokens, from) ? [{ phrase, from }] : [])),
    ),
  );
  standing.sort((a, b) => rankOf(a.phrase) - rankOf(b.phrase));
  const taken = new Set<string>();
  return standing.filter(({ phrase, from }) => {
    const places = phrase.tokens.map((_, i) => `${apart(phrase)} ${from + i}`);
    if (places.some((place) => taken.has(place))) return false;
    for (const place of places) taken.add(place);
    return true;
  });
}

function fits(phrase: Phrase, tokens: readonly Token[], from: number): boolean {
  return phrase.tokens.every((word, i) => tokens[from + i]?.forms.includes(word) === true);
}

/** Longer phrases go before shorter ones, and what a word is not before what it is. */
function rankOf({ tokens, sure }: Phrase): number {
  return SURENESS.indexOf(sure) - SURENESS.length * tokens.length;
}

const LEFT_OUT_BEFORE: ReadonlySet<string> = new Set(['no', 'non', 'without', 'not', 'zero', 'imitation']);
/** Words before `free` that claim a group away for the whole ingredient. Only `gluten-free` is defined by rule. */
const CLAIMS: Readonly<Partial<Record<IngredientGroup, readonly string[]>>> = {
  milk: ['dairy', 'milk'],
  egg: ['egg'],
  wheat: ['wheat', 'gluten', 'grain'],
  gluten: ['gluten'],
  soy: ['soy'],
  peanut: ['nut', 'peanut'],
  'tree nut': ['nut'],
  alcohol: ['alcohol'],
  meat: ['meat'],
};
/** What `vegan` and `plant-based` claim away. */
const ANIMAL: ReadonlySet<IngredientGroup> = new Set<IngredientGroup>([
  'meat',
  'fish',
  'shellfish',
  'milk',
  'egg',
  'honey',
  'pork',
  'gelatin',
  'animal fat or extract',
  'insect product',
  'animal rennet',
  'wool fat',
  'fish without scales',
]);

/** Whether the words around say that it is left out: `no egg`, `sesame-free`, `free from milk`. */
function isLeftOut(tokens: readonly Token[], from: number, count: number): boolean {
  const word = (at: number) => tokens[at]?.forms[0] ?? '';
  if (word(from + count) === 'free') return true;
  const before = word(from - 1);
  return LEFT_OUT_BEFORE.has(before) || ((before === 'from' || before === 'of') && word(from - 2) === 'free');
}

/** Whether an ingredient claims to be without the group: `dairy-free spread`, `vegan cheese`. */
function isClaimedWithout(group: IngredientGroup, tokens: readonly Token[]): boolean {
  const says = (at: number, word: string) => tokens[at]?.forms[0] === word;
  const free =
    CLAIMS[group]?.some((name) => tokens.some((_, i) => says(i, name) && says(i + 1, 'free'))) === true;
  if (free || !ANIMAL.has(group)) return free;
  return tokens.some((_, i) => says(i, 'vegan') || (says(i, 'plant') && says(i + 1, 'based')));
}

/** A word and what it may be the plural of, in plain lower-case letters. */
function formsOf(word: string): string[] {
  const plain = plainLetters(word);
  const forms = [plain];
  if (plain.endsWith('ies')) forms.push(`${plain.slice(0, -3)}y`);
  if (plain.endsWith('es')) forms.push(plain.slice(0, -2));
  if (plain.endsWith('s')) forms.push(plain.slice(0, -1));
  return forms;
}

function plainLetters(word: string): string {
  return word
    .normalize('NFD')
    .replace(/\p{M}+/gu, '')
    .replace(/['’]s$/, '')
    .toLowerCase();
}

function readEntries(): Map<string, Entry[]> {
  return byFirstWord(
    INGREDIENT_GROUPS.flatMap((group) =>
      SURENESS.flatMap((sure) =>
        phrasesOf(INGREDIENT_WORDS[group][sure], sure).map((phrase) => ({ ...phrase, group })),
      ),
    ),
  );
}

function byFirstWord<P extends Phrase>(phrases: readonly P[]): Map<string, P[]> {
  const index = new Map<string, P[]>();
  for (const phrase of phrases) {
    const [first = ''] = phrase.tokens;
    index.set(first, [...(index.get(first) ?? []), phrase]);
  }
  return index;
}

function phrasesOf(list: string, sure: Sureness): Phrase[] {
  return list.split('; ').flatMap((words) => {
    const tokens = [...words.matchAll(WORD)].map((word) => plainLetters(word[0]));
    return tokens.length === 0 ? [] : [{ tokens, sure }];
  });
}
