import type { Place } from '../diagnostics/index.js';
import type { InlineNode, Line } from '../lesson/index.js';

/** One `;`-parted piece of a row: its text, trimmed, the same as running text, and where it stands. */
export interface Piece {
  readonly text: string;
  readonly inlines: readonly InlineNode[];
  readonly place: Place;
}

/** A row as directives read it: the first piece, then facts written `name = value`. */
export interface RowPieces {
  readonly main: Piece;
  readonly facts: ReadonlyMap<string, Piece>;
  /** Pieces after the first that are no `name = value`, and facts written twice. */
  readonly strays: readonly Piece[];
}

/** Splits a row at `;`. A name is one or two words of letters and hyphens; the first `=` parts it from its value. */
export function splitRow(line: Line): RowPieces {
  const [main = { text: '', inlines: [], place: line.place }, ...rest] = splitPieces(line);
  const facts = new Map<string, Piece>();
  const strays: Piece[] = [];
  for (const piece of rest) {
    const fact = readFact(piece);
    if (!fact || facts.has(fact.name)) strays.push(piece);
    else facts.set(fact.name, fact.value);
  }
  return { main, facts, strays };
}

/** `name = value` as a fact, or nothing. */
export function readFact(piece: Piece): { readonly name: string; readonly value: Piece } | undefined {
  const match = /^([a-z][a-z -]*?)\s*=\s*(.*)$/is.exec(piece.text);
  if (!match?.[1]) return undefined;
  const value = match[2] ?? '';
  const shift = piece.text.length - value.length;
  return {
    name: match[1].toLowerCase(),
    value: {
      text: value,
      inlines: withoutName(piece.inlines),
      place: { ...piece.place, column: piece.place.column + shift },
    },
  };
}

/** The first node of these kinds in running text, however deep. */
export function firstOf(
  nodes: readonly InlineNode[],
  kinds: readonly InlineNode['kind'][],
): InlineNode | undefined {
  for (const node of nodes) {
    if (kinds.includes(node.kind)) return node;
    const inside = 'children' in node ? firstOf(node.children, kinds) : undefined;
    if (inside) return inside;
  }
  return undefined;
}

function splitPieces(line: Line): Piece[] {
  const raws = line.text.split(';');
  const runs = splitInlines(line.inlines);
  const out: Piece[] = [];
  let start = 0;
  raws.forEach((raw, index) => {
    const text = raw.trim();
    if (text !== '' || out.length === 0) {
      const place = placeIn(line, start + (raw.length - raw.trimStart().length), text.length);
      // A semicolon inside code or a link parts the text and not the running text; then the text alone is safe.
      const inlines =
        runs.length === raws.length ? (runs[index] ?? []) : [{ kind: 'text' as const, text, place }];
      out.push({ text, inlines, place });
    }
    start += raw.length + 1;
  });
  return out;
}

/** Running text cut at the semicolons of its own texts. */
function splitInlines(nodes: readonly InlineNode[]): InlineNode[][] {
  const runs: InlineNode[][] = [[]];
  for (const node of nodes) {
    if (node.kind !== 'text') {
      runs.at(-1)?.push(node);
      continue;
    }
    let at = 0;
    node.text.split(';').forEach((text, index) => {
      if (index > 0) runs.push([]);
      const place = { ...node.place, column: node.place.column + at };
      if (text !== '') runs.at(-1)?.push({ kind: 'text', text, place });
      at += text.length + 1;
    });
  }
  return runs;
}

/** Running text after the first `name =`, which stands in its first text. */
function withoutName(nodes: readonly InlineNode[]): readonly InlineNode[] {
  const [first, ...rest] = nodes;
  if (first?.kind !== 'text') return nodes;
  const text = first.text.replace(/^[^=]*=\s*/, '');
  const place = { ...first.place, column: first.place.column + (first.text.length - text.length) };
  return text === '' ? rest : [{ kind: 'text', text, place }, ...rest];
}

/** The place of a stretch of a line's text, by the marks that the parser left. */
export function placeIn(line: Line, at: number, length: number): Place {
  const mark = line.marks.findLast((m) => m.at <= at) ?? {
    at: 0,
    line: line.place.line,
    column: line.place.column,
  };
  const column = mark.column + (at - mark.at);
  return { file: line.place.file, line: mark.line, column, endLine: mark.line, endColumn: column + length };
}
