import type { Block, Choice, Inline, Stage } from '../../document/index.js';
import type { View, ViewContext } from '../contract.js';
import { signOf } from '../sign.js';
import { capital, citeList } from '../words.js';
import type { Answered, QuizResult } from './compute.js';
import type { Option, Question, Values } from './schema.js';

const LETTERS = ['A', 'B', 'C', 'D'];

type QuestionBlock = Block & { readonly kind: 'question' };

/** Questions with boxes; the key says which is right, its value and why. On a slide: question, then answer. */
export function view(values: Values, computed: QuizResult, context: ViewContext): View {
  const blocks: Block[] = [];
  const stages: Stage[] = [];
  values.questions.forEach((question, index) => {
    const answered = computed.questions[index];
    if (!answered) return;
    const id = index === 0 ? values.id : `${values.id}-${index + 1}`;
    const make = (withKey: boolean) => questionBlock(id, question, answered, withKey, context);
    stages.push({ kind: 'ask', question: make(false) }, { kind: 'answer', question: make(true) });
    blocks.push(make(context.where === 'key'));
  });
  const basis = basisLine(values, computed, context);
  if (context.where === 'slide') return { blocks: [], stages, shelf: basis };
  return { blocks: [...blocks, { kind: 'basis', inlines: basis }] };
}

function questionBlock(
  id: string,
  question: Question,
  answered: Answered,
  withKey: boolean,
  context: ViewContext,
): QuestionBlock {
  const choices = shownOptions(question, answered, context).map(({ option, index }, place): Choice => {
    const number = answered.numbers[index] ?? '';
    const key = {
      right: index === answered.right,
      value: context.text(number),
      number,
      why: capital(context.inlines(option.why).reduce((words, inline) => words + inline.text, '')),
    };
    return {
      letter: LETTERS[place] ?? '',
      inlines: [{ text: capital(option.words) }],
      sign: signOf(option.food),
      ...(withKey ? { key } : {}),
    };
  });
  return { kind: 'question', id, prompt: context.inlines(question.prompt), choices };
}

/** At `short` two options are left: the right one and the first other. */
function shownOptions(
  question: Question,
  answered: Answered,
  { level, where }: ViewContext,
): { readonly option: Option; readonly index: number }[] {
  const all = question.options.map((option, index) => ({ option, index }));
  if (level !== 'short' || where === 'slide') return all;
  const other = all.find(({ index }) => index !== answered.right);
  return all.filter(({ index }) => index === answered.right || index === other?.index);
}

function basisLine(values: Values, computed: QuizResult, context: ViewContext): Inline[] {
  const { say, list, cite } = context;
  const sources = [...new Set(computed.numbers.flatMap((number) => number.sources))];
  const guessed = values.questions.flatMap((question, q) => {
    const answered = computed.questions[q];
    if (!answered) return [];
    return shownOptions(question, answered, context).flatMap(({ option, index }) =>
      answered.estimated[index] ? [option.words] : [],
    );
  });
  const sentences = [say('basis', { basis: values.basis.words })];
  if (guessed.length > 0)
    sentences.push(say('estimated', { portion: values.basis.portion, foods: list([...new Set(guessed)]) }));
  sentences.push(say('sources', { count: sources.length }));
  return [{ text: sentences.join(' ') }, ...citeList(sources, cite), { text: '.' }];
}
