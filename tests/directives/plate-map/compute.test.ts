import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import { evaluate } from '../../nutrition/evaluate.js';
import { computeParts } from '../desk.js';
import { part } from '../parts.js';

function computed(rows: readonly string[], attributes: Readonly<Record<string, string>> = {}) {
  const report = createReport();
  const lesson = computeParts([part('plate-map', { id: 'd', dish: 'bowl', ...attributes }, rows)], report);
  const value = (name: string) => lesson.numbers.get(`d.${name}`)?.value;
  return { lesson, value, problems: report.problems, facts: lesson.entries[0]?.computed?.facts };
}
const kinds = (value: (name: string) => number | null | undefined) =>
  ['vegetables-and-fruit', 'protein', 'grain-or-starch'].map((kind) => value(`${kind}.parts`));

// Largest remainder worked out by hand; the method is Hamilton's, as in any account of apportionment.
describe('twelve parts', () => {
  it('of 240 and 60, 120 and 120 mL are 7, 2 and 3', () => {
    const { value } = computed([
      '1 cup carrots, raw',
      '1/2 cup brown rice, cooked',
      '1/2 cup lentils, cooked ; counts = protein',
      '1/4 cup mango',
    ]);
    // Carrots and mango are one kind: 300 of 540 mL are 6.67 parts, rounded up to 7; inside it 5.6 and 1.4 of the 7.
    // Rice and lentils have 2.67 each and one part is left for the two; it goes to rice, the earlier row.
    expect(kinds(value)).toEqual([7, 2, 3]);
    expect([value('carrots-raw.parts'), value('mango.parts')]).toEqual([6, 1]);
  });

  it('of half, a quarter and a quarter are 6, 3 and 3', () => {
    const { value, lesson } = computed([
      '1 cup carrots, raw',
      '1/2 cup lentils, cooked ; counts = protein',
      '1/2 cup brown rice, cooked',
    ]);
    expect(kinds(value)).toEqual([6, 3, 3]);
    for (const number of lesson.numbers.all)
      if (number.value !== null) expect(evaluate(number)).toBeCloseTo(number.value, 9);
  });

  it('go by the earlier row where they tie: 140 and 140 mL beside 460 and 460', () => {
    const rows = ['140 mL carrots, raw', '140 mL broccoli, boiled'];
    const rice = '460 mL brown rice, cooked';
    const beans = '460 mL lentils, cooked ; counts = protein';
    // 280, 460 and 460 of 1200 mL: 2.8, 4.6 and 4.6 parts; the two left over go to 0.8 and to the earlier 0.6.
    expect(kinds(computed([...rows, rice, beans]).value)).toEqual([3, 4, 5]);
    expect(kinds(computed([...rows, beans, rice]).value)).toEqual([3, 5, 4]);
  });
});

describe('totals', () => {
  it('are those of the release, for one person', () => {
    const { value } = computed(['2 cups brown rice, cooked'], { serves: '2' });
    // USDA SR28, 20037: brown rice, long-grain, cooked. A cup is 202 g; in 100 g 123 kcal, 2.74 g protein, 1.6 g fiber, 4 mg sodium.
    expect(value('energy')).toBeCloseTo(123 * 2.02, 6);
    expect(value('protein')).toBeCloseTo(2.74 * 2.02, 6);
    expect(value('fiber')).toBeCloseTo(1.6 * 2.02, 6);
    expect(value('sodium')).toBeCloseTo(4 * 2.02, 6);
  });

  it('count what stands beside the dish', () => {
    const one = computed(['1 cup carrots, raw']).value('energy') ?? 0;
    const two = computed(['1 cup carrots, raw', 'fat = 1 tbsp canola oil']).value('energy') ?? 0;
    // USDA SR28, 04582: canola oil, 884 kcal in 100 g, a tablespoon is 14 g.
    expect(two - one).toBeCloseTo(8.84 * 14, 6);
  });
});

describe('settings for cautions', () => {
  const settings = (rows: readonly string[], attributes = {}) => computed(rows, attributes).facts?.settings;

  it('tell a meal below 15 g of carbohydrate, and one without a part of grain, starch or fruit', () => {
    // 3 oz of chicken has none; a cup of raw spinach has 1 g (USDA SR28, 11457: 3.63 g in 100 g, a cup is 30 g).
    expect(settings(['3 oz chicken breast, roasted', '1 cup spinach, raw'])).toEqual({
      carbohydrate: ['below 15 g', 'below 26 percent'],
      parts: ['no carbohydrate'],
    });
    expect(settings(['1 cup brown rice, cooked'])).toEqual({ carbohydrate: [], parts: [] });
    expect(settings(['1 cup mango'])).toEqual({ carbohydrate: [], parts: [] });
  });

  it('go by what one person eats', () => {
    expect(settings(['1 cup brown rice, cooked'], { serves: '6' })?.carbohydrate).toEqual(['below 15 g']);
  });
});
