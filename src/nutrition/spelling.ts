/**
 * How many slips lie between two words: letters left out, put in, changed, or two neighbors swapped.
 * For the short words of kitchens; longer ones are cut to 40 letters.
 */
export function slipsBetween(one: string, other: string): number {
  const a = [...one.slice(0, 40)];
  const b = [...other.slice(0, 40)];
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      const swapped = a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1] ? 1 : 2;
      row.push(
        Math.min(at(last, j) + 1, at(row, j - 1) + 1, at(last, j - 1) + same, at(before, j - 2) + swapped),
      );
    }
    before = last;
    last = row;
  }
  return at(last, b.length);
}

/** The names within one slip of a short word, two of a word of six letters or more; nearest first. */
export function nearWords(written: string, names: Iterable<string>, most = 3): string[] {
  const word = written.toLowerCase();
  const allowed = word.length >= 6 ? 2 : 1;
  return [...new Set(names)]
    .map((name) => ({ name, slips: slipsBetween(word, name.toLowerCase()) }))
    .filter(({ slips }) => slips <= allowed)
    .sort((a, b) => a.slips - b.slips || (a.name < b.name ? -1 : 1))
    .slice(0, most)
    .map(({ name }) => name);
}

function at(row: readonly number[], index: number): number {
  return row[index] ?? Number.POSITIVE_INFINITY;
}
