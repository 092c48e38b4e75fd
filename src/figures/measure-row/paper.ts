import type { Problem } from '../../diagnostics/index.js';
import { mm } from '../geometry.js';
import type { Drawn, DrawOptions } from '../options.js';
import { createSheet, finish, outside, type Sheet } from '../sheet.js';
import type { MeasurePour, MeasureRow, MeasureVessel } from '../spec.js';
import { CAP_HEIGHT, paperLines } from '../tokens.js';
import { drawBowl, stack } from './bowl.js';
import { shapeOf } from './vessels.js';

const THICK = mm(5);
const LEADER = mm(9);
/** Words narrower than this wrap too often; then the measures are drawn smaller. */
const LEAST_WORDS = mm(44);
const VESSEL_GAP = mm(6);
const POUR_GAP = mm(2.4);
/** The line that shows whether a page was printed at its true size. */
const CHECK_LINE = mm(50);

/** Cups and spoons at true size where they and their words fit, else smaller, and then that is said. */
export function drawMeasuresOnPaper(spec: MeasureRow, options: DrawOptions): Drawn {
  const sheet = createSheet(options);
  const { pen, type, axis, rail } = sheet;
  const problems: Problem[] = [];
  const reject = (words: string) => problems.push(outside(spec.id, words));
  const shapes = spec.vessels.map((vessel) => ({ vessel, shape: shapeOf(vessel) }));
  const handle = rail ? Math.min(mm(36), axis - mm(1)) : mm(14);
  const start = rail ? axis : handle + mm(0.5);
  const widest = Math.max(0, ...shapes.map(({ shape }) => mm(shape.width)));
  const room = pen.width - start - LEADER - LEAST_WORDS;
  const shrink = Math.min(1, room / Math.max(1, widest));
  const scale = mm(1) * shrink;
  const wordsAt = start + widest * shrink + LEADER;
  // The words of a full measure stand level with its rim, so their first capital reaches above it.
  const lead = (type.name.size * CAP_HEIGHT) / 2;
  let y: number = paperLines.firm;
  for (const [index, { vessel, shape }] of shapes.entries()) {
    if (index > 0) y += VESSEL_GAP;
    if (!rail) y = nameAbove(sheet, vessel, y, reject);
    const top = y;
    y += lead;
    drawBowl(pen, vessel, shape, start, y, {
      scale,
      line: paperLines.firm,
      fillLine: paperLines.firm,
      handle,
      thick: THICK,
    });
    pen.take(start, y, shape.width * scale, shape.height * scale, 'the measure');
    const named = rail ? nameInRail(sheet, vessel, y + THICK + mm(2.6), reject) : y;
    const pours = vessel.pours.toSorted((a, b) => b.share - a.share);
    const blocks = pours.map((pour) => setPour(sheet, pour, pen.width - wordsAt, reject));
    const levels = pours.map((pour) => shape.level(pour.share));
    const tops = stack(
      blocks.map((block, i) => ({
        wanted: (levels[i]?.y ?? 0) * scale - block.middle + lead,
        height: block.height,
      })),
      POUR_GAP,
    );
    let bottom = Math.max(y + shape.height * scale, named);
    for (const [i, block] of blocks.entries()) {
      const level = levels[i];
      const at = top + (tops[i] ?? 0);
      block.put(wordsAt, at);
      bottom = Math.max(bottom, at + block.height);
      if (level) leader(sheet, start + level.to * scale, y + level.y * scale, wordsAt, at + block.middle);
    }
    y = bottom;
  }
  y =
    shrink < 1
      ? noteLine(sheet, spec.words.smaller, start, y, reject)
      : checkLine(sheet, spec, start, y, reject);
  return finish(pen, spec.id, y + mm(0.5), problems);
}

function nameInRail(
  { pen, type, axis }: Sheet,
  { name, note }: MeasureVessel,
  y: number,
  reject: (words: string) => void,
): number {
  const title = pen.set(name, type.name);
  const small = pen.set(note, { ...type.note, color: pen.palette.slate });
  if (title.width > axis - mm(3)) reject(name);
  if (small.width > axis - mm(3)) reject(note);
  const first = y + type.name.size * CAP_HEIGHT;
  pen.put(title, 0, first);
  pen.put(small, 0, first + type.note.size * 1.35);
  return first + type.note.size * 1.6;
}

function nameAbove(
  { pen, type }: Sheet,
  { name, note }: MeasureVessel,
  y: number,
  reject: (words: string) => void,
): number {
  const title = pen.set(name, type.name);
  const small = pen.set(note, { ...type.note, color: pen.palette.slate });
  if (title.width + mm(4) + small.width > pen.width) reject(`${name} ${note}`);
  pen.put(title, 0, y + type.name.size * 0.8);
  pen.put(small, title.width + mm(4), y + type.name.size * 0.8);
  return y + type.name.size * 1.3 + mm(1.5);
}

/** Name, amount, and what it comes to, below one another. */
function setPour({ pen, type }: Sheet, pour: MeasurePour, width: number, reject: (words: string) => void) {
  const name = pen.paragraph(pour.name, type.name, width, { balance: true });
  if (name.overflow) reject(pour.name);
  const amount = pen.set(pour.amount, { ...type.value, number: pour.number });
  const how = pour.how ? [pen.paragraph(pour.how, { ...type.label, weight: 400 }, width)] : [];
  const under = pour.under.map((one) =>
    pen.paragraph(
      one.text,
      { ...type.label, weight: 400, ...(one.number ? { number: one.number } : {}) },
      width,
    ),
  );
  const lines = [...how, ...under];
  for (const line of lines) if (line.overflow) reject(pour.how ?? pour.amount);
  if (amount.width > width) reject(pour.amount);
  const nameStep = type.name.size * 1.18;
  const valueStep = type.value.size * 1.3;
  const step = type.label.size * 1.25;
  const count = lines.reduce((sum, line) => sum + line.lines.length, 0);
  const amountAt = type.name.size * CAP_HEIGHT + (name.lines.length - 1) * nameStep + valueStep;
  return {
    height: amountAt + count * step + type.label.size * 0.25,
    /** Where the leader meets the words: the middle of the name's first capital. */
    middle: (type.name.size * CAP_HEIGHT) / 2,
    put(x: number, top: number) {
      pen.putParagraph(name, x, width, top + type.name.size * CAP_HEIGHT, nameStep);
      pen.put(amount, x, top + amountAt);
      let at = top + amountAt + step;
      for (const line of lines) {
        pen.putParagraph(line, x, width, at, step);
        at += line.lines.length * step;
      }
    },
  };
}

/** From the line in the measure to its words: level out of the wall, then to where the words stand. */
function leader({ pen }: Sheet, x: number, y: number, wordsAt: number, to: number): void {
  const { ink } = pen.palette;
  const bend = Math.min(wordsAt - mm(6.6), Math.max(x + mm(1), wordsAt - mm(6.6)));
  pen.circle(x, y, mm(0.75), { fill: ink });
  pen.poly(
    [
      [x, y],
      [bend, y],
      [wordsAt - mm(2.4), to],
      [wordsAt - mm(1.6), to],
    ],
    { edge: ink, width: paperLines.line },
  );
}

/** A line of a known length beside the claim, so that anybody can hold a ruler to it. */
function checkLine(
  sheet: Sheet,
  { words, id }: MeasureRow,
  x: number,
  y: number,
  reject: (words: string) => void,
): number {
  const { pen, type } = sheet;
  const middle = y + mm(5.4);
  const tick = mm(1.3);
  pen.line(x, middle, x + CHECK_LINE, middle, { width: paperLines.line });
  for (const end of [x, x + CHECK_LINE])
    pen.line(end, middle - tick, end, middle + tick, { width: paperLines.line });
  pen.take(x, middle - tick, CHECK_LINE, 2 * tick, 'the line to check');
  const small = { ...type.note, ...(words.check.number ? { number: words.check.number } : {}) };
  const beside = pen.set(words.check.text, small);
  const from = x + CHECK_LINE + mm(3);
  if (from + beside.width <= pen.width) {
    pen.put(beside, from, middle + (type.note.size * CAP_HEIGHT) / 2);
    return middle + tick + mm(0.6);
  }
  const left = sheet.rail ? x : 0;
  const below = pen.paragraph(words.check.text, small, pen.width - left);
  if (below.overflow) reject(id);
  const first = middle + tick + type.note.size * 1.2;
  pen.putParagraph(below, left, pen.width - left, first, type.note.size * 1.3);
  return first + (below.lines.length - 1) * type.note.size * 1.3 + type.note.size * 0.3;
}

function noteLine(
  { pen, type }: Sheet,
  text: string,
  x: number,
  y: number,
  reject: (words: string) => void,
): number {
  const note = pen.paragraph(text, type.note, pen.width - x);
  if (note.overflow) reject(text);
  const first = y + mm(3) + type.note.size * 0.8;
  pen.putParagraph(note, x, pen.width - x, first, type.note.size * 1.3);
  return first + (note.lines.length - 1) * type.note.size * 1.3 + type.note.size * 0.3;
}
