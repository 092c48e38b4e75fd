import type { Block, Inline } from '../../document/index.js';
import type { TallyGrid } from '../../figures/index.js';
import type { View, ViewContext } from '../contract.js';
import { capital, fittingLabel, LONGEST_LABEL } from '../words.js';
import type { HandsResult, Told } from './compute.js';
import type { Option, Values } from './schema.js';

const LETTERS = ['A', 'B', 'C', 'D'];
const ONCE: Values['rounds'] = ['count'];

/**
 * The grid to fill on slide, worksheet and leader's page. At home there is no room to ask, so the handout has boxes
 * to check for oneself, or what the room said where that was counted.
 */
export function view(values: Values, computed: HandsResult, context: ViewContext): View {
  const { where, say } = context;
  const question = context.inlines(values.question);
  if (where === 'slide') {
    const block = { kind: 'figure' as const, figure: gridOf(values, computed, context) };
    return {
      blocks: [],
      stages: [{ kind: 'show', block, prompt: question }],
      shelf: [{ text: say('ways-short') }],
    };
  }
  const counted = values.rounds.length > 0;
  if (where === 'handout' && !counted) {
    const choices = values.options.map((option, index) => ({
      letter: LETTERS[index] ?? '',
      inlines: context.inlines(option.inlines),
    }));
    return {
      blocks: [
        { kind: 'question', id: values.id, prompt: question, choices },
        { kind: 'basis', inlines: [{ text: say('own') }] },
      ],
    };
  }
  const asked: Block = {
    kind: 'paragraph',
    inlines: question.map((inline) => ({ ...inline, strong: true })),
  };
  const grid: Block = { kind: 'figure', figure: gridOf(values, computed, context) };
  const few = counted && computed.told.flat().every(({ percent }) => percent === undefined);
  const basis: Block[] =
    few && where !== 'worksheet' ? [{ kind: 'basis', inlines: [{ text: say('no-share') }] }] : [];
  switch (where) {
    case 'staff':
      return { blocks: [asked, ...howTo(values, context), grid, ...basis, ...patterns(values, context)] };
    case 'key':
      return { blocks: [asked, grid, ...basis, { kind: 'why', inlines: [{ text: say('no-answer') }] }] };
    case 'worksheet':
      return { blocks: [asked, { kind: 'paragraph', inlines: [{ text: say('ways') }] }, grid] };
    default:
      return { blocks: [asked, grid, ...basis] };
  }
}

function howTo({ minutes }: Values, { say }: ViewContext): Block[] {
  const text = [say('minutes', { count: minutes }), say('ways'), say('how')].join(' ');
  return [{ kind: 'paragraph', inlines: [{ text }] }];
}

/** What each answer means for the next slide. */
function patterns({ options }: Values, { say, inlines }: ViewContext): Block[] {
  const items = options.flatMap(({ words, next }): Block[][] =>
    next
      ? [
          [
            {
              kind: 'paragraph',
              inlines: [{ text: `${say('pattern', { answer: words })} `, strong: true }, ...inlines(next)],
            },
          ],
        ]
      : [],
  );
  return items.length > 0 ? [{ kind: 'list', ordered: false, items }] : [];
}

function gridOf(values: Values, computed: HandsResult, context: ViewContext): TallyGrid {
  const { where, say, text } = context;
  const mode = where === 'worksheet' ? 'blank' : where === 'key' ? 'key' : 'shown';
  const { options, rounds } = values;
  const told = mode === 'blank' ? [] : computed.told;
  const box = told.length > 0 && computed.box ? computed.box : undefined;
  const rows = options.map((option, index) => ({
    letter: LETTERS[index] ?? '',
    name: wordsOf(option, context),
    lines: (rounds.length > 0 ? rounds : ONCE).map((round, at) => {
      const one = told[at]?.[index];
      return {
        word: round === 'count' ? '' : say(round),
        people: one ? one.people : null,
        text: one ? text(one.count) : '',
        percent: one?.percent ? text(one.percent) : '',
      };
    }),
  }));
  const counted = told.length > 0;
  return {
    kind: 'tally-grid',
    id: values.id,
    mode,
    rows,
    worth: counted ? computed.worth : 1,
    words: { box: box ? say('box', { people: text(box) }) : '' },
    numbers: counted
      ? [
          ...computed.all,
          ...told.flat().flatMap(({ count, percent }) => (percent ? [count, percent] : [count])),
          ...(box ? [box] : []),
        ]
      : [],
    alternative: {
      label: labelOf(values, context),
      reading: readingOf(values, computed, told, context),
      table: tableOf(values, told, context),
    },
  };
}

function wordsOf({ inlines }: Option, context: ViewContext): string {
  return plain(context.inlines(inlines));
}

function labelOf({ question }: Values, context: ViewContext): string {
  const words = plain(context.inlines(question));
  const label = context.say('label', { question: words });
  return fittingLabel(label.length <= LONGEST_LABEL ? [label] : [context.say('label-bare')]);
}

function readingOf(
  { options, rounds }: Values,
  computed: HandsResult,
  told: HandsResult['told'],
  context: ViewContext,
): string {
  const { say, text, list } = context;
  const names = options.map((option) => wordsOf(option, context));
  const [once, after] = told;
  if (!once) {
    const answers = list(names.map((name) => `“${withoutStop(name)}”`));
    return `${say('label-bare')} ${say('reading-open', { answers })}`;
  }
  const count = (one: Told | undefined) =>
    one?.percent
      ? say('with-share', { count: text(one.count), percent: text(one.percent) })
      : one
        ? text(one.count)
        : '';
  const each = names.map((name, index) =>
    rounds.length > 1
      ? say('told-rounds', { answer: name, before: count(once[index]), after: count(after?.[index]) })
      : say('told', { answer: name, count: count(once[index]) }),
  );
  const [first = '', second = ''] = computed.all.map(text);
  const sentence =
    rounds.length > 1
      ? say('reading-rounds', { before: first, after: second, told: each.join('; ') })
      : say('reading-all', { people: first, told: each.join('; ') });
  return computed.box ? `${sentence} ${say('box', { people: text(computed.box) })}` : sentence;
}

function tableOf(
  values: Values,
  told: HandsResult['told'],
  context: ViewContext,
): TallyGrid['alternative']['table'] {
  const { say, text } = context;
  const { rounds, options } = values;
  const head =
    rounds.length > 1
      ? rounds.map((round) => capital(say(round === 'after' ? 'after' : 'before')))
      : [say('people')];
  const shares = told.flat().some(({ percent }) => percent);
  const cells = (index: number) =>
    (told.length > 0 ? told : head.map(() => undefined)).flatMap((round) => {
      const one = round?.[index];
      const people = one ? text(one.count) : say('not-counted');
      return shares ? [people, one?.percent ? text(one.percent) : ''] : [people];
    });
  return {
    caption: say('caption'),
    head: [say('answer'), ...head.flatMap((name) => (shares ? [name, say('share')] : [name]))],
    rows: options.map((option, index) => [wordsOf(option, context), ...cells(index)]),
  };
}

function plain(inlines: readonly Inline[]): string {
  return inlines
    .map((inline) => inline.text)
    .join('')
    .trim();
}

function withoutStop(words: string): string {
  return words.replace(/[.\s]+$/u, '');
}
