import type { Attribute, DirectivePart, Line, Row } from '../../src/lesson/index.js';

const FILE = 'lesson.md';
let count = 0;

/** A directive as the parser would hand it over, without a parser: for words that no Markdown would let through. */
export function part(
  name: string,
  attributes: Readonly<Record<string, string>>,
  rows: readonly (string | readonly [string, readonly string[]])[] = [],
): DirectivePart {
  count += 1;
  const place = { file: FILE, line: count * 100, column: 1 };
  return {
    kind: 'directive',
    name,
    form: rows.length > 0 ? 'container' : 'leaf',
    ...(attributes.id === undefined ? {} : { id: attributes.id }),
    attributes: new Map(
      Object.entries(attributes).map(([key, value], i): [string, Attribute] => [
        key,
        { value, place: { ...place, column: 10 * (i + 1) } },
      ]),
    ),
    rows: rows.map((row, i): Row => {
      const [text, inner] = typeof row === 'string' ? [row, []] : row;
      const at = place.line + 1 + 10 * i;
      return { ...line(text, at), rows: inner.map((words, k) => ({ ...line(words, at + 1 + k), rows: [] })) };
    }),
    text: [],
    parts: [],
    place,
    bodyPlace: { ...place, line: place.line + 1 },
  };
}

function line(text: string, at: number): Line {
  const place = { file: FILE, line: at, column: 3 };
  return { text, place, inlines: [{ kind: 'text', text, place }], marks: [{ at: 0, line: at, column: 3 }] };
}
