import type { Place, Report } from '../../diagnostics/index.js';
import { problem } from '../codes.js';
import type { Cell } from '../table.js';

/** One row, its cells by the headings that were asked for. */
export interface CsvRow {
  /** The cell under a heading; asking for one that was not asked for at the start is our own bug and throws. */
  cell(heading: string): Cell;
}

/** Takes a file piece by piece. Both answer false once the file is refused; nothing more is read then. */
export interface CsvReader {
  push(piece: string): boolean;
  /** Says that the file is over. */
  end(): boolean;
}

/** Longer than any cell of the downloads; beyond it a quotation mark was never closed. */
const LONGEST = 100_000;
const QUOTE = 34;
const COMMA = 44;
const LF = 10;
const CR = 13;
const NUL = 0;

/**
 * Reads comma-separated text (RFC 4180) that comes in pieces, and holds no more of it than one row. The
 * first row has the headings; `wanted` must be among them, each once, in any order, and others are passed
 * over. Each further row goes to `take`, which answers false to refuse the file after it has reported why.
 * Refused and reported at its place: a heading that is missing or twice, a row with too few or too many
 * cells, a quotation mark inside a plain cell, text after a closing one, one that is never closed, and a
 * file without headings. Blank lines are passed over.
 */
export function createCsvReader(
  file: string,
  wanted: readonly string[],
  take: (row: CsvRow) => boolean,
  report: Report,
): CsvReader {
  let columns: ReadonlyMap<string, number> | undefined;
  let width = 0;
  let refused = false;
  let texts: string[] = [];
  let places: { line: number; column: number }[] = [];
  let cell = '';
  let state: 'start' | 'plain' | 'quoted' | 'closed' = 'start';
  let line = 1;
  let column = 1;
  let begin = { line: 1, column: 1 };
  let afterCr = false;
  let first = true;

  const refuse = (at: { line: number; column: number }, message: string, hint: string): false => {
    const place: Place = { file, ...at };
    report.add(problem('records/import-row', message, { place, hint }));
    refused = true;
    return false;
  };
  const endCell = () => {
    texts.push(cell);
    places.push(begin);
    cell = '';
    state = 'start';
  };
  const endRow = (): boolean => {
    endCell();
    const [row, spots] = [texts, places];
    texts = [];
    places = [];
    if (row.length === 1 && row[0]?.trim() === '') return true;
    if (columns === undefined) {
      columns = headingsOf(row, wanted, file, report);
      width = row.length;
      refused = columns === undefined;
      return !refused;
    }
    if (row.length !== width)
      return refuse(
        spots[Math.min(width, spots.length - 1)] ?? begin,
        `The row has ${row.length} cells; the file has ${width} headings.`,
        'Unpack the download again: a row was cut, or a comma stands outside quotation marks.',
      );
    const found = columns;
    const ok = take({
      cell(heading) {
        const at = found.get(heading);
        const spot = spots[at ?? -1];
        if (at === undefined || spot === undefined) throw new Error(`Nobody asked for "${heading}".`);
        return { text: (row[at] ?? '').trim(), place: { file, ...spot } };
      },
    });
    refused = !ok;
    return ok;
  };
  const readOne = (code: number, letter: string): boolean => {
    if (code === LF && afterCr) {
      afterCr = false;
      return true;
    }
    afterCr = code === CR;
    if (code === NUL)
      return refuse(
        { line, column },
        'The file holds a zero byte, so it is no text.',
        'Unpack the download again.',
      );
    if (state === 'start') begin = { line, column };
    const newLine = code === LF || code === CR;
    if (state === 'quoted') {
      if (code === QUOTE) state = 'closed';
      else cell += code === CR ? '\n' : letter;
      if (cell.length > LONGEST) return unclosed();
    } else if (code === COMMA) {
      endCell();
    } else if (newLine) {
      if (!endRow()) return false;
    } else if (code === QUOTE) {
      if (state === 'plain')
        return refuse(
          { line, column },
          'A quotation mark stands inside a cell that does not begin with one.',
          MARKS,
        );
      if (state === 'closed') cell += '"';
      state = 'quoted';
    } else if (state === 'closed') {
      return refuse({ line, column }, 'Text stands after a closing quotation mark.', MARKS);
    } else {
      state = 'plain';
      cell += letter;
    }
    if (newLine) {
      line++;
      column = 1;
    } else column++;
    return true;
  };
  const unclosed = (): false => refuse(begin, 'A quotation mark that opens here is never closed.', MARKS);

  return {
    push(piece) {
      if (refused) return false;
      const text = first ? piece.replace(/^\uFEFF/, '') : piece;
      if (piece !== '') first = false;
      for (let at = 0; at < text.length; at++)
        if (!readOne(text.charCodeAt(at), text[at] ?? '')) return false;
      return true;
    },
    end() {
      if (refused) return false;
      if (state === 'quoted') return unclosed();
      if ((state !== 'start' || texts.length > 0) && !endRow()) return false;
      if (columns !== undefined) return true;
      refused = true;
      headingsOf([], wanted, file, report);
      return false;
    },
  };
}

const MARKS =
  'Inside quotation marks a mark is written twice (""); a cell that holds one begins and ends with a mark.';

function headingsOf(
  row: readonly string[],
  wanted: readonly string[],
  file: string,
  report: Report,
): ReadonlyMap<string, number> | undefined {
  const found = row.map((heading) => heading.trim());
  const missing = wanted.filter((heading) => !found.includes(heading));
  const twice = wanted.filter((heading) => found.indexOf(heading) !== found.lastIndexOf(heading));
  if (missing.length === 0 && twice.length === 0)
    return new Map(wanted.map((heading) => [heading, found.indexOf(heading)]));
  const says = [
    missing.length > 0 ? `lacks ${missing.map((h) => `"${h}"`).join(', ')}` : '',
    twice.length > 0 ? `has ${twice.map((h) => `"${h}"`).join(', ')} twice` : '',
  ].filter((part) => part !== '');
  report.add(
    problem('records/import-file', `The line of headings ${says.join(' and ')}.`, {
      place: { file, line: 1, column: 1 },
      hint: 'Is this the CSV download of FoodData Central, unpacked and unchanged?',
      expected: missing.length > 0 ? missing : wanted,
    }),
  );
  return undefined;
}
