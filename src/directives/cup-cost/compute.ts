import { kebab } from '../../document/index.js';
import {
  type Cost,
  costLadder,
  costOf,
  type Food,
  gramsOf,
  type PlateYield,
  type Portion,
  platedAs,
  portionsIn,
} from '../../nutrition/index.js';
import type { ComputeContext, Computed, ComputedNumber, PriceNeed } from '../contract.js';
import { readProblem } from '../problems.js';
import { brickNumber, brickWorth, exampleNumbers, markNumbers } from './compute-bricks.js';
import type { CupPrice, CupRow, PriceState, Values } from './schema.js';

/** One rung: the cost of a cup and the ids of its numbers, without words. */
export interface Rung {
  readonly row: CupRow;
  readonly state: PriceState;
  /** Cents for one cup, unrounded; `null` where no price may be printed. */
  readonly cost: number | null;
  readonly name: string;
  readonly estimated: boolean;
  /** The last day of a sale, `''` when the shop does not say; missing when nothing is on sale. */
  readonly saleEnds?: string;
}

export interface CupCostResult extends Computed {
  /** In the order in which they are read. */
  readonly rungs: readonly Rung[];
  readonly worth: number;
  readonly marks: readonly { readonly at: number; readonly number: string }[];
  /** Shop and day of the first rung's price; the others are told where they differ. */
  readonly main?: { readonly shop: string; readonly day: string };
}

interface Counted {
  readonly rung: Rung;
  readonly numbers: readonly ComputedNumber[];
  readonly cost?: Cost;
}

/** Cost of a cup = price ÷ weight bought × weight of the cup ÷ yield. Old prices give no cents, and neither do missing ones. */
export function compute(values: Values, { report }: ComputeContext): CupCostResult | undefined {
  const { id, currency } = values;
  const counted: Counted[] = [];
  for (const row of values.rows) {
    const one = count(row, values);
    if ('reason' in one) report.add(readProblem('directives/amount', one, row.place));
    else counted.push(one);
  }
  if (counted.length < values.rows.length) return undefined;
  const costs = counted.flatMap(({ cost }) => cost ?? []);
  const ladder = costs.length > 0 ? costLadder(costs) : undefined;
  if (ladder && !ladder.ok) {
    report.add(readProblem('directives/prices', ladder, values.place));
    return undefined;
  }
  const ordered = values.sort === 'cost' ? byCost(counted) : counted;
  const rungs = ordered.map(({ rung }) => rung);
  const worth = brickWorth(costs.map(({ value }) => value));
  const highest = Math.max(0, ...costs.map(({ value }) => value));
  const marks = markNumbers(id, worth, highest, currency);
  const fresh = rungs.filter(({ state }) => state === 'fresh');
  const first = fresh[0]?.row.price;
  const main = first && { shop: first.shop.name, day: first.shelf.dated };
  return {
    numbers: [
      ...ordered.flatMap(({ numbers }) => numbers),
      ...ordered.flatMap(({ rung }) => bricksNumber(values, rung, worth)),
      brickNumber(id, worth, currency),
      ...marks.map(({ number }) => number),
      ...exampleNumbers(
        id,
        currency,
        costs.map(({ value }) => value),
      ),
    ],
    facts: {
      foods: rungs.map(({ row }) => ({ food: row.plated.eaten, place: row.place })),
      nutrients: [],
      basis: '1 cup',
      settings: {
        price: [...(first ? ['today'] : []), ...(rungs.some(({ state }) => state === 'old') ? ['old'] : [])],
      },
      ...(main ? { slots: { shop: main.shop, date: { day: main.day } } } : {}),
      prices: values.rows.map(needOf),
    },
    rungs,
    worth,
    marks: marks.map(({ at, number }) => ({ at, number: number.id })),
    ...(main ? { main } : {}),
  };
}

/** Cheapest first; what has no price comes last, old ones before missing ones. */
function byCost(counted: readonly Counted[]): readonly Counted[] {
  const rank = ({ rung }: Counted) => (rung.state === 'fresh' ? 0 : rung.state === 'old' ? 1 : 2);
  return counted.toSorted((a, b) => rank(a) - rank(b) || (a.rung.cost ?? 0) - (b.rung.cost ?? 0));
}

interface Refused {
  readonly reason: string;
}

function count(row: CupRow, values: Values): Counted | Refused {
  const { price, state } = row;
  const name = kebab(row.words);
  const at = `${values.id}.${name}`;
  const known = { row, state, name, cost: null, estimated: row.plated.estimated || row.cup.estimated };
  if (!price) return { rung: known, numbers: [unpriced(at, row, values)] };
  const bought = gramsOf(price.shelf.size, row.bought);
  // A counted egg or apple of the tables weighs what is eaten of it; a weight on the scale counts the shell.
  const plated = platedAs(row.bought, row.plated.eaten, price.shelf.size.unit !== null);
  if (!bought.ok) return bought;
  if (!plated.ok) return plated;
  const { yields } = plated.value;
  const cups = portionsIn({ bought: bought.value, eaten: row.cup, yields });
  if (!cups.ok) return cups;
  const estimated = plated.value.estimated || row.cup.estimated || bought.value.estimated;
  const about = { sources: sourcesOf(row), food: { id: row.plated.eaten.id, ...row.plated.eaten.record } };
  const cupsNumber: ComputedNumber = {
    id: `${at}.cups`,
    value: cups.value.value,
    unit: 'cup',
    decimals: 2,
    ...cups.value.working,
    ...about,
    what: `cups of ${row.plated.eaten.name} from ${price.packageWords} of ${row.bought.name}`,
  };
  if (state === 'old')
    return { rung: { ...known, estimated }, numbers: [unpriced(at, row, values), cupsNumber] };
  const cost = costOf({ price: price.shelf, bought: bought.value, eaten: row.cup, yields });
  if (!cost.ok) return cost;
  const sale = saleOf(row, values.on) && saleCost(row, bought.value, yields);
  const unit = `${values.currency} cents`;
  const numbers: ComputedNumber[] = [
    {
      id: `${at}.cost`,
      value: cost.value.value,
      unit,
      ...cost.value.working,
      ...about,
      what: `cost of one cup of ${row.plated.eaten.name}, shelf price`,
    },
    priceNumber(at, price, unit),
    cupsNumber,
    ...(sale
      ? [
          {
            id: `${at}.sale`,
            value: sale.value,
            unit,
            ...sale.working,
            ...about,
            what: `cost of one cup of ${row.plated.eaten.name}, on sale`,
          },
        ]
      : []),
  ];
  const ends = sale ? { saleEnds: price.sale?.ends ?? '' } : {};
  return { rung: { ...known, cost: cost.value.value, estimated, ...ends }, numbers, cost: cost.value };
}

/** The sale price, while the sale lasts. */
function saleOf({ price }: CupRow, on: string): CupPrice['sale'] {
  const sale = price?.sale;
  return sale && (sale.ends === undefined || sale.ends >= on) ? sale : undefined;
}

function saleCost({ price, cup }: CupRow, bought: Portion, yields: readonly PlateYield[]): Cost | undefined {
  if (!price?.sale) return undefined;
  const cost = costOf({ price: price.sale.price, bought, eaten: cup, yields });
  return cost.ok ? cost.value : undefined;
}

function priceNumber(at: string, { shelf, packageWords, food }: CupPrice, unit: string): ComputedNumber {
  const source = `${shelf.shop}, ${shelf.dated}`;
  return {
    id: `${at}.price`,
    value: shelf.money.cents,
    unit,
    formula: 'price',
    inputs: [{ name: 'price', value: shelf.money.cents, unit: 'cents', source, note: 'shelf price' }],
    sources: [],
    what: `shelf price of ${packageWords} of ${food.name}`,
  };
}

/** The cost where no price may be printed: not known, and never zero. */
function unpriced(at: string, row: CupRow, { currency }: Values): ComputedNumber {
  const source = row.price ? `${row.price.shelf.shop}, ${row.price.shelf.dated}` : 'house';
  const note = row.price ? 'too old to print' : 'nobody wrote one down';
  return {
    id: `${at}.cost`,
    value: null,
    unit: `${currency} cents`,
    formula: 'price / cups',
    inputs: [
      { name: 'price', value: null, unit: 'cents', source, note },
      { name: 'cups', value: null, unit: 'cup', source: 'house' },
    ],
    sources: [],
    what: `cost of one cup of ${row.plated.eaten.name}`,
  };
}

function bricksNumber({ id }: Values, { row, name, cost }: Rung, worth: number): ComputedNumber[] {
  if (cost === null) return [];
  return [
    {
      id: `${id}.${name}.bricks`,
      value: cost / worth,
      unit: 'brick',
      formula: 'cost / brick',
      inputs: [
        {
          name: 'cost',
          value: cost,
          unit: 'cents',
          source: 'house',
          note: `as ${id}.${name}.cost works it out`,
        },
        { name: 'brick', value: worth, unit: 'cents', source: 'house' },
      ],
      sources: sourcesOf(row),
      what: `cost of one cup of ${row.plated.eaten.name}, counted in bricks`,
    },
  ];
}

function sourcesOf({ bought, plated: { eaten }, cup }: CupRow): string[] {
  const measure = eaten.measures.find(({ name }) => name === cup.measure);
  const published = measure && measure.estimated !== true ? [measure.source] : [];
  return [...new Set([bought.record.source, eaten.record.source, ...published])];
}

function needOf({ bought, price, state }: CupRow): PriceNeed {
  const food: Food = bought;
  return {
    food,
    fresh: state === 'fresh',
    ...(price ? { packageWords: price.packageWords, last: price.shelf.dated } : {}),
  };
}
