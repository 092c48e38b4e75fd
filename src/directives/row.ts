import type { Place } from '../diagnostics/index.js';
import type { Line } from '../lesson/index.js';

/** One `;`-parted piece of a row: its text, trimmed, and where it stands. */
export interface Piece {
  readonly text: string;
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
  const pieces = splitPieces(line);
  const [main = { text: '', place: line.place }, ...rest] = pieces;
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
    value: { text: value, place: { ...piece.place, column: piece.place.column + shift } },
  };
}

function splitPieces(line: Line): Piece[] {
  const out: Piece[] = [];
  let start = 0;
  for (let i = 0; i <= line.text.length; i++) {
    if (i < line.text.length && line.text[i] !== ';') continue;
    const raw = line.text.slice(start, i);
    const text = raw.trim();
    if (text !== '' || out.length === 0)
      out.push({ text, place: placeIn(line, start + (raw.length - raw.trimStart().length), text.length) });
    start = i + 1;
  }
  return out;
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
