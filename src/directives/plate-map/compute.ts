import { kebab } from '../../document/index.js';
import { DISH_GOAL, type DishKindName, dishNutrient, input, splitEnergy } from '../../nutrition/index.js';
import { type DishKind, type DishPart, dishNumbers, sourcesOf, totalNumber } from '../compute-dish.js';
import type { ComputeContext, Computed, ComputedNumber } from '../contract.js';
import { readProblem } from '../problems.js';
import { type Beside, type MapFood, TOTALS, type Values } from './schema.js';

export interface MapResult extends Computed {
  readonly kinds: readonly DishKind[];
  readonly parts: readonly DishPart[];
  /** Ids of the totals, as `TOTALS` names them. */
  readonly totals: readonly string[];
  /** What a plate needs a little of and this one has none of. */
  readonly lacks: readonly Exclude<Beside, 'drink'>[];
  /** Foods of the dish whose volume, or whose weight, is an estimate. */
  readonly estimated: readonly string[];
  readonly sources: readonly string[];
  /** Parts of twelve of each kind in a balanced dish. */
  readonly goals: Readonly<Record<DishKindName, number>>;
}

/** Parts of twelve and what one person gets; a dish that has no parts is a problem, and then nothing is shown. */
export function compute(values: Values, { report }: ComputeContext): MapResult | undefined {
  const { id, foods, serves, written, form } = values;
  const dish = dishNumbers(id, foods);
  if ('reason' in dish) {
    report.add(readProblem('directives/rows', dish, values.place));
    return undefined;
  }
  const totals = [...TOTALS, 'carbohydrate' as const].map((nutrient) =>
    totalNumber(id, foods, nutrient, serves),
  );
  const { kinds, parts, numbers } = dish;
  return {
    numbers: [...numbers, ...kinds.map((kind) => goalNumber(id, kind)), ...totals],
    facts: {
      foods: foods.map(({ food, place }) => ({ food, place })),
      nutrients: [],
      settings: { carbohydrate: carbohydrateOf(values), parts: carbohydrateParts(foods, parts) },
    },
    publishes: {
      kind: 'dish',
      form,
      foods: foods.map(({ food, portion, fills, words }) => ({ food, portion, fills, words })),
      beside: written.map(({ text }) => text),
      serves,
    },
    kinds,
    parts,
    totals: TOTALS.map((nutrient) => `${id}.${nutrient.replace(' ', '-')}`),
    lacks: (['fat', 'calcium'] as const).filter((one) => !has(values, one)),
    estimated: foods.flatMap(({ words, portion, fills }) =>
      portion.estimated || fills?.volume.estimated ? [words] : [],
    ),
    sources: sourcesOf(foods),
    goals: DISH_GOAL,
  };
}

function goalNumber(id: string, { kind }: DishKind): ComputedNumber {
  const value = DISH_GOAL[kind];
  return {
    id: `${id}.${kebab(kind)}.goal`,
    value,
    unit: '',
    decimals: 0,
    formula: 'goal',
    inputs: [input('goal', value, 'parts', 'house', 'common practice, no source')],
    sources: [],
    what: `parts of twelve that are ${kind} in a balanced dish`,
  };
}

function has({ foods, written }: Values, beside: 'fat' | 'calcium'): boolean {
  const kind = beside === 'fat' ? 'fat' : 'dairy or calcium';
  return (
    written.some((one) => one.beside === beside) ||
    foods.some(({ food, ...one }) => one.beside === beside || food.plate.includes(kind))
  );
}

/** A meal of fewer grams may be too little for people whose medicine lowers their sugar. */
const FEW_GRAMS = 15;
const FEW_PERCENT = 26;

/** What is known to be enough is not few; what is not known may be few. */
function carbohydrateOf({ foods, serves }: Values): string[] {
  const of = (nutrient: 'carbohydrate' | 'protein' | 'fat') => dishNutrient(foods, nutrient, serves).quantity;
  const [carbohydrate, protein, fat] = [of('carbohydrate'), of('protein'), of('fat')];
  const few = (carbohydrate.value ?? 0) < FEW_GRAMS ? [`below ${FEW_GRAMS} g`] : [];
  const known = [carbohydrate, protein, fat].every(({ value, atLeast }) => value !== null && !atLeast);
  const split =
    known && !foods.some(({ food }) => food.flags.includes('alcohol'))
      ? splitEnergy({
          carbohydrate: carbohydrate.value ?? 0,
          protein: protein.value ?? 0,
          fat: fat.value ?? 0,
          alcohol: 0,
        })
      : undefined;
  const low = split?.ok !== true || split.value.percent.carbohydrate < FEW_PERCENT;
  return [...few, ...(low ? [`below ${FEW_PERCENT} percent`] : [])];
}

/** Whether grain, starch or fruit has one of the twelve parts. */
function carbohydrateParts(foods: readonly MapFood[], parts: readonly DishPart[]): string[] {
  const starch: DishKindName = 'grain or starch';
  const some = parts.some(
    (part) => part.parts > 0 && (part.kind === starch || foods[part.index]?.food.plate.includes('fruit')),
  );
  return some ? [] : ['no carbohydrate'];
}
