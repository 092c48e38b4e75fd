import type { Problem } from '../../diagnostics/index.js';
import { letterDot } from '../disc.js';
import { mm } from '../geometry.js';
import type { Drawn, DrawOptions } from '../options.js';
import { drawNames } from '../row-names.js';
import { createSheet, finish, outside, type Sheet } from '../sheet.js';
import type { DotLanes, Lane, LaneDot } from '../spec.js';
import { lineBox } from '../text-boxes.js';
import { CAP_HEIGHT, dashes, paperLines, VALUE_GAP } from '../tokens.js';
import { arrangeLane, scaleEnd } from './arrange.js';
import { type KnownDot, knownDots } from './known.js';
import type { LaneFrame, LookSizes, PlacedDot } from './lane.js';
import { drawLegend } from './legend.js';
import { drawLook, planLook } from './look.js';

const APART = mm(0.5);
const HANG = mm(0.9);
const BESIDE = mm(1.4);
/** From the end of the scale to the end of the lane: room for half a value, or for the ring of what is not known. */
const BEYOND = mm(12);
/** Room above a lane to write values into by hand. */
const HAND = mm(8.5);

/** Values stand so much, of their size, above the top of the room for the track. */
const VALUE_LIFT = 0.08;

const RADIUS = { short: mm(3.9), plain: mm(3.1), fuller: mm(2.85), large: mm(3.9) } as const;

/** Rows compared on several measures, on paper. */
export function drawLanesOnPaper(spec: DotLanes, options: DrawOptions): Drawn {
  const sheet = createSheet(options);
  const { pen, type, big } = sheet;
  const problems: Problem[] = [];
  const radius = RADIUS[options.level];
  const tight = options.level === 'fuller';
  const sizes: LookSizes = {
    radius,
    label: type.label,
    gap: VALUE_GAP.paper,
    clear: mm(1),
    head: mm(2.8),
    line: paperLines.bold,
    hang: 2 * radius + HANG,
  };
  let y = drawLegend(sheet, spec.rows, radius, 0, (words) => problems.push(outside(spec.id, words)));
  y += big ? mm(6) : mm(4);
  // Without a rail each name must stand nearer to its own lane than to the one above.
  const gap = !sheet.rail
    ? sheet.slack(4.4, 7)
    : tight
      ? sheet.slack(1, 1.6)
      : big
        ? sheet.slack(3, 5)
        : sheet.slack(2.2, 4);
  const drop = Math.max(mm(tight ? 0.6 : 1.1), deepestTail(spec, sheet) - type.value.size * VALUE_LIFT + 0.8);
  let railBottom = y;
  let bottom = y;
  for (const lane of spec.lanes) {
    const names = drawNames(sheet, lane, (words) => problems.push(outside(spec.id, words)));
    const above = spec.mode === 'blank' ? HAND : type.value.size + (spec.mode === 'key' ? mm(1) : 0);
    const trackHeight = 2 * radius + (tight ? 0 : mm(0.6));
    // In the rail a name may reach into the gap; only names that would touch push their lane down.
    const laneTop = sheet.rail
      ? Math.max(y, railBottom + mm(1) + names.above - above - drop - radius)
      : y + names.height;
    const trackY = laneTop + above + drop + radius;
    const frame: LaneFrame = {
      pen,
      sizes,
      trackY,
      edge: trackY + trackHeight / 2,
      start: sheet.axis > 0 ? sheet.axis : radius,
      end: pen.width - 0.03,
      valueBaseline: laneTop + above - type.value.size * VALUE_LIFT,
      ground: pen.palette.tint,
    };
    names.put(sheet.rail ? trackY : y);
    drawTrack(sheet, frame, spec.mode === 'blank', lane);
    const low = spec.mode === 'blank' ? frame.edge : drawDots(sheet, spec, lane, frame, problems);
    railBottom = sheet.rail ? trackY + names.below : low;
    bottom = Math.max(low, railBottom);
    y = low + gap;
  }
  return finish(pen, spec.id, bottom + mm(0.5), problems);
}

/** How far the letters of all values reach below their baseline; far in Arabic. */
function deepestTail(spec: DotLanes, { pen, type }: Sheet): number {
  if (spec.mode === 'blank') return 0;
  const values = spec.lanes.flatMap((lane) => lane.dots).filter((dot) => dot.value !== null);
  return Math.max(0, ...values.map((dot) => lineBox(pen.set(dot.text, type.value), 0, 0)?.bottom ?? 0));
}

/** The lane itself, from its zero. On a blank sheet it is an outline to draw into. */
function drawTrack(sheet: Sheet, frame: LaneFrame, blank: boolean, lane: Lane): void {
  const { pen, trackY: y, start, end } = frame;
  const { radius } = frame.sizes;
  const height = 2 * (frame.edge - y);
  const { palette } = pen;
  const top = y - height / 2;
  if (blank) {
    pen.rect(start, top, end - start - 0.5, height, {
      fill: palette.paper,
      edge: palette.ink,
      width: paperLines.line,
      radius: height / 2,
    });
    pen.rect(start - 0.4, top, height / 2, height, { fill: palette.paper });
  } else if (sheet.one) {
    pen.line(start, y, end, y, { width: paperLines.line });
    // Where a ring of something not known stands at the end, it closes the lane.
    if (lane.dots.every((d) => d.value !== null))
      pen.line(end, y - mm(1.2), end, y + mm(1.2), { width: paperLines.line });
  } else {
    pen.rect(start, top, end - start, height, { fill: palette.tint, radius: height / 2 });
    pen.line(start, y, end - height / 2, y, { edge: palette.hair, width: paperLines.hair });
  }
  const half = blank ? height / 2 : radius - mm(0.15);
  pen.line(start, y - half, start, y + half, { width: paperLines.firm });
  if (!blank) return;
  pen.line(start, top, start + height / 2, top, { width: paperLines.line });
  pen.line(start, top + height, start + height / 2, top + height, { width: paperLines.line });
}

/** Dots, values, what is not known and where to look. Returns the y of the lane's lower edge. */
function drawDots(sheet: Sheet, spec: DotLanes, lane: Lane, frame: LaneFrame, problems: Problem[]): number {
  const { trackY, edge, start, end } = frame;
  const { radius } = frame.sizes;
  const { pen, type } = sheet;
  const unknown = lane.dots.filter((d) => d.value === null);
  const known = knownDots(spec.id, lane, problems);
  const rings = unknown.map((_, k) => end - radius - mm(0.4) - k * (2 * radius + mm(1.2)));
  const firstRing = rings.at(-1);
  const full = scaleEnd(known.map((d) => d.value));
  const words = unknown.map((d) => pen.set(d.text, { ...type.note, number: d.number }));
  const high = words[0] === undefined ? end : end - words[0].width - VALUE_GAP.paper;
  const lines = new Map(known.map((dot) => [dot, pen.set(dot.text, { ...type.value, number: dot.number })]));
  const plate = spec.mode === 'key' ? mm(1.6) : 0;
  const widthOf = (dot: KnownDot) => (lines.get(dot)?.width ?? 0) + 2 * plate;
  const scaleAt = Math.min(
    end - BEYOND,
    (firstRing ?? end) - 2 * radius - APART,
    // The scale ends where the values next to the end can stand right over their dots.
    ...known
      .map((dot) => start + ((high - widthOf(dot) / 2 - start) * full) / dot.value)
      .filter((x) => x > (start + end) / 2),
  );
  const sorted = known
    .map((dot) => ({ dot, x: start + (scaleAt - start) * (dot.value / full) }))
    .sort((a, b) => a.x - b.x);
  const places = arrangeLane(
    sorted.map(({ dot, x }) => ({ x, width: widthOf(dot) })),
    {
      radius,
      apart: APART,
      gap: VALUE_GAP.paper,
      beside: BESIDE,
      low: sheet.rail ? Math.min(0, start) : 0,
      high,
    },
  );
  if (!places) {
    problems.push(outside(spec.id, `${lane.name}: ${sorted.map(({ dot }) => dot.text).join(', ')}`));
    return edge;
  }
  const placed = sorted.map(({ dot, x }, i): PlacedDot => {
    const { tier, middle } = places[i] ?? { tier: 0, middle: x };
    const y = tier === 0 ? trackY : edge + HANG + radius + (tier - 1) * (2 * radius + HANG);
    const baseline = tier === 0 ? frame.valueBaseline : y + (type.value.size * CAP_HEIGHT) / 2;
    return { dot, x, y, tier, valueMiddle: middle, valueWidth: widthOf(dot), baseline };
  });
  for (const dot of placed)
    if (dot.tier > 0) pen.line(dot.x, trackY, dot.x, dot.y, { width: paperLines.firm });
  const look = planLook(pen, lane, placed, frame.sizes, frame);
  if (look?.bad) problems.push(outside(spec.id, look.word.text));
  if (look) drawLook(look, frame, placed);
  // The lowest first: a stem passes behind the dots above it.
  for (const dot of [...placed].sort((a, b) => b.tier - a.tier)) {
    const hot = look !== undefined && lane.look?.to === dot.dot.letter;
    letterDot(pen, {
      x: dot.x,
      y: dot.y,
      radius,
      letter: dot.dot.letter,
      size: type.value.size,
      ...(hot ? { fill: pen.palette.accent } : {}),
    });
  }
  for (const [i, dot] of placed.entries()) {
    if (plate > 0) drawPlate(sheet, dot, plate);
    const known = sorted[i]?.dot;
    const line = known && lines.get(known);
    if (line) pen.put(line, dot.valueMiddle, dot.baseline, 'middle');
  }
  for (const [k, dot] of unknown.entries()) drawUnknown(sheet, frame, dot, rings[k] ?? end);
  const said = words[0];
  if (said) pen.put(said, end, frame.valueBaseline, 'end');
  if (words.some((w) => w.text !== said?.text))
    problems.push(outside(spec.id, `${lane.name}: ${unknown.map((d) => d.text).join(', ')}`));
  const tiers = Math.max(0, ...placed.map((d) => d.tier));
  const hanging = tiers === 0 ? 0 : tiers * (2 * radius + HANG);
  return edge + Math.max(hanging, look?.depth ?? 0);
}

/** On the key a value is an answer: on tint, with an outline. */
function drawPlate({ pen, type }: Sheet, dot: PlacedDot, pad: number): void {
  const cap = type.value.size * CAP_HEIGHT;
  const inset = pad - mm(1.1);
  pen.rect(
    dot.valueMiddle - dot.valueWidth / 2 + inset,
    dot.baseline - cap - mm(0.9),
    dot.valueWidth - 2 * inset,
    cap + mm(1.8),
    { fill: pen.palette.tint, edge: pen.palette.ink, width: paperLines.hair, radius: mm(0.8) },
  );
}

/** A dashed ring at the far end: somewhere, and nobody measured where. Never at zero. */
function drawUnknown({ pen, type }: Sheet, { sizes, trackY }: LaneFrame, dot: LaneDot, x: number): void {
  letterDot(pen, {
    x,
    y: trackY,
    radius: sizes.radius,
    letter: dot.letter,
    size: type.value.size,
    fill: pen.palette.paper,
    edge: { edge: pen.palette.ink, width: paperLines.line, dash: dashes.notKnown },
  });
}
