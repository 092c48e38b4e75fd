import type { Report } from '../../diagnostics/index.js';
import type { Currency, Food } from '../../nutrition/index.js';
import type { Foods } from '../foods.js';
import { createCsvReader } from '../import/csv.js';
import { localProblem } from './codes.js';
import { type LocalPrice, readPriceRow } from './price-row.js';
import type { LocalPlace, Site } from './site.js';

/** Where a site's prices stand, beside its `site.yaml`. */
export const LOCAL_PRICES_FILE = 'prices.csv';

/** The headings of the file and of the form on which prices are written down. */
export const PRICE_HEADINGS = [
  'item',
  'package',
  'shelf price',
  'sale price',
  'sale ends',
  'shop',
  'day',
  'keep days',
  'source',
] as const;

/** What a site's shops ask, each with its day. */
export interface LocalPrices {
  readonly site: string;
  readonly currency: Currency;
  /** The places of the site in its own order; a price stands at one of them. */
  readonly shops: readonly LocalPlace[];
  readonly all: readonly LocalPrice[];
  /** All prices of a food, the newest of each package in each shop first. */
  of(food: Food): readonly LocalPrice[];
}

/** Prices of no site. */
export const NO_PRICES: LocalPrices = { site: '', currency: 'USD', shops: [], all: [], of: () => [] };

/** Prices of a site that has none yet. */
export function noPricesAt(site: Pick<Site, 'id' | 'country' | 'places'>): LocalPrices {
  return { ...NO_PRICES, site: site.id, currency: site.country === 'uk' ? 'GBP' : 'USD', shops: site.places };
}

/**
 * Reads a site's `prices.csv`. Lines that begin with `#` are passed over. Reported at their cells and left out: a
 * food that is not in the tables, a package that cannot be weighed, a sum that is none, in another currency or out
 * of reason, a sale that saves nothing, a shop that the site does not have, a day that is none, and a price that
 * stands twice. A file that cannot be read gives no prices. How old a price is matters only where it is used.
 */
export function readPrices(
  text: string,
  file: string,
  site: Pick<Site, 'id' | 'country' | 'places'>,
  foods: Foods,
  report: Report,
): LocalPrices {
  const none = noPricesAt(site);
  const all: LocalPrice[] = [];
  const context = { currency: none.currency, shops: site.places, foods };
  const reader = createCsvReader(
    file,
    PRICE_HEADINGS,
    (row) => {
      const price = readPriceRow((heading) => row.cell(heading), context, all, report);
      if (price) all.push(price);
      return true;
    },
    inOurWords(report),
  );
  // What is said between rows keeps its line, so that places stay right.
  reader.push(text.replace(/^(\uFEFF?)#.*$/gm, '$1'));
  reader.end();
  const sorted = all.toSorted((a, b) =>
    a.shelf.dated < b.shelf.dated ? 1 : a.shelf.dated > b.shelf.dated ? -1 : 0,
  );
  return { ...none, all, of: (food) => sorted.filter((price) => price.food.id === food.id) };
}

/** The reader of downloads finds the same faults in our file, and asks for other cures. */
function inOurWords(report: Report): Report {
  return {
    problems: [],
    add: (found) =>
      report.add(
        localProblem('local/price', found.message, {
          ...(found.place ? { place: found.place } : {}),
          hint: `Headings: ${PRICE_HEADINGS.join(',')}. A cell that holds a comma stands in quotation marks: "pinto beans, dry".`,
        }),
      ),
  };
}
