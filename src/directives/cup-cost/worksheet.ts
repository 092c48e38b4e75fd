import type { Block, Cell } from '../../document/index.js';
import type { ViewContext } from '../contract.js';
import { capital, withNumbers } from '../words.js';
import type { CupCostResult, Rung } from './compute.js';
import type { Values } from './schema.js';

/**
 * The sum to work out: price ÷ cups in the package, with one line worked about no food at all. Rows stand as they
 * were written, because the cheapest first would be half the answer; no rung is drawn.
 */
export function worksheetBlocks(values: Values, computed: CupCostResult, context: ViewContext): Block[] {
  const { say, number, where } = context;
  const { id } = values;
  const example = Object.fromEntries(
    (['price', 'cups', 'cost'] as const).map((name) => [name, number(`${id}.example-${name}`)]),
  );
  const rows = values.rows.flatMap((row) => computed.rungs.find((rung) => rung.row === row) ?? []);
  const table: Block = {
    kind: 'table',
    head: (['food', 'package', 'cups', 'cost'] as const).map((key) => ({ inlines: [{ text: say(key) }] })),
    rows: rows.map((rung) => rowOf(values, rung, context)),
    rowHeads: true,
  };
  const near: Block[] =
    where === 'key' && rows.some(({ cost }) => cost !== null)
      ? [{ kind: 'why', inlines: [{ text: say('key-near') }] }]
      : [];
  return [
    {
      kind: 'paragraph',
      inlines: [{ text: say('how'), strong: true }, ...withNumbers((slots) => say('worked', slots), example)],
    },
    table,
    ...near,
  ];
}

function rowOf({ id }: Values, { row, name, cost, state }: Rung, context: ViewContext): Cell[] {
  const { say, number, text, where } = context;
  const food = row.words;
  const key = where === 'key';
  const price: Cell =
    state === 'fresh' && row.price
      ? {
          inlines: withNumbers(
            (slots) => say('bought', { package: row.price?.packageWords ?? '', ...slots }),
            { price: number(`${id}.${name}.price`) },
          ),
        }
      : { inlines: [], field: { label: say('write-price', { food }), unit: row.price?.packageWords ?? '' } };
  const cups: Cell = row.price
    ? { inlines: [number(`${id}.${name}.cups`)] }
    : { inlines: [], field: { label: say('write-cups', { food }) } };
  const answer = cost === null ? say('depends') : text(`${id}.${name}.cost`);
  return [
    { inlines: [{ text: capital(food) }] },
    price,
    cups,
    { inlines: [], field: { label: say('write-cost', { food }), ...(key ? { answer } : {}) } },
  ];
}
