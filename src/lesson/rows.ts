import type { List, ListItem as MdastItem, Paragraph } from 'mdast';
import { problem } from './codes.js';
import { toInlineNodes } from './inline.js';
import { type InlineContext, spanOf } from './inline-context.js';
import type { Line, Row } from './lesson.js';
import { placeOf, pointAt } from './source.js';

const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: '\u00a0',
};

/** A paragraph inside a directive as one line of text, with marks that lead back to the source. */
export function lineOf(paragraph: Paragraph, context: InlineContext): Line {
  const { source } = context;
  const [from, to] = spanOf(paragraph);
  const marks: { at: number; line: number; column: number }[] = [];
  let text = '';
  let at = from;
  for (const [index, written] of source.text.slice(from, to).split('\n').entries()) {
    const lead = index === 0 ? 0 : (/^[\s>]*/.exec(written)?.[0].length ?? 0);
    if (index > 0) text = `${text.trimEnd()} `;
    const point = pointAt(source, at + lead);
    marks.push({ at: text.length, ...point });
    text += resolved(written.slice(lead), text.length, point, marks);
    at += written.length + 1;
  }
  return {
    text: text.trimEnd(),
    inlines: toInlineNodes(paragraph.children, context),
    place: placeOf(source, from, to),
    marks,
  };
}

/** Resolves escapes and character references; a mark follows each, since the text is shorter there. */
function resolved(
  written: string,
  offset: number,
  start: { line: number; column: number },
  marks: { at: number; line: number; column: number }[],
): string {
  let out = '';
  let last = 0;
  for (const found of written.matchAll(/\\([!-/:-@[-`{-~])|&(#\d{1,7}|#x[\da-f]{1,6}|[a-z]{2,5});/gi)) {
    const [whole, escaped, name] = found;
    const value = escaped ?? entity(name ?? '');
    if (value === undefined) continue;
    out += written.slice(last, found.index) + value;
    last = found.index + whole.length;
    marks.push({ at: offset + out.length, line: start.line, column: start.column + last });
  }
  return out + written.slice(last);
}

function entity(name: string): string | undefined {
  if (!name.startsWith('#')) return ENTITIES[name.toLowerCase()];
  const code = /^#x/i.test(name) ? Number.parseInt(name.slice(2), 16) : Number(name.slice(1));
  // Control characters and halves of characters stay as they were written.
  const control = code < 32 || (code >= 127 && code < 160);
  return !control && code < 0x110000 && !(code >= 0xd800 && code < 0xe000)
    ? String.fromCodePoint(code)
    : undefined;
}

/** The rows of a directive's list, with the lists inside them. Anything else in a row is reported. */
export function rowsOf(list: List, context: InlineContext): Row[] {
  return list.children.flatMap((item) => rowOf(item, context) ?? []);
}

function rowOf(item: MdastItem, context: InlineContext): Row | undefined {
  const { source, report } = context;
  const [first, ...rest] = item.children;
  const place = placeOf(source, ...spanOf(item));
  if (first?.type !== 'paragraph') {
    report.add(
      problem('lesson/body', 'This row holds no words.', {
        place: { file: place.file, line: place.line, column: place.column },
        hint: 'Write the row after its hyphen.',
      }),
    );
    return undefined;
  }
  const rows = rest.flatMap((child) => {
    if (child.type === 'list') return rowsOf(child, context);
    report.add(
      problem('lesson/body', 'A row holds words and, below them, a list; this is neither.', {
        place: placeOf(source, ...spanOf(child)),
        hint: 'Move it out of the list.',
      }),
    );
    return [];
  });
  return { ...lineOf(first, context), rows };
}
