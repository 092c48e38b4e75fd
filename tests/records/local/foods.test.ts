import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import { NUTRIENTS } from '../../../src/nutrition/index.js';
import { isFood, isSource, loadFoods, loadSources, withSources } from '../../../src/records/index.js';
import { readLocalFoods } from '../../../src/records/local/index.js';
import { ASSETS } from '../tables.js';

const ON = '2026-12-01';
const OAT = readFileSync('assets/local/lantern-street/foods.yaml', 'utf8');
// Invented: the release has no rinsed black beans.
const RINSED = `site: here
foods:
  - name: black beans, canned, drained and rinsed
    aliases: [rinsed black beans]
    state: canned, drained and rinsed
    plate: [protein, grain or starch]
    serving: { words: 1/2 cup, grams: 85 }
    label: { energy: 100 kcal, sodium: 150 mg, fiber: 6.8 g, vitamin D: 0 mcg }
    contains: soy?
    picture: black-beans-rinsed
    flags: [canned]
    source: an invented can
    dated: 2026-11-25
    keep_months: 12
`;

function read(text: string, on = ON) {
  const report = createReport();
  return { foods: readLocalFoods(text, 'foods.yaml', on, report), report };
}
const said = (report: { problems: readonly { code: string; place?: { line: number } }[] }) =>
  report.problems.map((p) => `${p.code} ${p.place?.line}`);
const base = loadFoods(ASSETS, createReport());

describe('a food from a label', () => {
  it('has the values of its serving per 100 g, and null for what the label leaves out', () => {
    const { foods, report } = read(RINSED);
    expect(report.problems).toEqual([]);
    const food = foods[0]?.food;
    // 150 mg in 85 g is 176.47 mg in 100 g.
    expect(food?.per100g.sodium).toBeCloseTo(176.470588, 6);
    expect(food?.per100g.fiber).toBe(8);
    expect(food?.per100g['vitamin D']).toBe(0);
    expect(food?.per100g['added sugars']).toBeNull();
    expect(Object.keys(food?.per100g ?? {}).sort()).toEqual(Object.keys(NUTRIENTS).sort());
    expect(food).toMatchObject({
      kind: 'black beans',
      form: 'canned, drained and rinsed',
      usual: { words: '1/2 cup', grams: 85 },
      measures: [{ name: 'cup', grams: 170, source: 'label-black-beans-canned-drained-and-rinsed' }],
      contains: { soy: 'unknown', milk: 'no' },
      record: { date: '2026-11-25' },
    });
  });

  it('joins the foods of the tables, under all its names and in its kind', () => {
    const report = createReport();
    const foods = base.with(read(RINSED).foods, report);
    expect(report.problems).toEqual([]);
    const food = foods.find('rinsed black beans');
    expect(isFood(food) && food.name).toBe('black beans, canned, drained and rinsed');
    expect(foods.form('frijoles negros', 'canned, rinsed')).toBe(food);
    expect(foods.forms('black beans').at(-1)).toBe(food);
    expect(foods.names.at(-1)).toBe('black beans, canned, drained and rinsed');
    expect(foods.search('black beans rinsed')[0]?.name).toBe('black beans, canned, drained and rinsed');
    expect(isFood(base.find('rinsed black beans'))).toBe(false);
    expect(foods.with([], report)).toBe(foods);
  });

  it('is a source of its own', () => {
    const own = loadSources(ASSETS.read('sources.yaml') ?? '', createReport());
    const [food] = read(RINSED).foods;
    const more = withSources(own, food ? [food.source] : []);
    const found = more.find('label-black-beans-canned-drained-and-rinsed');
    expect(isSource(found) && [found.kind, found.dataDate]).toEqual(['label', '2026-11-25']);
    expect(more.all.length).toBe(own.all.length + 1);
    expect(withSources(own, [])).toBe(own);
  });

  it('of the example site reads without a problem', () => {
    const { foods, report } = read(OAT);
    expect(base.with(foods, report).names.at(-1)).toBe('oat drink, plain, fortified');
    expect(report.problems).toEqual([]);
  });
});

describe('what is wrong with a local food', () => {
  it.each<[string, string, string, string]>([
    ['a value in another unit', 'sodium: 150 mg', 'sodium: 0.15 g', 'local/shape 8'],
    ['a value without a unit', 'sodium: 150 mg', 'sodium: "150"', 'local/shape 8'],
    ['a nutrient that we do not know', 'sodium: 150 mg', 'salt: 1 g', 'local/shape 8'],
    ['parts that outweigh the serving', 'fiber: 6.8 g', 'carbohydrate: 90 g', 'local/shape 7'],
    ['a serving that is none', 'words: 1/2 cup', 'words: some', 'local/shape 7'],
    ['a serving of nothing', 'grams: 85', 'grams: 0', 'local/shape 7'],
    ['contents that we do not know', 'contains: soy?', 'contains: nuts', 'local/shape 9'],
    ['a state that is none', 'state: canned, drained and rinsed', 'state: rinsed', 'local/shape 5'],
    ['a misspelt entry', 'keep_months', 'keep_month', 'local/shape 14'],
    ['a day that is none', 'dated: 2026-11-25', 'dated: 2026-11-31', 'local/shape 13'],
  ])('is reported and the food left out: %s', (_what, from, to, code) => {
    expect(RINSED).toContain(from);
    const { foods, report } = read(RINSED.replace(from, to));
    expect(said(report)).toContain(code);
    expect(foods).toEqual([]);
  });

  it('is reported past its shelf life or ahead of the day, and the food is still used', () => {
    const old = read(RINSED, '2027-11-26');
    expect([old.foods.length, ...said(old.report)]).toEqual([1, 'local/food-old 13']);
    expect(read(RINSED, '2027-11-25').report.problems).toEqual([]);
    const ahead = read(RINSED, '2026-11-24');
    expect([ahead.foods.length, ...said(ahead.report)]).toEqual([1, 'local/date-ahead 13']);
  });

  it.each([
    ['a name', 'name: black beans, canned, drained and rinsed', 'name: Black beans, dry', 3],
    ['another name', 'rinsed black beans', '"garlic, raw"', 4],
    ['a form of a kind', 'aliases: [rinsed black beans]', 'form: dry', 3],
  ])('is %s that exists already; the food of the table stays', (_what, from, to, line) => {
    const { foods } = read(RINSED.replace(from, to));
    const report = createReport();
    const all = base.with(foods, report);
    expect(said(report)).toEqual([`records/twice ${line}`]);
    expect(all.names).toEqual(base.names);
  });
});
