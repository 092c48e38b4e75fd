import { kebab } from '../../document/index.js';
import {
  type Food,
  type FormOnBasis,
  formsOnBasis,
  type NutrientName,
  type Portion,
  portionOnBasis,
} from '../../nutrition/index.js';
import type { ComputeContext, Computed, ComputedNumber } from '../contract.js';
import { basisProblem } from '../problems.js';
import type { FormRow, Values } from './schema.js';

/** One dot: the number's id and its unrounded value, `null` when it is not known. */
export interface Dot {
  readonly letter: string;
  readonly number: string;
  readonly value: number | null;
}

export interface CompareResult extends Computed {
  readonly lanes: readonly { readonly nutrient: NutrientName; readonly dots: readonly Dot[] }[];
  /** Letters of the rows that say what a label says, with the liquid. */
  readonly labelRows: readonly string[];
  /** Letters of the rows that are measured dry, frozen or raw and eaten only after cooking. */
  readonly beforeCooking: readonly string[];
  /** Letters of the rows whose weight of the measure is an estimate. */
  readonly estimated: readonly string[];
  /** What each row of a package weighs; only where the basis is a package. */
  readonly weights: readonly { readonly letter: string; readonly number: string }[];
}

/**
 * Every form on the one basis: value per 100 g × grams of the basis ÷ 100. A row that cannot stand on
 * the basis is a problem at its place, and then nothing is shown.
 */
export function compute(values: Values, { report }: ComputeContext): CompareResult | undefined {
  const foods = values.rows.map((row) => row.food);
  const lanes = values.nutrients.map((nutrient) => {
    const forms = formsOnBasis(foods, nutrient, values.basis);
    return { nutrient, forms, numbers: numbersOf(values, nutrient, forms) };
  });
  const [first] = lanes;
  const refused = values.rows.filter((row, index) => {
    const value = first?.forms[index]?.value;
    if (value?.ok === false) report.add(basisProblem(row.food, values.basis, value, row.place));
    return value?.ok !== true;
  });
  if (refused.length > 0) return undefined;
  const stateless = values.basis.state === 'not said';
  const letters = (rows: readonly FormRow[]) => rows.map((row) => row.letter);
  const isLabel = (row: FormRow) => row.food.state === 'canned, with liquid';
  const asEaten = (row: FormRow) => portionOnBasis(row.food, { ...values.basis, state: 'ready to eat' }).ok;
  const portions = values.rows.flatMap((row, index) => {
    const value = first?.forms[index]?.value;
    return value?.ok ? [{ row, portion: value.value.portion }] : [];
  });
  const weights = values.basis.per === 'package' ? portions.map((one) => weightOf(values, one)) : [];
  return {
    numbers: [...lanes.flatMap((lane) => lane.numbers), ...weights.map(({ number }) => number)],
    facts: {
      foods: values.rows.map((row) => ({ food: row.food, place: row.place })),
      nutrients: values.nutrients,
      basis: values.basis.words,
    },
    lanes: lanes.map((lane) => ({
      nutrient: lane.nutrient,
      dots: lane.numbers.map(
        ({ id, value }, index): Dot => ({ letter: values.rows[index]?.letter ?? '', number: id, value }),
      ),
    })),
    labelRows: letters(values.rows.filter(isLabel)),
    beforeCooking: stateless ? letters(values.rows.filter((row) => !isLabel(row) && !asEaten(row))) : [],
    estimated: letters(portions.filter(({ portion }) => portion.estimated).map(({ row }) => row)),
    weights: weights.map(({ letter, number }) => ({ letter, number: number.id })),
  };
}

function numbersOf(
  values: Values,
  nutrient: NutrientName,
  forms: readonly FormOnBasis<NutrientName>[],
): ComputedNumber[] {
  return values.rows.flatMap((row, index) => {
    const value = forms[index]?.value;
    if (!value?.ok) return [];
    const { portion, worked } = value.value;
    return [
      {
        id: `${values.id}.${kebab(row.words)}.${kebab(nutrient)}`,
        value: worked.quantity.value,
        unit: worked.quantity.unit,
        ...worked.working,
        sources: sourcesOf(row.food, portion),
        what: `${nutrient} in ${values.basis.words} of ${row.food.name}`,
        food: { id: row.food.id, ...row.food.record },
      },
    ];
  });
}

function weightOf(
  values: Values,
  { row, portion }: { readonly row: FormRow; readonly portion: Portion },
): { readonly letter: string; readonly number: ComputedNumber } {
  const number: ComputedNumber = {
    id: `${values.id}.${kebab(row.words)}.weight`,
    value: portion.grams.value,
    unit: portion.grams.unit,
    ...portion.working,
    sources: sourcesOf(row.food, portion),
    what: `weight of ${values.basis.words} of ${row.food.name}`,
    food: { id: row.food.id, ...row.food.record },
  };
  return { letter: row.letter, number };
}

/** The record's source, and the source of the measure's weight where it is another that was published. */
function sourcesOf(food: Food, portion: Portion): string[] {
  const measure = food.measures.find(({ name }) => name === portion.measure);
  const published = measure && measure.estimated !== true ? [measure.source] : [];
  return [...new Set([food.record.source, ...published])];
}
