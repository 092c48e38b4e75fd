import { createReport, type Report } from '../diagnostics/problem.js';
import type { Food } from '../nutrition/food.js';
import { EVERYDAY_FILE, RELEASE_FILE, RELEASE_HEADINGS, RELEASE_INDEX_FILE } from './columns.js';
import { EVERYDAY_HEADINGS, readEveryday } from './everyday.js';
import { agreesWithRelease, makeFood } from './food-record.js';
import type { ImportedFood, OpenImport } from './import/index.js';
import { openRelease, type ReleaseRow } from './release.js';
import { type FoodHit, nearestFoods, type SearchEntry, searchFoods } from './search.js';

/** Files under `assets/`: whole texts, and parts of them by their bytes. */
export interface FinderFiles {
  read(path: string): string | undefined;
  part(path: string, start: number, length: number): string | undefined;
}

/** A food as a search shows it: an everyday food whole, a row of the release, or a food that was imported. */
export type FoundFood =
  | { readonly food: Food; readonly hit: FoodHit }
  | { readonly row: ReleaseRow; readonly hit: FoodHit }
  | { readonly imported: ImportedFood; readonly release: string; readonly hit: FoodHit };

/** What a search gave. */
export interface FoundFoods {
  /** All foods that were found, best first, up to a thousand. */
  readonly hits: readonly FoodHit[];
  /** The first of them with all their facts. */
  readonly shown: readonly FoundFood[];
  /** When nothing was found: the everyday foods that come nearest, up to five. */
  readonly near: readonly FoodHit[];
}

const MOST = 1000;

/**
 * Finds foods without reading the whole release: names come from the table of everyday foods and, when
 * those do not answer, from the index of the release; nutrients are read from the lines of the foods that
 * are shown. Imported foods come before the rest of the release. Reports what `loadFoods` would report of those foods.
 */
export function findFoods(
  words: string,
  show: number,
  files: FinderFiles,
  report: Report,
  imports: readonly OpenImport[] = [],
): FoundFoods {
  const table = files.read(EVERYDAY_FILE) ?? '';
  const lines = table.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  const { entries, head, lineOf } = namesOf(lines);
  let index: string | undefined;
  const indexText = () => {
    index ??= files.read(RELEASE_INDEX_FILE) ?? '';
    return index;
  };
  // Numbers of imported foods have six digits or more, so they never meet one of the release.
  const tableOf = new Map<string, OpenImport>();
  for (const table of imports) for (const { number } of table.names) tableOf.set(number, table);
  function* rest() {
    for (const table of imports) yield* table.names;
    yield* described(indexText());
  }
  const hits = searchFoods(entries, rest, words, MOST);
  const near = hits.length > 0 ? [] : nearestFoods(entries, words).map(hitOf);
  const wanted = hits.slice(0, Math.max(0, show));
  const kept = new Set(wanted.map((hit) => (hit.name === undefined ? -1 : (lineOf.get(hit.name) ?? -1))));
  const numbers = [...new Set(wanted.map((hit) => hit.number))];
  const release = openRelease(
    [RELEASE_HEADINGS.join('\t'), ...numbers.flatMap((number) => lineAt(number, indexText(), files))].join(
      '\n',
    ),
    `assets/${RELEASE_FILE}`,
    // Lines are counted from these few rows, so a place would mislead; loading the whole release reports it.
    createReport(),
  );
  const everyday = lines.map((line, i) => (i === head || kept.has(i) ? line : '')).join('\n');
  const rows = readEveryday(everyday, `assets/${EVERYDAY_FILE}`, report);
  const shown = wanted.flatMap((hit): FoundFood[] => {
    const table = hit.name === undefined ? tableOf.get(hit.number) : undefined;
    const imported = table?.food(hit.number);
    if (table) return imported ? [{ imported, release: table.release, hit }] : [];
    const row = release.row(hit.number);
    if (hit.name === undefined) return row ? [{ row, hit }] : [];
    const own = rows.find((r) => r.name.text === hit.name);
    return own && agreesWithRelease(own, release, report) ? [{ food: makeFood(own, release), hit }] : [];
  });
  return { hits, shown, near };
}

function hitOf({ name, number, description }: SearchEntry): FoodHit {
  return { name, number, description };
}

/** Names of all everyday foods, without reading the rest of their cells. */
function namesOf(lines: readonly string[]): {
  readonly entries: readonly SearchEntry[];
  readonly head: number;
  readonly lineOf: ReadonlyMap<string, number>;
} {
  const head = lines.findIndex((line) => line.trim() !== '' && !line.startsWith('#'));
  const columns = (lines[head] ?? '').split('\t').map((heading) => heading.trim());
  const [name, aliases, kind, kindAliases, , number, description] = EVERYDAY_HEADINGS.map((heading) =>
    columns.indexOf(heading),
  );
  const lineOf = new Map<string, number>();
  const kinds = new Map<string, readonly string[]>();
  const entries: SearchEntry[] = [];
  for (let i = head + 1; head >= 0 && i < lines.length; i++) {
    const line = lines[i] ?? '';
    if (line.trim() === '' || line.startsWith('#')) continue;
    const cells = line.split('\t');
    const cell = (column: number | undefined) => (cells[column ?? -1] ?? '').trim();
    const parts = (column: number | undefined) => {
      const text = cell(column);
      return text === '' ? [] : text.split(';');
    };
    // Other names of a kind stand on its first row and answer for all its rows.
    const ofKind = kinds.get(cell(kind)) ?? parts(kindAliases);
    kinds.set(cell(kind), ofKind);
    lineOf.set(cell(name), i);
    entries.push({
      name: cell(name),
      kind: cell(kind),
      others: [...parts(aliases), ...ofKind],
      number: cell(number),
      description: cell(description),
    });
  }
  return { entries, head, lineOf };
}

/** Number and description of every food of the index. */
function* described(index: string): Iterable<{ readonly number: string; readonly description: string }> {
  for (let at = 0; at < index.length; ) {
    const end = index.indexOf('\n', at);
    const line = index.slice(at, end < 0 ? index.length : end);
    at = end < 0 ? index.length : end + 1;
    if (!/^\d{5}\t/.test(line)) continue;
    yield { number: line.slice(0, 5), description: line.slice(line.lastIndexOf('\t') + 1).trimEnd() };
  }
}

/** The line of the release that the index points to. */
function lineAt(number: string, index: string, files: FinderFiles): readonly string[] {
  const at = index.indexOf(`\n${number}\t`);
  if (at < 0) return [];
  const [, start = '', length = ''] = index.slice(at + 1, at + 60).split('\t');
  const line = files.part(RELEASE_FILE, Number(start), Number(length));
  return line === undefined ? [] : [line];
}
