import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import { evaluate } from '../../nutrition/evaluate.js';
import { computeParts, tables } from '../desk.js';
import { part } from '../parts.js';
import { abbreviated } from '../sr28.js';

function board(rows: readonly string[], need = 'vegan') {
  const report = createReport();
  const lesson = computeParts([part('swap-board', { id: 's', need }, rows)], report);
  return { lesson, report, entry: lesson.entries[0] };
}
const MILK = '1 cup whole milk -> 1 cup soy drink, calcium added ; job = calcium, protein';
const SALMON = '3 oz salmon, baked -> 1/2 cup tofu, firm, calcium-set ; use = breakfast in winter';

describe('a swap', () => {
  const { lesson, report } = board([MILK]);
  const value = (name: string) => lesson.numbers.get(`s.soy-drink-calcium-added.${name}`)?.value;

  it('holds what the publisher has, amount by amount', () => {
    expect(report.problems).toEqual([]);
    // USDA SR28: whole milk 01077, 1 cup 244 g; soymilk with added calcium, vitamins A and D 16139, 1 cup 243 g.
    const [milk, soy] = [abbreviated('01077'), abbreviated('16139')];
    expect([milk.weight1, soy.weight1]).toEqual([244, 243]);
    for (const [name, key] of [
      ['protein', 'protein'],
      ['calcium', 'calcium'],
      ['iron', 'iron'],
      ['zinc', 'zinc'],
      ['vitamin-b12', 'vitaminB12'],
      ['vitamin-d', 'vitaminD'],
      ['fiber', 'fiber'],
      ['sodium', 'sodium'],
      ['saturated-fat', 'saturatedFat'],
    ] as const) {
      const [before, after] = [(milk[key] ?? Number.NaN) * 2.44, (soy[key] ?? Number.NaN) * 2.43];
      expect(value(`${name}-before`), name).toBeCloseTo(before, 6);
      expect(value(`${name}-after`), name).toBeCloseTo(after, 6);
      expect(value(`${name}-change`), name).toBeCloseTo(after - before, 6);
    }
  });

  it('leaves what is not known open', () => {
    // The release has no added sugars; a sweetened drink may hold some.
    expect([value('added-sugars-after'), value('added-sugars-change')]).toEqual([null, null]);
  });

  it('carries a formula that gives each number', () => {
    for (const number of lesson.numbers.all)
      if (number.value !== null) expect(evaluate(number)).toBeCloseTo(number.value, 6);
  });
});

describe('what is lost', () => {
  it('is what gave a tenth of the Daily Value and gives less than half of that', () => {
    // Daily Values, 21 CFR 101.9(c)(8)(iv): vitamin B12 2.4 µg, vitamin D 20 µg, so a tenth is 0.24 and 2 µg.
    // SR28 15237, salmon: 2.80 and 13.1 µg in 100 g; 3 oz is 85.05 g. Tofu has none, so that both are lost.
    const salmon = abbreviated('15237');
    expect(((salmon.vitaminB12 ?? 0) * 85.05) / 100).toBeGreaterThan(0.24);
    expect(((salmon.vitaminD ?? 0) * 85.05) / 100).toBeGreaterThan(2);
    const { settings } = board([SALMON]).entry?.computed?.facts ?? {};
    expect(settings).toMatchObject({ lost: ['yes', 'vitamin B12', 'vitamin D'], use: ['morning'] });
  });

  it('is told to the cautions: lost, last source of B12, sodium that falls', () => {
    // SR28 16123, soy sauce: 5,493 mg sodium in 100 g; 1 tbsp of 16 g has 879 mg.
    const sauce = board(['1 tbsp soy sauce -> 1 tbsp lemon juice']).entry?.computed?.facts;
    expect(sauce?.settings).toMatchObject({ lost: [], sodium: ['falls 500 mg'] });
    const milk = board([MILK]).entry?.computed?.facts;
    expect(milk?.settings).toMatchObject({ need: ['vegan'], lost: [], sodium: [], use: [] });
    expect(milk?.foods.slice(0, 2).map(({ side }) => side)).toEqual(['old', 'new']);
  });

  it('stops a job that the new food does not do, or of which nobody knows', () => {
    const protein = board(
      ['1 cup whole milk -> 1 cup almond drink, unsweetened ; job = protein'],
      'peanut-free',
    );
    expect(protein.entry?.computed).toBeUndefined();
    expect(protein.report.problems.length).toBeGreaterThan(0);
  });
});

describe('safety', () => {
  it('tests every need in force, not only the one that it was made for', () => {
    const { entry, report } = board(
      ['1 cup whole milk -> 1 cup almond drink, unsweetened'],
      'dairy-free,nut-free',
    );
    expect(entry?.computed).toBeUndefined();
    expect(entry?.refused?.join(' ')).toContain('This swap brings in');
    expect(report.problems.map(({ code }) => code)).toContain('directives/need');
  });

  it('names foods that do not fit on the worksheet, and each is known to break a need', () => {
    const { entry } = board([MILK], 'vegan,nut-free');
    expect(entry?.computed).toMatchObject({
      candidates: [
        { words: 'almond drink, unsweetened', verdicts: [{ need: 'vegan' }, { verdict: 'breaks' }] },
        { words: 'soy drink, calcium added', verdicts: [{ verdict: 'passes' }, { verdict: 'passes' }] },
      ],
    });
  });

  it.each([
    ['babies', '1 cup whole milk -> 1 cup soy drink, calcium added', 'main drink'],
    ['parents of infants', '1 tbsp white sugar -> 1 tbsp honey', 'Honey is not safe'],
    ['toddlers', '1 cup whole milk -> 8 fl oz rice drink, unsweetened', 'main drink'],
  ])('shows %s no %s', (audience, row, words) => {
    const report = createReport();
    const one = part('swap-board', { id: 's' }, [row]);
    const lesson = computeParts([one], report, audience);
    expect(tables.foods.names.length).toBeGreaterThan(0);
    expect(lesson.entries[0]?.computed).toBeUndefined();
    expect(lesson.entries[0]?.refused?.join(' ')).toContain(words);
  });
});
