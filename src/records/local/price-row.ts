import { nearest, type Place, type Report } from '../../diagnostics/index.js';
import {
  type Currency,
  type Food,
  gramsOf,
  PRICE_SHELF_LIFE,
  type Price,
  type Refusal,
  readPrice,
} from '../../nutrition/index.js';
import { type Foods, isFood } from '../foods.js';
import type { Cell } from '../table.js';
import { isDay } from './calendar.js';
import { localProblem } from './codes.js';
import type { LocalPlace } from './site.js';

/** What one shop asks for one package of a food. */
export interface LocalPrice {
  readonly food: Food;
  /** The package as written, such as `2 lb`. */
  readonly packageWords: string;
  readonly shelf: Price;
  /** Somebody's luck on a day: never mixed with the shelf price. */
  readonly sale?: { readonly price: Price; readonly ends?: string };
  readonly shop: LocalPlace;
  /** How many days after its day it may be printed. */
  readonly keepDays: number;
  readonly source: string;
  readonly place: Place;
}

interface RowContext {
  readonly currency: Currency;
  readonly shops: readonly LocalPlace[];
  readonly foods: Foods;
}

/** Cents for 100 g of food, below and above which a price is a slip. House rule. */
const CENTS_PER_100_GRAMS = { least: 1, most: 2000 } as const;
const SYMBOLS: Readonly<Record<string, readonly Currency[]>> = {
  $: ['USD', 'CAD', 'AUD', 'NZD', 'MXN'],
  '¢': ['USD', 'CAD', 'AUD', 'NZD', 'MXN', 'EUR'],
  '£': ['GBP'],
  '€': ['EUR'],
};

/** Reads one row. What is wrong is reported at its cell, all of it, and then there is no price. */
export function readPriceRow(
  cell: (heading: string) => Cell,
  { currency, shops, foods }: RowContext,
  before: readonly LocalPrice[],
  report: Report,
): LocalPrice | undefined {
  let sound = true;
  const wrong = (at: Cell, message: string, hint: string, expected: readonly string[] = []) => {
    sound = false;
    report.add(
      localProblem('local/price', message, {
        place: at.place,
        hint,
        actual: at.text,
        ...(expected.length > 0 ? { expected } : {}),
      }),
    );
  };
  const refused = (at: Cell, { reason, hint = '' }: Refusal) => wrong(at, reason, hint);
  const [item, size, shopId, day] = [cell('item'), cell('package'), cell('shop'), cell('day')] as const;
  const [shelfCell, saleCell, endsCell, keepCell] = [
    cell('shelf price'),
    cell('sale price'),
    cell('sale ends'),
    cell('keep days'),
  ] as const;
  const source = cell('source');
  const needed = { item, package: size, 'shelf price': shelfCell, shop: shopId, day, source };
  for (const [name, at] of Object.entries(needed))
    if (at.text === '')
      wrong(at, `The price has no ${name}.`, 'Write it as the form has it, or take the row out.');

  const found = item.text === '' ? undefined : foods.find(item.text);
  const food = found && isFood(found) ? found : undefined;
  if (found && !isFood(found))
    wrong(
      item,
      `There is no "${item.text}" in the food tables.`,
      found.near.length > 0
        ? `Did you mean ${found.near.join(' or ')}?`
        : 'Name the food as lessons do, or add it to foods.yaml.',
      found.near,
    );
  const shop = shops.find(({ id }) => id === shopId.text);
  if (!shop && shopId.text !== '') {
    const ids = shops.map(({ id }) => id);
    const near = nearest(shopId.text, ids);
    const offered = near.length > 0 ? near : ids;
    wrong(
      shopId,
      `The site has no place "${shopId.text}".`,
      offered.length > 0
        ? `Write an id of site.yaml: ${offered.join(', ')}.`
        : 'Add the shop to site.yaml first.',
      offered,
    );
  }
  const currencyOf = (at: Cell) => {
    const symbol = /[$¢£€]/.exec(at.text)?.[0];
    if (symbol !== undefined && !SYMBOLS[symbol]?.includes(currency))
      wrong(
        at,
        `The site's prices are in ${currency}, and this one is in ${symbol}.`,
        'Write the sum alone, such as 2.49.',
      );
  };
  const money = (at: Cell, kind: Price['kind']): Price | undefined => {
    currencyOf(at);
    const others = { food: item.text || '?', size: size.text || '1 g', shop: shop?.name ?? '?' };
    const read = readPrice(
      { ...others, price: at.text, kind, dated: isDay(day.text) ? day.text : '2000-01-01' },
      currency,
    );
    if (read.ok) return read.value;
    // A size that cannot be read is told once, at its own cell.
    const atSize = readPrice({ ...others, price: '1.00', kind, dated: '2000-01-01' }, currency);
    if (atSize.ok) refused(at, read);
    else if (kind === 'shelf') refused(size, atSize);
    else sound = false;
    return undefined;
  };
  if (day.text !== '' && !isDay(day.text))
    wrong(day, `"${day.text}" is no day.`, 'Write a date such as 2027-01-20.');
  const shelf = shelfCell.text === '' ? undefined : money(shelfCell, 'shelf');
  const sale = saleCell.text === '' ? undefined : money(saleCell, 'sale');
  if (food && shelf) {
    const weighed = gramsOf(shelf.size, food);
    if (!weighed.ok) refused(size, weighed);
    else
      for (const [at, price] of [
        [shelfCell, shelf],
        [saleCell, sale],
      ] as const) {
        const per100 = price ? (price.money.cents / weighed.value.grams.value) * 100 : 100;
        const { least, most } = CENTS_PER_100_GRAMS;
        if (per100 < least || per100 > most)
          wrong(
            at,
            `${at.text} for ${size.text} of ${food.name} is out of reason.`,
            'Look at the point, and at the size of the package.',
          );
      }
  }
  if (shelf && sale && sale.money.cents >= shelf.money.cents)
    wrong(
      saleCell,
      `The sale price ${saleCell.text} is not below the shelf price ${shelfCell.text}.`,
      'Leave it blank when nothing is on sale.',
    );
  if (endsCell.text !== '') {
    if (saleCell.text === '')
      wrong(
        endsCell,
        'A sale ends here, and there is no sale price.',
        'Write the sale price, or leave both blank.',
      );
    else if (!isDay(endsCell.text))
      wrong(endsCell, `"${endsCell.text}" is no day.`, 'Write a date such as 2027-01-20.');
    else if (isDay(day.text) && endsCell.text < day.text)
      wrong(
        endsCell,
        `The sale ends on ${endsCell.text}, before the price was read.`,
        'Correct one of the two days.',
      );
  }
  const keepDays = keepCell.text === '' ? PRICE_SHELF_LIFE : Number(keepCell.text);
  if (!(/^\d{0,3}$/.test(keepCell.text) && keepDays >= 1 && keepDays <= 365))
    wrong(
      keepCell,
      `"${keepCell.text}" is no shelf life.`,
      `Write whole days from 1 to 365; blank means ${PRICE_SHELF_LIFE}.`,
    );
  if (!sound || !food || !shop || !shelf) return undefined;
  const twice = before.find(
    (one) =>
      one.food.id === food.id &&
      one.shop.id === shop.id &&
      one.packageWords === size.text &&
      one.shelf.dated === shelf.dated,
  );
  if (twice) {
    wrong(item, `This price stands in line ${twice.place.line} already.`, 'Keep one of the two.');
    return undefined;
  }
  const ends = endsCell.text === '' ? {} : { ends: endsCell.text };
  return {
    food,
    packageWords: size.text,
    shelf: { ...shelf, food: food.name },
    ...(sale ? { sale: { price: { ...sale, food: food.name }, ...ends } } : {}),
    shop,
    keepDays,
    source: source.text,
    place: item.place,
  };
}
