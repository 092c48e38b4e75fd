import { distance } from 'fastest-levenshtein';
import { nameKey } from './names.js';

/** A food that a search found. */
export interface FoodHit {
  /** The everyday name; none for a food that only the release has. */
  readonly name?: string;
  readonly number: string;
  readonly description: string;
  /** True when letters had to be forgiven: the food is near what was typed, and may not be meant. */
  readonly guess?: true;
}

/** An everyday food as a search sees it. */
export interface SearchEntry {
  readonly name: string;
  readonly kind: string;
  /** Other names of the food and of its kind. */
  readonly others: readonly string[];
  readonly number: string;
  readonly description: string;
}

/** A food that only the release has. */
export interface Described {
  readonly number: string;
  readonly description: string;
}

/** Letters that are no part of a word. */
const BETWEEN = /[^\p{L}\p{N}%]+/gu;

/** A text as words with one space before each, as they are looked up. */
function wordsOf(text: string): string {
  return ` ${nameKey(text).replace(BETWEEN, ' ').trim()}`;
}

function typed(words: string): readonly string[] {
  return wordsOf(words)
    .split(' ')
    .filter((word) => word !== '');
}

/**
 * Foods whose names and description begin words with all the words asked for, in any order. Everyday
 * foods come first: those that are called just that, then those whose kind is, those whose own name holds
 * the words, those whose other names do, and those where only the release's description does. Then the
 * rest of the release, in its own order. When nothing holds the words as typed, foods are found that need
 * one letter forgiven in words of four or five letters, or two in longer ones, nearest first; they are
 * marked as guesses. No words find nothing.
 */
export function searchFoods(
  everyday: readonly SearchEntry[],
  rest: () => Iterable<Described>,
  words: string,
  most: number,
): readonly FoodHit[] {
  const wanted = typed(words);
  if (wanted.length === 0) return [];
  const keys = everyday.map(keysOf);
  const asked = ` ${wanted.join(' ')}`;
  const hits = byRank(
    keys.map((key) => rankOf(key, wanted, asked)),
    everyday,
  );
  const numbers = new Set(everyday.map((entry) => entry.number));
  const others = (rank: (text: string) => number | undefined) => [...restOf(rest(), numbers, rank)];
  if (hits.length < most)
    hits.push(...others((text) => (holds(wordsOf(text), wanted) ? 0 : undefined)).map((o) => o.food));
  if (hits.length > 0) return hits.slice(0, most);
  const guesses = byRank(
    keys.map((key) => pardon(key.names, wanted) ?? add(pardon(key.all, wanted), 0.5)),
    everyday,
  );
  if (guesses.length === 0) {
    const found = others((text) => pardon(wordsOf(text), wanted)).sort((a, b) => a.rank - b.rank);
    guesses.push(...found.map((o) => o.food));
  }
  return guesses.slice(0, most).map((hit) => ({ ...hit, guess: true as const }));
}

/**
 * The foods that come nearest to words which found nothing, one of each kind: those that share most of
 * the words, then those that are written most alike.
 */
export function nearestFoods(
  everyday: readonly SearchEntry[],
  words: string,
  most = 5,
): readonly SearchEntry[] {
  const wanted = typed(words);
  const whole = wanted.join(' ').slice(0, 100);
  const kinds = new Map<string, SearchEntry>();
  for (const entry of everyday) if (!kinds.has(entry.kind)) kinds.set(entry.kind, entry);
  return [...kinds.values()]
    .map((entry) => {
      const key = keysOf(entry);
      const shared = wanted
        .filter((word) => word.length > 2)
        .map((word): number =>
          holds(key.names, [word]) ? 1 : pardon(key.names, [word]) === undefined ? 0 : 0.5,
        );
      const names = [entry.kind, entry.name, ...entry.others].map(nameKey);
      const apart = Math.min(
        ...names.map((name) => distance(whole, name) / Math.max(whole.length, name.length)),
      );
      return { entry, cost: apart - shared.reduce((sum, one) => sum + one, 0) };
    })
    .sort((a, b) => a.cost - b.cost)
    .slice(0, most)
    .map(({ entry }) => entry);
}

interface Keys {
  readonly name: string;
  readonly kind: string;
  /** Every name that may be asked for whole. */
  readonly whole: readonly string[];
  readonly names: string;
  readonly all: string;
}

function keysOf(entry: SearchEntry): Keys {
  const name = wordsOf(entry.name);
  const kind = wordsOf(entry.kind);
  const others = entry.others.map(wordsOf);
  const names = [name, kind, ...others].join('');
  return { name, kind, whole: [name, kind, ...others], names, all: names + wordsOf(entry.description) };
}

/** How well a food answers, from 0 for the best; nothing when it does not hold all the words. */
function rankOf(key: Keys, wanted: readonly string[], asked: string): number | undefined {
  if (!holds(key.all, wanted)) return undefined;
  if (key.whole.some((name) => name === asked || name === `${asked}s` || `${name}s` === asked)) return 0;
  if (key.whole.some((name) => name.startsWith(asked)) || key.kind.endsWith(asked)) return 1;
  if (holds(key.name, wanted)) return 2;
  return holds(key.names, wanted) ? 3 : 4;
}

function holds(text: string, wanted: readonly string[]): boolean {
  return wanted.every((word) => text.includes(` ${word}`));
}

/** How many letters have to be forgiven for a text to hold all the words; nothing when too many. */
function pardon(text: string, wanted: readonly string[]): number | undefined {
  let total = 0;
  for (const word of wanted) {
    if (text.includes(` ${word}`)) continue;
    const allowed = word.length < 4 ? 0 : word.length < 6 ? 1 : 2;
    if (allowed === 0) return undefined;
    let least = allowed + 1;
    for (const other of text.split(' ')) {
      if (Math.abs(other.length - word.length) <= allowed) least = Math.min(least, distance(word, other));
      if (other.length > word.length) least = Math.min(least, distance(word, other.slice(0, word.length)));
    }
    if (least > allowed) return undefined;
    total += least;
  }
  return total;
}

function add(cost: number | undefined, more: number): number | undefined {
  return cost === undefined ? undefined : cost + more;
}

/** Entries that have a rank, best first; those of one rank stay in their order. */
function byRank(ranks: readonly (number | undefined)[], entries: readonly SearchEntry[]): FoodHit[] {
  return entries
    .flatMap((entry, i) => {
      const rank = ranks[i];
      return rank === undefined ? [] : [{ entry, rank }];
    })
    .sort((a, b) => a.rank - b.rank)
    .map(({ entry: { name, number, description } }) => ({ name, number, description }));
}

function* restOf(
  rest: Iterable<Described>,
  without: ReadonlySet<string>,
  rank: (text: string) => number | undefined,
): Iterable<{ readonly food: Described; readonly rank: number }> {
  for (const { number, description } of rest) {
    const found = without.has(number) ? undefined : rank(description);
    if (found !== undefined) yield { food: { number, description }, rank: found };
  }
}
