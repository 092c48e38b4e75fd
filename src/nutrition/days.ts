import { ok, type Result, refuse } from './result.js';

/**
 * Days as ISO dates (`2027-01-20`), counted without a clock or a time zone. The day on which something is
 * asked is always an input.
 */

/** Whether a text is a day that the calendar has, from 1900 to 2199. */
export function isDay(text: string): boolean {
  return numberOf(text) !== null;
}

/** Days from one day to another; negative when the second is earlier. Refuses what is no day. */
export function daysBetween(from: string, to: string): Result<number> {
  const start = numberOf(from);
  const end = numberOf(to);
  if (start === null) return noDay(from);
  return end === null ? noDay(to) : ok(end - start);
}

/** The day a whole number of days later; earlier for a negative one. Refuses what is no day or falls outside the years. */
export function daysLater(day: string, count: number): Result<string> {
  const start = numberOf(day);
  if (start === null) return noDay(day);
  const later = Number.isInteger(count) && Math.abs(count) < 200_000 ? dayOf(start + count) : '';
  return numberOf(later) === null
    ? refuse(
        `${count} days after ${day} is no day of the years 1900 to 2199.`,
        'Write a whole number of days.',
      )
    : ok(later);
}

/** How old something dated is on a day, and for how long it may still be used. */
export interface Freshness {
  /** Whole days from its date. */
  readonly age: number;
  /** The last day on which it may be used. */
  readonly until: string;
  readonly expired: boolean;
  /** Days left, counting none on the last day; negative when it has expired. */
  readonly left: number;
}

/** How long a price may be printed as today's, in days. House rule. */
export const PRICE_SHELF_LIFE = 90;

/**
 * Whether something dated may still be used on a day: it is good through the day that lies `shelfLife` days after its
 * date, and expired from the next. Refuses what is no day, a date that lies after the day asked, and a shelf life that
 * is no whole number of days of one or more.
 */
export function freshnessOn(dated: string, shelfLife: number, on: string): Result<Freshness> {
  if (!Number.isInteger(shelfLife) || shelfLife < 1) {
    return refuse(`A shelf life of ${shelfLife} days is none.`, 'Write a whole number of days, such as 90.');
  }
  const age = daysBetween(dated, on);
  if (!age.ok) return age;
  if (age.value < 0)
    return refuse(`${dated} lies after ${on}.`, 'Correct the date, or the day that is asked.');
  const until = daysLater(dated, shelfLife);
  if (!until.ok) return until;
  return ok({
    age: age.value,
    until: until.value,
    expired: age.value > shelfLife,
    left: shelfLife - age.value,
  });
}

const MILLISECONDS = 86_400_000;

/** Days since 1970 in universal time, or `null` for what is no day of the years 1900 to 2199. */
function numberOf(text: string): number | null {
  if (!/^(?:19|20|21)\d\d-\d\d-\d\d$/.test(text)) return null;
  const number = Date.parse(`${text}T00:00:00Z`) / MILLISECONDS;
  return dayOf(number) === text ? number : null;
}

function dayOf(number: number): string {
  return Number.isFinite(number) ? new Date(number * MILLISECONDS).toISOString().slice(0, 10) : '';
}

function noDay(text: string) {
  return refuse(`"${text}" is no day.`, 'Write a date such as 2027-01-20.');
}
