import { type Refusal, refuse } from './result.js';

/** Counts outside these ends are slips of the pen, not food. */
export const SMALLEST_COUNT = 0.001;
export const LARGEST_COUNT = 100_000;

/** What stands at the start of a text: a number above zero, none, or one that cannot be used. */
export type NumberReading =
  | { readonly kind: 'number'; readonly value: number; readonly length: number }
  | { readonly kind: 'none' }
  | { readonly kind: 'wrong'; readonly refusal: Refusal };

const SIGNS: Readonly<Record<string, readonly [number, number]>> = {
  '½': [1, 2],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '¼': [1, 4],
  '¾': [3, 4],
  '⅕': [1, 5],
  '⅖': [2, 5],
  '⅗': [3, 5],
  '⅘': [4, 5],
  '⅙': [1, 6],
  '⅚': [5, 6],
  '⅐': [1, 7],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
  '⅑': [1, 9],
  '⅒': [1, 10],
};
const SIGN = `[${Object.keys(SIGNS).join('')}]`;
const START = new RegExp(`^(?:[.]?[0-9]|${SIGN})`);
const MIXED_SIGN = new RegExp(`^([0-9]+)\\s*(${SIGN})`);
const MIXED = /^([0-9]+)(?:\s+|\s*-\s*)([0-9]+)\s*[/⁄]\s*([0-9]+)/;
const FRACTION = /^([0-9]+)\s*[/⁄]\s*([0-9]+)/;
const DECIMAL = /^(?:[0-9]+(?:[.][0-9]+)?|[.][0-9]+)/;
const MORE = new RegExp(`^\\s*(?:[x×*]\\s*)?(?:[.]?[0-9]|${SIGN})`);
const SPAN = new RegExp(`^\\s*(?:[-–—]|to\\s|or\\s)\\s*(?:[.]?[0-9]|${SIGN})`);

/**
 * Reads the number at the start of a text the way recipes write it: `2`, `1.5`, `1/2`, `1 1/2`, `1-1/2`,
 * `½`, `1½`. A number that belongs to a name (`2% milk`, `7-grain bread`) is none. Zero, less than zero,
 * spans, decimal commas, division by zero, and counts outside `SMALLEST_COUNT` to `LARGEST_COUNT` are wrong.
 */
export function readNumber(text: string): NumberReading {
  const early = wrongStart(text);
  if (early !== null) return early;
  if (!START.test(text)) return { kind: 'none' };
  const found = token(text);
  if (!('value' in found)) return found;
  const after = text.slice(found.length);
  if (/^(?:\s*%|-\p{L})/u.test(after)) return { kind: 'none' };
  if (SPAN.test(after)) {
    return wrong('This is a span of amounts.', 'Write one amount, so that its numbers can be worked out.');
  }
  if (/^[.,:/⁄]/.test(after)) {
    return wrong(
      `"${text.slice(0, found.length + 1)}" is not a number.`,
      'Write 2, 1.5, 1/2 or 1 1/2, then the unit.',
    );
  }
  if (MORE.test(after)) {
    return wrong(
      'There are two numbers in a row.',
      'Write one amount; the size of a can goes in brackets: 1 can (15 oz).',
    );
  }
  if (found.value === 0) {
    return wrong('An amount of zero is no amount.', 'Leave the row out, or write how much.');
  }
  if (!(found.value <= LARGEST_COUNT)) {
    return wrong('The amount is too large to be food.', `Write at most ${LARGEST_COUNT}, or a larger unit.`);
  }
  if (found.value < SMALLEST_COUNT) {
    return wrong(
      'The amount is too small to be food.',
      `Write at least ${SMALLEST_COUNT}, or a smaller unit.`,
    );
  }
  return { kind: 'number', value: found.value, length: found.length };
}

function wrongStart(text: string): NumberReading | null {
  if (/^[-−–—]\s*(?:[.]?[0-9]|[¼-¾⅐-⅞])/.test(text)) {
    return wrong('An amount cannot be less than zero.', 'Write the amount without the minus sign.');
  }
  const thousands = /^([0-9]{1,3})((?:,[0-9]{3})+)(?![0-9,])/.exec(text);
  if (thousands !== null) {
    const plain = thousands[0].replaceAll(',', '');
    return wrong(
      `A comma in "${thousands[0]}" can be read two ways.`,
      `Write ${plain}, or ${thousands[0].replace(',', '.')} if that was meant.`,
    );
  }
  const comma = /^[0-9]*,[0-9]+/.exec(text);
  if (comma !== null) {
    return wrong(
      `A comma stands in the number "${comma[0]}".`,
      `Write it with a point: ${comma[0].replace(',', '.')}.`,
    );
  }
  if (/^(?![0-9])\p{Nd}/u.test(text)) {
    return wrong('These digits are not read in an amount.', 'Write amounts with the digits 0 to 9.');
  }
  if (/^\p{No}/u.test(text) && !START.test(text)) {
    return wrong(`"${[...text][0]}" is not read as a number.`, 'Write 2, 1.5, 1/2 or 1 1/2.');
  }
  return null;
}

function token(text: string): NumberReading | { readonly value: number; readonly length: number } {
  const mixed = MIXED.exec(text);
  if (mixed !== null) return fraction(mixed[0].length, mixed[1], mixed[2], mixed[3]);
  const plain = FRACTION.exec(text);
  if (plain !== null) return fraction(plain[0].length, undefined, plain[1], plain[2]);
  const signed = MIXED_SIGN.exec(text);
  const [up, down] = SIGNS[signed?.[2] ?? text.slice(0, 1)] ?? [0, 0];
  if (down > 0) return { value: Number(signed?.[1] ?? 0) + up / down, length: signed?.[0].length ?? 1 };
  const length = text.length - text.replace(DECIMAL, '').length;
  return { value: Number(text.slice(0, length)), length };
}

function fraction(
  length: number,
  whole: string | undefined,
  up: string | undefined,
  down: string | undefined,
): NumberReading | { readonly value: number; readonly length: number } {
  const bottom = Number(down);
  if (bottom === 0) return wrong('A fraction cannot be divided by zero.', 'Write a fraction such as 1/2.');
  const part = Number(up) / bottom;
  if (whole !== undefined && part >= 1) {
    return wrong(
      `The fraction in "${whole} ${up}/${down}" is not less than one.`,
      'Write a whole number and a small fraction, such as 1 1/2.',
    );
  }
  return { value: Number(whole ?? 0) + part, length };
}

function wrong(reason: string, hint: string): NumberReading {
  return { kind: 'wrong', refusal: refuse(reason, hint) };
}
