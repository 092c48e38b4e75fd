import type { Block, Inline } from '../../document/index.js';
import type { View, ViewContext } from '../contract.js';
import { withNumbers } from '../words.js';
import type { WeekResult } from './compute.js';
import { exampleTask, ownWeek, reasons } from './exercise.js';
import { figureOf } from './figure.js';
import type { Values } from './schema.js';

/** The week in bricks with what is there and what is missing; on a worksheet an example and one's own week. */
export function view(values: Values, computed: WeekResult, context: ViewContext): View {
  const { where } = context;
  const figure: Block & { kind: 'figure' } = { kind: 'figure', figure: figureOf(values, computed, context) };
  if (where === 'slide')
    return { blocks: [], stages: [{ kind: 'show', block: figure }], shelf: shelf(values, context) };
  const basis: Block = { kind: 'basis', inlines: basisLine(values, context) };
  if (where === 'worksheet')
    return {
      blocks: [...exampleTask(values, context), ...ownWeek(values, context), figure, writing(context), basis],
    };
  if (where === 'key')
    return { blocks: [...exampleTask(values, context), ...reasons(values, context), figure, basis] };
  return {
    blocks: [
      { kind: 'paragraph', inlines: sentences(values, computed, context) },
      figure,
      { kind: 'paragraph', inlines: talk(computed, context) },
      basis,
    ],
  };
}

function writing({ say }: ViewContext): Block {
  return { kind: 'write', label: say('own-write'), lines: 1 };
}

/** What is there, what is missing, and one small step. At `short` the sum and the step. */
function sentences({ id }: Values, computed: WeekResult, context: ViewContext): Inline[] {
  const { say, number, level } = context;
  const of = (...names: string[]) => Object.fromEntries(names.map((name) => [name, number(`${id}.${name}`)]));
  const all: Inline[][] = [withNumbers((slots) => say('adds-up', slots), of('total'))];
  all.push(
    computed.aerobic === 'yes'
      ? withNumbers((slots) => say('there', slots), of('goal'))
      : withNumbers((slots) => say('short-of', slots), of('goal', 'missing')),
  );
  if (computed.aerobic !== 'yes') all.push(withNumbers((slots) => say('step', slots), of('step')));
  if (level !== 'short') {
    const anyStrength = computed.days.some((day) => day.strength);
    const key = computed.strength ? 'strength-there' : anyStrength ? 'strength-short' : 'strength-none';
    const days = { days: number(`${id}.strength-days`), goal: number(`${id}.goal-days`) };
    all.push(withNumbers((slots) => say(key, slots), days));
    if (computed.balance !== null)
      all.push([{ text: say(computed.balance ? 'balance-there' : 'balance-short') }]);
    if (computed.seated > 0)
      all.push(
        withNumbers((slots) => say('seated', { ...slots, count: computed.seated }), {
          seated: number(`${id}.seated`),
        }),
      );
  }
  return joined(all);
}

/** How hard is hard: by talking, never by numbers about the body. */
function talk({ light }: WeekResult, { say, level }: ViewContext): Inline[] {
  if (level === 'short') return [{ text: say('talk-short') }];
  const more = level === 'fuller' || level === 'staff';
  return joined([
    [{ text: say('talk') }],
    ...(light > 0 ? [[{ text: say('light-too') }]] : []),
    ...(more ? [[{ text: say('able') }]] : []),
  ]);
}

/** Sentences side by side. */
function joined(sentences: readonly (readonly Inline[])[]): Inline[] {
  return sentences.flatMap((sentence, index) => [...(index > 0 ? [{ text: ' ' }] : []), ...sentence]);
}

function basisLine(values: Values, { say, number, cite }: ViewContext): Inline[] {
  const { id, moves } = values;
  const minutes = Object.fromEntries(moves.map((move) => [move.key, number(`${id}.${move.key}.minutes`)]));
  const told = (slots: Readonly<Record<string, string>>) =>
    moves
      .map((move) =>
        say(move.seated ? 'move-seated' : 'move', {
          day: say(move.day),
          name: move.name,
          minutes: slots[move.key] ?? '',
          kind: say(move.kind),
        }),
      )
      .join('; ');
  return [
    ...withNumbers((slots) => say('example', { moves: told(slots) }), minutes),
    { text: ' ' },
    ...withNumbers((slots) => say('twice', slots), { twice: number(`${id}.twice`) }),
    { text: ` ${say('source')}` },
    cite('activity-guidelines-2018'),
    { text: '.' },
  ];
}

function shelf({ id }: Values, { say, number, cite }: ViewContext): Inline[] {
  return [
    ...withNumbers((slots) => say('shelf', slots), {
      brick: number(`${id}.brick`),
      twice: number(`${id}.twice`),
    }),
    { text: ` ${say('source')}` },
    cite('activity-guidelines-2018'),
    { text: '.' },
  ];
}
