import type { Block, Cell, Inline } from '../../document/index.js';
import type { ViewContext } from '../contract.js';
import { capital, withNumbers } from '../words.js';
import type { SplitResult } from './compute.js';
import type { Values } from './schema.js';

/** Parts whose grams the worksheet gives: all that count, drawn or not. */
function givenParts({ id }: Values, { numbers }: SplitResult): string[] {
  return numbers.flatMap((one) =>
    one.id.startsWith(`${id}.`) && one.id.endsWith('.given')
      ? [one.id.slice(id.length + 1, -'.given'.length)]
      : [],
  );
}

/** Grams given, energy and shares to work out; the key holds the answers in the same fields. */
export function exercise(values: Values, computed: SplitResult, context: ViewContext): Block[] {
  const { say, number, text, where } = context;
  const { id } = values;
  const parts = givenParts(values, computed);
  if (parts.length === 0) return [{ kind: 'paragraph', inlines: [{ text: say('task-open') }] }];
  const key = where === 'key';
  const field = (label: string, unit: string, answer: string): Cell => ({
    inlines: [],
    field: { label, unit, ...(key ? { answer: digits(text(`${id}.${answer}`)) } : {}) },
  });
  const name = (part: string) => say(part);
  const words = (text: string): Cell => ({ inlines: [{ text }] });
  const shown = (inline: Inline): Cell => ({ inlines: [inline] });
  const task: Inline[] = [
    { text: `${say('task')} ${say('task-share')} ` },
    ...withNumbers((slots) => say('task-bricks', slots), { brick: number(`${id}.brick`) }),
  ];
  return [
    { kind: 'paragraph', inlines: task },
    {
      kind: 'table',
      rowHeads: true,
      head: [say('part'), say('grams'), say('factor'), say('energy'), say('share')].map(words),
      rows: [
        ...parts.map((part) => [
          words(capital(name(part))),
          shown(number(`${id}.${part}.given`)),
          shown(number(`${id}.${part}.factor`)),
          field(say('field-energy', { part: name(part) }), say('calories'), `${part}.worked`),
          field(say('field-share', { part: name(part) }), say('percent'), `${part}.worked-share`),
        ]),
        [
          words(say('all')),
          words(''),
          words(''),
          field(say('field-total'), say('calories'), 'worked'),
          words(''),
        ],
      ],
    },
  ];
}

/** The number of a printed text without its unit, as it is written into a field. */
function digits(printed: string): string {
  return printed.replace(/[\u00a0 ].*$|%$/, '');
}

/** On the key: the arithmetic, part by part. */
export function reasons(values: Values, computed: SplitResult, context: ViewContext): Block[] {
  const { say, number } = context;
  const { id } = values;
  const parts = givenParts(values, computed);
  if (parts.length === 0) return [];
  const lines = parts.map(
    (part): Block => ({
      kind: 'why',
      inlines: [
        ...withNumbers((slots) => say('key-energy', { ...slots, part: capital(say(part)) }), {
          grams: number(`${id}.${part}.given`),
          factor: number(`${id}.${part}.factor`),
          energy: number(`${id}.${part}.worked`),
        }),
        { text: ' ' },
        ...withNumbers((slots) => say('key-share', slots), {
          energy: number(`${id}.${part}.worked`),
          all: number(`${id}.worked`),
          share: number(`${id}.${part}.worked-share`),
        }),
      ],
    }),
  );
  return [...lines, { kind: 'why', inlines: [{ text: say('key-rounded') }] }];
}
