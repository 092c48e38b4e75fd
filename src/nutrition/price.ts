import { freshnessOn, isDay, PRICE_SHELF_LIFE } from './days.js';
import { type Currency, type Money, readMoney } from './money.js';
import { inWords, ok, type Result, refuse } from './result.js';
import { parseAmount, type WrittenAmount, writeAmount } from './written-amount.js';

/** A shelf price holds until it is changed; a sale price is somebody's luck on a day. They are never mixed. */
export const PRICE_KINDS = ['shelf', 'sale'] as const;
export type PriceKind = (typeof PRICE_KINDS)[number];

/** What one package of a food cost, in which shop, on which day. */
export interface Price {
  readonly food: string;
  readonly money: Money;
  /** What the package holds, such as `2 lb` or `1 can (15 oz)`. */
  readonly size: WrittenAmount;
  readonly kind: PriceKind;
  readonly shop: string;
  /** ISO day on which the price was read. */
  readonly dated: string;
}

/** A price as somebody wrote it down; each line of a price form. */
export interface WrittenPrice {
  readonly food: string;
  readonly price: string;
  readonly size: string;
  readonly kind: string;
  readonly shop: string;
  readonly dated: string;
}

/**
 * Reads a price. All six lines are needed, because a price without shop, day, size and the sale flag says nothing;
 * the refusal names those that are empty. Refused, too: a sum of zero, a size that is no amount, a kind other than
 * shelf or sale, and a date that is no day.
 */
export function readPrice(written: WrittenPrice, currency: Currency): Result<Price> {
  const empty = Object.entries(written).flatMap(([name, text]) => (text.trim() === '' ? [name] : []));
  if (empty.length > 0) {
    return refuse(
      `The price has no ${inWords(empty)}.`,
      'Write food, price, size, kind, shop and dated.',
      empty,
    );
  }
  const sum = readMoney(written.price, currency);
  if (!sum.ok) return sum;
  if (sum.value.cents === 0) return refuse('A price of zero is no price.', 'Leave the row out.');
  const size = parseAmount(written.size);
  if (!size.ok) return size;
  const { amount, rest } = size.value;
  if (amount === null || rest !== '') {
    return refuse(
      `"${written.size}" is not the size of a package.`,
      'Write one such as 2 lb or 1 can (15 oz).',
    );
  }
  const kind = PRICE_KINDS.find((one) => one === written.kind);
  if (kind === undefined)
    return refuse(`"${written.kind}" is no kind of price.`, 'Write shelf or sale.', PRICE_KINDS);
  if (!isDay(written.dated))
    return refuse(`"${written.dated}" is no day.`, 'Write a date such as 2027-01-20.');
  const { food, shop, dated } = written;
  return ok({ food: food.trim(), money: sum.value, size: amount, kind, shop: shop.trim(), dated });
}

/** A price that may be printed on a day. */
export interface FreshPrice {
  readonly price: Price;
  readonly until: string;
}

/**
 * The price, if it may still be printed as today's on that day; refused past its shelf life, so that nobody shows
 * cents: "ask for this week's price".
 */
export function priceOn(price: Price, on: string, shelfLife = PRICE_SHELF_LIFE): Result<FreshPrice> {
  const fresh = freshnessOn(price.dated, shelfLife, on);
  if (!fresh.ok) return fresh;
  if (!fresh.value.expired) return ok({ price, until: fresh.value.until });
  return refuse(
    `The price of ${writeAmount(price.size)} ${price.food} is ${fresh.value.age} days old.`,
    "Ask for this week's price.",
  );
}
