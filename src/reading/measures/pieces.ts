/** A stretch of a page as far as reading it goes. Each piece ends its last sentence, with or without a full stop. */
export interface Piece {
  /** A list item is a sentence of its own. A heading is no running text and is not counted. */
  readonly kind: 'text' | 'item' | 'heading';
  readonly text: string;
}

const HEADING = /^#{1,6}\s+(.*)$/u;
const BULLET = /^(?:[-*+•–·▪◦‣○●☐☑□✓]|\d{1,2}[.)])\s+(.*)$/u;
const CLOSED = /[.!?…:;,。！？؟]["'”’»)\]]*$/u;

/**
 * Cuts plain text into pieces: an empty line ends a piece, a bullet or a list number begins an item and is
 * not counted itself, `#` marks a heading. Other lines that follow one another are one piece, because mail
 * and notes wrap their lines, except a short first line without an end mark before a capital letter: that is
 * a heading that somebody forgot to mark, and it is counted as a sentence of its own.
 */
export function piecesOf(text: string): Piece[] {
  const pieces: Piece[] = [];
  let open: { kind: 'text' | 'item'; lines: string[] } | undefined;
  const close = () => {
    if (open) pieces.push({ kind: open.kind, text: open.lines.join(' ') });
    open = undefined;
  };
  for (const raw of text.split(/\r\n?|[\n\u2028\u2029]/u)) {
    const line = raw.trim();
    const heading = HEADING.exec(line);
    const bullet = BULLET.exec(line);
    if (line === '' || heading || bullet) close();
    if (line === '') continue;
    if (heading) pieces.push({ kind: 'heading', text: heading[1] ?? '' });
    else if (bullet) open = { kind: 'item', lines: [bullet[1] ?? ''] };
    else {
      if (open?.lines.length === 1 && standsAlone(open.lines[0] ?? '', line)) close();
      open ??= { kind: 'text', lines: [] };
      open.lines.push(line);
    }
  }
  close();
  return pieces;
}

function standsAlone(line: string, next: string): boolean {
  const short = line.length <= 40 && line.split(/\s+/u).length <= 6;
  return short && !CLOSED.test(line) && /^\p{Lu}/u.test(next);
}
