import type { Block, Cell, Inline } from '../../document/index.js';
import type { ViewContext } from '../contract.js';
import { withNumbers } from '../words.js';
import type { Values } from './schema.js';

/** The example week as a list to add up, with a field for the sum and one for the strength days. */
export function exampleTask({ id, moves }: Values, context: ViewContext): Block[] {
  const { say, number, text, where } = context;
  const words = (said: string): Cell => ({ inlines: [{ text: said }] });
  const field = (label: string, unit: string, answer: string): Cell => ({
    inlines: [],
    field: { label, unit, ...(where === 'key' ? { answer: digits(text(`${id}.${answer}`)) } : {}) },
  });
  const task: Inline[] = withNumbers((slots) => say('task', slots), { twice: number(`${id}.twice`) });
  return [
    { kind: 'paragraph', inlines: task },
    {
      kind: 'table',
      rowHeads: true,
      head: [say('day'), say('move-head'), say('how-long'), say('kind')].map(words),
      rows: moves.map((move) => [
        words(say(move.day)),
        words(move.name),
        { inlines: [number(`${id}.${move.key}.minutes`)] },
        words(say(move.kind)),
      ]),
    },
    {
      kind: 'table',
      rowHeads: true,
      head: [words(say('find')), words(say('answer'))],
      rows: [
        [words(say('find-minutes')), field(say('find-minutes'), say('unit-minutes'), 'total')],
        [words(say('find-days')), field(say('find-days'), say('unit-days'), 'strength-days')],
      ],
    },
  ];
}

/** What stands before the empty week. */
export function ownWeek({ id }: Values, { say, number }: ViewContext): Block[] {
  return [
    {
      kind: 'paragraph',
      inlines: withNumbers((slots) => say('own', slots), { brick: number(`${id}.brick`) }),
    },
  ];
}

/** On the key: the sum of the example. One's own week has none. */
export function reasons({ id }: Values, { say, number }: ViewContext): Block[] {
  const of = (...names: string[]) => Object.fromEntries(names.map((name) => [name, number(`${id}.${name}`)]));
  return [
    {
      kind: 'why',
      inlines: withNumbers((slots) => say('key-sum', slots), of('moderate', 'twice', 'vigorous', 'total')),
    },
    {
      kind: 'why',
      inlines: withNumbers((slots) => say('key-days', slots), { days: number(`${id}.strength-days`) }),
    },
  ];
}

/** The number of a printed text without its unit, as it is written into a field. */
function digits(printed: string): string {
  return printed.replace(/[\u00a0 ].*$/, '');
}
