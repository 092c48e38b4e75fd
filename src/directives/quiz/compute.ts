import { kebab } from '../../document/index.js';
import {
  type Candidate,
  largestOf,
  NUTRIENTS,
  smallestOf,
  type Unit,
  valueOnBasis,
} from '../../nutrition/index.js';
import type { ComputeContext, Computed, ComputedNumber } from '../contract.js';
import { readProblem } from '../problems.js';
import type { Question, Values } from './schema.js';

export interface Answered {
  /** Ids of the options' numbers, in the order of the options. */
  readonly numbers: readonly string[];
  /** Index of the right option. */
  readonly right: number;
}

export interface QuizResult extends Computed {
  readonly questions: readonly Answered[];
}

/** The right option of each question, from the same records as the figures; too close to call is a problem. */
export function compute(values: Values, { report }: ComputeContext): QuizResult | undefined {
  const numbers = new Map<string, ComputedNumber>();
  const questions = values.questions.map((question): Answered | undefined => {
    const candidates: Candidate<Unit>[] = [];
    const ids: string[] = [];
    for (const option of question.options) {
      const found = valueOnBasis(option.food, question.nutrient, values.basis);
      if (!found.ok) {
        report.add(readProblem('N03', found, option.place));
        return undefined;
      }
      const { quantity, working } = found.value.worked;
      const id = `${values.id}.${kebab(option.words)}.${kebab(question.nutrient)}`;
      ids.push(id);
      candidates.push({ name: option.words, value: quantity, working });
      numbers.set(id, {
        id,
        value: quantity.value,
        unit: NUTRIENTS[question.nutrient].unit,
        ...working,
        sources: [option.food.record.source],
        what: `${question.nutrient} in ${values.basis.words} of ${option.food.name}`,
        food: { id: option.food.id, ...option.food.record },
      });
    }
    const best = (question.find === 'min' ? smallestOf : largestOf)(candidates);
    if (best.ok) return { numbers: ids, right: best.value.index };
    report.add(readProblem('quiz/too-close-to-call', best, question.answerPlace));
    return undefined;
  });
  const answered = questions.flatMap((question) => question ?? []);
  if (answered.length < questions.length) return undefined;
  return { numbers: [...numbers.values()], facts: factsOf(values.questions), questions: answered };
}

function factsOf(questions: readonly Question[]): Computed['facts'] {
  return {
    foods: questions.flatMap((question) => question.options.map(({ food, place }) => ({ food, place }))),
    nutrients: questions.map((question) => question.nutrient),
  };
}
