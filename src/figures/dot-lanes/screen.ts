import type { Problem } from '../../diagnostics/index.js';
import { letterDot } from '../disc.js';
import type { Drawn, DrawOptions } from '../options.js';
import { finish, outside } from '../sheet.js';
import type { DotLanes } from '../spec.js';
import { createStage, type Stage, tooHigh, tooMany } from '../stage.js';
import { CAP_HEIGHT, dashes, screenLines, screenType } from '../tokens.js';
import type { LaneFrame, PlacedDot } from './lane.js';
import { drawLook } from './look.js';
import { leastDistance, tallest } from './pack.js';
import {
  HANG,
  LOOK,
  NAME_LEADING,
  NOTE_LEADING,
  nameHeight,
  type Plan,
  planLanes,
  RADIUS,
  RING_PITCH,
  RINGS_AFTER,
  type Track,
  trackOf,
  unknownOf,
  WIDEST_NAME,
} from './screen-plan.js';
import { drawShelfKey, planShelfKey } from './shelf-key.js';

const MOST_LANES = 3;
const MOST_ROWS = 4;
const LETTER = 34;
const CLEAR = { across: 16, down: 4 } as const;
/** Lanes stand no farther apart than this, however much room there is. */
const FARTHEST = 136;

/** Rows compared on up to three measures, on a slide: lanes above, the rows' vessels on the shelf. */
export function drawLanesOnScreen(spec: DotLanes, options: DrawOptions): Drawn {
  const stage = createStage(options);
  const { pen, height } = stage;
  const problems: Problem[] = [];
  if (spec.lanes.length > MOST_LANES)
    problems.push(tooMany(spec.id, 'measures', spec.lanes.length, MOST_LANES, 'show='));
  if (spec.rows.length > MOST_ROWS)
    problems.push(tooMany(spec.id, 'rows', spec.rows.length, MOST_ROWS, 'rows='));
  const track = trackOf(spec, stage);
  const plans = planLanes(spec, stage, track, problems);
  const top = plans[0] ? tallest(plans[0].skyline.up) : 0;
  const foot = tallest(plans.at(-1)?.skyline.down ?? []);
  const steps = plans
    .slice(1)
    .map((plan, i) => leastDistance(plans[i]?.skyline ?? plan.skyline, plan.skyline, CLEAR));
  const needed = top + steps.reduce((sum, step) => sum + step, 0) + foot + 4;
  const key = planShelfKey(spec, stage, needed);
  drawShelfKey(spec, stage, key, (words) => problems.push(outside(spec.id, words)));
  const used = key.height;
  const spare = height - used - needed;
  if (spare < 0) problems.push(tooHigh(spec.id, -spare));
  const share = Math.max(0, spare) / Math.max(1, steps.length + 1);
  const spaced = steps.map((step) => Math.max(step, Math.min(FARTHEST, step + share)));
  const rest = Math.max(0, spare) - spaced.reduce((sum, step, i) => sum + step - (steps[i] ?? 0), 0);
  let y = top + rest / 2;
  for (const [i, plan] of plans.entries()) {
    drawLane(stage, plan, track, y);
    y += spaced[i] ?? 0;
  }
  return finish(pen, spec.id, height, problems);
}

function drawLane(stage: Stage, plan: Plan, track: Track, y: number): void {
  const { pen } = stage;
  const frame: LaneFrame = {
    pen,
    sizes: LOOK,
    trackY: y,
    edge: y + RADIUS,
    ...track,
    valueBaseline: y - plan.valueUp,
    ground: pen.palette.ground,
  };
  drawName(stage, plan, y);
  pen.line(track.start, y, track.end, y, { width: screenLines.track });
  for (const x of [track.start, track.end]) pen.line(x, y - 12, x, y + 12, { width: screenLines.track });
  const placed = plan.dots.map((dot): PlacedDot => {
    const dotY = y + dot.tier * HANG;
    const beside = dotY + (screenType.value.size * CAP_HEIGHT) / 2;
    return { ...dot, y: dotY, baseline: dot.tier === 0 ? frame.valueBaseline : beside };
  });
  for (const dot of placed) if (dot.tier > 0) pen.line(dot.x, y, dot.x, dot.y, { width: screenLines.disc });
  if (plan.look) drawLook(plan.look, frame, placed);
  for (const dot of [...placed].sort((a, b) => b.tier - a.tier))
    disc(
      stage,
      dot.x,
      dot.y,
      dot.dot.letter,
      plan.look !== undefined && plan.lane.look?.to === dot.dot.letter,
    );
  for (const { value, dots } of plan.groups) {
    const first = placed.find((p) => p.dot === dots[0]);
    if (first) pen.put(value, first.valueMiddle, first.baseline, 'middle');
  }
  if (!plan.blank) drawUnknown(stage, plan, track, y);
}

/** An open disc; filled with the accent when it is the one to look at. */
function disc(
  { pen }: Stage,
  x: number,
  y: number,
  letter: string,
  hot = false,
  dash?: readonly number[],
): void {
  const { paper, ink, accent } = pen.palette;
  letterDot(pen, {
    x,
    y,
    radius: RADIUS - screenLines.disc / 2,
    letter,
    size: LETTER,
    fill: hot ? accent : paper,
    edge: { edge: hot ? accent : ink, width: screenLines.disc, ...(dash ? { dash } : {}) },
  });
}

function drawName({ pen }: Stage, { name, note }: Plan, y: number): void {
  const top = y - nameHeight(name, note) / 2;
  const first = top + NAME_LEADING / 2 + (screenType.name.size * CAP_HEIGHT) / 2;
  pen.putParagraph(name, 0, WIDEST_NAME, first, NAME_LEADING);
  pen.putParagraph(note, 0, WIDEST_NAME, first + name.lines.length * NAME_LEADING - 4, NOTE_LEADING);
}

/** Beyond the lane's end: a dashed disc for each row that is not known, and the words once. */
function drawUnknown(stage: Stage, { lane }: Plan, { end }: Track, y: number): void {
  const { pen } = stage;
  const unknown = unknownOf(lane);
  let x = end + RINGS_AFTER + RADIUS;
  for (const dot of unknown) {
    disc(stage, x, y, dot.letter, false, dashes.notKnownOnScreen);
    x += RING_PITCH;
  }
  const first = unknown[0];
  if (!first) return;
  const words = pen.set(first.text, { ...screenType.note, number: first.number });
  pen.put(words, x - RADIUS + 10, y + (screenType.note.size * CAP_HEIGHT) / 2);
}
