import type { Place, Report } from '../diagnostics/index.js';
import { NUTRIENTS, type NutrientName } from '../nutrition/food.js';
import { problem } from './codes.js';
import { NUTRIENT_COLUMNS, RELEASE_HEADINGS } from './columns.js';
import { checkHeadings, wrongCount } from './table.js';

/** A household weight of the release: `grams` is what `words`, such as `.5 cup`, weighs. */
export interface ReleaseWeight {
  readonly grams: number;
  readonly words: string;
}

/** One food of the release. */
export interface ReleaseRow {
  /** Five digits. */
  readonly number: string;
  readonly description: string;
  /** The publisher's code of the food group, four digits. */
  readonly group: string;
  /** Per 100 g of the edible part; `null` is not known. Added sugars are never in the release. */
  readonly per100g: Readonly<Record<NutrientName, number | null>>;
  /** The two household weights, where the release has them. */
  readonly weights: readonly [ReleaseWeight | undefined, ReleaseWeight | undefined];
  /** Percent of the bought food that is not eaten; `null` is not known. */
  readonly refuse: number | null;
}

/** The whole release. Rows are read when they are asked for. */
export interface Release {
  /** How many foods there are. */
  readonly size: number;
  /** A food by its number, with or without its leading zeros. */
  row(number: string): ReleaseRow | undefined;
  /** Number and description of every food, in the order of the table. */
  descriptions(): Iterable<{ readonly number: string; readonly description: string }>;
}

/** Lost leading zeros are put back: a spreadsheet drops them. */
export function fiveDigits(number: string): string {
  return /^\d{1,4}$/.test(number) ? number.padStart(5, '0') : number;
}

/** One more than the largest number that five digits can write. */
const NUMBERS = 100_000;

/**
 * Opens the table of the release. Only the starts of lines are found at once; a row is parsed when it is
 * asked for. Reports at once wrong headings (then there are no foods), lines without a number and numbers
 * that stand twice; a row with a wrong number of cells (left out) and a cell that is no number (not
 * known) are reported when they are read.
 */
export function openRelease(text: string, file: string, report: Report): Release {
  // Loading must not be felt, so the index is one array of places in the text and not thousands of objects.
  const starts = new Int32Array(NUMBERS).fill(-1);
  const order: number[] = [];
  let columns: readonly string[] | undefined;
  for (let start = 0; start < text.length; start = endOf(text, start) + 1) {
    if (text[start] === '#' || text[start] === '\n' || text[start] === '\r') continue;
    if (columns === undefined) {
      columns = lineAt(text, start).split('\t');
      if (!checkHeadings(columns, RELEASE_HEADINGS, placeAt(text, start, file), report)) break;
      continue;
    }
    const tab = text.indexOf('\t', start);
    const number = tab - start <= 5 ? Number(text.slice(start, tab)) : Number.NaN;
    if (!(Number.isInteger(number) && number >= 0 && tab > start)) {
      report.add(noNumber(placeAt(text, start, file)));
    } else if (starts[number] !== -1) {
      report.add(numberTwice(text.slice(start, tab), placeAt(text, start, file)));
    } else {
      starts[number] = start;
      order.push(start);
    }
  }
  const headings = columns ?? [];
  const read = new Map<number, ReleaseRow | undefined>();
  return {
    size: order.length,
    row(asked) {
      const number = /^\d{1,5}$/.test(asked) ? Number(asked) : Number.NaN;
      const start = starts[number] ?? -1;
      if (start < 0) return undefined;
      if (!read.has(number)) read.set(number, parseRow(text, start, headings, file, report));
      return read.get(number);
    },
    *descriptions() {
      for (const start of order) {
        const tab = text.indexOf('\t', start);
        const description = text.slice(tab + 1, text.indexOf('\t', tab + 1));
        yield { number: fiveDigits(text.slice(start, tab)), description };
      }
    },
  };
}

function endOf(text: string, start: number): number {
  const end = text.indexOf('\n', start);
  return end < 0 ? text.length : end;
}

function lineAt(text: string, start: number): string {
  return text.slice(start, endOf(text, start)).replace(/\r$/, '');
}

/** The place of a spot in the text. Lines are counted here, because few places are ever asked for. */
function placeAt(text: string, start: number, file: string, column = 1, length = 0): Place {
  let line = 1;
  for (let at = text.indexOf('\n'); at >= 0 && at < start; at = text.indexOf('\n', at + 1)) line++;
  return { file, line, column, endLine: line, endColumn: column + length };
}

function noNumber(place: Place) {
  return problem('records/value', 'The line does not begin with the number of a food.', {
    place,
    hint: 'Run `npm run make:foods` to write the table again.',
  });
}

function numberTwice(number: string, place: Place) {
  return problem('records/twice', `Food ${number} stands twice in the release.`, {
    place,
    hint: 'Run `npm run make:foods` to write the table again.',
  });
}

function parseRow(
  text: string,
  start: number,
  headings: readonly string[],
  file: string,
  report: Report,
): ReleaseRow | undefined {
  const cells = lineAt(text, start).split('\t');
  if (cells.length !== headings.length) {
    report.add(wrongCount(cells.length, headings.length, placeAt(text, start, file)));
    return undefined;
  }
  const cell = (heading: string) => cells[headings.indexOf(heading)] ?? '';
  const number = (heading: string): number | null => {
    const written = cell(heading);
    if (written === '') return null;
    if (/^(?:\d+\.?\d*|\.\d+)$/.test(written)) return Number(written);
    const before = cells.slice(0, headings.indexOf(heading));
    const column = before.reduce((sum, other) => sum + other.length + 1, 1);
    report.add(notANumber(written, heading, placeAt(text, start, file, column, written.length)));
    return null;
  };
  const weight = (which: 1 | 2): ReleaseWeight | undefined => {
    const grams = number(`weight ${which} (g)`);
    const words = cell(`weight ${which} measure`);
    return grams === null || words === '' ? undefined : { grams, words };
  };
  let nutrients: ReleaseRow['per100g'] | undefined;
  return {
    number: fiveDigits(cell('number')),
    description: cell('description'),
    group: cell('group'),
    weights: [weight(1), weight(2)],
    refuse: number('refuse (%)'),
    // Most rows are only asked for their description, so the nutrients wait until they are wanted.
    get per100g() {
      nutrients ??= readNutrients(number);
      return nutrients;
    },
  };
}

function readNutrients(number: (heading: string) => number | null): ReleaseRow['per100g'] {
  const values = Object.fromEntries<number | null>(Object.keys(NUTRIENTS).map((name) => [name, null]));
  for (const { nutrient, heading } of NUTRIENT_COLUMNS)
    if (nutrient !== undefined) values[nutrient] = number(heading);
  return values as Record<NutrientName, number | null>;
}

function notANumber(written: string, heading: string, place: Place) {
  return problem('records/value', `"${written}" is no number for ${heading}; it counts as not known.`, {
    place,
    hint: 'Write digits with a decimal point, or leave the cell blank if the value is not known.',
    actual: written,
  });
}
