import { POLICIES } from './policy.js';
import { isSpoken, type Spoken } from './tags.js';

/** A printed term: words with {slots}, or one form for each plural. */
export type Term = string | { readonly one: string; readonly other: string };
/** Terms by key, the same keys in every language that the program speaks. */
export type TermTable<K extends string = string> = Readonly<Record<Spoken, Readonly<Record<K, Term>>>>;
export type Slots = Readonly<Record<string, string | number>>;

/** Looks a term up in one language and fills its slots. `count` picks the plural form and fills {count}. */
export type Say<K extends string = string> = (key: K, slots?: Slots) => string;

/**
 * Binds a table to a language. Throws for a language that the program does not speak: callers refuse
 * such a lesson long before, so reaching this is our own mistake.
 */
export function sayFrom<K extends string>(table: TermTable<K>, language: string): Say<K> {
  if (!isSpoken(language)) throw new Error(`The program has no terms in ${language}.`);
  const terms = table[language];
  return (key, slots = {}) => {
    const term = terms[key];
    if (term === undefined) throw new Error(`Term ${key} is missing in ${language}.`);
    const words = typeof term === 'string' ? term : term[POLICIES[language].plural(Number(slots.count))];
    return fillSlots(words, slots);
  };
}

/** Puts values into `{slots}`; an unknown slot is our own mistake and throws. */
export function fillSlots(words: string, slots: Slots): string {
  return words.replace(/\{([a-z-]+)\}/g, (_, name: string) => {
    const value = slots[name];
    if (value === undefined) throw new Error(`No value for {${name}} in "${words}".`);
    return String(value);
  });
}
