import { kebab } from '../../document/index.js';
import { type NutrientName, valueOnBasis } from '../../nutrition/index.js';
import type { ComputeContext, Computed, ComputedNumber } from '../contract.js';
import { readProblem } from '../problems.js';
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
  /** Letters of the rows whose weight of a cup is an estimate. */
  readonly estimated: readonly string[];
}

/**
 * Every form on the one basis: value per 100 g × grams of the basis ÷ 100. A row that cannot stand on
 * the basis is a problem at its place (N03), and then nothing is shown.
 */
export function compute(values: Values, { report }: ComputeContext): CompareResult | undefined {
  const numbers: ComputedNumber[] = [];
  const estimated = new Set<string>();
  let failed = false;
  const dot = (row: FormRow, nutrient: NutrientName): Dot | undefined => {
    const found = valueOnBasis(row.food, nutrient, values.basis);
    if (!found.ok) {
      report.add(readProblem('N03', found, row.place));
      failed = true;
      return undefined;
    }
    const { quantity, working } = found.value.worked;
    if (found.value.worked.estimated) estimated.add(row.letter);
    const id = `${values.id}.${kebab(row.words)}.${kebab(nutrient)}`;
    numbers.push({
      id,
      value: quantity.value,
      unit: quantity.unit,
      ...working,
      sources: [row.food.record.source],
      what: `${nutrient} in ${values.basis.words} of ${row.food.name}`,
      food: { id: row.food.id, ...row.food.record },
    });
    return { letter: row.letter, number: id, value: quantity.value };
  };
  const lanes = values.nutrients.map((nutrient) => ({
    nutrient,
    dots: values.rows.flatMap((row) => dot(row, nutrient) ?? []),
  }));
  if (failed) return undefined;
  return {
    numbers,
    facts: {
      foods: values.rows.map((row) => ({ food: row.food, place: row.place })),
      nutrients: values.nutrients,
    },
    lanes,
    labelRows: values.rows.filter((row) => row.food.state === 'canned, with liquid').map((row) => row.letter),
    estimated: [...estimated],
  };
}
