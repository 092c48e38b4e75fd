import type { Problem } from '../../diagnostics/index.js';
import { mm } from '../geometry.js';
import type { Drawn, DrawOptions } from '../options.js';
import type { Words } from '../pen.js';
import { createSheet, finish, outside, type Sheet } from '../sheet.js';
import { signMarks } from '../signs.js';
import type { CostRung, CostRungs } from '../spec.js';
import { CAP_HEIGHT, DISC_BASELINE, dashes, paperLines, RAIL } from '../tokens.js';
import { bricksOf, drawableRungs, longest } from './rungs.js';

const ROUND = mm(0.5);
const GAP = mm(0.9);
const WIDEST = mm(30);
const NARROWEST = mm(3.6);
const SIGN = mm(8.4);
/** From the start edge: the middle of the sign, and where names begin. */
const SIGN_AT = mm(12.4);
const NAME_AT = mm(18.4);
const NAME_LINES = 3;
const POST = { dash: [mm(1.6), mm(1.2)] } as const;

/** How the rungs stand: names in the rail beside the bricks, or on a line above them. */
interface Ladder {
  readonly sheet: Sheet;
  readonly from: number;
  readonly brick: { readonly width: number; readonly height: number };
  readonly above: boolean;
  readonly pitch: number;
  readonly radius: number;
}

/** What one cup costs, a rung for each food, on paper. */
export function drawRungsOnPaper(given: CostRungs, options: DrawOptions): Drawn {
  const sheet = createSheet(options);
  const { pen, type } = sheet;
  const problems: Problem[] = [];
  const reject = (words: string) => problems.push(outside(given.id, words));
  const spec = drawableRungs(given, problems);
  const ladder = layLadder(spec, sheet);
  const foot = spec.rungs.length * ladder.pitch + mm(1.6);
  if (spec.mode !== 'blank') drawPosts(ladder, spec, foot, reject);
  pen.line(ladder.from, mm(0.6), ladder.from, foot, { width: paperLines.bold });
  for (const [i, rung] of spec.rungs.entries())
    drawRung(ladder, spec, rung, mm(0.8) + i * ladder.pitch, reject);
  const marked = spec.mode !== 'blank' && spec.posts.length > 0;
  return finish(pen, spec.id, foot + (marked ? type.note.size * 1.35 : mm(0.5)), problems);
}

function layLadder(spec: CostRungs, sheet: Sheet): Ladder {
  const { pen, type, big, axis } = sheet;
  const measure = RAIL - NAME_AT;
  const fits = ({ words }: CostRung) => {
    const { lines, overflow } = pen.paragraph(words, type.label, measure);
    return !overflow && lines.length <= NAME_LINES;
  };
  const above = big || !spec.rungs.every(fits);
  const height = big ? mm(9) : sheet.slack(6.8, 7.6);
  const pitch = above ? height + type.label.size * 1.3 + sheet.slack(3.2, 4.4) : sheet.slack(11.8, 13.4);
  const from = Math.max(axis, axis > 0 ? 0 : mm(21));
  // Room for the longest price after the bricks, set as it will be.
  const words = Math.max(
    ...spec.rungs.map((r) => (r.value === null ? 0 : pen.set(r.text, priceLook(sheet)).width)),
    0,
  );
  const room = pen.width - from - words - mm(3);
  const width = Math.max(NARROWEST, Math.min(WIDEST, room / longest(spec)));
  return { sheet, from, brick: { width, height }, above, pitch, radius: big ? mm(3.9) : mm(3.1) };
}

function priceLook({ type }: Sheet): Words {
  return { ...type.value, size: type.value.size + 1 };
}

/** Dashed lines at round amounts, each with its price at the foot. */
function drawPosts(
  { sheet, from, brick }: Ladder,
  spec: CostRungs,
  foot: number,
  reject: (words: string) => void,
): void {
  const { pen, type } = sheet;
  const { palette } = pen;
  for (const { at, words } of spec.posts) {
    const x = from + (at / spec.worth) * brick.width;
    const label = pen.set(words, { ...type.note, color: palette.slate });
    if (at > 0) {
      if (x + label.width / 2 > pen.width) continue;
      pen.line(x, mm(0.6), x, foot, { edge: palette.hair, width: paperLines.hair, dash: POST.dash });
    }
    if (label.width > pen.width) reject(words);
    pen.put(label, x, foot + type.note.size * 1.05, at > 0 ? 'middle' : 'start');
  }
}

function drawRung(
  ladder: Ladder,
  spec: CostRungs,
  rung: CostRung,
  y: number,
  reject: (words: string) => void,
): void {
  const { sheet, from, brick, above, pitch, radius } = ladder;
  const { pen, type, one, axis } = sheet;
  const { palette } = pen;
  const top = above ? y + type.label.size * 1.3 : y + (pitch - brick.height) / 2;
  const middle = above ? y + (pitch - mm(2)) / 2 : top + brick.height / 2;
  pen.circle(radius, middle, radius, { fill: palette.ink });
  pen.take(0, middle - radius, 2 * radius, 2 * radius, rung.letter);
  const size = type.value.size * (sheet.big ? 1.05 : 1);
  const letter = pen.set(rung.letter, { size, weight: 800, color: palette.paper });
  pen.put(letter, radius, middle + size * DISC_BASELINE, 'middle');
  pen.place(sheet.big ? SIGN_AT + mm(2) : SIGN_AT, middle, signMarks(rung.sign, palette, { size: SIGN }));
  if (above) {
    const name = pen.set(rung.words, type.label);
    if (from + mm(2) + name.width > pen.width) reject(rung.words);
    pen.rect(from + mm(1.4), y, name.width + mm(1.2), type.label.size * 1.2, { fill: palette.paper });
    pen.put(name, from + mm(2), y + type.label.size * 0.95);
  } else {
    const measure = Math.min(RAIL, axis - mm(3)) - NAME_AT;
    const name = pen.paragraph(rung.words, type.label, measure);
    const leading = type.label.size * 1.16;
    const first = middle + (type.label.size * CAP_HEIGHT) / 2 - ((name.lines.length - 1) * leading) / 2;
    pen.putParagraph(name, NAME_AT, measure, first, leading);
  }
  if (spec.mode === 'blank') {
    pen.line(from, top + brick.height, pen.width, top + brick.height, { edge: palette.hair });
    return;
  }
  const dash = one ? dashes.gone.one : dashes.gone.color;
  const fills = rung.value === null ? [0] : bricksOf(rung, spec);
  const inset = paperLines.hair / 2;
  for (const [k, fill] of fills.entries()) {
    const x = from + k * brick.width + GAP / 2;
    const wide = brick.width - GAP;
    if (fill < 1)
      pen.rect(x + inset, top + inset, wide - 2 * inset, brick.height - 2 * inset, {
        fill: palette.paper,
        edge: palette.hair,
        width: paperLines.hair,
        dash,
        radius: ROUND,
      });
    if (fill > 0) pen.rect(x, top, wide * fill, brick.height, { fill: palette.ink, radius: ROUND });
  }
  const end = from + fills.length * brick.width;
  pen.take(from, top, end - from, brick.height, 'the bricks');
  const look = rung.value === null ? type.label : priceLook(sheet);
  const words = pen.set(rung.text, rung.number === undefined ? look : { ...look, number: rung.number });
  if (end + mm(2) + words.width > pen.width) reject(rung.text);
  // Round amounts pass behind the price, not through it.
  pen.rect(end + mm(1), top, words.width + mm(2), brick.height, { fill: palette.paper });
  pen.put(words, end + mm(2), top + brick.height / 2 + (look.size * CAP_HEIGHT) / 2);
}
