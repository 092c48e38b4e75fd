import type { Block, Inline } from '../../document/index.js';
import type { BrickRows } from '../../figures/index.js';
import type { View, ViewContext } from '../contract.js';
import { citeList, fittingLabel, withNumbers } from '../words.js';
import type { Bricks, RinseResult } from './compute.js';
import type { Values } from './schema.js';

/** Two rows of bricks with their basis line; for a can with no salt added, one sentence and no figure. */
export function view(values: Values, computed: RinseResult, context: ViewContext): View {
  const { bricks } = computed;
  if (!bricks) return saltless(values, context);
  const figure = figureOf(values, computed, bricks, context);
  const basis = basisLine(values, computed, bricks, context);
  if (context.where === 'slide') {
    return { blocks: [], stages: [{ kind: 'show', block: { kind: 'figure', figure } }], shelf: basis };
  }
  const blocks: Block[] = [{ kind: 'figure', figure }];
  if (context.where === 'key') blocks.push({ kind: 'why', inlines: whyLine(values, bricks, context) });
  blocks.push({ kind: 'basis', inlines: basis });
  return { blocks };
}

function saltless({ id, basis }: Values, { where, say, number }: ViewContext): View {
  const inlines = withNumbers((slots) => say('no-salt', { ...slots, basis: basis.words }), {
    label: number(`${id}.label`),
  });
  const blocks: Block[] = [{ kind: 'paragraph', inlines }];
  return where === 'slide' ? { blocks: [], stages: [{ kind: 'words', blocks }], shelf: [] } : { blocks };
}

function figureOf(values: Values, computed: RinseResult, bricks: Bricks, context: ViewContext): BrickRows {
  const { say, text } = context;
  const { id } = values;
  const mode = context.where === 'worksheet' ? 'blank' : context.where === 'key' ? 'key' : 'shown';
  const blank = mode === 'blank';
  const label = text(`${id}.label`);
  const brick = text(`${id}.brick`);
  const after = afterWords(values, context);
  const answer = blank ? undefined : answerOf(values, context);
  const counted = mode === 'key' && bricks.countable;
  const { total, given, left } = rowsOf(computed, bricks, blank);
  return {
    kind: 'brick-rows',
    id,
    mode,
    worth: bricks.worth,
    rows: [
      { name: say('on-label'), note: say('on-label-note', { label }), sign: 'can', total, ...given },
      {
        name: after,
        note: answer ? say('after-note', { range: answer.range }) : '',
        sign: 'strainer',
        total,
        ...left,
        ...(answer
          ? {
              ends: { ...answer.ends, words: answer.range },
              look: counted ? say('look-key', { bricks: text(`${id}.bricks`) }) : say('look'),
            }
          : {}),
      },
    ],
    words: { sure: say('sure'), unsure: say('unsure'), gone: say('gone') },
    numbers: [
      ...(blank ? ['label', 'brick'] : ['label', 'after', 'brick']),
      ...(counted ? ['bricks'] : []),
    ].map((name) => `${id}.${name}`),
    alternative: {
      label: fittingLabel([
        say('label', { basis: values.basis.words, food: values.name }),
        say('label-bare'),
      ]),
      reading: answer
        ? [
            say('reading', { label, after, range: answer.range }),
            ...(counted ? [say('reading-key', { bricks: text(`${id}.bricks`) })] : []),
          ].join(' ')
        : say('reading-blank', { label, after, brick }),
      table: {
        caption: say('caption', { basis: values.basis.words, food: values.name }),
        head: [say('row'), say('sodium')],
        rows: [
          [say('on-label'), label],
          [after, answer?.range ?? say('to-fill')],
        ],
      },
    },
  };
}

/** The range as printed. A blank never asks for it, so that nothing can give it away. */
function answerOf({ id }: Values, { text, ends }: ViewContext) {
  return { range: text(`${id}.after`), ends: ends(`${id}.after`) };
}

/** A blank row knows only that something from nothing to all may be left. */
function rowsOf({ label }: RinseResult, { low, high }: Bricks, blank: boolean) {
  const given = { sure: label, possible: label };
  const left = blank ? { sure: 0, possible: label } : { sure: low, possible: high };
  return { total: label, given, left };
}

function afterWords({ treatment }: Values, { say }: ViewContext): string {
  return say(treatment === 'drained' ? 'after-drained' : 'after-rinsed');
}

function whyLine(values: Values, { countable }: Bricks, context: ViewContext): Inline[] {
  const { say, number } = context;
  const { id } = values;
  const share = withNumbers((slots) => say('key-share', { ...slots, after: afterWords(values, context) }), {
    share: number(`${id}.share`),
  });
  const right = countable
    ? withNumbers((slots) => say('key-bricks', slots), { bricks: number(`${id}.bricks`) })
    : withNumbers((slots) => say('key-range', slots), { range: number(`${id}.after`) });
  return [...share, { text: ' ' }, ...right];
}

function basisLine(
  values: Values,
  { littleToLose }: RinseResult,
  { disagree, studies }: Bricks,
  { say, number, cite, where }: ViewContext,
): Inline[] {
  const range = where === 'worksheet' ? 'range-blank' : disagree ? 'disagree' : 'vary';
  return [
    { text: `${say('basis', { basis: values.basis.words, food: values.name })} ` },
    ...withNumbers((slots) => say('brick', slots), { brick: number(`${values.id}.brick`) }),
    { text: ` ${say(range)} ${littleToLose ? `${say('little')} ` : ''}` },
    { text: say('sources', { count: studies.length }) },
    ...citeList(studies, cite),
    { text: '.' },
  ];
}
