import type { Place, Report } from '../diagnostics/index.js';
import { problem } from './codes.js';

/** The largest lesson that is read, in bytes or UTF-16 units. */
export const MAX_SIZE = 128 * 1024;

/** A lesson's text with its lines. Lines end in `\n`; there is no byte order mark and no control character but tabs. */
export interface Source {
  readonly file: string;
  readonly text: string;
  readonly lines: readonly string[];
  /** Offset in `text` at which each line begins. */
  readonly starts: readonly number[];
}

export function sourceOf(file: string, text: string): Source {
  const lines = text.split('\n');
  const starts: number[] = [];
  let at = 0;
  for (const line of lines) {
    starts.push(at);
    at += line.length + 1;
  }
  return { file, text, lines, starts };
}

/** A place on one line; both columns count from 1, the end is the column after the last character. */
export function placeAt(
  source: { readonly file: string },
  line: number,
  column: number,
  end?: number,
): Place {
  const start = { file: source.file, line, column };
  return end === undefined || end <= column ? start : { ...start, endLine: line, endColumn: end };
}

/** The place of a stretch of the text given by offsets. */
export function placeOf(source: Source, from: number, to?: number): Place {
  const start = pointAt(source, from);
  if (to === undefined || to <= from) return { file: source.file, ...start };
  const end = pointAt(source, to);
  return { file: source.file, ...start, endLine: end.line, endColumn: end.column };
}

export function pointAt(source: Source, offset: number): { readonly line: number; readonly column: number } {
  let low = 0;
  let high = source.starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((source.starts[middle] ?? 0) <= offset) low = middle;
    else high = middle - 1;
  }
  return { line: low + 1, column: offset - (source.starts[low] ?? 0) + 1 };
}

/**
 * Bytes or text as a `Source`. A file that is too large or no text is reported and gives nothing;
 * control characters and lone surrogates are reported and stand as blanks.
 */
export function readSource(input: string | Uint8Array, file: string, report: Report): Source | undefined {
  const top = { file, line: 1, column: 1 };
  if (input.length > MAX_SIZE) {
    const size = Math.ceil(input.length / 1024);
    report.add(
      problem(
        'lesson/too-large',
        `This lesson has ${size} KiB; a lesson has at most ${MAX_SIZE / 1024} KiB.`,
        {
          hint: 'Split the lesson, or take out what does not belong to it.',
          place: top,
        },
      ),
    );
    return undefined;
  }
  const decoded = typeof input === 'string' ? input : decode(input, file, report);
  if (decoded === undefined) return undefined;
  const text = decoded.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  return sourceOf(file, withoutControls(text, file, report));
}

function decode(bytes: Uint8Array, file: string, report: Report): string | undefined {
  const refuse = (message: string, hint: string, line = 1, column = 1): undefined => {
    report.add(problem('lesson/not-text', message, { hint, place: { file, line, column } }));
  };
  const save = 'Save it again as plain text in UTF-8.';
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff))
    return refuse('This file is saved as UTF-16, not as UTF-8.', save);
  const nul = bytes.indexOf(0);
  if (nul >= 0) {
    const nuls = bytes.reduce((sum, b) => sum + (b === 0 ? 1 : 0), 0);
    return nuls * 3 > bytes.length
      ? refuse('This file is saved as UTF-16, not as UTF-8.', save)
      : refuse(
          'This file is not text; it may be a picture or a word-processor file.',
          'A lesson is a plain Markdown file.',
        );
  }
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    const bad = firstBadByte(bytes);
    return refuse('This file holds bytes that are not UTF-8 text.', save, bad.line, bad.column);
  }
}

/** Lines are tried one by one: a line end is never part of a longer character. */
function firstBadByte(bytes: Uint8Array): { readonly line: number; readonly column: number } {
  const strict = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
  let line = 1;
  for (let from = 0; from < bytes.length; line++) {
    const newline = bytes.indexOf(0x0a, from);
    const to = newline < 0 ? bytes.length : newline;
    const slice = bytes.subarray(from, to);
    try {
      strict.decode(slice);
    } catch {
      const lenient = new TextDecoder('utf-8', { ignoreBOM: true }).decode(slice);
      return { line, column: Math.max(0, lenient.indexOf('\ufffd')) + 1 };
    }
    from = to + 1;
  }
  return { line: 1, column: 1 };
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that are refused.
const CONTROL = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u2028\u2029\ufffe\uffff]|\p{Surrogate}/gu;

function withoutControls(text: string, file: string, report: Report): string {
  if (text.search(CONTROL) < 0) return text;
  let told = 0;
  const lines = text.split('\n').map((line, index) =>
    line.replace(CONTROL, (found: string, at: number) => {
      // A file full of them is one mistake, not thousands.
      if (++told <= 10) report.add(controlProblem(found, { file, line: index + 1, column: at + 1 }));
      return ' ';
    }),
  );
  return lines.join('\n');
}

function controlProblem(found: string, place: Place) {
  const code = (found.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
  const what = /\p{Surrogate}/u.test(found) ? 'half of a character' : 'a control character';
  return problem('lesson/control-character', `Here stands ${what} (U+${code}), which cannot be printed.`, {
    hint: 'Delete it; it was read as a blank.',
    place,
    actual: `U+${code}`,
  });
}
