import type { Block, Cell, Inline } from '../../document/index.js';
import type { View, ViewContext } from '../contract.js';
import { capital, citeList, withNumbers } from '../words.js';
import type { Card, Judged, SafeResult } from './compute.js';
import { ALL_FOOD, LINES, type TopicLines, type Values } from './schema.js';

/** What to do beside what to throw out; on a worksheet things to keep or to throw out. */
export function view(values: Values, computed: SafeResult, context: ViewContext): View {
  const card = computed.cards[context.measures];
  const { where, level, say } = context;
  const basis: Block = { kind: 'basis', inlines: basisLine(card, context) };
  if (where === 'slide')
    return {
      blocks: [],
      stages: [{ kind: 'words', blocks: fourLines(values, card, context) }],
      shelf: basis.inlines,
    };
  if (where === 'worksheet' || where === 'key') return { blocks: [...tossTable(card, context), basis] };
  if (level === 'short') return { blocks: [shortCard(values, card, context), basis] };
  return {
    blocks: [
      fullCard(values, card, context),
      ...also(values, card, context),
      { kind: 'paragraph', inlines: [{ text: say('care') }] },
      basis,
    ],
  };
}

/** A term with the limits in its slots; a temperature on both scales unless one was asked for. */
function filled(key: string, card: Card, context: ViewContext): Inline[] {
  const { say, number } = context;
  const numbers: Record<string, Inline> = {};
  const marks: Record<string, string> = {};
  for (const [name, ids] of Object.entries(card.slots)) {
    ids.forEach((id, index) => {
      numbers[`${name}-${index}`] = number(id);
    });
    const slot = (index: number) => `\u0001${name}-${index}\u0001`;
    marks[name] = ids.length > 1 ? say('both', { first: slot(0), second: slot(1) }) : slot(0);
  }
  return withNumbers(() => say(key, marks), numbers);
}

function doing(lines: TopicLines, card: Card, context: ViewContext): Inline[] {
  const held =
    lines.heats && card.slots['core-time'] ? [{ text: ' ' }, ...filled('and-core', card, context)] : [];
  return [...filled(lines.do, card, context), ...held];
}

/** In few words; heat that must be held is said there too. */
function briefly(lines: TopicLines, which: 0 | 1, card: Card, context: ViewContext): Inline[] {
  const held =
    which === 0 && lines.heats && card.slots['core-time']
      ? [{ text: ' ' }, ...filled('and-core', card, context)]
      : [];
  return [...filled(lines.brief[which], card, context), ...held];
}

function fullCard({ topics }: Values, card: Card, context: ViewContext): Block {
  const { say } = context;
  const row = (name: string, lines: TopicLines): Cell[] => [
    { inlines: [{ text: name }] },
    { inlines: doing(lines, card, context) },
    { inlines: filled(lines.toss, card, context) },
  ];
  return {
    kind: 'table',
    head: [say('topic'), say('do'), say('toss')].map((text) => ({ inlines: [{ text }] })),
    rowHeads: true,
    rows: [...topics.map((topic) => row(say(topic), LINES[topic])), row(say('all'), ALL_FOOD)],
  };
}

/** What holds beside the card where the country's table has it. */
function also({ topics }: Values, card: Card, context: ViewContext): Block[] {
  const rest = card.slots['rest-time'] && topics.includes('meat') ? filled('and-rest', card, context) : [];
  const hot = card.slots['hot-day'] ? filled('and-hot-day', card, context) : [];
  const inlines = [...rest, ...(rest.length > 0 && hot.length > 0 ? [{ text: ' ' }] : []), ...hot];
  return inlines.length > 0 ? [{ kind: 'paragraph', inlines }] : [];
}

/** The first two topics, each with what to do and what to throw out: four lines. */
function firstTwo({ topics }: Values): readonly { readonly name?: string; readonly lines: TopicLines }[] {
  const named = topics.map((topic) => ({ name: topic, lines: LINES[topic] }));
  return [...named, { lines: ALL_FOOD }].slice(0, 2);
}

function shortCard(values: Values, card: Card, context: ViewContext): Block {
  const { say } = context;
  const line = (name: string | undefined, inlines: readonly Inline[]): Cell => ({
    inlines: [{ text: `${say(name ?? 'all')}: `, strong: true }, ...inlines],
  });
  return {
    kind: 'table',
    head: [say('do'), say('toss')].map((text) => ({ inlines: [{ text }] })),
    rowHeads: false,
    rows: firstTwo(values).map(({ name, lines }) => [
      line(name, briefly(lines, 0, card, context)),
      line(name, briefly(lines, 1, card, context)),
    ]),
  };
}

function fourLines(values: Values, card: Card, context: ViewContext): Block[] {
  const { say } = context;
  const list = (title: string, inlinesOf: (lines: TopicLines) => Inline[]): Block[] => [
    { kind: 'paragraph', inlines: [{ text: title, strong: true }] },
    {
      kind: 'list',
      ordered: false,
      items: firstTwo(values).map(({ name, lines }) => [
        { kind: 'paragraph', inlines: [{ text: `${say(name ?? 'all')}: ` }, ...inlinesOf(lines)] },
      ]),
    },
  ];
  return [
    ...list(say('do'), (lines) => briefly(lines, 0, card, context)),
    ...list(say('toss'), (lines) => briefly(lines, 1, card, context)),
  ];
}

/** Things to keep or to throw out; on the key with the answer and the reason. */
function tossTable(card: Card, context: ViewContext): Block[] {
  const { say, level, where } = context;
  const shown = card.judged.slice(0, level === 'short' ? 4 : card.judged.length);
  const found = ({ found: { says }, number }: Judged): Inline[] =>
    number
      ? withNumbers((slots) => say(says, slots), { time: context.number(number) })
      : [{ text: say(says) }];
  const plain = (inlines: readonly Inline[]) => inlines.map(({ text }) => text).join('');
  const table: Block = {
    kind: 'table',
    head: [say('found'), say('answer')].map((text) => ({ inlines: [{ text }] })),
    rowHeads: true,
    rows: shown.map((one) => [
      { inlines: found(one) },
      {
        inlines: [],
        field: {
          label: say('answer-field', { found: plain(found(one)) }),
          ...(where === 'key' ? { answer: say(one.keep ? 'keep' : 'throw') } : {}),
        },
      },
    ]),
  };
  if (where !== 'key') return [table];
  return [
    table,
    ...shown.map(
      (one): Block => ({
        kind: 'why',
        inlines: [...found(one), { text: ' ' }, ...reason(one, card, context)],
      }),
    ),
  ];
}

function reason({ found, keep, number, limit }: Judged, card: Card, context: ViewContext): Inline[] {
  const { say } = context;
  if ('why' in found) return [{ text: say(found.why) }];
  const [id] = (limit && card.slots[limit]) || [];
  if (!number || !id) return [];
  const words = withNumbers((slots) => say(keep ? 'within-time' : 'over-time', slots), {
    time: context.number(number),
    limit: context.number(id),
  });
  return words.map((inline, index) => (index === 0 ? { ...inline, text: capital(inline.text) } : inline));
}

function basisLine({ sources }: Card, { say, cite }: ViewContext): Inline[] {
  return [
    { text: `${say('basis')} ${say('sources', { count: sources.length })}` },
    ...citeList(sources, cite),
    { text: '.' },
  ];
}
