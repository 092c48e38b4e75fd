import type { Problem } from '../../diagnostics/index.js';
import { drawArrow } from '../arrow.js';
import { type PictureOf, paperCounter, pictureFinder } from '../dish/counter.js';
import { centered } from '../dish/labels.js';
import { noPicture } from '../dish/sound.js';
import { drawTurnLanes } from '../dish-turn/lanes.js';
import { mm } from '../geometry.js';
import type { Drawn, DrawOptions } from '../options.js';
import { createSheet, finish, outside, type Sheet } from '../sheet.js';
import type { SwapPair, Swaps } from '../spec.js';
import { paperLines } from '../tokens.js';

/** Pairs of foods, each joined by an arrow that carries the job, with what changes beneath. */
export function drawSwapsOnPaper(spec: Swaps, options: DrawOptions): Drawn {
  const sheet = createSheet(options);
  const problems: Problem[] = [];
  const reject = (words: string) => problems.push(outside(spec.id, words));
  const pictureOf = pictureFinder(options.picture, options.ink, (name) =>
    problems.push(noPicture(spec.id, name)),
  );
  let y = mm(0.6);
  for (const [i, row] of spec.rows.entries()) {
    if (i > 0) {
      y += sheet.slack(2, 3.5);
      sheet.pen.line(0, y, sheet.pen.width, y, { edge: sheet.pen.palette.hair, width: paperLines.hair });
      y += sheet.slack(2, 3.5);
    }
    y = drawPair(sheet, row, y, pictureOf, reject);
    if (row.lanes.length > 0) y = drawTurnLanes(sheet, lanesAsTurn(spec, row), y + mm(1.4), reject);
  }
  if (spec.rows.some(({ lanes }) => lanes.length > 0)) y = drawKey(sheet, spec, y, reject);
  return finish(sheet.pen, spec.id, y + mm(0.5), problems);
}

/** A turn of no dish: its lanes are drawn alike here and there. */
function lanesAsTurn({ id, mode, alternative, words }: Swaps, { lanes }: SwapPair) {
  return {
    kind: 'dish-turn',
    id,
    mode,
    alternative,
    numbers: [],
    shape: 'plate',
    kinds: [],
    before: { title: '', foods: [] },
    dishes: false,
    swaps: [],
    lanes,
    lost: '',
    words: { ...words, changed: '' },
  } as const;
}

function drawPair(
  sheet: Sheet,
  { old, fresh, job }: SwapPair,
  y: number,
  pictureOf: PictureOf,
  reject: (words: string) => void,
): number {
  const { pen, type, big } = sheet;
  const radius = big ? mm(8.5) : mm(7);
  const gap = mm(big ? 40 : 36);
  const half = (pen.width - gap) / 2;
  const room = half - 2 * radius - mm(4);
  const [nameStep, noteStep] = [type.name.size * 1.18, type.label.size * 1.25];
  const sides = [old, fresh].map((side) => ({
    side,
    name: pen.paragraph(side.name, type.name, room),
    note: pen.paragraph(side.note, { ...type.label, weight: 400 }, room),
  }));
  const high = ({ name, note }: (typeof sides)[number]) =>
    name.lines.length * nameStep + note.lines.length * noteStep;
  const jobStep = type.label.size * 1.2;
  const work = pen.paragraph(job, { ...type.label, color: pen.palette.accent }, gap - mm(5), {
    align: 'center',
    balance: true,
  });
  if (work.overflow) reject(job);
  const over = work.lines.length * jobStep + mm(1.6);
  const above = Math.max(radius + mm(0.6), over, ...sides.map((one) => high(one) / 2));
  const center = y + above;
  for (const [i, one] of sides.entries()) {
    const x = i * (half + gap) + radius + mm(0.6);
    if (one.name.overflow) reject(one.side.name);
    if (one.note.overflow) reject(one.side.note);
    paperCounter(pen, x, center, radius, { picture: one.side.picture }, pictureOf);
    const [left, first] = [x + radius + mm(2.4), center - high(one) / 2];
    pen.putParagraph(one.name, left, room, first + type.name.size * 0.88, nameStep);
    const second = first + one.name.lines.length * nameStep;
    pen.putParagraph(one.note, left, room, second + type.label.size * 0.88, noteStep);
  }
  const top = center - over;
  pen.putParagraph(work, half + mm(2.5), gap - mm(5), top + type.label.size * 0.85, jobStep);
  drawArrow(pen, {
    from: half + mm(1.5),
    to: half + gap - mm(1.5),
    y: center,
    head: mm(2.6),
    width: paperLines.bold,
  });
  return center + Math.max(radius + mm(0.6), ...sides.map((one) => high(one) / 2));
}

/** What open and solid mean, once for all lanes. */
function drawKey(
  { pen, type, axis }: Sheet,
  { words }: Swaps,
  y: number,
  reject: (words: string) => void,
): number {
  const { palette } = pen;
  const size = type.note.size;
  const dot = mm(1.6);
  const middle = y + mm(2) + size * 0.5;
  let x = axis;
  for (const [said, fill] of [
    [words.before, palette.paper],
    [words.after, palette.ink],
  ] as const) {
    const line = pen.set(said, type.note);
    const whole = 2 * dot + mm(2) + line.width;
    if (x + whole > pen.width) reject(said);
    pen.circle(x + dot, middle, dot, { fill, edge: palette.ink, width: paperLines.line });
    pen.put(line, x + 2 * dot + mm(2), centered(middle, size));
    x += whole + mm(6);
  }
  return middle + size * 0.7;
}
