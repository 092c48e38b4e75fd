import { measureFor, readMeasure } from './measure-reading.js';
import { isPackage, NOT_UNITS, NUMBER_WORDS, SPELLED_UNITS } from './measure-words.js';
import type { Amount, MassUnit, VolumeUnit } from './quantity.js';
import { ok, type Refusal, type Result, refuse } from './result.js';
import { nearWords } from './spelling.js';
import { readNumber } from './written-number.js';

/** An amount as a recipe writes it. What it weighs depends on the food. */
export interface WrittenAmount {
  /** Above zero. */
  readonly count: number;
  /** Set for weights and volumes; then `measure` is the same word. */
  readonly unit: MassUnit | VolumeUnit | null;
  /** A unit or a household measure in the singular, such as `medium`; `null` for a bare count (`2 onions`). */
  readonly measure: string | null;
  /** What stands in brackets: the size of one package, or the whole weight beside a volume. */
  readonly size: Amount<MassUnit | VolumeUnit> | null;
}

/** An amount and the food after it. Without an amount, `rest` is the whole text. */
export interface AmountReading {
  readonly amount: WrittenAmount | null;
  /** What stands after the amount, without white space around it. */
  readonly rest: string;
  /** Where `rest` starts in the text, in UTF-16 units. */
  readonly length: number;
}

/**
 * Reads the amount at the start of a row such as `1 1/2 cups brown rice, cooked`, `3 oz salmon`,
 * `2 medium onions`, `1 can (15 oz) beans` or `1 (15 oz) can beans`. A row that starts with no number has
 * no amount. Refused, with what to write instead: what `readNumber` refuses, number words before a
 * measure, a misspelled unit, units that are not read, and brackets that hold no single size.
 */
export function parseAmount(text: string): Result<AmountReading> {
  const start = skipSpace(text, 0);
  const number = readNumber(text.slice(start));
  if (number.kind === 'wrong') return number.refusal;
  if (number.kind === 'none') {
    return numberInWords(text.slice(start)) ?? ok({ amount: null, rest: text.trim(), length: start });
  }
  const count = number.value;
  const numberEnd = start + number.length;
  const sizeFirst = sizeAt(text, numberEnd);
  if (sizeFirst !== null) return 'ok' in sizeFirst ? sizeFirst : sizeBeforePackage(text, count, sizeFirst);
  const from = skipSpace(text, numberEnd);
  const measure = readMeasure(text.slice(from));
  if (measure === null) {
    return (
      wordInPlaceOfUnit(text, numberEnd) ??
      reading(text, { count, unit: null, measure: null, size: null }, numberEnd)
    );
  }
  if ('ok' in measure) return measure;
  const end = from + measure.length;
  const size = sizeAt(text, end);
  if (size !== null && 'ok' in size) return size;
  const amount = { count, unit: measure.unit, measure: measure.measure, size: size?.amount ?? null };
  return reading(text, amount, size?.end ?? end);
}

/** The amount as an author would write it; reading it again gives the same amount. */
export function writeAmount(amount: WrittenAmount): string {
  const parts = [writeCount(amount.count)];
  if (amount.measure !== null) parts.push(measureFor(amount.count, amount.measure, amount.unit));
  if (amount.size !== null) parts.push(`(${writeCount(amount.size.value)} ${amount.size.unit})`);
  return parts.join(' ');
}

/** One of the measure, as food tables name it: `cup`, `large slice`, `can (15 oz)`. */
export function measureName(amount: WrittenAmount): string | null {
  if (amount.measure === null || amount.size === null || amount.unit !== null) return amount.measure;
  return `${amount.measure} (${writeCount(amount.size.value)} ${amount.size.unit})`;
}

/** A count with the fraction a kitchen would use, such as `1 1/2`; otherwise its decimals. */
export function writeCount(count: number): string {
  const whole = Math.floor(count);
  for (const bottom of [2, 3, 4, 5, 6, 8]) {
    for (let top = 1; top < bottom; top++) {
      if (whole + top / bottom === count) return `${whole === 0 ? '' : `${whole} `}${top}/${bottom}`;
    }
  }
  return String(count);
}

interface SizeReading {
  readonly amount: Amount<MassUnit | VolumeUnit>;
  readonly end: number;
}

/** A size in brackets at `from`, such as `(15 oz)`, `(15-oz)` or `(425 g each)`. Brackets without a digit are left alone. */
function sizeAt(text: string, from: number): SizeReading | Refusal | null {
  const brackets = /^\s*\(([^()]*)\)/.exec(text.slice(from, from + 200));
  if (brackets === null) return null;
  const inside = brackets[0].trim().slice(1, -1).trim();
  if (!/^[.,\-−]?[0-9½¼¾]/.test(inside)) return null;
  const plain = inside.replace(/^([0-9.]+)-(?=\p{L})/u, '$1 ');
  const number = readNumber(plain);
  if (number.kind === 'wrong') return number.refusal;
  const after = number.kind === 'none' ? '' : plain.slice(number.length).trim();
  const measure = readMeasure(after);
  if (number.kind === 'none' || measure === null || 'ok' in measure || measure.unit === null)
    return noSize(inside);
  if (!/^\s*(?:each)?$/i.test(after.slice(measure.length))) return noSize(inside);
  return {
    amount: { value: number.value, unit: measure.unit },
    end: from + brackets[0].length,
  };
}

function noSize(inside: string): Refusal {
  return refuse(
    `The size in brackets "(${inside})" cannot be read.`,
    'Write one weight or volume, such as 1 can (15 oz).',
  );
}

/** `1 (15 oz) can beans`: the package has to follow the size. */
function sizeBeforePackage(text: string, count: number, size: SizeReading): Result<AmountReading> {
  const from = skipSpace(text, size.end);
  const measure = readMeasure(text.slice(from));
  if (measure === null || 'ok' in measure || !isPackage(measure.measure)) {
    return refuse(
      'A size in brackets has no package.',
      'Write the package first, as in 1 can (15 oz), or the whole weight, as in 8 oz.',
    );
  }
  const amount = { count, unit: null, measure: measure.measure, size: size.amount };
  return reading(text, amount, from + measure.length);
}

function reading(text: string, amount: WrittenAmount, end: number): Result<AmountReading> {
  const of = amount.measure === null ? null : /^\s*of(?=\s)/i.exec(text.slice(end));
  const length = skipSpace(text, end + (of?.[0].length ?? 0));
  return ok({ amount, rest: text.slice(length).trim(), length });
}

/** `1 cupp rice`, `100gr rice`, `1e5 g`: a word where a unit should stand. */
function wordInPlaceOfUnit(text: string, numberEnd: number): Refusal | null {
  const found = /^(\s*)([\p{L}µ]+)[.]?([^\p{L}].*)?$/su.exec(text.slice(numberEnd, numberEnd + 200));
  if (found === null) return null;
  const [, space = '', word = '', after = ''] = found;
  const glued = space === '';
  const near = nearWords(word, SPELLED_UNITS);
  const followed = /[\p{L}\p{N}]/u.test(after);
  const misspelled = near.length > 0 && word.length >= 3 && followed && !NOT_UNITS.has(word.toLowerCase());
  if (!glued && !misspelled) return null;
  return refuse(
    `"${word}" is not a unit.`,
    near.length > 0 ? `Did you mean ${near[0]}?` : 'Write a number, a unit and the food, such as 100 g rice.',
    near,
  );
}

/** `a cup of rice`: refused rather than taken for the name of a food. */
function numberInWords(text: string): Refusal | null {
  const found = /^(\p{L}+)\s+(?:(?:a|an|of)\s+)*/iu.exec(text);
  const word = text.toLowerCase().replace(/\s.*$/s, '');
  const digits = Object.hasOwn(NUMBER_WORDS, word) ? NUMBER_WORDS[word] : undefined;
  if (found === null || digits === undefined) return null;
  const measure = readMeasure(text.slice(found[0].length));
  if (measure === null || 'ok' in measure) return null;
  return refuse(
    `The amount "${found[0].trim()}" is written in words.`,
    `Write it as a number: ${digits} ${measure.measure}.`,
  );
}

function skipSpace(text: string, from: number): number {
  const rest = text.slice(from);
  return from + rest.length - rest.trimStart().length;
}
