import { scanAttributes, type WrittenAttribute } from './attributes.js';
import { problem } from './codes.js';
import type { InlineContext } from './inline-context.js';
import type { InlineNode } from './lesson.js';
import { closingBracket } from './opening.js';
import { readAttributes } from './read-attributes.js';
import { INLINE, INLINE_ATTRIBUTES, type InlineName } from './service.js';
import { placeOf } from './source.js';

export interface Piece {
  readonly nodes: readonly InlineNode[];
  /** Offset after the attributes, which may stand past what the parser took. */
  readonly end: number;
}

/**
 * `:n[…]{…}`, `:t[…]` and `:cite[…]`, which the parser lets through only where they are certain; nothing
 * after a problem that leaves too little to show.
 */
export function readPiece(name: string, from: number, to: number, context: InlineContext): Piece | undefined {
  const { source, report } = context;
  const kind = INLINE.find((one): one is InlineName => one === name);
  const bracket = from + name.length + 1;
  const close = closingBracket(source.text, bracket, to);
  if (!kind || close === undefined) return undefined;
  const label = source.text
    .slice(bracket + 1, close - 1)
    .replace(/\s*\n[ \t>]*|\s+/g, ' ')
    .trim();
  const { written, end } = attributesAfter(close, to, kind, context);
  const place = placeOf(source, from, end);
  if (label === '') {
    report.add(
      problem('lesson/inline', `:${kind} names nothing in its brackets.`, {
        place,
        hint: `Write the name between the brackets, as in :${kind}[${EXAMPLE[kind]}].`,
      }),
    );
    return undefined;
  }
  const rules = {
    name: `:${kind}`,
    known: INLINE_ATTRIBUTES[kind],
    id: 'none' as const,
    placeOf: (a: number, b: number) => placeOf(source, a, b),
    place,
  };
  const attributes = readAttributes(written, rules, report);
  if (kind === 't') return { nodes: [{ kind: 'term', text: label, place }], end };
  if (kind === 'cite') return { nodes: [{ kind: 'cite', source: label, place }], end };
  const value = (key: string) => {
    const found = attributes.get(key)?.value;
    return found === undefined ? {} : { [key]: found };
  };
  const of = attributes.get('of')?.value;
  if (of === undefined) return undefined;
  return {
    nodes: [{ kind: 'number', name: label, of, ...value('row'), ...value('per'), attributes, place }],
    end,
  };
}

const EXAMPLE: Readonly<Record<InlineName, string>> = { n: 'sodium', t: 'added sugars', cite: 'usda-sr28' };

/** Attributes after a label, also those that a slip keeps from the parser. */
function attributesAfter(
  close: number,
  to: number,
  kind: InlineName,
  { source, report }: InlineContext,
): { readonly written: readonly WrittenAttribute[]; readonly end: number } {
  const { text } = source;
  if (close < to) return scanned(close, to);
  const blanks = /[ \t]*/y;
  blanks.lastIndex = close;
  const brace = close + (blanks.exec(text)?.[0].length ?? 0);
  if (text[brace] !== '{' || (brace > close && kind !== 'n')) return { written: [], end: to };
  if (brace > close)
    report.add(
      problem('lesson/inline', `Blanks stand between :${kind}[…] and its brace.`, {
        place: placeOf(source, close, brace),
        hint: `Write :${kind}[words]{of=id} without blanks.`,
      }),
    );
  const newline = text.indexOf('\n', brace);
  return scanned(brace, newline < 0 ? text.length : newline);

  function scanned(from: number, limit: number) {
    const found = scanAttributes(text, from, limit);
    for (const fault of found.faults)
      report.add(
        problem(fault.code, fault.message, {
          hint: fault.hint,
          place: placeOf(source, fault.from, fault.to),
        }),
      );
    return { written: found.attributes, end: found.end };
  }
}
