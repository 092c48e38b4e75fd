import { describe, expect } from 'vitest';
import {
  afterCooking,
  carbohydrateChoices,
  convert,
  cookedPer100g,
  costOf,
  EQUIVALENT_RULES,
  type EquivalentKind,
  equivalentsOf,
  fromInternationalUnits,
  gramsOf,
  guidanceLimit,
  KITCHENS,
  known,
  nutrientsAtRisk,
  oneEdition,
  parseAmount,
  patternAt,
  readPrice,
  retentionOf,
  rinseRange,
  shownChoices,
  sizeOf,
  testIngredients,
  toCents,
  type Unit,
  unsaidAtRisk,
  type Weighed,
  type Worked,
} from '../../src/nutrition/index.js';
import { evaluate } from './evaluate.js';
import { valueIn } from './expect-result.js';
import { food } from './foods.js';
import { type PublishedCase, runCases, within } from './published-case.js';

const EDITION = 'Dietary Guidelines for Americans 2020-2025, appendix 3, notes';
const PATTERN = 'Dietary Guidelines for Americans 2020-2025, table A3-2';
const RETENTION = 'USDA Table of Nutrient Retention Factors, Release 6 (2007)';
const PRICES = 'USDA Economic Research Service, fruit and vegetable prices, cherries 2022';
const SEEN = 'value printed in the source';
const MEMORY = 'value of the source, from memory';

const raw = <U extends Unit>(value: number, unit: U): Worked<U> => ({
  quantity: known(value, unit),
  working: { formula: 'raw', inputs: [{ name: 'raw', value, unit, source: 'case' }] },
  estimated: false,
});

/** One equivalent of each amount, by a food that has the measures. */
function oneEach(rows: readonly (readonly [string, EquivalentKind])[]) {
  return () => {
    const measures = [
      { name: 'cup', grams: 150, source: 'case' },
      { name: 'slice', grams: sizeOf('oz'), source: 'case' },
    ];
    const of = food({ name: 'case', measures });
    for (const [text, kind] of rows) {
      const { amount } = valueIn(parseAmount(text));
      expect(amount).not.toBeNull();
      const portion = valueIn(gramsOf(amount as never, of));
      within(valueIn(equivalentsOf({ food: of, portion, kind, edition: 'us-2020' })).value, 1, 1e-9);
    }
  };
}

function kept(code: string, nutrient: Parameters<typeof retentionOf>[1], amount: number, expected: number) {
  const worked = valueIn(afterCooking(raw(amount, 'mg'), valueIn(retentionOf(code, nutrient))));
  within(worked.quantity.value, expected, 0.01);
  expect(evaluate(worked.working)).toBeCloseTo(expected, 6);
}

function cup(dollars: string, pounds: number, left: number, cost: number) {
  return () => {
    const grams = (value: number): Weighed => ({
      grams: { value, unit: 'g' },
      working: { formula: 'grams', inputs: [{ name: 'grams', value, unit: 'g', source: 'case' }] },
      estimated: false,
    });
    const written = { food: 'cherries', size: '1 lb', kind: 'shelf', shop: 'survey', dated: '2022-12-31' };
    const result = valueIn(
      costOf({
        price: valueIn(readPrice({ ...written, price: dollars }, 'USD')),
        bought: grams(KITCHENS['us exact'].lb),
        eaten: grams(pounds * KITCHENS['us exact'].lb),
        yields: [{ factor: left, source: 'usda-ers', what: 'preparation' }],
      }),
    );
    expect(toCents(result.value)).toBe(cost);
    expect(evaluate(result.working)).toBeCloseTo(result.value, 9);
  };
}

function pattern(kcal: number, expected: readonly number[]) {
  const amounts = valueIn(patternAt('us-2020', kcal));
  const groups = ['vegetables', 'fruit', 'grains', 'dairy', 'protein foods', 'oils'];
  expect(groups.map((group) => amounts.find((one) => one.group === group)?.high)).toEqual(expected);
}

/** What a need leaves out of a list of ingredients. */
function leavesOut(need: Parameters<typeof testIngredients>[1], expected: readonly string[]) {
  const list = [
    'honey',
    'gelatin',
    'whey',
    'carmine',
    'egg white',
    'fish sauce',
    'barley malt',
    'tofu',
    'lentils',
  ];
  const verdicts = list.map((words) => [words, testIngredients(words, need, 'not said').verdict] as const);
  expect(verdicts.filter(([, verdict]) => verdict === 'breaks').map(([words]) => words)).toEqual(expected);
  for (const [, verdict] of verdicts) expect(['breaks', 'nothing found']).toContain(verdict);
}

const CASES: readonly PublishedCase[] = [
  {
    id: 'E-EQ-01',
    title: 'cup-equivalents',
    source: EDITION,
    status: MEMORY,
    holds: oneEach([
      ['2 cups', 'raw leafy greens'],
      ['1 cup', 'vegetable'],
      ['1 cup', 'fruit'],
      ['1/2 cup', 'dried fruit'],
      ['1/2 cup', 'dried vegetable'],
      ['1 cup', 'fruit juice'],
      ['1 cup', 'vegetable juice'],
      ['1 cup', 'milk, yogurt or fortified soy drink'],
      ['1 1/2 oz', 'natural cheese'],
      ['2 oz', 'processed cheese'],
    ]),
  },
  {
    id: 'E-EQ-03',
    title: 'ounce-equivalents of grains',
    source: EDITION,
    status: MEMORY,
    holds: oneEach([
      ['1 slice', 'bread'],
      ['1/2 cup', 'cooked grain'],
      ['1 cup', 'cereal flakes'],
      ['1 oz', 'dry grain'],
    ]),
  },
  {
    id: 'EQ-PROTEIN',
    title: 'ounce-equivalents of protein foods; beans as either, with one measure each',
    source: EDITION,
    status: MEMORY,
    holds: () => {
      const amounts = (kind: EquivalentKind) =>
        EQUIVALENT_RULES[kind].map(({ group, count, measure }) => [group, count, measure]);
      expect(amounts('cooked meat, poultry or seafood')).toEqual([['protein foods', 1, 'oz']]);
      expect(amounts('egg')).toEqual([['protein foods', 1, 'each']]);
      expect(amounts('tofu')).toEqual([['protein foods', 0.25, 'cup']]);
      expect(amounts('nut butter')).toEqual([['protein foods', 1, 'tbsp']]);
      expect(amounts('nuts and seeds')).toEqual([['protein foods', 0.5, 'oz']]);
      expect(amounts('cooked beans')).toEqual([
        ['protein foods', 0.25, 'cup'],
        ['vegetables', 1, 'cup'],
      ]);
    },
  },
  {
    id: 'E-RET-01',
    title: 'greens boiled, vitamin C: water kept or drained',
    source: RETENTION,
    status: SEEN,
    holds: () => {
      kept('3004', 'vitamin C', 100, 60);
      kept('3005', 'vitamin C', 100, 55);
      kept('3006', 'vitamin C', 100, 70);
    },
  },
  {
    id: 'E-RET-03',
    title: 'retention and yield together',
    source: `${RETENTION}, method`,
    status: 'computed by hand, formula verified',
    holds: () => {
      const retention = { percent: 55, source: 'case', method: 'case' };
      const worked = valueIn(
        cookedPer100g(known(30, 'mg'), 'case', retention, { factor: 0.9, source: 'case' }),
      );
      within(worked.quantity.value, 18.33, 0.01);
    },
  },
  {
    id: 'E-RET-05',
    title: 'other vegetables boiled, covered with water, drained',
    source: RETENTION,
    status: SEEN,
    holds: () => {
      kept('3775', 'folate', 100, 65);
      kept('3775', 'vitamin C', 40, 30);
      kept('3775', 'potassium', 300, 270);
    },
  },
  {
    id: 'E-SOD-01',
    title: 'canned beans: drained, drained and rinsed',
    source: 'Duyff RL, Mount JR, Jones JB. J Culin Sci Technol 2011;9:106-112',
    status: SEEN,
    holds: () => {
      const after = (treatment: 'drained' | 'drained and rinsed') =>
        valueIn(
          rinseRange({
            label: { value: 440, unit: 'mg' },
            basis: { state: 'with liquid' },
            kind: 'beans',
            treatment,
          }),
        ).after;
      // The study's values are the low ends: other tests found that less goes away, and a range is shown.
      within(after('drained').low, 282, 1);
      within(after('drained and rinsed').low, 260, 1);
      expect(after('drained').high).toBeGreaterThan(282);
    },
  },
  {
    id: 'E-CHO-01',
    title: 'carbohydrate choices',
    source: '15 g a choice, common practice',
    status: MEMORY,
    holds: () => {
      for (const [grams, choices] of [
        [15, 1],
        [45, 3],
        [60, 4],
        [37, 2.5],
      ] as const) {
        within(carbohydrateChoices(raw(grams, 'g')).value, choices, 0.05);
        expect(valueIn(shownChoices(known(grams, 'g')))).toBe(choices);
      }
    },
  },
  {
    id: 'E-UNIT-01',
    title: 'exact US customary units',
    source: 'NIST Handbook 44, Appendix C',
    status: 'computed by hand, formula from memory',
    holds: () => {
      for (const [unit, metric] of [
        ['cup', 236.588],
        ['tbsp', 14.7868],
        ['tsp', 4.92892],
        ['fl oz', 29.5735],
      ] as const)
        within(convert({ value: 1, unit }, 'mL').value, metric, 0.001);
      for (const [unit, metric] of [
        ['oz', 28.3495],
        ['lb', 453.592],
      ] as const)
        within(convert({ value: 1, unit }, 'g').value, metric, 0.001);
    },
  },
  {
    id: 'E-UNIT-03',
    title: 'international units, by the form of the vitamin',
    source: '21 CFR 101.9(c)(8)(iv), footnotes; NIH Office of Dietary Supplements',
    status: MEMORY,
    holds: () => {
      within(fromInternationalUnits('vitamin D', 800).value, 20, 0.1);
      within(fromInternationalUnits('vitamin A, retinol', 3000).value, 900, 0.1);
      within(fromInternationalUnits('vitamin E, natural', 30).value, 20.1, 0.1);
      within(fromInternationalUnits('vitamin E, synthetic', 30).value, 13.5, 0.1);
    },
  },
  {
    id: 'E-PAT-03',
    title: 'the pattern of 2000 kcal',
    source: PATTERN,
    status: SEEN,
    holds: () => pattern(2000, [2.5, 2, 6, 3, 5.5, 27]),
  },
  {
    id: 'E-PAT-05',
    title: 'the pattern of 2400 kcal',
    source: PATTERN,
    status: SEEN,
    holds: () => pattern(2400, [3, 2, 8, 3, 6.5, 31]),
  },
  {
    id: 'E-PAT-08',
    title: 'the pattern of 3000 kcal',
    source: PATTERN,
    status: SEEN,
    holds: () => pattern(3000, [4, 2.5, 10, 3, 7, 44]),
  },
  {
    id: 'E-PAT-10',
    title: 'the edition is never taken for granted, and two are never mixed',
    source: 'Dietary Guidelines for Americans 2025-2030, press and professional summaries',
    status: SEEN,
    holds: () => {
      expect(guidanceLimit('us-2025', 'protein')).toMatchObject({ low: 1.2, high: 1.6 });
      expect(guidanceLimit('us-2025', 'added sugars')).toMatchObject({ high: 10, unit: 'g a meal' });
      expect(guidanceLimit('us-2025', 'saturated fat').high).toBe(10);
      expect(guidanceLimit('us-2025', 'sodium').high).toBe(2300);
      const [old] = valueIn(patternAt('us-2020', 2000));
      const [fresh] = valueIn(patternAt('us-2025', 2000));
      expect(oneEdition([old, fresh].flatMap((one) => one ?? [])).ok).toBe(false);
      const of = food({ measures: [{ name: 'cup', grams: 150, source: 'case' }] });
      const portion = valueIn(gramsOf({ count: 1, unit: 'cup', measure: 'cup', size: null }, of));
      expect(equivalentsOf({ food: of, portion, kind: 'fruit', edition: 'us-2025' }).ok).toBe(false);
    },
  },
  {
    id: 'F-DIET-01',
    title: 'what needs leave out of an ingredient list',
    source: 'definitions in common use',
    status: 'computed by hand, formula from memory',
    holds: () => {
      leavesOut('vegan', ['honey', 'gelatin', 'whey', 'carmine', 'egg white', 'fish sauce']);
      leavesOut('vegetarian', ['gelatin', 'carmine', 'fish sauce']);
      leavesOut('gluten-free', ['barley malt']);
    },
  },
  {
    id: 'F-DIET-04',
    title: 'nutrients that a vegan page must name, and should',
    source: 'Academy of Nutrition and Dietetics, positions on vegetarian patterns',
    status: MEMORY,
    holds: () => {
      expect(unsaidAtRisk('vegan', [])).toEqual(['vitamin B12']);
      const should = nutrientsAtRisk('vegan').filter(({ weight }) => weight === 'watch');
      expect(should.map(({ nutrient }) => nutrient)).toEqual([
        'vitamin D',
        'calcium',
        'iodine',
        'iron',
        'zinc',
        'omega-3 (EPA/DHA)',
        'choline',
        'selenium',
      ]);
    },
  },
  {
    id: 'CUP-01',
    title: 'a cup of fresh cherries',
    source: PRICES,
    status: SEEN,
    holds: cup('4.66', 0.342, 0.92, 173),
  },
  {
    id: 'CUP-02',
    title: 'a cup of canned cherries',
    source: PRICES,
    status: SEEN,
    holds: cup('5.24', 0.441, 0.65, 356),
  },
];

describe('food, cooking, needs and money against published values', () => {
  runCases(CASES);
});
