import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import { computeLesson, type ReadTables } from '../../../src/pipeline/compute.js';
import { noPricesAt } from '../../../src/records/index.js';
import { evaluate } from '../../nutrition/evaluate.js';
import { computeParts, tables } from '../desk.js';
import { part } from '../parts.js';

const BEANS = part('cup-cost', { id: 'cost', foods: 'pinto beans, dry; pinto beans, canned' });

describe('the cost of a cup', () => {
  const report = createReport();
  const { numbers, byId } = computeParts([BEANS], report);

  /**
   * USDA SR28, read by eye from ABBREV.txt: pinto beans dry (16042) 11.33 g of water in 100 g, boiled (16043) 62.95 g,
   * a cup 171 g; a can (16044) 442 g, drained (16146) 277 g; a cup drained and rinsed (16345) 169 g.
   */
  it('is price ÷ weight bought × cup ÷ yield, from published weights', () => {
    const [pound, ounce] = [453.59237, 28.349523125];
    const cooked = (100 - 11.33) / (100 - 62.95);
    expect(numbers.get('cost.pinto-beans-dry.cost')?.value).toBeCloseTo(
      ((329 / (2 * pound)) * 171) / cooked,
      9,
    );
    expect(numbers.get('cost.pinto-beans-canned.cost')?.value).toBeCloseTo(
      ((119 / (15.5 * ounce)) * 169) / (277 / 442),
      9,
    );
    expect(report.problems).toEqual([]);
  });

  it('agrees with price ÷ cups in the package, as the worksheet works it out', () => {
    for (const row of ['pinto-beans-dry', 'pinto-beans-canned']) {
      const value = (name: string) => numbers.get(`cost.${row}.${name}`)?.value ?? Number.NaN;
      expect(value('price') / value('cups')).toBeCloseTo(value('cost'), 9);
    }
  });

  it('gives every number again when other code works it out', () => {
    for (const number of numbers.all)
      expect(evaluate(number), number.id).toBeCloseTo(number.value ?? Number.NaN, 9);
  });

  it('tells the cautions its shop, its day and that a price is printed, and the form what to look for', () => {
    expect(byId('cost')?.computed?.facts).toMatchObject({
      settings: { price: ['today'] },
      slots: { shop: 'Ferry Hill Grocery', date: { day: '2026-11-25' } },
      prices: [
        { food: { id: 'pinto-beans-dry' }, packageWords: '2 lb', last: '2026-11-25', fresh: true },
        { food: { id: 'pinto-beans-canned-with-the-liquid' }, packageWords: '1 can (15.5 oz)', fresh: true },
      ],
    });
  });

  it('puts the cheapest first, in bricks of a quarter', () => {
    const computed = byId('cost')?.computed as
      | { rungs?: readonly { name: string }[]; worth?: number }
      | undefined;
    expect(computed?.rungs?.map(({ name }) => name)).toEqual(['pinto-beans-dry', 'pinto-beans-canned']);
    expect(computed?.worth).toBe(25);
  });
});

describe('a price', () => {
  const on = (day: string, change: Partial<ReadTables> = {}) => {
    const report = createReport();
    const { lesson } = computeParts([BEANS], createReport());
    const computed = computeLesson(lesson, { ...tables, ...change, on: day }, report);
    return { computed, report };
  };

  it('is good for ninety days, the last one too', () => {
    expect(on('2027-02-23').computed.numbers.get('cost.pinto-beans-dry.cost')?.text).toBe('26¢');
  });

  it('gives no cents after them, and the build asks for a new one at its row', () => {
    const { computed, report } = on('2027-02-24');
    expect(computed.numbers.get('cost.pinto-beans-dry.cost')).toMatchObject({
      value: null,
      text: 'not known',
    });
    expect(computed.numbers.get('cost.pinto-beans-dry.price')).toBeUndefined();
    expect(computed.byId('cost')?.computed?.facts.settings).toEqual({ price: ['old'] });
    expect(report.problems.map(({ code, severity, place }) => `${severity} ${code} ${place?.file}`)).toEqual([
      'ask N13 prices.csv',
      'ask N13 prices.csv',
    ]);
  });

  it('dated ahead is not used', () => {
    const { computed } = on('2026-11-24');
    expect(computed.numbers.get('cost.pinto-beans-dry.cost')?.value).toBeNull();
    expect(computed.byId('cost')?.computed?.facts.settings).toEqual({ price: [] });
  });

  it('of a site without prices is asked for, and without a site nothing is shown', () => {
    const site = { id: 'willow-bend', country: 'us', places: [] };
    const empty = on('2026-12-01', { prices: noPricesAt(site) });
    expect(empty.report.problems).toEqual([]);
    expect(empty.computed.byId('cost')?.computed?.facts.prices?.map(({ fresh }) => fresh)).toEqual([
      false,
      false,
    ]);
    const none = on('2026-12-01', { prices: { ...noPricesAt(site), site: '' } });
    expect(none.report.problems.map(({ code }) => code)).toEqual(['directives/prices']);
  });

  it('on sale is not printed after the sale', () => {
    const chickpeas = part('cup-cost', { id: 'cost', foods: 'chickpeas, dry; chickpeas, canned' });
    const { lesson } = computeParts([chickpeas], createReport());
    const at = (day: string) =>
      computeLesson(lesson, { ...tables, on: day }, createReport()).numbers.get('cost.chickpeas-canned.sale')
        ?.text;
    expect(at('2026-12-02')).toBe('61¢');
    expect(at('2026-12-03')).toBeUndefined();
  });
});
