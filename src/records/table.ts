import type { Place, Report } from '../diagnostics/index.js';
import { problem } from './codes.js';

/** One cell: its text without white space around it, and where it stands. */
export interface Cell {
  readonly text: string;
  readonly place: Place;
}

/** One row of a table, its cells by heading. */
export interface TableRow {
  /** The cell under a heading of the table; asking for another heading is our own bug and throws. */
  cell(heading: string): Cell;
}

/**
 * Reads a table of tab-separated text. The first line that is neither empty nor begins with `#` holds
 * the headings, in any order; such lines are skipped everywhere else too. Reports headings that are
 * missing, unknown or written twice (then there are no rows) and rows with a wrong number of cells
 * (those are left out).
 */
export function readTable(
  text: string,
  file: string,
  headings: readonly string[],
  report: Report,
): readonly TableRow[] {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  const counts = (line: string) => line.trim() !== '' && !line.startsWith('#');
  const head = lines.findIndex(counts);
  const found = (lines[head] ?? '').split('\t').map((heading) => heading.trim());
  const place = { file, line: Math.max(head, 0) + 1, column: 1 };
  if (!checkHeadings(found, headings, place, report)) return [];
  const columns = new Map(found.map((heading, column) => [heading, column]));
  const rows: TableRow[] = [];
  for (let index = head + 1; index < lines.length; index++) {
    const line = lines[index] ?? '';
    if (!counts(line)) continue;
    const cells = cellsOf(line, file, index + 1);
    if (cells.length === found.length) rows.push(rowOf(cells, columns));
    else report.add(wrongCount(cells.length, found.length, { file, line: index + 1, column: 1 }));
  }
  return rows;
}

/** Reports headings that are missing, unknown or written twice; true if there are none. */
export function checkHeadings(
  found: readonly string[],
  wanted: readonly string[],
  place: Place,
  report: Report,
): boolean {
  const missing = wanted.filter((heading) => !found.includes(heading));
  const strange = found.filter((heading, i) => !wanted.includes(heading) || found.indexOf(heading) !== i);
  if (missing.length === 0 && strange.length === 0) return true;
  const parts = [
    missing.length > 0 ? `lacks ${missing.map((h) => `"${h}"`).join(', ')}` : '',
    strange.length > 0 ? `has ${strange.map((h) => `"${h}"`).join(', ')}, not known or twice` : '',
  ].filter((part) => part !== '');
  report.add(
    problem('records/headings', `The line of headings ${parts.join(' and ')}.`, {
      place,
      hint: `Write these headings, parted by tabs: ${wanted.join(', ')}.`,
      expected: missing.length > 0 ? missing : wanted,
    }),
  );
  return false;
}

export function wrongCount(cells: number, headings: number, place: Place) {
  return problem('records/cells', `The row has ${cells} cells; the table has ${headings} headings.`, {
    place,
    hint: 'Put one tab between cells and keep the tab of a blank cell.',
  });
}

function cellsOf(line: string, file: string, number: number): Cell[] {
  let column = 1;
  return line.split('\t').map((raw) => {
    const text = raw.trim();
    const start = column + (raw.length - raw.trimStart().length);
    column += raw.length + 1;
    return {
      text,
      place: { file, line: number, column: start, endLine: number, endColumn: start + text.length },
    };
  });
}

function rowOf(cells: readonly Cell[], columns: ReadonlyMap<string, number>): TableRow {
  return {
    cell(heading) {
      const cell = cells[columns.get(heading) ?? -1];
      if (cell === undefined) throw new Error(`The table has no heading "${heading}".`);
      return cell;
    },
  };
}

/** The parts of a cell that `;` separates, each with its own place. Blank parts are left out. */
export function partsOf(cell: Cell): readonly Cell[] {
  if (!cell.text.includes(';')) return cell.text === '' ? [] : [cell];
  const parts: Cell[] = [];
  let from = 0;
  for (const raw of cell.text.split(';')) {
    const text = raw.trim();
    const column = cell.place.column + from + (raw.length - raw.trimStart().length);
    from += raw.length + 1;
    if (text === '') continue;
    parts.push({ text, place: { ...cell.place, column, endColumn: column + text.length } });
  }
  return parts;
}
