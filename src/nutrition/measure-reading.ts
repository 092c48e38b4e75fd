import { MEASURE_WORDS, OTHER_UNITS, SIZE_WORDS, UNIT_WORDS } from './measure-words.js';
import type { MassUnit, VolumeUnit } from './quantity.js';
import { type Refusal, refuse } from './result.js';

/** A measure found at the start of a text. `unit` is set for weights and volumes. */
export interface MeasureReading {
  readonly measure: string;
  readonly unit: MassUnit | VolumeUnit | null;
  readonly length: number;
}

interface Word {
  readonly text: string;
  readonly length: number;
}

const UNITS = new Map<string, MassUnit | VolumeUnit>();
for (const unit of Object.keys(UNIT_WORDS) as (MassUnit | VolumeUnit)[]) {
  for (const word of UNIT_WORDS[unit]) UNITS.set(word, unit);
}
const SIZES = new Map(
  Object.entries(SIZE_WORDS).flatMap(([size, words]) => words.map((word) => [word, size])),
);
const PLURALS = new Map(Object.entries(MEASURE_WORDS));
const PIECES = new Map(
  Object.entries(MEASURE_WORDS).flatMap(([one, many]) => [
    [one, one],
    [many, one],
  ]),
);

/**
 * Reads a unit or household measure at the start of a text, in any case, one or many, with or without a
 * point: `cups`, `tbsp.`, `fl. oz.`, `medium`, `large slices`. `null` when the text starts with no measure;
 * a refusal for `c`, `T`, `t` and for units that are known but not read here.
 */
export function readMeasure(text: string): MeasureReading | Refusal | null {
  const first = wordAt(text, 0);
  if (first === null) return null;
  if (/^[cCtT]$/.test(first.text)) {
    return refuse(
      `"${first.text}" can stand for more than one measure.`,
      /c/i.test(first.text) ? 'Write cup.' : 'Write tbsp for tablespoons, tsp for teaspoons.',
    );
  }
  const second = wordAt(text, first.length);
  const one = first.text.toLowerCase();
  const otherHint = Object.hasOwn(OTHER_UNITS, one) ? OTHER_UNITS[one] : undefined;
  if (otherHint !== undefined) return refuse(`Amounts in "${first.text}" are not read.`, otherHint);
  const starts: { words: string; length: number }[] = [{ words: one, length: first.length }];
  if (second !== null) {
    starts.unshift({ words: `${one} ${second.text.toLowerCase()}`, length: second.length });
  }
  for (const { words, length } of starts) {
    const unit = UNITS.get(words);
    if (unit !== undefined) return { measure: unit, unit, length };
    const size = SIZES.get(words);
    if (size !== undefined) return sizedPiece(text, size, length);
  }
  const piece = PIECES.get(one);
  return piece === undefined ? null : { measure: piece, unit: null, length: first.length };
}

/** The measure in words for a count: one stays singular, fractions below one too. */
export function measureFor(count: number, measure: string, unit: MassUnit | VolumeUnit | null): string {
  if (count <= 1) return measure;
  if (unit !== null) return unit === 'cup' ? 'cups' : measure;
  return measure.replace(/[a-z]+$/, (last) => PLURALS.get(last) ?? last);
}

/** `large` alone, or `large slice` when a measure follows. */
function sizedPiece(text: string, size: string, length: number): MeasureReading {
  const next = wordAt(text, length);
  const piece = next === null ? undefined : PIECES.get(next.text.toLowerCase());
  if (next === null || piece === undefined) return { measure: size, unit: null, length };
  return { measure: `${size} ${piece}`, unit: null, length: next.length };
}

/** The word after `from`; `length` counts from the start of the text and takes in a point that ends it. */
function wordAt(text: string, from: number): Word | null {
  const found = /^\s*[\p{L}µ]+(?:-[\p{L}]+)*(?:[.]|(?![\p{L}\p{N}]))/u.exec(text.slice(from));
  if (found === null) return null;
  return { text: found[0].trim().replace('.', ''), length: from + found[0].length };
}
