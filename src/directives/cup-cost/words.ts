import type { Block, Inline } from '../../document/index.js';
import type { ViewContext } from '../contract.js';
import { capital, citeList, withNumbers } from '../words.js';
import type { CupCostResult, Rung } from './compute.js';
import type { Values } from './schema.js';

/** A rung with what the words around it call it: its letter in the figure, or its food. */
export interface Named {
  readonly rung: Rung;
  readonly name: string;
}

/** The kind that all foods share, such as `pinto beans`; then their forms alone tell them apart. */
export function kindOf(rows: Values['rows']): string | undefined {
  const kinds = new Set(rows.map(({ plated }) => plated.eaten.kind));
  const [kind] = kinds;
  return kinds.size === 1 ? kind : undefined;
}

/** Where a sale is told: there is no room for it at `short` and on the screen. */
export function tellsSales({ where, level }: ViewContext): boolean {
  return where !== 'slide' && level !== 'short';
}

/** Bricks are counted whole at `short`; a hall can read cents. */
export function isWhole({ level, where }: ViewContext): boolean {
  return level === 'short' && where !== 'slide';
}

/** All costs in one sentence, where there is no room for a ladder; what has no price is named after it. */
export function lineOf({ id }: Values, named: readonly Named[], context: ViewContext): Block {
  const { say, number, list } = context;
  const told = named.filter(({ rung }) => rung.cost !== null);
  const open = named.filter(({ rung }) => rung.cost === null);
  const costs = Object.fromEntries(told.map(({ rung }) => [rung.name, number(`${id}.${rung.name}.cost`)]));
  const sentence = withNumbers(
    (slots) =>
      say('line', {
        rungs: told
          .map(({ rung, name }) => say('line-food', { food: name, cost: slots[rung.name] ?? '' }))
          .join(say('and-then')),
      }),
    costs,
  );
  const asked = open.length > 0 ? say('line-open', { foods: list(open.map(({ name }) => name)) }) : '';
  const inlines: Inline[] = told.length > 0 ? sentence : [];
  return {
    kind: 'paragraph',
    inlines: asked === '' ? inlines : [...inlines, { text: told.length > 0 ? ` ${asked}` : asked }],
  };
}

/** What the costs stand on: the cup, the brick where bricks are drawn, other shops, sales, estimates, sources. */
export function basisLine(
  { id, rows }: Values,
  named: readonly Named[],
  { main }: CupCostResult,
  context: ViewContext,
  brick?: string,
): Inline[] {
  const { say, number, list, date, where } = context;
  const kind = kindOf(rows);
  const inlines: Inline[] = [{ text: kind === undefined ? say('basis') : say('basis-of', { food: kind }) }];
  if (brick !== undefined)
    inlines.push(...withNumbers((slots) => say('basis-brick', slots), { brick: number(brick) }));
  if (brick !== undefined && isWhole(context)) inlines.push({ text: say('whole') });
  for (const { rung, name } of named) {
    const { price } = rung.row;
    if (rung.cost === null || !price) continue;
    if (price.shop.name === main?.shop && price.shelf.dated === main.day) continue;
    const slots = { letter: capital(name), shop: price.shop.name, date: date(price.shelf.dated) };
    inlines.push({ text: say('from', slots) });
  }
  const sells = tellsSales(context) && where !== 'worksheet' && where !== 'key';
  for (const { rung, name } of named) {
    if (!sells || rung.saleEnds === undefined) continue;
    const until = rung.saleEnds === '' ? undefined : rung.saleEnds;
    const slots = { letter: name, ...(until === undefined ? {} : { date: date(until) }) };
    const cost = number(`${id}.${rung.name}.sale`);
    inlines.push(
      ...withNumbers(
        (more) => say(until === undefined ? 'on-sale' : 'on-sale-until', { ...slots, ...more }),
        { cost },
      ),
    );
  }
  const guessed = named.filter(({ rung }) => rung.estimated).map(({ name }) => name);
  if (guessed.length > 0)
    inlines.push({
      text:
        guessed.length === named.length
          ? say('estimated-all')
          : say('estimated', { count: guessed.length, letters: list(guessed) }),
    });
  const records = rows.flatMap(({ bought, plated }) => [bought.record.source, plated.eaten.record.source]);
  const sources = [...new Set(records)];
  return [
    ...inlines,
    { text: say('sources', { count: sources.length }) },
    ...citeList(sources, context.cite),
    { text: '.' },
  ];
}
