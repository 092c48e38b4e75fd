import type { Block, GoalCard, Inline } from '../../document/index.js';
import type { Computed, View, ViewContext } from '../contract.js';
import { type FieldName, SURE, type Sureness, type Values } from './schema.js';

type Line = Exclude<FieldName, 'how-sure'>;

const SAMPLE = {
  what: 'sample-what',
  'how-much': 'sample-how-much',
  when: 'sample-when',
  'how-often': 'sample-how-often',
} as const satisfies Readonly<Record<Line, string>>;

/** The card with its lines; on the key, for the leader and on the screen it is filled with the sample. */
export function view(values: Values, _: Computed, context: ViewContext): View {
  const { where, say } = context;
  const note: Block = { kind: 'paragraph', inlines: [{ text: say('sample') }] };
  switch (where) {
    case 'slide':
      return {
        blocks: [],
        stages: [{ kind: 'words', blocks: sampleLines(values, context) }],
        shelf: [{ text: `${say('sample')} ${say('smaller')}` }],
      };
    case 'staff':
      return {
        blocks: [
          { kind: 'paragraph', inlines: [{ text: `${say('leader')} ${say('private')}` }] },
          note,
          cardOf(values, context, true),
        ],
      };
    case 'key':
      return { blocks: [note, cardOf(values, context, true)] };
    default:
      return { blocks: [cardOf(values, context, false)] };
  }
}

function cardOf(values: Values, context: ViewContext, filled: boolean): Block {
  const { say, level } = context;
  const { id, copies } = values;
  const picked = filled ? sureOf(values) : undefined;
  const card: GoalCard = {
    title: say('title'),
    fields: linesOf(values, level === 'short').map((field) => ({
      label: say(field),
      ...(filled ? { answer: answerOf(values, field, context) } : {}),
    })),
    ...(values.fields.includes('how-sure')
      ? {
          sure: {
            label: say('how-sure'),
            words: SURE.map((word) => ({ text: say(word), picked: word === picked })),
            hint: say('smaller'),
          },
        }
      : {}),
  };
  return { kind: 'card', id, card, copies, cautions: [], pictures: level === 'short' };
}

/** The lines of a card; at `short` the first two that say what and when. */
function linesOf({ fields }: Values, short: boolean): readonly Line[] {
  const lines = fields.filter((field): field is Line => field !== 'how-sure');
  const first: readonly Line[] = lines.filter((field) => field === 'what' || field === 'when');
  return short ? [...first, ...lines.filter((field) => !first.includes(field))].slice(0, 2) : lines;
}

function answerOf({ sample }: Values, field: Line, { say }: ViewContext): string {
  return sample?.words[field] ?? say(SAMPLE[field]);
}

function sureOf({ sample }: Values): Sureness {
  return sample?.sure ?? 'likely';
}

/** On the screen: what stands in each field, and the four words with the ringed one strong. */
function sampleLines(values: Values, context: ViewContext): Block[] {
  const { say } = context;
  const lines = linesOf(values, false).map((field): Inline[] => [
    { text: say('slide-field', { field: say(field) }), strong: true },
    { text: answerOf(values, field, context) },
  ]);
  const words = SURE.flatMap((word, index): Inline[] => [
    { text: index === 0 ? ' ' : '  ·  ' },
    { text: say(word), ...(word === sureOf(values) ? { strong: true } : {}) },
  ]);
  const sure: Inline[][] = values.fields.includes('how-sure')
    ? [[{ text: say('how-sure'), strong: true }, ...words]]
    : [];
  return [...lines, ...sure].map((inlines) => ({ kind: 'paragraph', inlines }));
}
