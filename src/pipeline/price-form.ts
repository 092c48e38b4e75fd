import type { PriceNeed } from '../directives/contract.js';
import type { Block, Cell } from '../document/index.js';
import { formatDate, type Say, sayFrom, type TermTable } from '../languages/index.js';
import { PRICE_HEADINGS } from '../records/local/index.js';
import type { ComputedLesson } from './compute.js';

/** Columns to write in, under the headings of `prices.csv`. */
const BOXES = ['package', 'shelf price', 'sale price', 'sale ends', 'shop', 'day'] as const;

type Key = (typeof BOXES)[number] | 'item' | 'how' | 'look' | 'last' | 'none' | 'box';

const TERMS: TermTable<Key> = {
  en: {
    item: 'Item',
    package: 'Package',
    'shelf price': 'Shelf price',
    'sale price': 'Sale price',
    'sale ends': 'Sale ends',
    shop: 'Shop',
    day: 'Day',
    how: 'Write what the shelf says: the size of the package as printed on it, the usual price, and a sale price only when there is one, with its last day. One line for each shop. Leave out what is not there.',
    look: 'Look for {package}.',
    last: 'Last price: {date}.',
    none: 'No price yet.',
    box: '{column} of {item}',
  },
};

/** Every price that the lesson's directives stand on, each food once, in the order of the text. */
export function priceNeeds({ entries }: ComputedLesson): readonly PriceNeed[] {
  const all = entries.flatMap(({ computed }) => computed?.facts.prices ?? []);
  return all.filter((need, i) => all.findIndex(({ food }) => food.id === need.food.id) === i);
}

/**
 * The form: a row for each price with the package to look for and the day of the last price. The last sum is left
 * out on purpose, because who knows it reads the shelf less carefully.
 */
export function priceFormBlocks(needs: readonly PriceNeed[], language: string): readonly Block[] {
  const say = sayFrom(TERMS, language);
  const text = (words: string): Cell => ({ inlines: [{ text: words }] });
  return [
    { kind: 'paragraph', inlines: [{ text: say('how') }] },
    {
      kind: 'table',
      head: [text(say('item')), ...BOXES.map((box) => text(say(box)))],
      rows: needs.map((need) => [
        itemCell(need, say, language),
        ...BOXES.map((box) => boxCell(need, box, say)),
      ]),
      rowHeads: true,
    },
  ];
}

function itemCell({ food, packageWords, last }: PriceNeed, say: Say<Key>, language: string): Cell {
  const name = food.name.charAt(0).toLocaleUpperCase(language) + food.name.slice(1);
  const look = packageWords === undefined ? [] : [say('look', { package: packageWords })];
  const before = last === undefined ? say('none') : say('last', { date: formatDate(last, language) });
  const lines = [...look, before].map((text) => ({ text, breakBefore: true }));
  return { inlines: [{ text: name, strong: true }, ...lines] };
}

function boxCell({ food }: PriceNeed, box: (typeof BOXES)[number], say: Say<Key>): Cell {
  return { inlines: [], field: { label: say('box', { column: say(box), item: food.name }), narrow: true } };
}

/** The same form as rows for `prices.csv`: type what was written into the blanks, then move the rows over. */
export function priceFormRows(needs: readonly PriceNeed[]): string {
  const quoted = (cell: string) => (/[",]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
  const rows = needs.map(({ food, packageWords = '' }) =>
    PRICE_HEADINGS.map((heading) =>
      heading === 'item' ? food.name : heading === 'package' ? packageWords : '',
    )
      .map(quoted)
      .join(','),
  );
  return `${[PRICE_HEADINGS.join(','), ...rows].join('\n')}\n`;
}
