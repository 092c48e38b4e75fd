import type { Problem } from '../../diagnostics/index.js';
import { letterDot } from '../disc.js';
import type { Drawn, DrawOptions } from '../options.js';
import type { Pen } from '../pen.js';
import { finish, outside } from '../sheet.js';
import type { TallyGrid } from '../spec.js';
import { createStage, tooHigh, tooMany } from '../stage.js';
import { CAP_HEIGHT, screenLines, screenType } from '../tokens.js';
import { BOXES, type BoxLine, boxLines, drawableTally } from './boxes.js';

const MOST_ROWS = 4;
const PITCH = { widest: 146, tightest: 78 } as const;
const DISC = { radius: 36, letter: 46 } as const;
const NAME = { x: 94, end: 320 } as const;
/** Boxes of one round, and of two: those begin later, after their word. */
const BOX = { x: 336, width: 40, pitch: 46, more: 20 } as const;
const ROUND_BOX = { x: 448, width: 28, pitch: 33, more: 12 } as const;
const LINE = { highest: 44, between: 6, apart: 16 } as const;
const COUNT = { size: 72, weight: 800 } as const;
const SMALL_COUNT = { size: 44, weight: 800 } as const;
const PERCENT_ROOM = 84;

/** A row of the grid: its middle, and the height of its boxes. */
interface Row {
  readonly middle: number;
  readonly high: number;
  readonly roomy: boolean;
}

/** Answers with thirty boxes each, empty until somebody has counted, on a slide. */
export function drawTallyOnScreen(given: TallyGrid, options: DrawOptions): Drawn {
  const { pen, width, height } = createStage(options);
  const problems: Problem[] = [];
  const reject = (words: string) => problems.push(outside(given.id, words));
  const spec = drawableTally(given, problems);
  const { rows } = spec;
  if (rows.length > MOST_ROWS) problems.push(tooMany(spec.id, 'answers', rows.length, MOST_ROWS, '- …'));
  const key = spec.words.box === '' ? 0 : 48;
  const pitch = Math.min(PITCH.widest, (height - key) / Math.max(1, rows.length));
  if (pitch < PITCH.tightest) problems.push(tooHigh(spec.id, (PITCH.tightest - pitch) * rows.length));
  const high = Math.min(LINE.highest, (Math.max(PITCH.tightest, pitch) - LINE.apart - LINE.between) / 2);
  for (const [index, answer] of rows.entries()) {
    const lines = boxLines(answer.lines, spec.worth);
    const row = { middle: index * pitch + high + LINE.between / 2, high, roomy: pitch >= 120 };
    const radius = Math.min(DISC.radius, pitch / 2 - 6);
    letterDot(pen, {
      x: DISC.radius + 2,
      y: row.middle,
      radius,
      letter: answer.letter,
      size: (DISC.letter * radius) / DISC.radius,
      fill: pen.palette.paper,
      edge: { edge: pen.palette.ink, width: screenLines.disc },
    });
    drawName(pen, answer.name, row.middle, reject);
    const paired = answer.lines.length > 1;
    for (const [i, line] of lines.entries()) drawLine(pen, line, lineTop(row, i), row.high, paired, reject);
    drawCounts(pen, lines, row, width, paired, reject);
  }
  if (key > 0) {
    const said = pen.set(spec.words.box, screenType.note);
    if (said.width > width - BOX.x) reject(spec.words.box);
    pen.put(said, BOX.x, height - 12);
  }
  return finish(pen, spec.id, height, problems);
}

/** One line, or two around the row's middle. */
function drawName(pen: Pen, name: string, middle: number, reject: (words: string) => void): void {
  const look = { ...screenType.name, weight: 700 } as const;
  const leading = look.size * 1.1;
  const words = pen.paragraph(name, look, NAME.end - NAME.x, { balance: true });
  if (words.overflow || words.lines.length > 2) reject(name);
  const first = middle - ((words.lines.length - 1) * leading) / 2 + (look.size * CAP_HEIGHT) / 2;
  pen.putParagraph(words, NAME.x, NAME.end - NAME.x, first, leading);
}

function drawLine(
  pen: Pen,
  { line, filled, first }: BoxLine,
  y: number,
  high: number,
  paired: boolean,
  reject: (words: string) => void,
): void {
  const { palette } = pen;
  const { x: from, width, pitch, more } = paired ? ROUND_BOX : BOX;
  const edge = screenLines.track;
  const at = (i: number) => from + i * pitch + Math.floor(i / 5) * more;
  for (let i = 0; i < BOXES; i++) {
    const part = Math.min(1, Math.max(0, filled - i));
    if (part < 1)
      pen.rect(at(i) + edge / 2, y + edge / 2, width - edge, high - edge, {
        fill: palette.paper,
        edge: palette.hair,
        width: edge,
      });
    if (part > 0) pen.rect(at(i), y, width * part, high, { fill: palette.ink });
  }
  pen.take(from, y, at(BOXES - 1) + width - from, high, 'the boxes');
  if (!first || line.word === '') return;
  const word = pen.set(line.word, screenType.note);
  if (NAME.end + 16 + word.width > from - 8) reject(line.word);
  pen.put(word, NAME.end + 16, y + high / 2 + (screenType.note.size * CAP_HEIGHT) / 2);
}

/** Upper edge of the first or second line of boxes. */
function lineTop({ middle, high }: Row, line: number): number {
  return middle - high - LINE.between / 2 + line * (high + LINE.between);
}

/** The count at the end of the row; its percentage under it, or beside the count of a round. */
function drawCounts(
  pen: Pen,
  lines: readonly BoxLine[],
  row: Row,
  width: number,
  paired: boolean,
  reject: (words: string) => void,
): void {
  const shown = lines.filter(({ line, first }) => first && line.text !== '');
  const room = width - (BOX.x + BOXES * BOX.pitch + 2 * BOX.more) - 4;
  for (const [i, { line }] of shown.entries()) {
    const percent = pen.set(line.percent, screenType.note);
    if (paired) {
      const baseline = lineTop(row, i) + (row.high + SMALL_COUNT.size * CAP_HEIGHT) / 2;
      const gap = line.percent === '' ? 0 : PERCENT_ROOM;
      pen.put(pen.set(line.text, SMALL_COUNT), width - gap, baseline, 'end');
      pen.put(percent, width, baseline, 'end');
      continue;
    }
    const large = pen.set(line.text, COUNT);
    const fits = row.roomy && large.width <= room;
    const count = fits ? large : pen.set(line.text, SMALL_COUNT);
    if (count.width > room) reject(line.text);
    const cap = (fits ? COUNT.size : SMALL_COUNT.size) * CAP_HEIGHT;
    const below = line.percent === '' ? 0 : 10 + screenType.note.size * CAP_HEIGHT;
    const baseline = row.middle + (cap - below) / 2;
    pen.put(count, width, baseline, 'end');
    pen.put(percent, width, baseline + below, 'end');
  }
}
