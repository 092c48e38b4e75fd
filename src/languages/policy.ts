import type { Spoken } from './tags.js';

/** How a language writes numbers, ranges, lists and dates: our own data, never the platform's default. */
export interface Policy {
  readonly decimal: string;
  readonly group: string;
  /** Words for a range; signs would flip beside right-to-left text. */
  readonly range: string;
  readonly atLeast: string;
  readonly lessThan: string;
  readonly notKnown: string;
  /** Joins two, the middle and the last of a list. */
  readonly list: { readonly two: string; readonly middle: string; readonly last: string };
  /** Slots: {day} {month} {year}. Months are words, the calendar is Gregorian. */
  readonly date: string;
  /** A month of a year. Slots: {month} {year}. */
  readonly month: string;
  readonly months: readonly string[];
  /** Which plural form a count takes. */
  readonly plural: (count: number) => 'one' | 'other';
  /** How sums are written, by currency: below one unit as {coins}, from there as {units} with its {sign}. */
  readonly money: Readonly<
    Record<string, { readonly sign: string; readonly coins: string; readonly units: string }>
  >;
  /** Unit words after a number; a unit without an entry prints as it is. */
  readonly units: Readonly<Record<string, string | { readonly one: string; readonly other: string }>>;
}

const MONTHS_EN = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

export const POLICIES: Readonly<Record<Spoken, Policy>> = {
  en: {
    decimal: '.',
    group: ',',
    range: '{low} to {high}',
    atLeast: 'at least {value}',
    lessThan: 'less than {value}',
    notKnown: 'not known',
    list: { two: '{a} and {b}', middle: '{a}, {b}', last: '{a}, and {b}' },
    date: '{day} {month} {year}',
    month: '{month} {year}',
    months: MONTHS_EN,
    plural: (count) => (count === 1 ? 'one' : 'other'),
    money: {
      USD: { sign: '$', coins: '{coins}¢', units: '{sign}{units}' },
      GBP: { sign: '£', coins: '{coins}p', units: '{sign}{units}' },
    },
    units: {
      brick: { one: 'brick', other: 'bricks' },
      kcal: { one: 'calorie', other: 'calories' },
      cup: { one: 'cup', other: 'cups' },
      tbsp: { one: 'tablespoon', other: 'tablespoons' },
      tsp: { one: 'teaspoon', other: 'teaspoons' },
      s: { one: 'second', other: 'seconds' },
      h: { one: 'hour', other: 'hours' },
      days: { one: 'day', other: 'days' },
      min: { one: 'minute', other: 'minutes' },
      day: { one: 'day', other: 'days' },
      weeks: { one: 'week', other: 'weeks' },
      months: { one: 'month', other: 'months' },
      '%': '%',
    },
  },
};
