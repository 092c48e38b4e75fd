import { COOKING_YIELD_ROWS } from './cooking-yield-rows.js';
import type { Checked, Published } from './published.js';
import { ok, type Result, refuse } from './result.js';
import type { CookingYield } from './retention.js';
import { nearWords } from './spelling.js';

/** Id of the source of the yields of meat and poultry. */
export const COOKING_YIELD_SOURCE = 'usda-cooking-yields-2014';

/** Weight after cooking ÷ weight before, for one food and way of cooking. */
export interface YieldRow extends Published {
  /** The cut or food, such as `pork, cured, bacon`. */
  readonly food: string;
  readonly method: string;
  /** Above zero. The middle where only a span is known. */
  readonly factor: number;
  /** Lowest and highest seen; `null` where the source gives none, as for a single sample. */
  readonly span: { readonly low: number; readonly high: number } | null;
  /** Number of samples; `null` where it is not given. */
  readonly samples: number | null;
  /** Number of the cooked record in the food table; `null` where the row is for no one record. */
  readonly record: string | null;
}

/**
 * Group averages of foods that no yield table at hand holds. From memory and rough: the span is the answer, its
 * middle a figure to compute with. Where the food table has both the dry and the cooked record, take the cooked.
 */
export const ROUGH_YIELDS: readonly YieldRow[] = [
  rough('dry beans', 'boiled', 2.4, 2.5),
  rough('rice', 'boiled', 3, 3),
  rough('pasta', 'boiled', 2.2, 2.2),
  rough('boneless chicken', 'cooked', 0.7, 0.75),
  rough('ground beef', 'cooked', 0.7, 0.75),
  rough('spinach', 'cooked', 0.75, 0.9),
];

/** The 173 rows of USDA Table of Cooking Yields for Meat and Poultry, Release 2 (2014). */
export const COOKING_YIELDS: readonly YieldRow[] = COOKING_YIELD_ROWS.trim().split('\n').map(readRow);

/**
 * The rows whose food or method holds every one of the words, whole or begun, published before rough. Refused
 * when there is none, with near words of the table.
 */
export function findYields(words: string): Result<readonly YieldRow[]> {
  const wanted = wordsIn(words);
  const rows = [...COOKING_YIELDS, ...ROUGH_YIELDS].filter((row) => {
    const own = wordsIn(`${row.food} ${row.method}`);
    return wanted.every((word) => own.some((one) => one.startsWith(word)));
  });
  if (rows.length > 0) return ok(rows);
  const known = new Set(
    [...COOKING_YIELDS, ...ROUGH_YIELDS].flatMap((row) => wordsIn(`${row.food} ${row.method}`)),
  );
  const near = wanted.filter((word) => !known.has(word)).flatMap((word) => nearWords(word, known, 1));
  return refuse(`No cooking yield is known for "${words}".`, 'Weigh it before and after cooking.', near);
}

/** The yield of a row as a factor with its source, ready for `cookedPer100g`. */
export function yieldOfRow(row: YieldRow): CookingYield {
  const number = row.record === null ? '' : ` ${row.record}`;
  return { factor: row.factor, source: `${row.source}${number}` };
}

/**
 * A yield that somebody weighed: grams after ÷ grams before. Refuses weights that are not above zero, and
 * factors under 0.2 or over 5, which are slips.
 */
export function weighedYield(before: number, after: number, source: string): Result<CookingYield> {
  if (!(before > 0 && after > 0) || !Number.isFinite(before) || !Number.isFinite(after)) {
    return refuse('The weights before and after cooking have to be above zero.', 'Write both in grams.');
  }
  const factor = after / before;
  if (factor < 0.2 || factor > 5) {
    return refuse(
      `${after} g from ${before} g is a cooking yield that no food has.`,
      'Check which weight is which, and the units.',
    );
  }
  return ok({ factor, source });
}

function rough(food: string, method: string, low: number, high: number): YieldRow {
  const factor = (low + high) / 2;
  const row = { food, method, factor, span: { low, high }, samples: null, record: null };
  return { ...row, source: 'group average, common practice', checked: 'memory' };
}

function readRow(line: string): YieldRow {
  const [percent, low, high, samples, record = '-', year, ...words] = line.split(' ');
  const [food = '', method = ''] = words.join(' ').split('; ');
  const checked: Checked = 'copies';
  return {
    food,
    method,
    factor: Number(percent) / 100,
    span: low === '-' ? null : { low: Number(low) / 100, high: Number(high) / 100 },
    samples: samples === '-' ? null : Number(samples),
    record: record === '-' ? null : record,
    source: COOKING_YIELD_SOURCE,
    checked,
    note: `year ${year}`,
  };
}

function wordsIn(text: string): string[] {
  return text
    .toLowerCase()
    .split(/[^\p{L}\p{N}/]+/u)
    .filter((word) => word !== '');
}
