import type { Block, Inline } from '../../document/index.js';
import type { BrickRows } from '../../figures/index.js';
import type { View, ViewContext } from '../contract.js';
import { citeList } from '../words.js';
import type { RinseResult } from './compute.js';
import type { Values } from './schema.js';

export function view(values: Values, computed: RinseResult, context: ViewContext): View {
  const figure = figureOf(values, computed, context);
  const basis = basisLine(values, computed, context);
  if (context.where === 'slide') {
    return { blocks: [], stages: [{ kind: 'show', block: { kind: 'figure', figure } }], shelf: basis };
  }
  const blocks: Block[] = [{ kind: 'figure', figure }];
  if (context.where === 'key')
    blocks.push({
      kind: 'why',
      inlines: [{ text: context.say('key-why', { range: context.text(`${values.id}.after`) }) }],
    });
  blocks.push({ kind: 'basis', inlines: basis });
  return { blocks };
}

function figureOf(values: Values, computed: RinseResult, context: ViewContext): BrickRows {
  const { say, text } = context;
  const mode = context.where === 'worksheet' ? 'blank' : context.where === 'key' ? 'key' : 'shown';
  const label = text(`${values.id}.label`);
  const range = text(`${values.id}.after`);
  const ends = context.ends(`${values.id}.after`);
  const after = say(values.treatment === 'drained' ? 'after-drained' : 'after-rinsed');
  const blank = mode === 'blank';
  return {
    kind: 'brick-rows',
    id: values.id,
    mode,
    worth: computed.brick,
    rows: [
      {
        name: say('on-label'),
        note: say('on-label-note', { label }),
        sign: 'can',
        total: computed.label,
        sure: computed.label,
        possible: computed.label,
      },
      {
        name: after,
        note: blank ? '' : say('after-note', { range }),
        sign: 'strainer',
        total: computed.label,
        sure: computed.low,
        possible: computed.high,
        ...(blank ? {} : { ends: { ...ends, words: range }, look: say('look') }),
      },
    ],
    words: { sure: say('sure'), unsure: say('unsure'), gone: say('gone') },
    numbers: (blank ? ['label', 'brick'] : ['label', 'after', 'drop', 'brick']).map(
      (name) => `${values.id}.${name}`,
    ),
    alternative: {
      label: say('label', { basis: values.basis.words, food: values.name }),
      reading: blank
        ? say('reading-blank', { brick: text(`${values.id}.brick`) })
        : say('reading', { label, after, range, gone: text(`${values.id}.drop`) }),
      table: {
        caption: say('caption', { basis: values.basis.words, food: values.name }),
        head: [say('row'), say('sodium')],
        rows: [
          [say('on-label'), label],
          [after, blank ? say('to-fill') : range],
        ],
      },
    },
  };
}

function basisLine(values: Values, computed: RinseResult, context: ViewContext): Inline[] {
  const { say } = context;
  const sentences = [
    say('basis', {
      basis: values.basis.words.split(',')[0] ?? '',
      food: values.name,
      brick: context.text(`${values.id}.brick`),
    }),
  ];
  if (computed.disagree) sentences.push(say('disagree'));
  if (computed.littleToLose) sentences.push(say('little'));
  const sources = citeList(computed.studies, context.cite);
  return [
    { text: `${sentences.join(' ')} ${say(computed.studies.length === 1 ? 'source' : 'sources')}` },
    ...sources,
    { text: '.' },
  ];
}
