import type { Problem } from '../../diagnostics/index.js';
import type { Line, Paragraph } from '../../text/index.js';
import type { TextInk } from '../drawing.js';
import { outside } from '../sheet.js';
import type { DotLanes, Lane, LaneDot } from '../spec.js';
import type { Stage } from '../stage.js';
import { lineBox } from '../text-boxes.js';
import { screenLines, screenType, VALUE_GAP } from '../tokens.js';
import { arrangeLane, scaleEnd } from './arrange.js';
import { type KnownDot, knownDots } from './known.js';
import type { AlongLane, LookSizes } from './lane.js';
import { type LookPlan, planLook } from './look.js';
import type { Reach, Skyline } from './pack.js';

export const RADIUS = 26;
/** From one hanging dot to the next. */
export const HANG = RADIUS * 2 + 6;
export const NAME_LEADING = 44;
export const NOTE_LEADING = 38;
export const WIDEST_NAME = 300;
/** From the lane's end to the rings of what is not known; from ring to ring. */
export const RINGS_AFTER = 48;
export const RING_PITCH = RADIUS * 2 + 4;
/** Where tracks start, unless names are longer. */
const TRACK = 206;
/** From a value's baseline down to the track; more for letters with deep tails. */
const VALUE_UP = 36;

export const LOOK: LookSizes = {
  radius: RADIUS,
  label: screenType.label,
  gap: VALUE_GAP.screen,
  clear: 8,
  head: 22,
  line: screenLines.shelf,
  hang: HANG,
};

/** All lanes of a figure start and end at the same places. */
export interface Track {
  readonly start: number;
  readonly end: number;
}

/** Dots that stand side by side because they print the same value. */
export interface Group {
  readonly dots: readonly KnownDot[];
  readonly x: number;
  readonly value: Line<TextInk>;
}

/** A lane measured before it has its height. */
export interface Plan {
  readonly lane: Lane;
  readonly blank: boolean;
  readonly name: Paragraph<TextInk>;
  readonly note: Paragraph<TextInk>;
  readonly groups: readonly Group[];
  readonly dots: readonly AlongLane[];
  readonly valueUp: number;
  readonly look: LookPlan | undefined;
  readonly skyline: Skyline;
}

export const unknownOf = (lane: Lane): readonly LaneDot[] => lane.dots.filter((d) => d.value === null);

/** Whether there is a move to look at: both of its ends must be known. */
function isLooked(spec: DotLanes, { look, dots }: Lane): boolean {
  const known = (letter: string) => dots.some((d) => d.letter === letter && d.value !== null);
  return spec.mode !== 'blank' && look !== undefined && known(look.from) && known(look.to);
}

function namesOf(spec: DotLanes, { pen }: Stage, lane: Lane) {
  const looked = isLooked(spec, lane);
  const color = looked ? pen.palette.accent : pen.palette.ink;
  return {
    name: pen.paragraph(lane.name, { ...screenType.name, weight: looked ? 800 : 600, color }, WIDEST_NAME),
    note: pen.paragraph(lane.note ?? '', { ...screenType.note, color: pen.palette.slate }, WIDEST_NAME),
  };
}

export function nameHeight(name: Paragraph<TextInk>, note: Paragraph<TextInk>): number {
  return name.lines.length * NAME_LEADING + note.lines.length * NOTE_LEADING;
}

export function trackOf(spec: DotLanes, stage: Stage): Track {
  const { pen, width } = stage;
  const names = spec.lanes.flatMap((lane) => Object.values(namesOf(spec, stage, lane)));
  const widest = Math.max(0, ...names.map((n) => n.width));
  const start = Math.max(TRACK, Math.ceil(widest) + RADIUS + 24);
  const counts = spec.lanes.map((lane) => unknownOf(lane).length);
  const most = spec.mode === 'blank' ? 0 : Math.max(0, ...counts);
  if (most === 0) return { start, end: width - 60 };
  const words = spec.lanes.flatMap(unknownOf).map((d) => pen.set(d.text, screenType.note).width);
  return { start, end: width - Math.max(...words) - 10 - most * RING_PITCH - RINGS_AFTER };
}

export function planLanes(spec: DotLanes, stage: Stage, track: Track, problems: Problem[]): Plan[] {
  return spec.lanes.map((lane) => planLane(spec, stage, lane, track, problems));
}

function planLane(spec: DotLanes, stage: Stage, lane: Lane, track: Track, problems: Problem[]): Plan {
  const { pen, width } = stage;
  const blank = spec.mode === 'blank';
  const { name, note } = namesOf(spec, stage, lane);
  for (const p of [name, note])
    if (p.overflow || p.lines.length > 2)
      problems.push(outside(spec.id, p.lines.map((l) => l.text).join('')));
  const known = blank ? [] : knownDots(spec.id, lane, problems);
  const full = scaleEnd(known.map((d) => d.value));
  const groups = groupDots(known, (value) => track.start + ((track.end - track.start) * value) / full).map(
    ({ dots, x }): Group => {
      const hot = isLooked(spec, lane) && dots.some((d) => d.letter === lane.look?.to);
      const first = dots[0];
      const words = hot ? { ...screenType.valueLooked, color: pen.palette.accent } : screenType.value;
      return {
        dots,
        x,
        value: pen.set(first?.text ?? '', { ...words, ...(first ? { number: first.number } : {}) }),
      };
    },
  );
  const unknown = !blank && unknownOf(lane).length > 0;
  const places = arrangeLane(
    groups.map(({ dots, x, value }) => ({ x, width: value.width, half: dots.length * (RADIUS + 1) - 1 })),
    {
      radius: RADIUS,
      apart: 2,
      gap: VALUE_GAP.screen,
      beside: 14,
      low: Math.max(name.width, note.width) + 12,
      high: unknown ? track.end + RINGS_AFTER - 6 : width,
    },
  );
  if (!places)
    problems.push(outside(spec.id, `${lane.name}: ${groups.map((g) => g.dots[0]?.text).join(', ')}`));
  const dots = groups.flatMap(({ dots: side, x, value }, i): AlongLane[] => {
    const { tier, middle } = places?.[i] ?? { tier: 0, middle: x };
    const at = (k: number) => x + (k - (side.length - 1) / 2) * (2 * RADIUS + 2);
    return side.map((dot, k) => ({ dot, x: at(k), tier, valueMiddle: middle, valueWidth: value.width }));
  });
  const look = blank ? undefined : planLook(pen, lane, dots, LOOK, { start: track.start, end: width });
  if (look?.bad) problems.push(outside(spec.id, look.word.text));
  const boxes = groups.map((g) => lineBox(g.value, 0, 0));
  const valueUp = Math.max(VALUE_UP, ...boxes.map((b) => RADIUS + 3 + (b?.bottom ?? 0)));
  const skyline = skylineOf({ name, note, groups, dots, look, track, valueUp });
  return { lane, blank, name, note, groups, dots, valueUp, look, skyline };
}

/** Dots of one printed value that would overlap stand side by side around their middle. */
function groupDots(known: readonly KnownDot[], place: (value: number) => number) {
  const groups: { dots: KnownDot[]; x: number }[] = [];
  for (const dot of [...known].sort((a, b) => a.value - b.value)) {
    const x = place(dot.value);
    const same = groups.find((g) => g.dots[0]?.text === dot.text && Math.abs(g.x - x) < 2 * RADIUS);
    if (same) {
      same.x = (same.x * same.dots.length + x) / (same.dots.length + 1);
      same.dots.push(dot);
    } else groups.push({ dots: [dot], x });
  }
  return groups;
}

/** What of a lane stands above and below its track, and where. */
function skylineOf({
  name,
  note,
  groups,
  dots,
  look,
  track,
  valueUp,
}: Pick<Plan, 'name' | 'note' | 'groups' | 'dots' | 'look' | 'valueUp'> & {
  readonly track: Track;
}): Skyline {
  const half = nameHeight(name, note) / 2;
  const names: Reach = { from: 0, to: Math.max(name.width, note.width), by: half };
  const whole: Reach = { from: track.start, to: track.end, by: RADIUS };
  const up: Reach[] = [names, whole];
  const down: Reach[] = [names, whole];
  for (const [i, { value }] of groups.entries()) {
    const first = dots.find((d) => d.dot === groups[i]?.dots[0]);
    if (!first) continue;
    const [from, to] = [first.valueMiddle - value.width / 2, first.valueMiddle + value.width / 2];
    const box = lineBox(value, 0, 0);
    if (first.tier === 0) up.push({ from, to, by: valueUp - (box?.top ?? 0) });
    else
      down.push({
        from: Math.min(from, first.x - RADIUS),
        to: Math.max(to, first.x + RADIUS),
        by: RADIUS + first.tier * HANG,
      });
  }
  if (!look) return { up, down };
  const [from, to] = [look.middle - look.word.width / 2, look.middle + look.word.width / 2];
  if (look.place === 'between') up.push({ from, to, by: valueUp + screenType.label.size * 0.75 });
  if (look.place === 'under') down.push({ from, to, by: RADIUS + look.depth });
  if (look.place === 'beside') {
    const pair = dots.filter((d) => d.x === look.from || d.x === look.to);
    const tier = Math.max(...pair.map((d) => d.tier));
    down.push({ from, to, by: RADIUS + tier * HANG });
  }
  return { up, down };
}
