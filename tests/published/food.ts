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
  oneEdition,
  parseAmount,
  patternAt,
  readPrice,
  retentionOf,
  rinseRange,
  shownChoices,
  sizeOf,
  toCents,
  type Unit,
  type Weighed,
  type Worked,
} from '../../src/nutrition/index.js';
import { valueIn } from '../nutrition/expect-result.js';
import { food } from '../nutrition/foods.js';
import {
  again,
  BY_HAND,
  BY_HAND_RECALLED,
  PRINTED,
  type PublishedCase,
  RECALLED,
  row,
  worked,
} from './published-case.js';

const EDITION = 'Dietary Guidelines for Americans 2020-2025, appendix 3, notes';
const PATTERN = 'Dietary Guidelines for Americans 2020-2025, table A3-2';
const RETENTION = 'USDA Table of Nutrient Retention Factors, Release 6 (2007)';
const PRICES = 'USDA Economic Research Service, fruit and vegetable prices, cherries 2022';

const raw = <U extends Unit>(value: number, unit: U): Worked<U> => ({
  quantity: known(value, unit),
  working: { formula: 'raw', inputs: [{ name: 'raw', value, unit, source: 'case' }] },
  estimated: false,
});

/** How many equivalents amounts are, by a food that has the measures. */
function equivalents(rows: readonly (readonly [string, EquivalentKind])[]) {
  const measures = [
    { name: 'cup', grams: 150, source: 'case' },
    { name: 'slice', grams: sizeOf('oz'), source: 'case' },
  ];
  const of = food({ name: 'case', measures });
  return rows.map(([text, kind]) => {
    const { amount } = valueIn(parseAmount(text));
    if (!amount) throw new Error(`${text} is no amount.`);
    const portion = valueIn(gramsOf(amount, of));
    return valueIn(equivalentsOf({ food: of, portion, kind, edition: 'us-2020' })).value;
  });
}

function kept(code: string, nutrient: Parameters<typeof retentionOf>[1], amount: number) {
  return worked(valueIn(afterCooking(raw(amount, 'mg'), valueIn(retentionOf(code, nutrient)))));
}

/** Cents of a cup: dollars a pound, pounds a cup, and the share that is left to eat. */
function cupCost({ dollars, pounds, left }: { dollars: string; pounds: number; left: number }) {
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
      yields: [{ factor: left, source: 'usda-ers-prices-2022', what: 'preparation' }],
    }),
  );
  return toCents(again(result.value, result.working));
}

function pattern(kcal: number) {
  const amounts = valueIn(patternAt('us-2020', kcal));
  const groups = ['vegetables', 'fruit', 'grains', 'dairy', 'protein foods', 'oils'];
  return groups.map((group) => amounts.find((one) => one.group === group)?.high);
}

export const FOOD: readonly PublishedCase[] = [
  row({
    id: 'E-PAT-03',
    what: 'the pattern of 2000 kcal: vegetables, fruit, grains, dairy, protein foods, oils',
    given: 2000,
    expected: [2.5, 2, 6, 3, 5.5, 27],
    source: PATTERN,
    status: PRINTED,
    find: pattern,
  }),
  row({
    id: 'E-PAT-05',
    what: 'the pattern of 2400 kcal',
    given: 2400,
    expected: [3, 2, 8, 3, 6.5, 31],
    source: PATTERN,
    status: PRINTED,
    find: pattern,
  }),
  row({
    id: 'E-PAT-08',
    what: 'the pattern of 3000 kcal',
    given: 3000,
    expected: [4, 2.5, 10, 3, 7, 44],
    source: PATTERN,
    status: PRINTED,
    find: pattern,
  }),
  row({
    id: 'E-PAT-10',
    what: 'the edition is never taken for granted, and two are never mixed',
    given: { edition: 'us-2025', older: 'us-2020' },
    expected: {
      proteinPerKg: [1.2, 1.6],
      addedSugars: '10 g a meal',
      saturatedFatPercent: 10,
      sodium: 2300,
      mixed: false,
      cupsInServings: false,
    },
    source: 'Dietary Guidelines for Americans 2025-2030, press and professional summaries',
    status: PRINTED,
    find: ({ edition, older }) => {
      const protein = guidanceLimit(edition, 'protein');
      const sugars = guidanceLimit(edition, 'added sugars');
      const both = [older, edition].flatMap((one) => valueIn(patternAt(one, 2000)).slice(0, 1));
      const of = food({ measures: [{ name: 'cup', grams: 150, source: 'case' }] });
      const portion = valueIn(gramsOf({ count: 1, unit: 'cup', measure: 'cup', size: null }, of));
      return {
        proteinPerKg: [protein.low, protein.high],
        addedSugars: `${sugars.high} ${sugars.unit}`,
        saturatedFatPercent: guidanceLimit(edition, 'saturated fat').high,
        sodium: guidanceLimit(edition, 'sodium').high,
        mixed: oneEdition(both).ok,
        cupsInServings: equivalentsOf({ food: of, portion, kind: 'fruit', edition }).ok,
      };
    },
  }),
  row({
    id: 'E-EQ-01',
    what: 'cup-equivalents',
    given: [
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
    ],
    expected: [1, 1, 1, 1, 1, 1, 1, 1, 1, 1],
    tolerance: 0,
    source: EDITION,
    status: RECALLED,
    find: equivalents,
  }),
  row({
    id: 'E-EQ-03',
    what: 'ounce-equivalents of grains',
    given: [
      ['1 slice', 'bread'],
      ['1/2 cup', 'cooked grain'],
      ['1 cup', 'cereal flakes'],
      ['1 oz', 'dry grain'],
    ],
    expected: [1, 1, 1, 1],
    tolerance: 0,
    source: EDITION,
    status: RECALLED,
    find: equivalents,
  }),
  row({
    id: 'E-EQ-T1',
    what: 'ounce-equivalents of protein foods; beans as either, with one measure each',
    given: ['cooked meat, poultry or seafood', 'egg', 'tofu', 'nut butter', 'nuts and seeds', 'cooked beans'],
    expected: [
      [['protein foods', 1, 'oz']],
      [['protein foods', 1, 'each']],
      [['protein foods', 0.25, 'cup']],
      [['protein foods', 1, 'tbsp']],
      [['protein foods', 0.5, 'oz']],
      [
        ['protein foods', 0.25, 'cup'],
        ['vegetables', 1, 'cup'],
      ],
    ],
    source: EDITION,
    status: RECALLED,
    find: (given) =>
      given.map((kind) => EQUIVALENT_RULES[kind].map(({ group, count, measure }) => [group, count, measure])),
  }),
  row({
    id: 'E-RET-01',
    what: 'greens boiled, vitamin C: little water, covered, water kept',
    given: { mg: 100, codes: ['3004', '3005', '3006'] },
    expected: [60, 55, 70],
    tolerance: 0.01,
    source: RETENTION,
    status: PRINTED,
    find: ({ mg, codes }) => codes.map((code) => kept(code, 'vitamin C', mg)),
  }),
  row({
    id: 'E-RET-03',
    what: 'retention and yield together',
    given: { mg: 30, percent: 55, left: 0.9 },
    expected: 18.33,
    tolerance: 0.01,
    source: `${RETENTION}, method`,
    status: BY_HAND,
    find: ({ mg, percent, left }) =>
      worked(
        valueIn(
          cookedPer100g(
            known(mg, 'mg'),
            'case',
            { percent, source: 'case', method: 'case' },
            { factor: left, source: 'case' },
          ),
        ),
      ),
  }),
  row({
    id: 'E-RET-05',
    what: 'other vegetables boiled, covered with water, drained',
    given: { code: '3775', folate: 100, 'vitamin C': 40, potassium: 300 },
    expected: { folate: 65, 'vitamin C': 30, potassium: 270 },
    tolerance: 0.01,
    source: RETENTION,
    status: PRINTED,
    find: ({ code, ...amounts }) =>
      Object.fromEntries(
        (['folate', 'vitamin C', 'potassium'] as const).map((name) => [
          name,
          kept(code, name, amounts[name]),
        ]),
      ),
  }),
  row({
    id: 'E-SOD-01',
    what: 'canned beans drained, and rinsed: the study is the low end of a range',
    given: { label: 440, treatments: ['drained', 'drained and rinsed'] },
    expected: [
      { low: 282, isRange: true },
      { low: 260, isRange: true },
    ],
    tolerance: 1,
    source: 'Duyff RL, Mount JR, Jones JB. J Culin Sci Technol 2011;9:106-112',
    status: PRINTED,
    find: ({ label, treatments }) =>
      treatments.map((treatment) => {
        const { after } = valueIn(
          rinseRange({
            label: { value: label, unit: 'mg' },
            basis: { state: 'with liquid' },
            kind: 'beans',
            treatment,
          }),
        );
        return { low: after.low, isRange: after.high > after.low };
      }),
  }),
  row({
    id: 'E-CHO-01',
    what: 'carbohydrate choices, worked out and shown in halves',
    given: [15, 45, 60, 37],
    expected: { exact: [1, 3, 4, 2.5], shown: [1, 3, 4, 2.5] },
    tolerance: { exact: 0.05, shown: 0 },
    source: '15 g a choice, common practice',
    status: RECALLED,
    find: (given) => ({
      exact: given.map((grams) => carbohydrateChoices(raw(grams, 'g')).value),
      shown: given.map((grams) => valueIn(shownChoices(known(grams, 'g')))),
    }),
  }),
  row({
    id: 'E-UNIT-01',
    what: 'exact US customary units',
    given: { volume: ['cup', 'tbsp', 'tsp', 'fl oz'], weight: ['oz', 'lb'] },
    expected: { mL: [236.588, 14.7868, 4.92892, 29.5735], g: [28.3495, 453.592] },
    tolerance: 0.001,
    source: 'NIST Handbook 44, Appendix C',
    status: BY_HAND_RECALLED,
    find: ({ volume, weight }) => ({
      mL: volume.map((unit) => convert({ value: 1, unit }, 'mL').value),
      g: weight.map((unit) => convert({ value: 1, unit }, 'g').value),
    }),
  }),
  row({
    id: 'E-UNIT-03',
    what: 'international units, by the form of the vitamin',
    given: [
      ['vitamin D', 800],
      ['vitamin A, retinol', 3000],
      ['vitamin E, natural', 30],
      ['vitamin E, synthetic', 30],
    ],
    expected: [20, 900, 20.1, 13.5],
    tolerance: 0.1,
    source: '21 CFR 101.9(c)(8)(iv), footnotes; NIH Office of Dietary Supplements',
    status: RECALLED,
    find: (given) => given.map(([form, units]) => fromInternationalUnits(form, units).value),
  }),
  row({
    id: 'E-CUP-T1',
    what: 'cents of a cup of fresh cherries',
    given: { dollars: '4.66', pounds: 0.342, left: 0.92 },
    expected: 173,
    source: PRICES,
    status: PRINTED,
    find: cupCost,
  }),
  row({
    id: 'E-CUP-T2',
    what: 'cents of a cup of canned cherries',
    given: { dollars: '5.24', pounds: 0.441, left: 0.65 },
    expected: 356,
    source: PRICES,
    status: PRINTED,
    find: cupCost,
  }),
];
