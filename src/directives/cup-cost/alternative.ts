import type { Alternative, CostRung } from '../../figures/index.js';
import type { ViewContext } from '../contract.js';
import { fittingLabel } from '../words.js';
import type { Rung } from './compute.js';
import type { Values } from './schema.js';

/** A rung as it is drawn, with the food behind it. */
export interface Shown {
  readonly rung: Rung;
  readonly drawn: CostRung;
}

/** The ladder in words, in three layers: all costs at this level, and where there is none what to do. */
export function alternativeOf(
  values: Values,
  shown: readonly Shown[],
  kind: string | undefined,
  sales: boolean,
  context: ViewContext,
): Alternative {
  const { say, list, text } = context;
  const { id, sort } = values;
  const foods = shown.map(({ drawn }) => drawn.words).join(say('and-then'));
  const told = shown.filter(({ rung }) => rung.cost !== null);
  const open = shown.filter(({ rung }) => rung.cost === null);
  const inWords = ({ drawn: { letter, words, text: cost } }: Shown) =>
    say('reading-rung', { letter, food: words, cost });
  const named = ({ drawn: { letter, words } }: Shown) => say('row', { letter, food: words });
  const onSale = sales && shown.some(({ rung }) => rung.saleEnds !== undefined);
  return {
    label: fittingLabel([
      kind === undefined ? say('label', { foods }) : say('label-of', { food: kind, foods }),
      say('label-bare', { count: shown.length }),
    ]),
    reading: [
      ...(told.length > 0
        ? [
            say(sort === 'cost' ? 'reading-cost' : 'reading-written', {
              rungs: told.map(inWords).join(say('and-then')),
            }),
          ]
        : []),
      ...(open.length > 0 ? [say('reading-open', { rungs: list(open.map(named)) })] : []),
      say('reading-brick', { brick: text(`${id}.brick`) }),
    ].join(' '),
    table: {
      caption: kind === undefined ? say('caption') : say('caption-of', { food: kind }),
      head: [say('food'), say('cost'), ...(onSale ? [say('sale')] : [])],
      rows: shown.map(({ rung, drawn }) => [
        named({ rung, drawn }),
        drawn.text,
        ...(onSale ? [rung.saleEnds === undefined ? say('no-sale') : text(`${id}.${rung.name}.sale`)] : []),
      ]),
    },
  };
}
