import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import { isFood, loadFoods, PRICE_HEADINGS, readPrices } from '../../../src/records/index.js';
import { readLines, readLocalFoods, readSite } from '../../../src/records/local/index.js';
import { ASSETS } from '../tables.js';

const FOLDER = 'assets/local/lantern-street';
const text = (name: string) => readFileSync(`${FOLDER}/${name}`, 'utf8');
const DAY = '2026-12-01';
const loading = createReport();
const tables = loadFoods(ASSETS, loading);
const foods = tables.with(readLocalFoods(text('foods.yaml'), 'foods.yaml', DAY, loading), loading);
const site = readSite(
  text('site.yaml'),
  'site.yaml',
  readLines(text('lines.yaml'), 'lines.yaml', DAY, loading),
  DAY,
  loading,
);
if (!site) throw new Error('The site could not be read.');

const HEAD = PRICE_HEADINGS.join(',');
function read(rows: string, at = site) {
  const report = createReport();
  if (!at) throw new Error('no site');
  const prices = readPrices(`${HEAD}\n${rows}`, 'prices.csv', at, foods, report);
  return {
    prices,
    said: report.problems.map((p) => `${p.place?.line}:${p.place?.column} ${p.message}`),
    report,
  };
}
const SOUND = '"pinto beans, dry",2 lb,3.29,2.99,2026-12-02,ferry-hill-grocery,2026-11-25,,invented';

describe('the prices of the invented site', () => {
  const report = createReport();
  const prices = readPrices(text('prices.csv'), 'prices.csv', site, foods, report);

  it('read without a problem, enough of them for a year of lessons', () => {
    expect(report.problems).toEqual([]);
    expect(prices.all.length).toBeGreaterThan(50);
    expect(new Set(prices.all.map((one) => one.shop.id)).size).toBe(3);
    expect(prices.currency).toBe('USD');
  });

  it('say that they are invented, each of them', () => {
    for (const one of prices.all) expect(one.source).toBe('invented');
  });

  it('are found by food, the newest first', () => {
    const found = foods.find('carrots, raw');
    const days = isFood(found) ? prices.of(found).map((one) => one.shelf.dated) : [];
    expect(days).toHaveLength(3);
    expect(days).toEqual(days.toSorted().toReversed());
  });
});

describe('a row of prices', () => {
  it('keeps the sale price apart, with its last day, and ninety days when nothing is said', () => {
    const [one] = read(SOUND).prices.all;
    expect(one).toMatchObject({
      packageWords: '2 lb',
      keepDays: 90,
      shelf: { money: { cents: 329 }, kind: 'shelf' },
    });
    expect(one?.sale).toMatchObject({ price: { money: { cents: 299 }, kind: 'sale' }, ends: '2026-12-02' });
  });

  it('may stand below lines that begin with #, and its place is its own line', () => {
    const { prices, said } = read(`# read on foot\n${SOUND}\n`);
    expect(said).toEqual([]);
    expect(prices.all[0]?.place.line).toBe(3);
  });

  const change = (from: string, to: string) => SOUND.replace(from, to);
  it.each([
    [
      'an unknown food',
      change('pinto beans, dry', 'pintoo beans, dry'),
      '2:1 There is no "pintoo beans, dry" in the food tables.',
    ],
    [
      'an unknown shop',
      change('ferry-hill-grocery', 'ferry-hill'),
      '2:46 The site has no place "ferry-hill".',
    ],
    ['less than zero', change('3.29,2.99,2026-12-02', '-3.29,,'), '2:25 A sum cannot be less than zero.'],
    ['zero', change('3.29,2.99,2026-12-02', '0.00,,'), '2:25 A price of zero is no price.'],
    [
      'a slip of the point',
      change('3.29,2.99,2026-12-02', '32900,,'),
      '2:25 32900 for 2 lb of pinto beans, dry is out of reason.',
    ],
    [
      'next to nothing',
      change('3.29,2.99,2026-12-02', '0.03,,'),
      '2:25 0.03 for 2 lb of pinto beans, dry is out of reason.',
    ],
    ['another currency', change('3.29', '£3.29'), "2:25 The site's prices are in USD, and this one is in £."],
    ['words for a sum', change('3.29', 'cheap'), '2:25 "cheap" is not a sum of money.'],
    ['a package that is none', change('2 lb', 'big bag'), '2:20 "big bag" is not the size of a package.'],
    [
      'a sale that saves nothing',
      change('2.99', '3.29'),
      '2:30 The sale price 3.29 is not below the shelf price 3.29.',
    ],
    [
      'a sale that is over',
      change('2026-12-02', '2026-11-02'),
      '2:35 The sale ends on 2026-11-02, before the price was read.',
    ],
    ['the end of no sale', change('2.99,', ','), '2:31 A sale ends here, and there is no sale price.'],
    ['no day', change('2026-11-25', 'Tuesday'), '2:65 "Tuesday" is no day.'],
    ['an empty cell', change('invented', ''), '2:76 The price has no source.'],
    ['no shelf life', change(',,invented', ',soon,invented'), '2:76 "soon" is no shelf life.'],
    ['the same twice', `${SOUND}\n${SOUND}`, '3:1 This price stands in line 2 already.'],
    [
      'a comma without marks',
      change('"pinto beans, dry"', 'pinto beans, dry'),
      '2:75 The row has 10 cells; the file has 9 headings.',
    ],
  ])('with %s is told at its cell and left out', (_, rows, told) => {
    const { prices, said, report } = read(rows);
    expect(said).toEqual([told]);
    expect(report.problems.every((p) => p.code === 'local/price' && p.severity === 'stop' && p.hint)).toBe(
      true,
    );
    expect(prices.all).toHaveLength(rows.includes('\n') ? 1 : 0);
  });

  it('offers the nearest food and shop', () => {
    const hints = read(change('pinto beans, dry', 'pintoo beans, dry')).report.problems.map((p) => p.hint);
    expect(hints.join()).toContain('pinto beans, dry');
    expect(read(change('ferry-hill-grocery', 'ferry-hill-grocer')).report.problems[0]?.hint).toContain(
      'ferry-hill-grocery',
    );
  });

  it('takes pounds where the site’s country has pounds', () => {
    const { prices, said } = read(change('3.29', '£3.29'), site && { ...site, country: 'uk' });
    expect(said).toEqual([]);
    expect(prices.currency).toBe('GBP');
  });
});
