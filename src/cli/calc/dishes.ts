import {
  DISH_GOAL,
  DISH_KINDS,
  dishShares,
  type Food,
  gramsOf,
  type Ingredient,
  largestOf,
  NUTRIENTS,
  type NutrientName,
  nutrientIn,
  ok,
  type Portion,
  parseAmount,
  perServing,
  type Result,
  recipeNutrient,
  recipePer100g,
  recipeWeight,
  refuse,
  smallestOf,
  type WrittenAmount,
} from '../../nutrition/index.js';
import { choice, listOf } from './choices.js';
import { calculation, type Field, type Shelf } from './contract.js';
import { amount, byDefault, number } from './fields.js';
import { KITCHEN } from './units.js';
import { ofNumber, ofWord, ofWorked } from './values.js';

interface Row {
  readonly amount: WrittenAmount;
  readonly food: string;
  readonly retention?: string;
}

/** `2 cups of pinto beans, cooked`, and a retention code after `@` for what is cooked in the dish. */
const ROW: Field<Row> = {
  help: 'amount of food, as 1 cup of pinto beans, cooked; @ and a retention code for what is cooked in it',
  units: [],
  read: (text): Result<Row> => {
    const [written = '', code] = text.split('@');
    const read = parseAmount(written.trim());
    if (!read.ok) return read;
    const { amount, rest } = read.value;
    const food = rest.replace(/^\s*of\s+/i, '').trim();
    return amount === null || food === ''
      ? refuse(`"${text}" is no amount of a food.`, 'Write one as 1 cup of pinto beans, cooked.')
      : ok({ amount, food, ...(code === undefined ? {} : { retention: code.trim() }) });
  },
};

function weighAll(
  rows: readonly Row[],
  shelf: Shelf,
  kitchen: Parameters<typeof gramsOf>[2],
): Result<(Ingredient & { readonly food: Food; readonly portion: Portion })[]> {
  const weighed = [];
  for (const { amount, food, retention } of rows) {
    const found = shelf.food(food);
    if (!found.ok) return found;
    const portion = gramsOf(amount, found.value, kitchen);
    if (!portion.ok) return portion;
    const code = retention === undefined ? {} : { retention };
    weighed.push({ food: found.value, portion: portion.value, ...code });
  }
  return ok(weighed);
}

const NUTRIENT = choice(Object.keys(NUTRIENTS) as NutrientName[], 'the nutrient');

/** Several foods together. */
export const DISHES = [
  calculation({
    name: 'recipe',
    what: 'what a recipe holds of a nutrient: in all, in a serving, in 100 g',
    inputs: {
      ingredients: listOf(ROW),
      nutrient: NUTRIENT,
      servings: number('', 'equal servings'),
      yield: byDefault(number('', 'weight of the cooked dish ÷ weight of what went in'), 1),
      kitchen: KITCHEN,
    },
    example: [
      'ingredients=300 g of pinto beans, cooked; 100 g of onion, raw @3006',
      'nutrient=potassium',
      'servings=2',
    ],
    holdsFor: 'one retention for each food; food that is cooked already has none',
    sources: ['usda-retention-2007'],
    compute: ({ ingredients, nutrient, servings, yield: factor, kitchen }, shelf) => {
      const foods = weighAll(ingredients, shelf, kitchen);
      if (!foods.ok) return foods;
      const all = recipeNutrient(foods.value, nutrient);
      if (!all.ok) return all;
      const each = perServing(all.value, servings);
      if (!each.ok) return each;
      const weight = recipeWeight(foods.value, factor === 1 ? undefined : { factor, source: 'given' });
      if (!weight.ok) return weight;
      return ok({
        results: [
          ofWorked('recipe', all.value),
          ofWorked('serving', each.value),
          ofWorked('100 g', recipePer100g(all.value, weight.value)),
          ofNumber('weight', weight.value.grams, 'g', weight.value.working),
        ],
        cautions: all.value.estimated ? ['An estimate: cooking factors or weights of measures are.'] : [],
      });
    },
  }),
  calculation({
    name: 'compare-foods',
    also: ['least', 'most'],
    what: 'which of several amounts of food clearly holds the least or the most',
    inputs: {
      foods: listOf(ROW),
      nutrient: NUTRIENT,
      wanted: choice(['least', 'most'], 'which one'),
      kitchen: KITCHEN,
    },
    example: [
      'foods=1 cup of pinto beans, canned, drained; 1 cup of pinto beans, cooked',
      'nutrient=sodium',
      'wanted=least',
    ],
    holdsFor: 'values more than 10 percent apart; closer ones are too close to call',
    sources: ['house rule'],
    compute: ({ foods: rows, nutrient, wanted, kitchen }, shelf) => {
      const foods = weighAll(rows, shelf, kitchen);
      if (!foods.ok) return foods;
      const candidates = foods.value.map(({ food, portion }) => {
        const { quantity, working } = nutrientIn(food, nutrient, portion);
        return { name: food.name, value: quantity, working };
      });
      const best = wanted === 'least' ? smallestOf(candidates) : largestOf(candidates);
      if (!best.ok) return best;
      const { name, value, working } = best.value;
      if ('low' in value) return refuse('A range is no amount of a food.');
      return ok({ results: [ofWord(wanted, name), ofNumber(nutrient, value.value, value.unit, working)] });
    },
  }),
  calculation({
    name: 'dish-parts',
    also: ['plate'],
    what: 'twelve parts of a dish by the volume of its kinds of food',
    inputs: Object.fromEntries(
      DISH_KINDS.map((kind) => [
        kind.replaceAll(' ', '-'),
        byDefault(amount(['mL', 'L'], `volume of ${kind}`), { value: 0, unit: 'mL' }, '0 mL'),
      ]),
    ) as Readonly<Record<string, Field<{ readonly value: number; readonly unit: 'mL' | 'L' }>>>,
    example: ['vegetables-and-fruit=240mL', 'protein=120mL', 'grain-or-starch=120mL'],
    holdsFor: 'teaching; the aim of half, a quarter and a quarter is common practice',
    sources: ['largest remainder; house rule'],
    compute: (of) => {
      const rows = DISH_KINDS.flatMap((kind) => {
        const given = of[kind.replaceAll(' ', '-')];
        const volume = given === undefined ? 0 : given.value * (given.unit === 'L' ? 1000 : 1);
        return volume === 0 ? [] : [{ kind, volume }];
      });
      const shares = dishShares(rows);
      if (!shares.ok) return shares;
      return ok({
        results: shares.value.kinds.map(({ kind, parts, share }) => ({
          ...ofNumber(kind, parts, 'of 12 parts'),
          says: `${(share * 100).toFixed(1)} percent; aim ${DISH_GOAL[kind]}`,
        })),
      });
    },
  }),
];
