import type { Block, Inline } from '../../document/index.js';
import type { View, ViewContext } from '../contract.js';
import { withNumbers } from '../words.js';
import type { PaceResult } from './compute-pace.js';
import type { PaceValues } from './schema.js';
import { joined, numbersBy, unitOf, whoOf, withExample } from './words.js';

/** The pace in words, with its table of weeks from `plain` on; on a worksheet why it eases. */
export function viewPace(values: PaceValues, computed: PaceResult, context: ViewContext): View {
  const { where, say, level } = context;
  const who = whoOf(values.example, context);
  if (where === 'worksheet' || where === 'key')
    return {
      blocks: [
        { kind: 'paragraph', inlines: [{ text: say('pace-task', { who }) }] },
        where === 'key'
          ? { kind: 'why', inlines: [{ text: say('pace-why') }] }
          : { kind: 'write', label: say('pace-write'), lines: 2 },
        { kind: 'basis', inlines: [{ text: say('pace-basis-task') }] },
      ],
    };
  const basis = basisLine(values, context);
  if (where === 'slide')
    return {
      blocks: [],
      stages: [{ kind: 'words', blocks: onSlide(values, computed, context) }],
      shelf: basis,
    };
  return {
    blocks: [
      { kind: 'paragraph', inlines: sentences(values, computed, context) },
      ...(level === 'short' ? [] : [table(values, computed, context)]),
      ...(where === 'staff' ? [{ kind: 'paragraph' as const, inlines: [{ text: say('staff') }] }] : []),
      { kind: 'basis', inlines: basis },
    ],
  };
}

function sentences(values: PaceValues, computed: PaceResult, context: ViewContext): Inline[] {
  const { say } = context;
  return joined([[{ text: say('pace-gains') }], pace(values, computed, context), whole(values, context)]);
}

function pace({ id, example }: PaceValues, { eases }: PaceResult, context: ViewContext): Inline[] {
  const unit = unitOf(context);
  const names = { first: `first.${unit}`, ...(eases ? { slowest: `slowest.${unit}` } : {}) };
  return withNumbers(
    (slots) => context.say(eases ? 'pace' : 'pace-even', { ...slots, who: whoOf(example, context) }),
    numbersBy(id, names, context),
  );
}

function whole({ id }: PaceValues, context: ViewContext): Inline[] {
  const names = { lose: `lose.${unitOf(context)}`, weeks: 'weeks' };
  return withNumbers((slots) => context.say('pace-weeks', slots), numbersBy(id, names, context));
}

function table({ id, example }: PaceValues, { rows }: PaceResult, context: ViewContext): Block {
  const { say, number, level, where } = context;
  const full = level === 'fuller' || level === 'staff' || where === 'staff';
  const unit = unitOf(context);
  const cell = (inline: Inline) => ({ inlines: [inline] });
  return {
    kind: 'table',
    caption: say('pace-caption', { who: whoOf(example, context) }),
    head: [say('lost'), say('weeks'), ...(full ? [say('pace-head')] : [])].map((text) => cell({ text })),
    rows: rows[unit].map((row) => [
      cell(number(`${id}.${row}.lost-${unit}`)),
      cell(number(`${id}.${row}.weeks`)),
      ...(full ? [cell(number(`${id}.${row}.pace-${unit}`))] : []),
    ]),
    rowHeads: true,
  };
}

/** The pace and at most three milestones. */
function onSlide(values: PaceValues, computed: PaceResult, context: ViewContext): Block[] {
  const { say } = context;
  const rows = computed.rows[unitOf(context)];
  const shown = [...new Set([rows[0], rows[rows.length >> 1], rows.at(-1)])];
  const items = shown.flatMap((row): Block[][] =>
    row === undefined
      ? []
      : [
          [
            {
              kind: 'paragraph',
              inlines: withNumbers(
                (slots) => say('pace-point', slots),
                numbersBy(
                  values.id,
                  { lost: `${row}.lost-${unitOf(context)}`, weeks: `${row}.weeks` },
                  context,
                ),
              ),
            },
          ],
        ],
  );
  return [
    { kind: 'paragraph', inlines: pace(values, computed, context) },
    { kind: 'list', ordered: false, items },
  ];
}

function basisLine({ id, example }: PaceValues, context: ViewContext): Inline[] {
  const more = { most: `most.${unitOf(context)}`, percent: 'percent' };
  return withExample(
    id,
    example,
    context,
    (told, slots) =>
      context.say('pace-basis', { example: told, most: slots.most ?? '', percent: slots.percent ?? '' }),
    more,
  );
}
