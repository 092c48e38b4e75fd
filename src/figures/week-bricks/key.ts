import { letterDot } from '../disc.js';
import { mm } from '../geometry.js';
import type { Sheet } from '../sheet.js';
import type { WeekBricks } from '../spec.js';
import { paperLines } from '../tokens.js';
import { type BrickLines, drawStretch } from './brick.js';

type Sample = 'brick' | 'vigorous' | 'strength' | 'balance';

/** What the key has to say: a blank explains everything that a reader may draw into it. */
export function weekKey({
  mode,
  days,
  sum,
  words,
}: WeekBricks): readonly { readonly sample: Sample; readonly words: string }[] {
  const blank = mode === 'blank';
  const all = [
    { sample: 'brick', words: words.brick, there: true },
    { sample: 'vigorous', words: words.vigorous, there: blank || sum.vigorous > 0 },
    { sample: 'strength', words: words.strength, there: blank || days.some((day) => day.strength) },
    { sample: 'balance', words: words.balance, there: !blank && days.some((day) => day.balance) },
  ] as const;
  return all.filter(({ there, words: said }) => there && said !== '');
}

/** A small sample of each look with its word, in as many lines as it takes. Returns the y below. */
export function drawWeekKey(
  sheet: Sheet,
  spec: WeekBricks,
  lines: BrickLines,
  y: number,
  reject: (words: string) => void,
): number {
  const { pen, type, axis, big } = sheet;
  const size = type.note.size;
  const after = mm(1.8);
  let baseline = y + mm(big ? 3.6 : 3) + size * 0.8;
  let x = axis;
  for (const { sample, words } of weekKey(spec)) {
    const said = pen.set(words, type.note);
    const wide = sample === 'strength' ? size * 1.5 : sample === 'balance' ? size * 1.1 : mm(5.2);
    const whole = wide + after + said.width;
    if (x > axis && x + whole > pen.width) {
      x = axis;
      baseline += size * 1.6;
    }
    if (x + whole > pen.width) reject(words);
    drawSample(sheet, spec, lines, sample, x, baseline, wide);
    pen.put(said, x + wide + after, baseline);
    x += whole + mm(6);
  }
  return baseline + size * 0.3;
}

function drawSample(
  { pen, type }: Sheet,
  { mode, words }: WeekBricks,
  lines: BrickLines,
  sample: Sample,
  x: number,
  baseline: number,
  wide: number,
): void {
  const size = type.note.size;
  const middle = baseline - size * 0.33;
  if (sample === 'strength') {
    const h = size * 0.95;
    pen.rect(x + 0.5, middle - h / 2, wide - 1, h, {
      edge: pen.palette.ink,
      width: paperLines.firm,
      radius: h / 2,
    });
  } else if (sample === 'balance')
    letterDot(pen, {
      x: x + wide / 2,
      y: middle,
      radius: wide / 2,
      letter: words.balanceLetter,
      size: Math.max(9, size * 0.86),
      fill: pen.palette.paper,
      edge: { edge: pen.palette.ink, width: paperLines.line },
    });
  else {
    const h = mm(3.6);
    const kind = sample === 'vigorous' ? 'vigorous' : mode === 'blank' ? 'empty' : 'moderate';
    drawStretch(
      pen,
      { brick: 0, from: 0, to: 1, kind },
      { x, y: middle - h / 2, width: wide, height: h, fills: 'up' },
      lines,
    );
  }
}
