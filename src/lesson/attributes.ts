import type { lessonCodes } from './codes.js';

/** Something wrong with how an opening line or its attributes are written, by offset in the text scanned. */
export interface Fault {
  readonly code: keyof typeof lessonCodes;
  readonly from: number;
  readonly to: number;
  readonly message: string;
  readonly hint: string;
}

/** An attribute as it stands in the source, by offset. */
export interface WrittenAttribute {
  readonly name: string;
  readonly nameAt: number;
  readonly value: string;
  readonly valueAt: number;
  readonly valueEnd: number;
}

export interface ScannedAttributes {
  readonly attributes: readonly WrittenAttribute[];
  readonly faults: readonly Fault[];
  /** Offset after the closing brace, or after what was read. */
  readonly end: number;
}

/** Quotes that may open a value, each with what closes it; only the first two are right. */
const CLOSING: Readonly<Record<string, string>> = {
  '"': '"',
  "'": "'",
  '“': '”"',
  '”': '”"',
  '„': '“”"',
  '‘': "’'",
  '’': "’'",
  '«': '»',
};
const HOW = 'Write attributes as name=value or name="two words", parted by blanks, between { and }.';

interface Scan {
  readonly text: string;
  at: number;
  readonly attributes: WrittenAttribute[];
  readonly faults: Fault[];
}

/**
 * Reads attributes from an opening brace on, or from the first name when the brace is missing, up to the
 * closing brace or `limit`. Nothing stops it: what is written badly becomes a fault, and what was most
 * likely meant is read. Line ends count as blanks, since editors wrap running text.
 */
export function scanAttributes(text: string, start: number, limit: number): ScannedAttributes {
  const scan: Scan = { text: text.slice(0, limit), at: start, attributes: [], faults: [] };
  const braced = scan.text[start] === '{';
  if (braced) scan.at++;
  for (;;) {
    take(scan, BLANKS);
    const next = scan.text[scan.at];
    if (next === undefined || next === '}') break;
    if (next === ',' || next === ';') comma(scan);
    else if (next === '#' || next === '.') shorthand(scan, next);
    else if (/[={"'“”„‘’«»<>`]/.test(next)) loose(scan);
    else attribute(scan);
  }
  const closed = scan.text[scan.at] === '}';
  if (closed) scan.at++;
  if (!braced) writing(scan, start, start + 1, 'The attributes have no brace before them.');
  else if (!closed && !scan.faults.some((f) => f.message.startsWith('The quote that opens')))
    writing(scan, start, start + 1, 'The brace that opens here is not closed.');
  return { attributes: scan.attributes, faults: scan.faults, end: scan.at };
}

// A line that goes on inside a quote begins with the quote's mark.
const BLANKS = /(?:\n[ \t>]*|[ \t])*/y;
const NAME = /[^\s=,;{}"'“”„‘’«»<>`#.]+/y;
const BARE = /[^\s}]*/y;

/** Moves past what the pattern finds at the place where the scan stands, and returns it. */
function take(scan: Scan, pattern: RegExp): string {
  pattern.lastIndex = scan.at;
  const found = pattern.exec(scan.text)?.[0] ?? '';
  scan.at += found.length;
  return found;
}

function writing(scan: Scan, from: number, to: number, message: string, hint = HOW): void {
  scan.faults.push({ code: 'lesson/attribute-writing', from, to, message, hint });
}

/** One word about commas is enough for one set of braces. */
function comma(scan: Scan): void {
  const told = scan.faults.some((f) => f.message.includes('parts two attributes'));
  if (!told) writing(scan, scan.at, scan.at + 1, `A “${scan.text[scan.at]}” parts two attributes here.`);
  scan.at++;
}

function shorthand(scan: Scan, mark: string): void {
  const from = scan.at++;
  const value = take(scan, /[^\s},;]*/y);
  const hint =
    mark === '#'
      ? `Write id=${value || 'name'} instead.`
      : 'Delete it; how things look is not set in a lesson.';
  writing(scan, from, scan.at, `“${mark}${value}” is a short form that is not used here.`, hint);
  if (mark === '#' && value !== '')
    scan.attributes.push({ name: 'id', nameAt: from, value, valueAt: from + 1, valueEnd: scan.at });
}

/** A mark where a name should begin. */
function loose(scan: Scan): void {
  const from = scan.at++;
  writing(scan, from, scan.at, `An attribute begins with its name; here stands “${scan.text[from]}”.`);
}

function attribute(scan: Scan): void {
  const nameAt = scan.at;
  const name = take(scan, NAME);
  const nameEnd = scan.at;
  take(scan, BLANKS);
  if (scan.text[scan.at] !== '=') {
    scan.at = nameEnd;
    writing(scan, nameAt, nameEnd, `“${name}” has no value.`);
    scan.attributes.push({ name, nameAt, value: '', valueAt: nameAt, valueEnd: nameEnd });
    return;
  }
  scan.at++;
  take(scan, BLANKS);
  const open = scan.text[scan.at];
  if (open !== undefined && CLOSING[open] !== undefined) quoted(scan, name, nameAt, open);
  else bare(scan, name, nameAt);
}

function quoted(scan: Scan, name: string, nameAt: number, open: string): void {
  const openAt = scan.at++;
  const closing = CLOSING[open] ?? open;
  const valueAt = scan.at;
  let end = valueAt;
  while (end < scan.text.length && !closing.includes(scan.text[end] ?? '')) end++;
  if (open !== '"' && open !== "'")
    writing(
      scan,
      openAt,
      openAt + 1,
      `The value of ${name} stands in curly quotes.`,
      'Use straight quotes ("), which parsers of Markdown know.',
    );
  if (end >= scan.text.length) {
    // Most likely the quote was forgotten before the closing brace.
    const brace = scan.text.indexOf('}', valueAt);
    end = brace >= 0 ? brace : scan.text.trimEnd().length;
    writing(scan, openAt, openAt + 1, `The quote that opens the value of ${name} is not closed.`);
    scan.at = end;
  } else {
    scan.at = end + 1;
    const after = scan.text[scan.at];
    if (after !== undefined && !/[\s},;]/.test(after))
      writing(scan, scan.at, scan.at + 1, `A blank is missing after the value of ${name}.`);
  }
  const value = scan.text.slice(valueAt, end).replace(/\s*\n[ \t>]*/g, ' ');
  scan.attributes.push({ name, nameAt, value, valueAt, valueEnd: end });
}

function bare(scan: Scan, name: string, nameAt: number): void {
  const valueAt = scan.at;
  const first = take(scan, BARE);
  // `id=pinto,food=peas` and `id=pinto, food=peas`: the comma is no part of the value.
  const cut = /[,;](?=[A-Za-z][\w-]*=|$)/.exec(first)?.index;
  if (cut !== undefined) scan.at = valueAt + cut;
  const blanks = continued(scan);
  const value = scan.text.slice(valueAt, scan.at);
  const odd = /["'<>=`“”‘’]/.exec(value);
  if (value === '') writing(scan, nameAt, valueAt, `${name} has no value after its equals sign.`);
  else if (blanks)
    writing(
      scan,
      valueAt,
      scan.at,
      `The value of ${name} has blanks but no quotes.`,
      `Write ${name}="${value}".`,
    );
  else if (odd)
    writing(
      scan,
      valueAt + odd.index,
      valueAt + odd.index + 1,
      `The value of ${name} holds “${odd[0]}” but has no quotes around it.`,
      `Write ${name}="…" around the whole value.`,
    );
  scan.attributes.push({ name, nameAt, value, valueAt, valueEnd: valueAt + value.length });
}

/** Words that go on after a value without quotes: all up to the next name with an equals sign. */
function continued(scan: Scan): boolean {
  const from = scan.at;
  while (take(scan, MORE_WORDS) !== '');
  return scan.at > from;
}
const MORE_WORDS = /[ \t]*[,;]?[ \t]+[^\s=,;{}"'“”„‘’«»<>`#.][^\s=,;}]*(?=[\s,;}]|$)(?![ \t]*=)/y;
