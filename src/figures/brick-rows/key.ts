import { mm } from '../geometry.js';
import type { Sheet } from '../sheet.js';
import type { BrickRows } from '../spec.js';
import { dashes, paperLines } from '../tokens.js';

/** Where a word stands: its start, its baseline and its lower edge. */
export interface WordPlace {
  readonly from: number;
  readonly baseline: number;
  readonly bottom: number;
}

type Part = 'sure' | 'unsure' | 'gone';

/** What the key has to say: only the looks that occur and that have a word. */
export function keyParts({
  rows,
  words,
}: BrickRows): readonly { readonly part: Part; readonly word: string }[] {
  const occurs: Readonly<Record<Part, boolean>> = {
    sure: rows.some((r) => r.sure > 0),
    unsure: rows.some((r) => r.possible > r.sure),
    gone: rows.some((r) => r.total > r.possible),
  };
  // Where nothing is in doubt or gone, solid bricks explain themselves.
  if (!occurs.unsure && !occurs.gone) return [];
  return (['sure', 'unsure', 'gone'] as const)
    .filter((part) => occurs[part] && words[part] !== '')
    .map((part) => ({ part, word: words[part] }));
}

/**
 * One small brick for each look with its word: on the line of the bracket's word when there is room
 * before it, else below. Returns the y of its lower edge.
 */
export function drawKey(
  sheet: Sheet,
  spec: BrickRows,
  y: number,
  beside: WordPlace | undefined,
  reject: (words: string) => void,
): number {
  const { pen, type, axis, big } = sheet;
  const size = type.note.size * 1.13;
  const [wide, after, apart] = [size * 0.8, mm(1.8), mm(big ? 7 : 6.5)];
  const items = keyParts(spec).map(({ part, word }) => ({ part, line: pen.set(word, type.note) }));
  if (items.length === 0) return y;
  const widths = items.map(({ line }) => wide + after + line.width);
  const whole = widths.reduce((sum, w) => sum + w, 0) + apart * (items.length - 1);
  const sameLine = beside !== undefined && axis + whole + mm(6) <= beside.from;
  let baseline = sameLine ? beside.baseline : y + mm(big ? 3.4 : 2.6) + size * 0.8;
  let x = axis;
  for (const [i, { part, line }] of items.entries()) {
    const w = widths[i] ?? 0;
    if (x > axis && x + w > pen.width) {
      x = axis;
      baseline += type.note.size * 1.5;
    }
    if (x + w > pen.width) reject(line.text);
    drawSample(sheet, part, x, baseline - size * 0.86, wide, size);
    pen.put(line, x + wide + after, baseline);
    x += w + apart;
  }
  return Math.max(y, baseline + type.note.size * 0.25);
}

function drawSample({ pen, one }: Sheet, part: Part, x: number, y: number, wide: number, high: number): void {
  const { palette } = pen;
  const radius = mm(0.4);
  if (part === 'sure') pen.rect(x, y, wide, high, { fill: palette.ink, radius });
  else if (part === 'unsure') {
    pen.rect(x, y, wide, high, { fill: palette.paper });
    pen.hatch(x, y, wide, high);
    const half = paperLines.line / 2;
    pen.rect(x + half, y + half, wide - 2 * half, high - 2 * half, {
      edge: palette.ink,
      width: paperLines.line,
    });
  } else
    pen.rect(x + 0.4, y + 0.4, wide - 0.8, high - 0.8, {
      edge: palette.hair,
      width: paperLines.hair,
      dash: one ? dashes.gone.one : dashes.gone.color,
      radius,
    });
}
