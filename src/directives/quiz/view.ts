import type { Block, Choice, Inline, Stage } from '../../document/index.js';
import type { View, ViewContext } from '../contract.js';
import { signOf } from '../sign.js';
import { capital, citeList } from '../words.js';
import type { Answered, QuizResult } from './compute.js';
import type { Question, Values } from './schema.js';

const LETTERS = ['A', 'B', 'C', 'D'];

type QuestionBlock = Block & { readonly kind: 'question' };

/** Questions with boxes; the key says which is right, its value and why. On a slide: question, then answer. */
export function view(values: Values, computed: QuizResult, context: ViewContext): View {
  const blocks: Block[] = [];
  const stages: Stage[] = [];
  const basis = basisLine(values, computed, context);
  values.questions.forEach((question, index) => {
    const answered = computed.questions[index];
    if (!answered) return;
    const id = index === 0 ? values.id : `${values.id}-${index + 1}`;
    const make = (withKey: boolean) => questionBlock(id, question, answered, withKey, context);
    stages.push({ kind: 'ask', question: make(false) }, { kind: 'answer', question: make(true) });
    blocks.push(make(context.where === 'key'));
  });
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
  const shown = optionsAt(question, answered, context);
  const choices = shown.map((index, place): Choice => {
    const option = question.options[index];
    const letter = LETTERS[place] ?? '';
    const inlines: Inline[] = [{ text: capital(option?.words ?? '') }];
    const key = {
      right: index === answered.right,
      value: context.text(answered.numbers[index] ?? ''),
      why: capital(option?.why ?? ''),
    };
    const sign = option ? { sign: signOf(option.food) } : {};
    return { letter, inlines, ...sign, ...(withKey ? { key } : {}) };
  });
  return { kind: 'question', id, prompt: context.inlines(question.prompt), choices };
}

/** At `short` two options are left: the right one and the first other. */
function optionsAt(question: Question, answered: Answered, { level, where }: ViewContext): number[] {
  const all = question.options.map((_, index) => index);
  if (level !== 'short' || where === 'slide') return all;
  const other = all.find((index) => index !== answered.right);
  return all.filter((index) => index === answered.right || index === other);
}

function basisLine(values: Values, computed: QuizResult, { say, cite }: ViewContext): Inline[] {
  const sources = [...new Set(computed.numbers.flatMap((number) => number.sources))];
  const words = `${say('basis', { basis: values.basis.words })} ${say(sources.length === 1 ? 'source' : 'sources')}`;
  return [{ text: words }, ...citeList(sources, cite), { text: '.' }];
}
