import type { Report } from '../../diagnostics/index.js';
import { NUTRIENTS, type NutrientName } from '../../nutrition/food.js';
import { readTable, type TableRow } from '../table.js';
import type { ImportedFood } from './import.js';
import { NAMES } from './nutrients.js';

/** Where imported tables stand in a workspace. */
export const IMPORTED_FOLDER = 'assets/local/foods';

/** A download that was imported. */
export interface ImportedTable {
  /** The download's own name, such as its folder. */
  readonly release: string;
  /** ISO date of the download. */
  readonly date: string;
  readonly foods: readonly ImportedFood[];
}

const headingOf = (name: NutrientName) => `${name} (${NUTRIENTS[name].unit})`;
const HEADINGS = ['number', 'description', 'type', 'published', ...NAMES.map(headingOf), 'weights'] as const;

/** The lines of a table, one by one, so that it can be written without being held whole. */
export function* importedLines({ release, date, foods }: ImportedTable): Iterable<string> {
  yield '# Imported from the CSV download of USDA FoodData Central. Public domain.';
  yield `# release: ${release}`;
  yield `# date: ${date}`;
  yield '# Values stand per 100 g of the edible part. A blank cell is not known; it is not zero.';
  yield HEADINGS.join('\t');
  for (const food of foods) {
    const values = NAMES.map((name) => food.per100g[name] ?? '');
    const weights = food.weights.map((w) => `${w.words.replaceAll(';', ',')} = ${w.grams} g`);
    yield [food.number, food.description, food.type, food.date, ...values, weights.join('; ')].join('\t');
  }
}

/** A table of a workspace that was imported before. Rows are read when they are asked for. */
export interface OpenImport {
  readonly release: string;
  readonly date: string;
  /** Number and description of every food, in the order of the table. */
  readonly names: readonly { readonly number: string; readonly description: string }[];
  food(number: string): ImportedFood | undefined;
}

/**
 * Opens a table that `importedLines` wrote. Wrong headings are reported, and then there are no foods; a
 * row with a wrong number of cells is reported when it is read; a cell that is no number is not known.
 */
export function openImported(text: string, file: string, report: Report): OpenImport {
  const said = (what: string) =>
    new RegExp(`^# ${what}: (.+)$`, 'm').exec(text.slice(0, 2000))?.[1]?.trim() ?? '';
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  const head = lines.findIndex((line) => line.trim() !== '' && !line.startsWith('#'));
  // Only the headings: rows wait until one of them is wanted.
  const before = report.problems.length;
  readTable(lines.slice(0, head + 1).join('\n'), file, HEADINGS, report);
  const fine = report.problems.length === before;
  const columns = (lines[head] ?? '').split('\t').map((heading) => heading.trim());
  const [number, description] = [columns.indexOf('number'), columns.indexOf('description')];
  const at = new Map<string, number>();
  const names: { number: string; description: string }[] = [];
  for (let i = head + 1; fine && i < lines.length; i++) {
    const line = lines[i] ?? '';
    if (line.trim() === '' || line.startsWith('#')) continue;
    const cells = line.split('\t');
    const name = { number: (cells[number] ?? '').trim(), description: (cells[description] ?? '').trim() };
    at.set(name.number, i);
    names.push(name);
  }
  return {
    release: said('release'),
    date: said('date'),
    names,
    food(wanted) {
      const line = at.get(wanted);
      if (line === undefined) return undefined;
      // Blank lines keep the row at its own line, for the place of a problem.
      const blank = '\n'.repeat(line - head);
      const row = readTable(
        `${'\n'.repeat(head)}${lines[head]}${blank}${lines[line]}`,
        file,
        HEADINGS,
        report,
      )[0];
      return row && foodOf(row);
    },
  };
}

function foodOf(row: TableRow): ImportedFood {
  const text = (heading: (typeof HEADINGS)[number]) => row.cell(heading).text;
  const number = (written: string) => (/^\d+(?:\.\d+)?(?:e-\d+)?$/.test(written) ? Number(written) : null);
  return {
    number: text('number'),
    description: text('description'),
    type: text('type'),
    date: text('published'),
    per100g: Object.fromEntries(NAMES.map((name) => [name, number(text(headingOf(name)))])) as Record<
      NutrientName,
      number | null
    >,
    weights: text('weights')
      .split('; ')
      .flatMap((part) => {
        const [, words = '', grams = ''] = /^(.+) = ([\d.]+) g$/.exec(part) ?? [];
        return words === '' ? [] : [{ words, grams: Number(grams) }];
      }),
  };
}
