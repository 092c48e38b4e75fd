import type { Report } from '../../diagnostics/index.js';
import { kebab } from '../../document/index.js';
import {
  type Candidate,
  formsOnBasis,
  largestOf,
  portionOnBasis,
  smallestOf,
  type Unit,
} from '../../nutrition/index.js';
import type { ComputeContext, Computed, ComputedNumber } from '../contract.js';
import { basisProblem, readProblem } from '../problems.js';
import type { Option, Question, Values } from './schema.js';

export interface Answered {
  /** Ids of the options' numbers, in the order of the options. */
  readonly numbers: readonly string[];
  /** Index of the right option. */
  readonly right: number;
  /** Whether the weight of each option's measure is an estimate. */
  readonly estimated: readonly boolean[];
}

export interface QuizResult extends Computed {
  readonly questions: readonly Answered[];
}

/** The right option of each question, from the same records as the figures; too close to call is a problem. */
export function compute(values: Values, { report }: ComputeContext): QuizResult | undefined {
  const numbers = new Map<string, ComputedNumber>();
  const questions = values.questions.map((question) => answerOf(question, values, numbers, report));
  const answered = questions.flatMap((question) => question ?? []);
  if (answered.length < questions.length) return undefined;
  return { numbers: [...numbers.values()], facts: factsOf(values), questions: answered };
}

function answerOf(
  question: Question,
  { id, basis }: Values,
  numbers: Map<string, ComputedNumber>,
  report: Report,
): Answered | undefined {
  const { options, nutrient } = question;
  const forms = formsOnBasis(
    options.map(({ food }) => food),
    nutrient,
    basis,
  );
  const candidates: Candidate<Unit>[] = [];
  const ids: string[] = [];
  const estimated: boolean[] = [];
  options.forEach((option, index) => {
    const form = forms[index];
    if (!form) return;
    if (!form.value.ok) {
      report.add(basisProblem(option.food, basis, form.value, option.place));
      return;
    }
    const { quantity, working, estimated: weight } = form.value.value.worked;
    const { food } = option;
    const number: ComputedNumber = {
      id: `${id}.${kebab(option.words)}.${kebab(nutrient)}`,
      value: quantity.value,
      unit: quantity.unit,
      ...working,
      sources: [food.record.source],
      what: `${nutrient} in ${basis.words} of ${food.name}`,
      food: { id: food.id, ...food.record },
    };
    ids.push(number.id);
    candidates.push({ name: option.words, value: quantity, working });
    estimated.push(weight);
    numbers.set(number.id, number);
  });
  if (candidates.length < options.length || !sameStanding(question, basis, report)) return undefined;
  const best = (question.find === 'min' ? smallestOf : largestOf)(candidates);
  if (best.ok) return { numbers: ids, right: best.value.index, estimated };
  report.add(readProblem('quiz/too-close-to-call', best, question.answerPlace));
  return undefined;
}

/**
 * A question is no trick: all options are eaten as they are, or all are label rows, or all are measured
 * before cooking. A basis that names a state has seen to it already.
 */
function sameStanding(question: Question, basis: Values['basis'], report: ComputeContext['report']): boolean {
  const standing = ({ food }: Option) =>
    food.state === 'canned, with liquid'
      ? 'counted with its liquid, as on a label'
      : portionOnBasis(food, { ...basis, state: 'ready to eat' }).ok
        ? 'ready to eat'
        : 'measured before cooking';
  const [first, ...others] = question.options;
  const other = first && others.find((option) => standing(option) !== standing(first));
  if (!first || !other) return true;
  report.add(
    readProblem(
      'N03',
      {
        reason: `"${other.words}" is ${standing(other)}, and "${first.words}" is ${standing(first)}.`,
        hint: 'Take options in the same state, and name it in the basis, such as ready to eat.',
      },
      other.place,
    ),
  );
  return false;
}

function factsOf({ questions, basis }: Values): Computed['facts'] {
  return {
    foods: questions.flatMap((question) => question.options.map(({ food, place }) => ({ food, place }))),
    nutrients: [...new Set(questions.map((question) => question.nutrient))],
    basis: basis.words,
  };
}
