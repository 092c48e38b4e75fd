import { ok, type Result, refuse } from './result.js';
import { roundTo } from './rounding.js';

/**
 * Money. What is paid is a whole number of cents; what a share of it costs is an unrounded number of cents, which is
 * rounded once, when it is shown.
 */

/** The smallest coin of each currency, as a share of its unit. */
export const CURRENCIES = { USD: 100, CAD: 100, AUD: 100, NZD: 100, GBP: 100, EUR: 100, MXN: 100 } as const;
export type Currency = keyof typeof CURRENCIES;

/** A sum that is paid or owned. */
export interface Money {
  /** A whole number; below zero only for what is missing from a budget. */
  readonly cents: number;
  readonly currency: Currency;
}

/** The most that any one sum may be, in cents: more is a slip. */
export const MOST_CENTS = 10_000_000;

/** Makes a sum. Throws on cents that are not whole: a bug of ours, because prices are read by `readMoney`. */
export function money(cents: number, currency: Currency): Money {
  if (!Number.isSafeInteger(cents)) throw new RangeError(`${cents} cents is no sum.`);
  return { cents, currency };
}

/**
 * Reads a sum the way a shelf tag writes it: `4.66`, `4`, `$4.66`, `68¢`, `0.68`. Read digit by digit, never through
 * binary fractions. Refused: a comma, a minus sign, thousandths of a dollar, more than `MOST_CENTS`, and anything else.
 */
export function readMoney(text: string, currency: Currency): Result<Money> {
  const plain = text.trim();
  const wrong = (reason: string) => refuse(reason, 'Write a sum such as 4.66.');
  if (/^[-−]/.test(plain)) return wrong('A sum cannot be less than zero.');
  if (/,/.test(plain)) return wrong(`A comma stands in "${plain}".`);
  const cents = /^(\d{1,6})\s?¢$/.exec(plain);
  const whole = /^[$£€]?\s?(\d{1,9})(?:\.(\d+))?$/.exec(plain);
  if (cents === null && whole === null) return wrong(`"${plain}" is not a sum of money.`);
  if ((whole?.[2]?.length ?? 2) !== 2) return wrong(`"${plain}" does not have two digits after the point.`);
  const value =
    cents === null ? Number(whole?.[1]) * CURRENCIES[currency] + Number(whole?.[2] ?? 0) : Number(cents[1]);
  if (value > MOST_CENTS) return wrong(`"${plain}" is too large to be a price of food.`);
  return ok(money(value, currency));
}

/** The nearest whole cent to an unrounded cost; half a cent goes up. Done once, when the cost is shown. */
export function toCents(cost: number): number {
  return roundTo(cost, 1);
}

/** A sum in plain digits, such as `4.66`; where money is shown, the language's own form is used. */
export function writeMoney({ cents, currency }: Money): string {
  const size = CURRENCIES[currency];
  const sign = cents < 0 ? '-' : '';
  const whole = Math.floor(Math.abs(cents) / size);
  return `${sign}${whole}.${String(Math.abs(cents) % size).padStart(2, '0')}`;
}

/** The sum of money of one currency; nothing sums to zero. Throws on mixed currencies, which is a bug of ours. */
export function sumMoney(parts: readonly Money[], currency: Currency): Money {
  if (parts.some((part) => part.currency !== currency)) throw new Error('Two currencies cannot be added.');
  return money(
    parts.reduce((so, part) => so + part.cents, 0),
    currency,
  );
}
