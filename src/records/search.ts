import type { EverydayRow } from './everyday.js';
import { nameKey } from './names.js';
import type { Release } from './release.js';

/** A food that a search found. */
export interface FoodHit {
  /** The everyday name; none for a food that only the release has. */
  readonly name?: string;
  readonly number: string;
  readonly description: string;
}

/**
 * Foods whose names and description begin words with all the words asked for, in any order. Everyday
 * foods come first, those whose own name holds the words before those that only match elsewhere; then
 * the rest of the release in its own order. No words find nothing.
 */
export function searchFoods(
  rows: readonly EverydayRow[],
  release: Release,
  words: string,
  most: number,
): readonly FoodHit[] {
  const wanted = nameKey(words)
    .split(/[^\p{L}\p{N}%]+/u)
    .filter((word) => word !== '');
  if (wanted.length === 0) return [];
  const holds = (text: string) => {
    const key = ` ${nameKey(text).replace(/[^\p{L}\p{N}%]+/gu, ' ')}`;
    return wanted.every((word) => key.includes(` ${word}`));
  };
  const hit = (row: EverydayRow): FoodHit => ({
    name: row.name.text,
    number: row.number.text,
    description: row.description.text,
  });
  const byName = rows.filter((row) => holds(row.name.text));
  const elsewhere = rows.filter((row) => {
    const cells = [row.name, row.kind, ...row.aliases, ...row.kindAliases, row.description];
    return !byName.includes(row) && holds(cells.map((cell) => cell.text).join(' '));
  });
  const hits = [...byName, ...elsewhere].map(hit);
  if (hits.length < most) {
    const everyday = new Set(rows.map((row) => row.number.text));
    for (const food of release.descriptions()) {
      if (hits.length >= most) break;
      if (!everyday.has(food.number) && holds(food.description)) hits.push(food);
    }
  }
  return hits.slice(0, most);
}
