import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createReport } from '../../src/diagnostics/index.js';
import { type FinderFiles, findFoods } from '../../src/records/finder.js';
import { isFood, loadFoods } from '../../src/records/index.js';
import { nearestFoods, type SearchEntry, searchFoods } from '../../src/records/search.js';
import { ASSETS, plainRows } from './tables.js';

const bytes = readFileSync('assets/foods/release.tsv');
const asked: string[] = [];
const FILES: FinderFiles = {
  read(path) {
    asked.push(path);
    return ASSETS.read(path);
  },
  part: (_path, start, length) => bytes.subarray(start, start + length).toString('utf8'),
};

function find(words: string, show = 3) {
  const report = createReport();
  const found = findFoods(words, show, FILES, report);
  expect(report.problems).toEqual([]);
  return found;
}
const kinds = (words: string) =>
  find(words, 1).shown.map((found) => ('food' in found ? found.food.kind : found.hit.description));

describe('the index of the release', () => {
  const index = plainRows('foods/release-index.tsv');

  it('points to the line of every food', () => {
    const rows = plainRows('foods/release.tsv');
    expect(index.map((row) => [row.number, row.description])).toEqual(
      rows.map((row) => [row.number, row.description]),
    );
    const wrong = index.filter((row) => {
      const start = Number(row.start);
      const line = bytes.subarray(start, start + Number(row.length)).toString('utf8');
      const before = start === 0 ? '\n' : String.fromCharCode(bytes[start - 1] ?? 0);
      const after = String.fromCharCode(bytes[start + Number(row.length)] ?? 0);
      return before !== '\n' || after !== '\n' || !line.startsWith(`${row.number}\t${row.description}\t`);
    });
    expect(wrong).toEqual([]);
  });
});

describe('finding foods', () => {
  // The names that people use for the same foods: common usage, from memory.
  it.each([
    ['frijoles negros', 'black beans'],
    ['garbanzo', 'chickpeas'],
    ['garbanzos', 'chickpeas'],
    ['scallion', 'scallions'],
    ['spring onions', 'scallions'],
    ['courgette', 'zucchini'],
    ['aubergine', 'eggplant'],
    ['Yuca', 'cassava'],
    ['ñame', 'yam'],
    ['kangkong', 'water spinach'],
    ['karela', 'bitter melon'],
    ['injera', 'teff'],
    ['beans', 'pinto beans'],
    ['milk', 'milk'],
  ])('finds %s as %s', (words, kind) => {
    expect(kinds(words)).toEqual([kind]);
    expect(find(words).hits[0]?.guess).toBeUndefined();
  });

  it.each([
    ['scalion', 'scallions'],
    ['garbonzo', 'chickpeas'],
    ['brocolli', 'broccoli'],
    ['cassva', 'cassava'],
    ['frijoles negroes', 'black beans'],
    ['bluberies', 'blueberries'],
    ['zuchini', 'zucchini'],
  ])('forgives the letters of %s: %s', (words, kind) => {
    expect(kinds(words)).toEqual([kind]);
    expect(find(words).hits.every((hit) => hit.guess)).toBe(true);
  });

  it('forgives no letter of a short word, and only one of a middling one', () => {
    expect(find('eqg').hits).toEqual([]);
    expect(find('okxx').hits).toEqual([]);
  });

  it('offers five foods of different kinds when nothing answers', () => {
    const { hits, near } = find('xylophone soup');
    expect(hits).toEqual([]);
    expect(near).toHaveLength(5);
    expect(new Set(near.map((hit) => hit.name)).size).toBe(5);
    expect(find('bean xylophone').near[0]?.name).toMatch(/bean/);
  });

  it('puts every everyday food before the rest of the release', () => {
    for (const words of ['beans', 'milk', 'rice', 'chicken']) {
      const named = find(words).hits.map((hit) => hit.name !== undefined);
      expect(named.indexOf(false), words).toBeGreaterThan(0);
      expect(named.lastIndexOf(true), words).toBeLessThan(named.indexOf(false));
    }
  });

  it('shows the same food as lessons get, read from its own line', () => {
    const report = createReport();
    const foods = loadFoods(ASSETS, report);
    for (const words of ['plantain', 'cherry tomatoes', 'tofu', 'oxtail']) {
      for (const found of find(words, 50).shown) {
        if ('food' in found) expect(found.food).toEqual(foods.find(found.food.name));
        else expect('row' in found && { ...found.row }).toEqual({ ...foods.record(found.hit.number) });
      }
    }
    expect(foods.names.filter((name) => !isFood(foods.find(name)))).toEqual([]);
  });

  it('reads neither the whole release nor the descriptions beside it', () => {
    asked.length = 0;
    find('beans');
    expect([...new Set(asked)].sort()).toEqual(['foods/everyday.tsv', 'foods/release-index.tsv']);
  });

  it('never throws, whatever is typed or missing', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 30 }), (words) => {
        find(words, 1);
      }),
      { numRuns: 30 },
    );
    const none = findFoods('beans', 3, { read: () => undefined, part: () => undefined }, createReport());
    expect(none).toEqual({ hits: [], shown: [], near: [] });
  });
});

describe('ranks', () => {
  const entry = (name: string, kind: string, others: string[], description: string): SearchEntry => ({
    name,
    kind,
    others,
    number: name,
    description,
  });
  const ENTRIES = [
    entry('bread, with oats', 'bread', [], 'Bread'),
    entry('granola', 'granola', [], 'Cereal of oats'),
    entry('porridge', 'porridge', ['cooked oats'], 'Cereal'),
    entry('oats, dry', 'oats', [], 'Cereal'),
    entry('oat bran', 'oat bran', [], 'Bran'),
  ];

  it('go from the food’s own name to its description', () => {
    expect(searchFoods(ENTRIES, () => [], 'oats', 9).map((hit) => hit.name)).toEqual([
      'oats, dry',
      'bread, with oats',
      'porridge',
      'granola',
    ]);
  });

  it('leave what lies beyond the number asked for', () => {
    const rest = [{ number: '1', description: 'Oats, other' }];
    expect(searchFoods(ENTRIES, () => rest, 'oats', 4)).toHaveLength(4);
    expect(searchFoods(ENTRIES, () => rest, 'oats', 9).at(-1)).toEqual(rest[0]);
    expect(searchFoods(ENTRIES, () => rest, 'othet', 9)).toEqual([{ ...rest[0], guess: true }]);
  });

  it('give one near food of each kind', () => {
    expect(nearestFoods(ENTRIES, 'granalo', 2).map((e) => e.name)[0]).toBe('granola');
    expect(nearestFoods(ENTRIES, '', 9)).toHaveLength(5);
  });
});
