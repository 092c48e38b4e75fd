import type { Problem } from '../../diagnostics/index.js';
import { layBricks } from '../brick-rows/bricks.js';
import { mm } from '../geometry.js';
import type { Drawn, DrawOptions } from '../options.js';
import { drawNames } from '../row-names.js';
import { createSheet, finish, outside, type Sheet } from '../sheet.js';
import type { TallyGrid } from '../spec.js';
import { CAP_HEIGHT, paperLines } from '../tokens.js';
import { BOXES, type BoxLine, boxLines, drawableTally } from './boxes.js';

const ROUND = mm(0.5);
/** Room after the boxes for the count, or for a box to write it in. */
const COUNT = { usual: mm(24), large: mm(33) } as const;
const LARGE = 18;
const BETWEEN = mm(1.2);

/** Answers with boxes to fill by pen, or filled, on paper. */
export function drawTallyOnPaper(given: TallyGrid, options: DrawOptions): Drawn {
  const sheet = createSheet(options);
  const { pen, type, big, slack } = sheet;
  const problems: Problem[] = [];
  const reject = (words: string) => problems.push(outside(given.id, words));
  const spec = drawableTally(given, problems);
  const paired = spec.rows.some(({ lines }) => lines.length > 1);
  const words = paired ? mm(big ? 24 : 17) : 0;
  const room = type.value.size > LARGE ? COUNT.large : COUNT.usual;
  const from = sheet.axis + words;
  const row = layBricks(BOXES, { from, to: pen.width - room, gap: mm(0.9), more: mm(1.6), widest: mm(6.6) });
  const high = Math.min(row.width, slack(5.4, 6.6));
  let y = 0;
  for (const [index, answer] of spec.rows.entries()) {
    const names = drawNames(sheet, { name: `${answer.letter}  ${answer.name}` }, reject);
    const lines = boxLines(answer.lines, spec.worth);
    const height = lines.length * high + (lines.length - 1) * BETWEEN;
    const start = y + (index === 0 ? 0.5 : slack(3, big ? 6 : 5));
    const top = sheet.rail ? Math.max(start, y + names.above - height / 2) : start + names.height;
    names.put(sheet.rail ? top + height / 2 : start);
    for (const [i, line] of lines.entries())
      drawLine(sheet, row, line, top + i * (high + BETWEEN), high, reject);
    const open = answer.lines.every(({ people }) => people === null);
    if (open) drawCountBox(sheet, top, height);
    else drawCounts(sheet, lines, top, high, room, reject);
    y = Math.max(top + height, sheet.rail ? top + height / 2 + names.below : 0);
  }
  if (spec.words.box !== '') {
    const said = pen.set(spec.words.box, type.note);
    if (sheet.axis + said.width > pen.width) reject(spec.words.box);
    y += mm(2) + type.note.size;
    pen.put(said, sheet.axis, y);
    y += type.note.size * 0.25;
  }
  return finish(pen, spec.id, y + mm(0.5), problems);
}

function drawLine(
  { pen, type, axis }: Sheet,
  row: ReturnType<typeof layBricks>,
  { line, filled, first }: BoxLine,
  y: number,
  high: number,
  reject: (words: string) => void,
): void {
  const { palette } = pen;
  const inset = paperLines.line / 2;
  for (let i = 0; i < BOXES; i++) {
    const x = row.x(i);
    const part = Math.min(1, Math.max(0, filled - i));
    if (part < 1)
      pen.rect(x + inset, y + inset, row.width - 2 * inset, high - 2 * inset, {
        fill: palette.paper,
        edge: palette.ink,
        width: paperLines.line,
        radius: ROUND,
      });
    if (part > 0)
      pen.rect(x, y, row.width * part, high, { fill: palette.ink, radius: part === 1 ? ROUND : 0 });
  }
  pen.take(row.x(0), y, row.x(BOXES - 1) + row.width - row.x(0), high, 'the boxes');
  if (!first || line.word === '') return;
  const word = pen.set(line.word, type.label);
  if (axis + word.width > row.x(0) - mm(1)) reject(line.word);
  pen.put(word, axis, y + high / 2 + (type.label.size * CAP_HEIGHT) / 2);
}

/** A box to write the sum in, after the boxes. */
function drawCountBox({ pen }: Sheet, top: number, height: number): void {
  const [wide, high] = [mm(16), mm(9)];
  pen.rect(pen.width - wide - 0.5, top + (height - high) / 2, wide, high, {
    fill: pen.palette.paper,
    edge: pen.palette.ink,
    width: paperLines.line,
    radius: mm(0.8),
  });
}

function drawCounts(
  { pen, type }: Sheet,
  lines: readonly BoxLine[],
  top: number,
  high: number,
  room: number,
  reject: (words: string) => void,
): void {
  const shown = lines.filter(({ first }) => first);
  const pitch = high + BETWEEN;
  for (const [i, { line }] of shown.entries()) {
    const middle = shown.length > 1 ? top + i * pitch + high / 2 : top + (lines.length * pitch - BETWEEN) / 2;
    const baseline = middle + (type.value.size * CAP_HEIGHT) / 2;
    const percent = pen.set(line.percent, { ...type.note });
    const count = pen.set(line.text, type.value);
    const gap = line.percent === '' ? 0 : percent.width + mm(2);
    if (count.width + gap > room - mm(1.5)) reject(`${line.text} ${line.percent}`.trim());
    pen.put(percent, pen.width, baseline, 'end');
    pen.put(count, pen.width - gap, baseline, 'end');
  }
}
