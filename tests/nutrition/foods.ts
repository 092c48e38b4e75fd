import {
  CONTENTS,
  type Contains,
  type Content,
  type Food,
  NUTRIENTS,
  type NutrientName,
} from '../../src/nutrition/index.js';

/** A food for tests: nothing is known but what is given. */
export function food(
  given: Partial<Omit<Food, 'per100g' | 'contains'>> & {
    readonly per100g?: Partial<Record<NutrientName, number | null>>;
    readonly contains?: Partial<Record<Content, Contains>>;
  } = {},
): Food {
  const name = given.name ?? 'some food';
  return {
    id: name.replace(/[^a-z]+/g, '-'),
    name,
    aliases: [],
    state: 'cooked',
    kind: name,
    form: '',
    plate: [],
    measures: [],
    usual: { words: '1/2 cup', grams: 90 },
    picture: '',
    flags: [],
    record: { source: 'test-table', number: '1', description: name, date: '2015-09-01' },
    ...given,
    contains: {
      ...(Object.fromEntries(CONTENTS.map((content) => [content, 'no'])) as Record<Content, Contains>),
      ...given.contains,
    },
    per100g: {
      ...(Object.fromEntries(Object.keys(NUTRIENTS).map((key) => [key, null])) as Record<NutrientName, null>),
      ...given.per100g,
    },
  };
}

/**
 * Pinto beans in four forms. Source: USDA National Nutrient Database for Standard Reference, Release 28,
 * records 16043, 16044, 16146 and 16345: sodium mg and fiber g per 100 g, grams per cup and per can.
 */
const SR28 = 'usda-sr28';
const pinto = (
  number: string,
  form: string,
  state: Food['state'],
  sodium: number,
  fiber: number | null,
  weights: Readonly<Record<string, number>>,
) =>
  food({
    name: `pinto beans, ${form}`,
    kind: 'pinto beans',
    form,
    state,
    per100g: { sodium, fiber },
    measures: Object.entries(weights).map(([name, grams]) => ({ name, grams, source: SR28 })),
    record: { source: SR28, number, description: `Beans, pinto, ${form}`, date: '2015-09-01' },
  });

export const PINTO = {
  boiled: pinto('16043', 'dried, cooked', 'cooked', 1, 9, { cup: 171, tbsp: 10.6 }),
  withLiquid: pinto('16044', 'canned, with liquid', 'canned, with liquid', 268, 4.6, {
    cup: 240,
    'can (15.5 oz)': 442,
  }),
  drained: pinto('16146', 'canned, drained', 'canned, drained', 239, 5.5, { 'can (15.5 oz)': 277 }),
  rinsed: pinto('16345', 'canned, drained and rinsed', 'canned, drained and rinsed', 212, null, {
    cup: 169,
    'can (15.5 oz)': 258,
  }),
} as const;
