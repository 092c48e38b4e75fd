import { distance } from 'fastest-levenshtein';

/**
 * The names closest to what was written, best first. A name counts as near when at most a third of
 * its letters (and at least one) differ, or when one holds the other whole.
 */
export function nearest(written: string, names: Iterable<string>, most = 1): string[] {
  const wanted = written.toLowerCase();
  const ranked: { name: string; cost: number }[] = [];
  for (const name of new Set(names)) {
    const cost = distance(wanted, name.toLowerCase());
    const allowed = Math.max(1, Math.ceil(Math.max(wanted.length, name.length) / 3));
    const holds =
      wanted.length >= 4 && (name.toLowerCase().includes(wanted) || wanted.includes(name.toLowerCase()));
    if (cost <= allowed || holds) ranked.push({ name, cost: holds ? Math.min(cost, allowed) : cost });
  }
  ranked.sort((a, b) => a.cost - b.cost || (a.name < b.name ? -1 : 1));
  return ranked.slice(0, most).map((r) => r.name);
}
