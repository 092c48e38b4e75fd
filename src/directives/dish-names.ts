/** A food's name in a figure: its words up to the first comma where no other food of the dish begins so. */
export function shortName(words: string, all: readonly string[]): string {
  const first = (text: string) => (text.split(',')[0] ?? '').trim();
  const own = first(words).toLowerCase();
  const same = all.filter((other) => first(other).toLowerCase() === own);
  return same.length > 1 ? words : first(words);
}
