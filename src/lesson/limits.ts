import type { Report } from '../diagnostics/index.js';
import { problem } from './codes.js';
import { placeAt, type Source } from './source.js';

/*
 * Markdown parsers take time that grows with the square of some inputs, and depth that can exhaust the
 * stack. These limits are house rules, no source: far above what a lesson needs, and low enough that the
 * worst text that passes them is parsed in seconds.
 */
const MAX_LINES = 4000;
const MAX_QUOTES = 4;
const MAX_LIST_DEPTH = 6;
const MAX_LISTS_IN_LISTS = 40;
const MAX_BRACKETS = 32;
const MAX_OPEN_MARKS = 64;
const MAX_RUN = 99;
const MAX_PARAGRAPH = { lines: 300, characters: 16_000 };

const PREFIX = /^(?:[ \t]*(?:>|(?:[-*+]|\d{1,9}[.)])(?=[ \t]|$)))*/;
const LIST_MARK = /(?:[-*+]|\d{1,9}[.)])(?=[ \t]|$)/g;
const RUN = new RegExp(`([*_~\`])\\1{${MAX_RUN},}`);

/** Reports the first place where a text goes past what is parsed; true when it stays within. */
export function withinLimits(source: Source, report: Report): boolean {
  if (source.lines.length > MAX_LINES) {
    report.add(
      problem(
        'lesson/too-large',
        `This lesson has ${source.lines.length} lines; a lesson has at most ${MAX_LINES}.`,
        {
          hint: 'Split the lesson, or take out what does not belong to it.',
          place: placeAt(source, MAX_LINES + 1, 1),
        },
      ),
    );
    return false;
  }
  const found = firstTooDeep(source.lines);
  if (!found) return true;
  report.add(
    problem('lesson/too-deep', found.message, {
      hint: 'Take out levels, or part the text with blank lines. Nothing of this file was read.',
      place: placeAt(source, found.line, found.column),
    }),
  );
  return false;
}

interface TooDeep {
  readonly message: string;
  readonly line: number;
  readonly column: number;
}

/** What one paragraph has opened and not closed so far. */
interface Open {
  lines: number;
  characters: number;
  brackets: number;
  angles: number;
  marks: number;
}

function firstTooDeep(lines: readonly string[]): TooDeep | undefined {
  let open = nothingOpen();
  const listIndents: number[] = [];
  let twice = 0;
  for (const [index, line] of lines.entries()) {
    const at = (column: number, message: string): TooDeep => ({ message, line: index + 1, column });
    const prefix = PREFIX.exec(line)?.[0] ?? '';
    const quotes = prefix.split('>').length - 1;
    if (quotes > MAX_QUOTES) return at(1, `Quotes stand more than ${MAX_QUOTES} deep here.`);
    const marks = [...prefix.matchAll(LIST_MARK)];
    const inner = /^([ \t]*[-*]){3,}[ \t]*$/.test(line) ? undefined : marks[1];
    if (inner && (marks.length > 2 || ++twice > MAX_LISTS_IN_LISTS))
      return at(inner.index + 1, 'Lists begin inside lists on the same line here.');
    const mark = marks[0];
    // A paragraph ends at a blank line, a row of a list, a heading or a fence.
    if (mark || /^[ \t>]*$|^ {0,3}#{1,6}[ \t]|^[ \t]*::/.test(line)) open = nothingOpen();
    if (mark) {
      while ((listIndents.at(-1) ?? -1) >= mark.index) listIndents.pop();
      listIndents.push(mark.index);
      if (listIndents.length > MAX_LIST_DEPTH)
        return at(mark.index + 1, `Lists stand more than ${MAX_LIST_DEPTH} deep here.`);
    } else if (/^\S/.test(line)) listIndents.length = 0;
    const run = RUN.exec(line);
    if (run) return at(run.index + 1, `More than ${MAX_RUN} of the same mark stand side by side here.`);
    const column = countOpen(open, line);
    if (column !== undefined)
      return at(column, `More than ${MAX_BRACKETS} brackets or ${MAX_OPEN_MARKS} stars are open here.`);
    if (++open.lines > MAX_PARAGRAPH.lines)
      return at(1, `This paragraph has more than ${MAX_PARAGRAPH.lines} lines.`);
    open.characters += line.length + 1;
    if (open.characters > MAX_PARAGRAPH.characters)
      return at(1, `This paragraph has more than ${MAX_PARAGRAPH.characters} characters.`);
  }
  return undefined;
}

function nothingOpen(): Open {
  return { lines: 0, characters: 0, brackets: 0, angles: 0, marks: 0 };
}

/** Counts brackets and emphasis marks that a line opens; the column of the one too many. */
function countOpen(open: Open, line: string): number | undefined {
  for (const found of line.matchAll(/\\.|[[\]<>]|[*_~]+/g)) {
    const text = found[0];
    if (text === '[') open.brackets++;
    else if (text === ']') open.brackets = Math.max(0, open.brackets - 1);
    else if (text === '<') open.angles++;
    else if (text === '>') open.angles = Math.max(0, open.angles - 1);
    else if (!text.startsWith('\\')) {
      const before = line[found.index - 1] ?? ' ';
      const after = line[found.index + text.length] ?? ' ';
      const closes = !/\s/.test(before);
      if (closes && open.marks > 0) open.marks = Math.max(0, open.marks - text.length);
      else if (!/\s/.test(after)) open.marks += text.length;
    }
    if (open.brackets > MAX_BRACKETS || open.angles > MAX_BRACKETS || open.marks > MAX_OPEN_MARKS)
      return found.index + 1;
  }
  return undefined;
}
