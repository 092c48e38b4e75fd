import type { Inline } from '../document/index.js';

/** The first letter large, for words that begin a line. */
export function capital(words: string): string {
  return words.charAt(0).toLocaleUpperCase('en') + words.slice(1);
}

/** Pointers to sources with commas between; they get their numbers when the sheet is put together. */
export function citeList(sources: readonly string[], cite: (source: string) => Inline): Inline[] {
  return sources.flatMap((source, index) => [...(index > 0 ? [{ text: ', ' }] : []), cite(source)]);
}

/** The first layer of an alternative has at most so many characters. */
export const LONGEST_LABEL = 120;

/** The first wording that is short enough for a label; the last one, which holds no author's words, always is. */
export function fittingLabel(wordings: readonly string[]): string {
  return wordings.find((words) => words.length <= LONGEST_LABEL) ?? wordings.at(-1) ?? '';
}

/**
 * A term's words with numbers in its slots, as running text that keeps the numbers' ids. `fill` says the
 * term with the slots that it is given.
 */
export function withNumbers(
  fill: (slots: Readonly<Record<string, string>>) => string,
  numbers: Readonly<Record<string, Inline>>,
): Inline[] {
  const names = Object.keys(numbers);
  const marked = fill(Object.fromEntries(names.map((name) => [name, `\u0001${name}\u0001`])));
  return marked.split('\u0001').flatMap((part, index): Inline[] => {
    const number = index % 2 === 1 ? numbers[part] : undefined;
    if (number) return [number];
    return part === '' ? [] : [{ text: part }];
  });
}
