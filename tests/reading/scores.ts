import type { Score } from '../../src/reading/measures/formula.js';
import { type Measured, measureReading } from '../../src/reading/measures/index.js';
import { evaluate } from '../nutrition/evaluate.js';

/** The measure of a text that has one. */
export function measured(text: string, language: string): Measured {
  const found = measureReading(text, language);
  if (!found.measured) throw new Error(found.says);
  return found;
}

export function scoreOf({ scores }: Measured, id: string): number | null | undefined {
  return scores.find((score) => score.id === id)?.value;
}

/** Works out the written formula of a score again; the root is taken here, the rest by `evaluate`. */
export function workedAgain({ formula, inputs }: Pick<Score, 'formula' | 'inputs'>): number {
  const plain = formula.replace(/sqrt\(([^()]*)\)/, (_, inner: string) =>
    Math.sqrt(evaluate({ formula: inner, inputs })).toFixed(12),
  );
  const used = inputs.filter(({ name }) => new RegExp(`\\b${name}\\b`).test(plain));
  return evaluate({ formula: plain, inputs: used });
}
