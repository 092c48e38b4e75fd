import type { Problem } from '../../diagnostics/index.js';
import type { Drawn, DrawOptions } from '../options.js';
import { finish, outside } from '../sheet.js';
import type { CostRung, CostRungs } from '../spec.js';
import { createStage, type Stage, tooHigh, tooMany } from '../stage.js';
import { CAP_HEIGHT, dashes, screenLines, screenType } from '../tokens.js';
import { shelfMarks } from '../vessels.js';
import { bricksOf, drawableRungs, longest } from './rungs.js';

const MOST_RUNGS = 3;
const PITCH = { airy: 150, tight: 128 } as const;
const BRICK = { width: 150, height: 66, gap: 6, narrowest: 28 } as const;
const VESSEL = 132;
const UPRIGHT = 162;
/** From the upright to the first brick, and to a name. */
const AFTER = 10;
const NAME_AFTER = 16;
/** From the last brick down to the shelf, and from a name's baseline down to its bricks. */
const FOOT = 28;
const NAME_UP = 16;
const PRICE = { size: 60, weight: 800 } as const;

/** What one cup costs, on a slide: a ladder that stands on the shelf, each food beside its rung. */
export function drawRungsOnScreen(given: CostRungs, options: DrawOptions): Drawn {
  const stage = createStage(options);
  const { pen, width, height } = stage;
  const problems: Problem[] = [];
  const spec = drawableRungs(given, problems);
  const { rungs } = spec;
  if (rungs.length > MOST_RUNGS) problems.push(tooMany(spec.id, 'foods', rungs.length, MOST_RUNGS, 'foods='));
  const blank = spec.mode === 'blank';
  const top = NAME_UP + screenType.name.size;
  const room = rungs.length < 2 ? PITCH.airy : (height - FOOT - BRICK.height - top) / (rungs.length - 1);
  const pitch = Math.min(PITCH.airy, Math.max(PITCH.tight, room));
  if (room < PITCH.tight) problems.push(tooHigh(spec.id, (PITCH.tight - room) * (rungs.length - 1)));
  const prices = rungs.map((rung) => (rung.value === null ? 0 : pen.set(rung.text, PRICE).width));
  const from = UPRIGHT + AFTER;
  const free = width - from - Math.max(0, ...prices) - 24;
  const step = Math.max(BRICK.narrowest, Math.min(BRICK.width + BRICK.gap, free / longest(spec)));
  const highest = height - FOOT - BRICK.height - (rungs.length - 1) * pitch - top - 8;
  pen.line(UPRIGHT, Math.max(0, highest), UPRIGHT, height, { width: screenLines.post });
  for (const [i, rung] of rungs.entries()) {
    const foot = height - FOOT - (rungs.length - 1 - i) * pitch;
    drawRung(stage, spec, rung, { foot, step, size: Math.min(VESSEL, pitch - 12) }, blank, problems);
  }
  return finish(pen, spec.id, height, problems);
}

function drawRung(
  { pen, width }: Stage,
  spec: CostRungs,
  rung: CostRung,
  { foot, step, size }: { readonly foot: number; readonly step: number; readonly size: number },
  blank: boolean,
  problems: Problem[],
): void {
  const { palette } = pen;
  const from = UPRIGHT + AFTER;
  const top = foot - BRICK.height;
  pen.placeWide((UPRIGHT - 16 - size) / 2, size, foot + 10, shelfMarks(rung.sign, size, pen.ink));
  const name = pen.set(rung.words, screenType.name);
  if (UPRIGHT + NAME_AFTER + name.width > width) problems.push(outside(spec.id, rung.words));
  pen.put(name, UPRIGHT + NAME_AFTER, top - NAME_UP);
  if (blank) return;
  const edge = screenLines.track;
  const fills = rung.value === null ? [0] : bricksOf(rung, spec);
  for (const [k, fill] of fills.entries()) {
    const x = from + k * step;
    const wide = step - BRICK.gap;
    if (fill < 1)
      pen.rect(x + edge / 2, top + edge / 2, wide - edge, BRICK.height - edge, {
        edge: palette.hair,
        width: edge,
        dash: dashes.goneOnScreen,
      });
    if (fill > 0) pen.rect(x, top, wide * fill, BRICK.height, { fill: palette.ink });
  }
  const end = from + fills.length * step;
  pen.take(from, top, end - from, BRICK.height, 'the bricks');
  const look = rung.value === null ? screenType.name : PRICE;
  const words = pen.set(rung.text, rung.number === undefined ? look : { ...look, number: rung.number });
  if (end + 10 + words.width > width) problems.push(outside(spec.id, rung.text));
  pen.put(words, end + 10, foot - BRICK.height / 2 + (look.size * CAP_HEIGHT) / 2);
}
