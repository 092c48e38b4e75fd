import type { Published } from './published.js';
import type { Quantity } from './quantity.js';
import type { Reckoned } from './reckoned.js';
import { ok, type Result, refuse } from './result.js';
import { roundTo } from './rounding.js';
import { input, substitute, type Worked } from './working.js';

/** Grams of carbohydrate in one choice. Common practice of diabetes teaching; from memory. */
export const CHOICE_GRAMS = 15;

/** Carbohydrate choices: `carbohydrate / 15`, unrounded. Not known stays not known. */
export function carbohydrateChoices(carbohydrate: Worked<'g'>): Reckoned<'choices'> {
  const { value } = carbohydrate.quantity;
  return {
    value: value === null ? null : value / CHOICE_GRAMS,
    unit: 'choices',
    working: substitute(
      {
        formula: 'carbohydrate / choice',
        inputs: [
          input('carbohydrate', null, '', ''),
          input('choice', CHOICE_GRAMS, 'g per choice', 'common practice', 'from memory'),
        ],
      },
      'carbohydrate',
      carbohydrate.working,
    ),
  };
}

/**
 * Choices as they are shown, in halves, by the bands in use: up to 5 g none, 6 to 10 a half, 11 to 20 one, 21 to 25
 * one and a half, 26 to 35 two, and so on by 15 g. Grams are first taken to whole ones. Common practice, from memory.
 * `null` for what is not known in full. Refuses less than zero.
 */
export function shownChoices(carbohydrate: Quantity<'g'>): Result<number | null> {
  const { value, atLeast } = carbohydrate;
  if (value === null || atLeast) return ok(null);
  if (value < 0) return refuse('Carbohydrate cannot be less than zero.', 'Write the grams.');
  const grams = roundTo(value, 1);
  const whole = Math.floor((grams + 4) / CHOICE_GRAMS);
  const within = grams + 4 - whole * CHOICE_GRAMS;
  return ok(within >= 10 ? whole + 0.5 : whole);
}

/** What one exchange of a list stands for, in g and kcal. Fat of a list may be a span. */
export interface ExchangeList extends Published {
  readonly carbohydrate: number;
  readonly protein: number;
  readonly fat: { readonly low: number; readonly high: number };
  readonly kcal: number;
}

const list = (
  carbohydrate: number,
  protein: number,
  low: number,
  high: number,
  kcal: number,
): ExchangeList => ({
  carbohydrate,
  protein,
  fat: { low, high },
  kcal,
  source: 'exchange lists for diabetes teaching, common practice',
  checked: 'memory',
});

/** Round average values of exchange lists; no food holds exactly these. From memory. */
export const EXCHANGE_LISTS = {
  starch: list(15, 3, 1, 1, 80),
  fruit: list(15, 0, 0, 0, 60),
  'fat-free milk': list(12, 8, 0, 3, 100),
  'non-starchy vegetable': list(5, 2, 0, 0, 25),
  'lean protein': list(0, 7, 2, 2, 45),
  fat: list(0, 0, 5, 5, 45),
} as const;
export type ExchangeName = keyof typeof EXCHANGE_LISTS;

/** What a number of exchanges add up to. */
export interface ExchangeTotal {
  readonly carbohydrate: number;
  readonly protein: number;
  readonly fat: { readonly low: number; readonly high: number };
  readonly kcal: number;
}

/** Sums exchanges of several lists. Refuses counts below zero and counts that are not numbers. */
export function sumExchanges(counts: Readonly<Partial<Record<ExchangeName, number>>>): Result<ExchangeTotal> {
  const rows = exchangeNames().map((name) => ({
    list: EXCHANGE_LISTS[name],
    name,
    count: counts[name] ?? 0,
  }));
  const wrong = rows.find(({ count }) => !(count >= 0 && Number.isFinite(count)));
  if (wrong !== undefined)
    return refuse(`${wrong.count} exchanges of ${wrong.name} are none.`, 'Write a count.');
  const total = (of: (one: ExchangeList) => number) =>
    rows.reduce((so, row) => so + of(row.list) * row.count, 0);
  return ok({
    carbohydrate: total((one) => one.carbohydrate),
    protein: total((one) => one.protein),
    fat: { low: total((one) => one.fat.low), high: total((one) => one.fat.high) },
    kcal: total((one) => one.kcal),
  });
}

function exchangeNames(): ExchangeName[] {
  return Object.keys(EXCHANGE_LISTS) as ExchangeName[];
}
