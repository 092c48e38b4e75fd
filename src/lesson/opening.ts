import { type Fault, scanAttributes, type WrittenAttribute } from './attributes.js';

/** The opening line of a directive as written, in offsets of its line; or what was most likely meant. */
export interface Opening {
  readonly colons: number;
  /** Offset of the first colon. */
  readonly at: number;
  /** Empty when none was written. */
  readonly name: string;
  readonly nameAt: number;
  /** Offsets of the brackets of a label. */
  readonly label?: { readonly from: number; readonly to: number };
  readonly attributes: readonly WrittenAttribute[];
  readonly faults: readonly Fault[];
}

const NAME = /[\p{L}\p{N}_-]+/uy;
const HOW = 'Write colons, name and braces without blanks between, as in :::name{id=pinto}.';

/** Reads a line whose first mark, at `at`, is a colon that another one follows. */
export function readOpening(line: string, at: number): Opening {
  const faults: Fault[] = [];
  const fault = (from: number, to: number, message: string, hint = HOW) =>
    faults.push({ code: 'lesson/opening', from, to: Math.max(to, from + 1), message, hint });
  const end = line.trimEnd().length;
  let here = at;
  while (line[here] === ':') here++;
  const colons = here - at;
  const nameAt = skipBlanks(line, here);
  if (nameAt > here) fault(at, nameAt, 'Blanks stand between the colons and the name.');
  NAME.lastIndex = nameAt;
  const name = NAME.exec(line)?.[0] ?? '';
  if (name === '') fault(at, end, 'A name is missing after the colons.');
  here = nameAt + name.length;
  const afterName = skipBlanks(line, here);
  if (afterName > here && /[[{]/.test(line[afterName] ?? '')) {
    fault(here, afterName, `Blanks stand between ${name} and its “${line[afterName]}”.`);
    here = afterName;
  }
  let label: Opening['label'];
  if (line[here] === '[') {
    const to = closingBracket(line, here, end);
    if (to === undefined) fault(here, here + 1, 'The bracket that opens here is not closed.');
    else label = { from: here, to };
    here = skipBlanks(line, to ?? here + 1);
  }
  const braced = line[here] === '{';
  const unbraced = !braced && /^[ \t]*[\w-]+[ \t]*=/.test(line.slice(here, end));
  const scanned = braced || unbraced ? scanAttributes(line, skipBlanks(line, here), end) : undefined;
  here = skipBlanks(line, scanned?.end ?? here);
  if (here < end)
    fault(
      here,
      end,
      'Words stand after the directive.',
      'Put them on the next line; this line ends with the brace.',
    );
  return {
    colons,
    at,
    name,
    nameAt,
    ...(label && { label }),
    attributes: scanned?.attributes ?? [],
    faults: [...faults, ...(scanned?.faults ?? [])],
  };
}

function skipBlanks(line: string, from: number): number {
  let at = from;
  while (line[at] === ' ' || line[at] === '\t') at++;
  return at;
}

/** Offset after the bracket that closes the one at `from`; escaped brackets do not count. */
export function closingBracket(text: string, from: number, limit: number): number | undefined {
  let depth = 0;
  for (let at = from; at < limit; at++) {
    const char = text[at];
    if (char === '\\') at++;
    else if (char === '[') depth++;
    else if (char === ']' && --depth === 0) return at + 1;
  }
  return undefined;
}
