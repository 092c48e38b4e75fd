import { formatMoney, isMoney } from './money.js';
import { POLICIES, type Policy } from './policy.js';
import { isSpoken } from './tags.js';
import { fillSlots } from './terms.js';

const NBSP = '\u00a0';

/** A number as computed: not rounded, perhaps a range, perhaps not known. */
export interface Unrounded {
  readonly value: number | null;
  readonly low?: number;
  readonly high?: number;
  readonly atLeast?: boolean;
  readonly unit: string;
  /** So many decimals at most, in place of two figures: for what is counted, clocked or paid, and for ratios. */
  readonly decimals?: number;
  /** Rounded this way only: a limit that rounding must not loosen. */
  readonly rounds?: 'up' | 'down';
}

function policyOf(language: string): Policy {
  if (!isSpoken(language)) throw new Error(`The program has no number policy for ${language}.`);
  return POLICIES[language];
}

/**
 * The step to which a value is rounded when shown: two significant figures, and never finer than a
 * whole unit. 15.4 g → 1, 640 mg → 10, 2,345 mg → 100. House rule, so that no page shows more
 * precision than food tables have.
 */
export function displayStep(value: number): number {
  const size = Math.abs(value);
  return size < 100 ? 1 : 10 ** (Math.floor(Math.log10(size)) - 1);
}

/** Rounds half away from zero to a step; the small nudge keeps 2.675-like products from falling short. */
export function roundToStep(value: number, step: number): number {
  const rounded = Math.sign(value) * Math.round((Math.abs(value) / step) * (1 + Number.EPSILON * 4)) * step;
  return Object.is(rounded, -0) ? 0 : rounded;
}

/** Digits with the language's own grouping and decimal mark. The value is already rounded. */
export function formatDigits(value: number, language: string): string {
  const policy = policyOf(language);
  const [whole = '0', part] = Math.abs(value).toString().split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, policy.group);
  return `${value < 0 ? '\u2212' : ''}${grouped}${part ? policy.decimal + part : ''}`;
}

/**
 * A computed number as pages print it: rounded here and nowhere else, ranges outward, unknown in
 * words. Number and unit never part at a line's end.
 */
export function formatQuantity(quantity: Unrounded, language: string): string {
  const policy = policyOf(language);
  if (quantity.low !== undefined && quantity.high !== undefined) {
    const [low, high] = outward(quantity.low, quantity.high, quantity.decimals);
    if (low === high) return withUnit(low, quantity.unit, language);
    const words = fillSlots(policy.range, {
      low: formatDigits(low, language),
      high: withUnit(high, quantity.unit, language),
    });
    return words.replaceAll(' ', NBSP);
  }
  if (quantity.value === null) return policy.notKnown;
  if (isMoney(quantity.unit)) return formatMoney(quantity.value, quantity.unit, policy);
  const { value, decimals } = quantity;
  const poured = KITCHEN_UNITS.has(quantity.unit) ? kitchenFraction(value) : undefined;
  if (poured !== undefined) return pouredWords(value, poured, quantity.unit, language);
  if (decimals === undefined && value > 0 && value < 0.5) {
    return fillSlots(policy.lessThan, { value: withUnit(1, quantity.unit, language) }).replaceAll(' ', NBSP);
  }
  const rounded = exactly(roundedTo(value, stepOf(value, decimals), quantity.rounds), decimals);
  const shown = withUnit(rounded, quantity.unit, language);
  return quantity.atLeast ? fillSlots(policy.atLeast, { value: shown }).replaceAll(' ', NBSP) : shown;
}

/** Both ends of a range rounded away from each other, on the coarser end's step. */
export function outward(low: number, high: number, decimals?: number): readonly [number, number] {
  const step = stepOf(high, decimals);
  const slack = 1e-9;
  const ends = [Math.floor(low / step + slack) * step, Math.ceil(high / step - slack) * step] as const;
  return [exactly(ends[0], decimals), exactly(ends[1], decimals)];
}

/** The nearest step, or the next one that way; noise in the last digits moves nothing. */
function roundedTo(value: number, step: number, rounds: Unrounded['rounds']): number {
  if (rounds === undefined) return roundToStep(value, step);
  const slack = 1e-9;
  return (rounds === 'up' ? Math.ceil(value / step - slack) : Math.floor(value / step + slack)) * step;
}

/** Measures that come in halves, quarters and thirds, and are written so. */
const KITCHEN_UNITS: ReadonlySet<string> = new Set(['cup', 'tbsp', 'tsp']);
const FRACTIONS = [
  [1, 2],
  [1, 3],
  [2, 3],
  [1, 4],
  [3, 4],
  [1, 8],
] as const;

/** The part of a count beyond its whole, such as `1/2`, when measures come in it. */
function kitchenFraction(count: number): string | undefined {
  const part = count - Math.floor(count);
  const found = FRACTIONS.find(([top, bottom]) => Math.abs(part - top / bottom) < 1e-6);
  return count > 0 && found ? `${found[0]}/${found[1]}` : undefined;
}

/** `1/2 cup`, `1 1/2 cups`. */
function pouredWords(count: number, fraction: string, unit: string, language: string): string {
  const whole = Math.floor(count);
  const digits = whole === 0 ? fraction : `${formatDigits(whole, language)}${NBSP}${fraction}`;
  return `${digits}${NBSP}${unitWord(Math.max(1, count), unit, language)}`;
}

function stepOf(value: number, decimals: number | undefined): number {
  return decimals === undefined ? displayStep(value) : 10 ** -decimals;
}

/** Without the noise that a multiple of a decimal step has in its last digits. */
function exactly(value: number, decimals = 0): number {
  return Number(value.toFixed(decimals));
}

/** One end of a range as printed without its unit, such as `270`. */
export function formatEnd(value: number, language: string): string {
  return formatDigits(value, language);
}

function withUnit(value: number, unit: string, language: string): string {
  const digits = formatDigits(value, language);
  if (unit === '') return digits;
  if (unit === '%') return `${digits}%`;
  return `${digits}${NBSP}${unitWord(value, unit, language)}`;
}

function unitWord(value: number, unit: string, language: string): string {
  const policy = policyOf(language);
  const word = policy.units[unit] ?? unit;
  return typeof word === 'string' ? word : word[policy.plural(value)];
}

/**
 * An ISO day (`2027-03-01`), month (`2027-03`) or year with the month in words; its parts never part at a
 * line's end.
 */
export function formatDate(iso: string, language: string): string {
  const policy = policyOf(language);
  const match = /^(\d{4})(?:-(\d{2})(?:-(\d{2}))?)?$/.exec(iso);
  const month = policy.months[Number(match?.[2]) - 1];
  if (!match?.[1] || (match[2] !== undefined && !month)) throw new Error(`${iso} is no date.`);
  const year = match[1];
  if (month === undefined) return year;
  const words =
    match[3] === undefined
      ? fillSlots(policy.month, { month, year })
      : fillSlots(policy.date, { day: Number(match[3]), month, year });
  return words.replaceAll(' ', NBSP);
}

/** Words in a row: "a", "a and b", "a, b, and c". */
export function formatList(items: readonly string[], language: string): string {
  const { list } = policyOf(language);
  const [first = '', second] = items;
  if (items.length <= 1) return first;
  if (items.length === 2) return fillSlots(list.two, { a: first, b: second ?? '' });
  const head = items.slice(0, -1).reduce((a, b) => fillSlots(list.middle, { a, b }));
  return fillSlots(list.last, { a: head, b: items.at(-1) ?? '' });
}
