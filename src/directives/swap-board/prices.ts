import { type Food, priceOn } from '../../nutrition/index.js';
import type { LocalPrice, LocalPrices } from '../../records/index.js';
import type { PricePair } from './schema.js';

/**
 * Both prices from the first place of the site that has a fresh one of each food; nothing where there is none, because
 * two shops or two seasons would tell more of themselves than of the foods.
 */
export function pairOf(old: Food, fresh: Food, prices: LocalPrices, on: string): PricePair | undefined {
  for (const { id } of prices.shops) {
    const [a, b] = [old, fresh].map((food) =>
      prices.of(food).find((price) => price.shop.id === id && isFresh(price, on)),
    );
    if (a && b) return { old: a, fresh: b };
  }
  return undefined;
}

function isFresh(price: LocalPrice, on: string): boolean {
  return price.shelf.dated <= on && priceOn(price.shelf, on, price.keepDays).ok;
}
