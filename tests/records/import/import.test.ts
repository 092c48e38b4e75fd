import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createReport, type Problem } from '../../../src/diagnostics/index.js';
import { NUTRIENTS } from '../../../src/nutrition/index.js';
import { findFoods } from '../../../src/records/finder.js';
import { createCsvReader } from '../../../src/records/import/csv.js';
import {
  IMPORT_FILES,
  type Import,
  type ImportFile,
  importedLines,
  openImported,
  startImport,
} from '../../../src/records/import/index.js';
import { NUTRIENT_NUMBERS } from '../../../src/records/import/nutrients.js';
import { EXTRACT } from './extract.js';

interface Ran extends Partial<ReturnType<Import['finish']>> {
  readonly problems: readonly Problem[];
}

/** Imports an extract, given in pieces of so many letters. */
function run(changes: Partial<Record<ImportFile, string>> = {}, piece = 1_000_000): Ran {
  const report = createReport();
  const task = startImport(report);
  for (const { file } of IMPORT_FILES) {
    const text = changes[file] ?? EXTRACT[file];
    const reader = task.reader(file, file);
    for (let at = 0; at < text.length; at += piece) reader.push(text.slice(at, at + piece));
    if (!reader.end()) return { problems: report.problems };
  }
  return { problems: report.problems, ...task.finish() };
}
const table = () =>
  [...importedLines({ release: 'extract 2024-10-31', date: '2024-10-31', foods: run().foods ?? [] })].join(
    '\n',
  );

describe('a download', () => {
  const { foods = [], skipped = [], problems } = run();

  it('gives foods with their values per 100 g, and null where nothing is known', () => {
    expect(problems).toEqual([]);
    expect(foods.map((food) => [food.number, food.description, food.type, food.date])).toEqual([
      ['900001', 'Moonbeans, "silver", raw', 'foundation_food', '2024-10-31'],
      ['900002', 'Moonbeans, cooked, in two lines', 'sr_legacy_food', '2019-04-01'],
      ['900003', 'Moonbean soup', 'survey_fndds_food', '2022-10-28'],
    ]);
    // Specific factors before general ones; a measured zero stays zero; below zero is not known.
    expect(foods[0]?.per100g).toMatchObject({ energy: 330.25, protein: 21.6, sodium: 0, carbohydrate: null });
    expect(foods[1]?.per100g).toMatchObject({ energy: 132, 'vitamin D': null, protein: null });
    expect(foods[2]?.per100g.protein).toBe(4.5);
    for (const food of foods) expect(Object.keys(food.per100g).sort()).toEqual(Object.keys(NUTRIENTS).sort());
  });

  it('gives household weights in its own words', () => {
    expect(foods.map((food) => food.weights)).toEqual([
      [{ words: '1 cup', grams: 185 }],
      [{ words: '0.5 cup, mashed; hot', grams: 92.5 }],
      [{ words: '1 bowl', grams: 245 }],
    ]);
  });

  it('counts what it passes over, with the reason', () => {
    expect(Object.fromEntries(skipped.map(({ what, count }) => [what.split(':')[0], count]))).toEqual({
      'branded foods': 1,
      'foods of the type "sub_sample_food"': 1,
      'amounts by a second method': 1,
      'amounts of nutrients that the program does not use': 1,
      'amounts below zero': 1,
      'amounts left blank': 1,
      'amounts of foods that are not imported': 1,
      'amounts of nutrients that nutrient.csv does not have': 1,
      'household weights without a measure': 1,
      'household weights of foods that are not imported': 1,
      'household weights without grams': 1,
      'foods without any amount that the program uses': 1,
    });
  });

  it('reads the same in pieces of any size, with any line ends, as columns in any order', () => {
    const whole = run();
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 97 }), (piece) => {
        expect(run({}, piece)).toEqual(whole);
      }),
      { numRuns: 20 },
    );
    const windows = EXTRACT['nutrient.csv'].replaceAll('\n', '\r\n');
    expect(run({ 'nutrient.csv': `\uFEFF${windows}` }, 3)).toEqual(whole);
    const turned = EXTRACT['measure_unit.csv']
      .split('\n')
      .map((line) => line.split(',').reverse().join(','))
      .join('\n');
    expect(run({ 'measure_unit.csv': turned })).toEqual(whole);
  });

  it('makes a nutrient unknown that a food has twice with different amounts', () => {
    const again = (amount: string) =>
      run({
        'food_nutrient.csv': `${EXTRACT['food_nutrient.csv']}"12","900001","1003","${amount}"${',""'.repeat(7)}\n`,
      });
    expect(again('21.6').foods?.[0]?.per100g.protein).toBe(21.6);
    expect(again('9').foods?.[0]?.per100g.protein).toBeNull();
  });

  it('answers each nutrient by the numbers of the Standard Reference', () => {
    // USDA SR28, NUTR_DEF: 203 protein, 204 fat, 205 carbohydrate, 208 energy, 291 fiber, 307 sodium.
    expect(NUTRIENT_NUMBERS).toMatchObject({
      protein: ['203'],
      fat: ['204'],
      carbohydrate: ['205'],
      energy: ['208', '958', '957'],
      fiber: ['291', '293'],
      sodium: ['307'],
    });
    const numbers = Object.values(NUTRIENT_NUMBERS).flat();
    expect(new Set(numbers).size).toBe(numbers.length);
  });
});

describe('malformed files', () => {
  const change = (file: ImportFile, from: string, to: string) => ({
    [file]: EXTRACT[file].replace(from, to),
  });
  // What is wrong, the file, what stands there, what is put in its place, and the line and column.
  it.each<[string, ImportFile, string, string, string, number, number]>([
    ['a missing heading', 'food.csv', '"data_type"', '"type"', 'records/import-file', 1, 1],
    [
      'a heading that stands twice',
      'measure_unit.csv',
      '"id","name"',
      '"id","name","id"',
      'records/import-file',
      1,
      1,
    ],
    ['a row with a cell too many', 'measure_unit.csv', '"1001",', '"1001","",', 'records/import-row', 3, 11],
    ['a row that is cut', 'measure_unit.csv', '"1001","tablespoon"', '"1001"', 'records/import-row', 3, 1],
    ['text after a closing mark', 'measure_unit.csv', '"cup"', '"cup" x', 'records/import-row', 2, 13],
    ['a mark inside a plain cell', 'measure_unit.csv', '"cup"', 'c"up', 'records/import-row', 2, 9],
    [
      'a mark that is never closed',
      'measure_unit.csv',
      '"undetermined"',
      '"undetermined',
      'records/import-row',
      4,
      8,
    ],
    ['a zero byte', 'measure_unit.csv', 'cup', 'c\0p', 'records/import-row', 2, 10],
    ['an id that is none', 'food.csv', '"900002"', '"9OOOO2"', 'records/import-value', 3, 1],
    ['a food that stands twice', 'food.csv', '"900003"', '"900001"', 'records/import-value', 5, 1],
    ['a date that is none', 'food.csv', '2022-10-28', '28.10.2022', 'records/import-value', 5, 53],
    ['an amount that is no number', 'food_nutrient.csv', '"21.6"', '"21,6"', 'records/import-value', 4, 21],
    ['a nutrient in another unit', 'nutrient.csv', '"MG","307"', '"G","307"', 'records/import-value', 8, 21],
    ['grams that are no number', 'food_portion.csv', '"92.5"', '"about 90"', 'records/import-value', 3, 53],
    ['an empty file', 'food.csv', EXTRACT['food.csv'], '', 'records/import-file', 1, 1],
  ])('are refused for %s in %s', (_what, file, from, to, code, line, column) => {
    expect(EXTRACT[file]).toContain(from);
    const { problems, foods } = run(change(file, from, to));
    expect(foods).toBeUndefined();
    expect(problems.map((p) => [p.code, p.place?.file, p.place?.line, p.place?.column])).toEqual([
      [code, file, line, column],
    ]);
    expect(problems[0]?.hint).toBeTruthy();
  });

  it('are never held whole: a cell that does not end is refused early', () => {
    const report = createReport();
    const reader = createCsvReader('x.csv', ['a'], () => true, report);
    expect(reader.push('a\n"')).toBe(true);
    expect(reader.push('x'.repeat(100_001))).toBe(false);
    expect(reader.push('more')).toBe(false);
    expect(report.problems).toHaveLength(1);
  });

  it('never throw, whatever they hold', () => {
    const odd = fc.string({
      unit: fc.constantFrom('"', ',', '\n', '\r', 'a', '1', '\0', ' '),
      maxLength: 40,
    });
    fc.assert(
      fc.property(odd, fc.integer({ min: 1, max: 5 }), (text, piece) => {
        const { problems, foods } = run({ 'measure_unit.csv': `"id","name"\n${text}` }, piece);
        expect(foods === undefined).toBe(problems.length > 0);
      }),
    );
  });
});

describe('a table that was imported', () => {
  it('gives back every food as it was written', () => {
    const report = createReport();
    const opened = openImported(table(), 'x.tsv', report);
    expect(report.problems).toEqual([]);
    expect([opened.release, opened.date]).toEqual(['extract 2024-10-31', '2024-10-31']);
    const { foods = [] } = run();
    expect(opened.names.map((name) => name.number)).toEqual(foods.map((food) => food.number));
    for (const food of foods)
      expect(opened.food(food.number)).toEqual({
        ...food,
        weights: food.weights.map((w) => ({ ...w, words: w.words.replaceAll(';', ',') })),
      });
    expect(opened.food('1')).toBeUndefined();
  });

  it('reports what was changed in it by hand', () => {
    const report = createReport();
    expect(openImported(table().replace('sodium (mg)', 'salt (g)'), 'x.tsv', report).names).toEqual([]);
    expect(report.problems.map((p) => [p.code, p.place?.line])).toEqual([['records/headings', 5]]);
    const cut = table().replace('900002\t', '900002');
    const late = createReport();
    expect(openImported(cut, 'x.tsv', late).food('900002Moonbeans, cooked, in two lines')).toBeUndefined();
    expect(late.problems.map((p) => [p.code, p.place?.line])).toEqual([['records/cells', 7]]);
  });

  it('is searched after everyday foods and before the release', () => {
    const report = createReport();
    const none = { read: () => undefined, part: () => undefined };
    const found = findFoods('moonbeans', 9, none, report, [openImported(table(), 'x.tsv', report)]);
    expect(found.shown.map((f) => 'imported' in f && [f.imported.number, f.release])).toEqual([
      ['900001', 'extract 2024-10-31'],
      ['900002', 'extract 2024-10-31'],
    ]);
  });
});
