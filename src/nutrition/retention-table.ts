import type { NutrientName } from './food.js';
import { ok, type Result, refuse } from './result.js';
import type { Retention } from './retention.js';
import { RETENTION_ROWS } from './retention-rows.js';
import { nearWords } from './spelling.js';

/** Id of the source of the factors. */
export const RETENTION_SOURCE = 'usda-retention-2007';

/**
 * What release 6 gives factors for, in the order of its rows here. `vitamin A` is in retinol equivalents there and
 * serves for retinol activity equivalents here; `folate` serves for folic acid and food folate, and `carotenoids`
 * for each of five, because the release gives them the same percents.
 */
export const RETENTION_NUTRIENTS = [
  'calcium',
  'iron',
  'magnesium',
  'phosphorus',
  'potassium',
  'sodium',
  'zinc',
  'copper',
  'vitamin C',
  'thiamin',
  'riboflavin',
  'niacin',
  'vitamin B6',
  'folate',
  'choline',
  'vitamin B12',
  'vitamin A',
  'alcohol',
  'carotenoids',
] as const satisfies readonly (NutrientName | 'alcohol' | 'carotenoids')[];
export type RetentionNutrient = (typeof RETENTION_NUTRIENTS)[number];

/** One code of the release. */
export interface RetentionCode {
  /** Four digits, such as `3005`. */
  readonly code: string;
  /** `vegetables`, `legumes` … */
  readonly group: string;
  /** The food and how it is cooked, such as `potatoes, boiled in skin`. */
  readonly method: string;
  /** Why one of its figures is doubtful though it is used as published. */
  readonly doubt?: string;
}

interface Row extends RetentionCode {
  readonly cells: readonly string[];
}

/** Rows that give less with drippings than without, which cannot be; the release does not say which one is wrong. */
const DOUBTS: Readonly<Record<string, string>> = {
  '2002': 'the release keeps less folate with drippings than without',
  '2402': 'the release keeps less minerals with drippings than without',
  '2452': 'the release keeps less vitamin B12 with drippings than without',
};

const ROWS: ReadonlyMap<string, Row> = readRows();

/** All 270 codes, in the order of the release. */
export const RETENTION_CODES: readonly RetentionCode[] = [...ROWS.values()].map(
  ({ cells: _, ...code }) => code,
);

/**
 * The share of a nutrient that stays, by the release's code: `3005`, or `5` for `0005`. Source: USDA Table of
 * Nutrient Retention Factors, Release 6 (2007), in steps of 5 percent. Refused: a code that is not there, a cell
 * that is known to be wrong in the release, a cell that it lacks, and nutrients without factors (protein, fiber,
 * vitamin D …), which are not thereby kept whole.
 */
export function retentionOf(code: string, nutrient: NutrientName | RetentionNutrient): Result<Retention> {
  const found = rowOf(code);
  if (!found.ok) return found;
  const row = found.value;
  if (!hasRetentionFactors(nutrient)) {
    return refuse(`Release 6 has no retention factors for ${nutrient}.`, 'Take a record of the cooked food.');
  }
  const cell = row.cells[RETENTION_NUTRIENTS.indexOf(nutrient)];
  if (cell === 'x') {
    return refuse(
      `The release is wrong or blank at ${nutrient} of ${row.code}, ${row.method}.`,
      'Take another code, or a record of the cooked food.',
    );
  }
  if (cell === '-') {
    return refuse(`The release gives no ${nutrient} for ${row.code}, ${row.method}.`, 'Take another code.');
  }
  const method = row.doubt === undefined ? row.method : `${row.method}; doubtful: ${row.doubt}`;
  return ok({ percent: Number(cell), source: `${RETENTION_SOURCE} ${row.code}`, method });
}

/** The code of a method, read as `3005` or `5` for `0005`. Refused when the release has none, with near codes. */
export function retentionCode(code: string): Result<RetentionCode> {
  const found = rowOf(code);
  if (!found.ok) return found;
  const { cells: _, ...rest } = found.value;
  return ok(rest);
}

/** Whether the release has factors for a nutrient at all. One without them is not thereby kept whole. */
export function hasRetentionFactors(
  nutrient: NutrientName | RetentionNutrient,
): nutrient is RetentionNutrient {
  return RETENTION_NUTRIENTS.some((name) => name === nutrient);
}

/** The codes whose group or method holds every one of the words, whole or begun; all of them for no words. */
export function findRetentionCodes(words: string): readonly RetentionCode[] {
  const wanted = wordsIn(words);
  return RETENTION_CODES.filter(({ group, method }) => {
    const own = wordsIn(`${group} ${method}`);
    return wanted.every((word) => own.some((one) => one.startsWith(word)));
  });
}

function wordsIn(text: string): string[] {
  return text
    .toLowerCase()
    .split(/[^\p{L}\p{N}%.]+/u)
    .filter((word) => word !== '');
}

function rowOf(code: string): Result<Row> {
  const digits = code.padStart(4, '0');
  const row = ROWS.get(digits);
  if (row !== undefined) return ok(row);
  return refuse(
    `There is no retention code ${code} in release 6.`,
    'Look the code up by its food and method.',
    nearWords(digits, ROWS.keys()),
  );
}

function readRows(): Map<string, Row> {
  const rows = new Map<string, Row>();
  let group = '';
  for (const line of RETENTION_ROWS.trim().split('\n')) {
    const [code = '', ...rest] = line.split(' ');
    if (code === '#') {
      group = rest.join(' ');
      continue;
    }
    const cells = rest.slice(0, RETENTION_NUTRIENTS.length);
    const method = rest.slice(RETENTION_NUTRIENTS.length).join(' ');
    const doubt = DOUBTS[code];
    rows.set(code, { code, group, method, cells, ...(doubt === undefined ? {} : { doubt }) });
  }
  return rows;
}
