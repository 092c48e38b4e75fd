import type { Line } from '../lesson/index.js';
import { type Piece, placeIn, type RowPieces, splitRow } from './row.js';

/** A row `old -> new ; facts`. */
export interface ArrowRow extends Omit<RowPieces, 'main'> {
  readonly old: Piece;
  readonly fresh: Piece;
}

const ARROW = /->|→|⟶/g;

/** Splits a row at its one arrow; nothing when it has none or several, or when a side is empty. */
export function splitArrow(row: Line): ArrowRow | undefined {
  const { main, facts, strays } = splitRow(row);
  const [arrow, ...more] = [...main.text.matchAll(ARROW)];
  if (!arrow || more.length > 0) return undefined;
  // Where the first piece stands in the text of the row.
  const start = row.text.indexOf(main.text);
  const side = (from: number, to: number): Piece => {
    const raw = main.text.slice(from, to);
    const text = raw.trim();
    const place = placeIn(row, start + from + (raw.length - raw.trimStart().length), text.length);
    return { text, inlines: [{ kind: 'text', text, place }], place };
  };
  const old = side(0, arrow.index);
  const fresh = side(arrow.index + arrow[0].length, main.text.length);
  return old.text === '' || fresh.text === '' ? undefined : { old, fresh, facts, strays };
}
