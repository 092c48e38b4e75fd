import type { Inline } from '../document/index.js';

/** The first letter large, for words that begin a line. */
export function capital(words: string): string {
  return words.charAt(0).toLocaleUpperCase('en') + words.slice(1);
}

/** Pointers to sources with commas between; they get their numbers when the sheet is put together. */
export function citeList(sources: readonly string[], cite: (source: string) => Inline): Inline[] {
  return sources.flatMap((source, index) => [...(index > 0 ? [{ text: ', ' }] : []), cite(source)]);
}
