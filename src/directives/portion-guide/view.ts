import type { Block, Cell, Inline } from '../../document/index.js';
import type { MeasureRow, MeasureVessel } from '../../figures/index.js';
import type { View, ViewContext } from '../contract.js';
import { capital, citeList, withNumbers } from '../words.js';
import { alternativeOf, holdsId, holdsWords, unitsIn } from './alternative.js';
import type { Guide, GuideResult, PouredRow } from './compute.js';
import type { Values } from './schema.js';

/** The measures with their lines; on a worksheet a table to guess, pour and weigh. */
export function view(values: Values, computed: GuideResult, context: ViewContext): View {
  const guide = computed.guides[context.measures];
  const { where, level } = context;
  const figure = figureOf(values, guide, context);
  const basis = basisLine(values, computed, guide, context);
  if (where === 'slide')
    return { blocks: [], stages: [{ kind: 'show', block: { kind: 'figure', figure } }], shelf: basis };
  const blocks: Block[] = [{ kind: 'figure', figure }];
  if (where === 'worksheet' || where === 'key') blocks.push(guessTable(guide, context));
  else if (level !== 'short') blocks.push(labelTable(guide, context));
  if (where === 'key') blocks.push({ kind: 'why', inlines: [{ text: context.say('why') }] });
  blocks.push({ kind: 'basis', inlines: basis });
  return { blocks };
}

/** The numbers that stand under an amount: one measure at `short`, the weight too at `plain`, all from `fuller` on. */
function underOf(values: Values, row: PouredRow, { where, level }: ViewContext): string[] {
  if (where === 'worksheet' || (level === 'short' && where !== 'slide')) return [];
  const grams = values.measures.includes('gram') ? [row.ids.grams] : [];
  return level === 'plain' || where === 'slide' ? grams : [...(row.ids.also ? [row.ids.also] : []), ...grams];
}

const HANDS = { fist: 'fist', 'cupped hand': 'cupped', thumb: 'thumb', 'thumb tip': 'thumb-tip' } as const;

function figureOf(values: Values, guide: Guide, context: ViewContext): MeasureRow {
  const { where, say, text } = context;
  const { id } = values;
  const usual = (row: PouredRow) => row.ids.usual;
  const hand = (row: PouredRow) =>
    row.hand && values.measures.includes('hand')
      ? [say(HANDS[row.hand.hand], { count: row.hand.times })]
      : [];
  const how = {
    once: undefined,
    twice: say('twice'),
    often: say('often'),
    'then to the line': say('to-line'),
  };
  const vessels = unitsIn(guide).map((unit): MeasureVessel => {
    const holds = holdsId(id, unit, guide);
    return {
      shape: unit === 'cup' ? 'cup' : 'spoon',
      milliliters: guide.holds[unit],
      name: say(unit),
      note: text(holds),
      pours: guide.rows
        .filter((row) => row.unit === unit)
        .map((row) => {
          const often = how[row.fills];
          return {
            name: capital(row.words),
            amount: text(usual(row)),
            number: usual(row),
            share: row.share,
            ...(often ? { how: often } : {}),
            under: [
              ...underOf(values, row, context).map((number) => ({ text: text(number), number })),
              ...hand(row).map((words) => ({ text: words })),
            ],
          };
        }),
    };
  });
  const amountsOf = (row: PouredRow) => [
    text(usual(row)),
    ...underOf(values, row, context).map((number) => text(number)),
    ...hand(row),
  ];
  return {
    kind: 'measure-row',
    id,
    mode: where === 'worksheet' ? 'blank' : where === 'key' ? 'key' : 'shown',
    vessels,
    words: {
      check: { text: say('check', { line: text(`${id}.line`) }), number: `${id}.line` },
      smaller: say('smaller'),
    },
    numbers: [
      ...guide.rows.flatMap((row) => [usual(row), ...underOf(values, row, context)]),
      ...unitsIn(guide).map((unit) => holdsId(id, unit, guide)),
      `${id}.line`,
    ],
    alternative: alternativeOf(id, guide, amountsOf, context),
  };
}

/** What a label counts, beside the usual amount. */
function labelTable(guide: Guide, { say, number }: ViewContext): Block {
  const head = [say('food'), say('usual'), say('on-label')].map(words);
  return {
    kind: 'table',
    head,
    rowHeads: true,
    rows: guide.rows.map((row) => {
      const { usual, label: counted, labelAs } = row.ids;
      const label =
        counted && labelAs
          ? withNumbers((slots) => say('label-cell', slots), {
              label: number(counted),
              as: number(labelAs),
            })
          : [{ text: say('not-known') }];
      return [words(capital(row.words)), { inlines: [number(usual)] }, { inlines: label }];
    }),
  };
}

/** Guess, pour and weigh; the key knows what the tables say. */
function guessTable(guide: Guide, { say, text, where }: ViewContext): Block {
  return {
    kind: 'table',
    head: [say('food'), say('guess'), say('measured'), say('difference')].map(words),
    rowHeads: true,
    rows: guide.rows.map((row) => {
      const food = capital(row.words);
      const grams = text(row.ids.grams);
      const field = (label: string, answer?: string): Cell => ({
        inlines: [],
        field: { label, ...(answer ? { answer } : { unit: 'g' }) },
      });
      return [
        words(`${food}, ${text(row.ids.usual)}`),
        field(say('guess-field', { food })),
        field(say('measured-field', { food }), where === 'key' ? grams : undefined),
        field(say('difference-field', { food })),
      ];
    }),
  };
}

function words(text: string): Cell {
  return { inlines: [{ text }] };
}

function basisLine(values: Values, computed: GuideResult, guide: Guide, context: ViewContext): Inline[] {
  const { say, list } = context;
  const guessed = guide.rows.filter((row) => row.estimated).map((row) => row.words);
  // A slide shows no label's amount and has little room.
  const told = computed.numbers.filter(({ id }) => context.where !== 'slide' || !id.includes('.label-'));
  const sources = [...new Set(told.flatMap((number) => number.sources))];
  const slide = context.where === 'slide';
  const sentences = [
    say(slide ? 'basis-slide' : 'basis', { measures: holdsWords(values.id, guide, context) }),
  ];
  if (guessed.length > 0) sentences.push(say('estimated', { foods: list(guessed) }));
  sentences.push(say('sources', { count: sources.length }));
  return [{ text: sentences.join(' ') }, ...citeList(sources, context.cite), { text: '.' }];
}
