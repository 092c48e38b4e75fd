import type { Problem } from '../../diagnostics/index.js';
import { letterDot } from '../disc.js';
import type { Drawn, DrawOptions } from '../options.js';
import { finish, outside } from '../sheet.js';
import type { Dish, DishCounters } from '../spec.js';
import { createStage, type Stage, tooHigh } from '../stage.js';
import { flatTexture } from '../textures.js';
import { screenLines, screenType } from '../tokens.js';
import { type PictureOf, pictureFinder, screenCounter } from './counter.js';
import { centered } from './labels.js';
import { byKind } from './paper.js';
import { COUNTERS } from './places.js';
import { noPicture, soundFoods } from './sound.js';
import { type DishSize, drawVessel, reachOf } from './vessel.js';

const DISH = 424;
const LEAST = 340;
/** From the dish to the end of a leader, and on to the words. */
const LEADER = 38;
const WORDS = 22;
/** The bar: a row's height and step, its cells, and the width of its words. */
const BAR = { high: 32, step: 38, cell: 34, words: 172 } as const;
const LABEL = { step: 90, tight: 84, note: 41, top: 32 } as const;

export function screenSize(dish: number): DishSize {
  const pitch = dish / 4.72;
  return {
    radius: pitch * 0.447,
    pitch,
    margin: pitch * 0.1,
    rim: pitch * 0.14,
    plateRim: pitch * 0.2,
    outline: screenLines.shelf,
    inner: 2.5,
  };
}

/** A dish at the start of a slide, its kinds in words at the end, and how it compares with the goal. */
export function drawDishOnScreen(spec: Dish, options: DrawOptions): Drawn {
  const stage = createStage(options);
  const { pen, height } = stage;
  const problems: Problem[] = [];
  const pictureOf = pictureFinder(options.picture, options.ink, (name) =>
    problems.push(noPicture(spec.id, name)),
  );
  const foods = soundFoods(spec.id, spec.foods, spec.mode === 'blank', problems);
  if (height < LEAST + 4) problems.push(tooHigh(spec.id, LEAST + 4 - height));
  const dish = fitting(spec, Math.max(LEAST, Math.min(DISH, height - 4)));
  const reach = reachOf(spec.shape, dish);
  const [x, y] = [reach.x + 3, height - reach.y - 6];
  drawVessel(pen, spec.shape, x, y, dish);
  const laid = byKind(spec, foods, ['end'], [0, 1, 2, 3]);
  for (const place of laid.counters) {
    const food = place.member === undefined ? undefined : foods[place.member];
    drawCounter(
      stage,
      spec,
      food,
      x + place.x * dish.pitch,
      y + place.y * dish.pitch,
      dish.radius,
      pictureOf,
    );
  }
  const from = 2 * reach.x + 6 + LEADER + WORDS;
  const bar = spec.bar ? height - 2 * BAR.step + 2 : height;
  const beside = spec.beside === '' ? bar : bar - 46;
  const rows = spec.kinds
    .flatMap((kind, member) => {
      const lead = laid.leads?.find((one) => one.member === member);
      return kind.parts > 0
        ? [{ kind, member, lead: lead && { x: x + lead.at.x * dish.pitch, y: y + lead.at.y * dish.pitch } }]
        : [];
    })
    .toReversed();
  const places = slots(
    rows.map(({ lead }, i) => lead?.y ?? y - dish.pitch + i * LABEL.step),
    beside - LABEL.note - 18,
  );
  if ((places[0] ?? LABEL.top) < LABEL.top - 1) problems.push(tooHigh(spec.id, LABEL.top - (places[0] ?? 0)));
  for (const [i, { kind, lead }] of rows.entries()) {
    if (kind.look === 'waiting') continue;
    const at = places[i] ?? 0;
    const color = kind.look === 'new' ? pen.palette.accent : pen.palette.ink;
    if (lead)
      pen.poly(
        [
          [lead.x + dish.radius + 6, lead.y],
          [2 * reach.x + 12, lead.y],
          [from - WORDS, at],
        ],
        { edge: color, width: kind.look === 'new' ? 5 : 3 },
      );
    // Where two kinds share one row there is no end to lead from; the letter tells which is which.
    else {
      const disc = { x: from - WORDS - 12, y: at - 12, radius: 21, letter: kind.letter, size: 32 };
      letterDot(pen, { ...disc, fill: pen.palette.paper, edge: { edge: color, width: 3 } });
    }
    drawWords(stage, spec, kind, from, at, color, problems);
  }
  if (spec.beside !== '' && spec.kinds.every(({ look }) => look !== 'waiting'))
    put(stage, spec, spec.beside, from, beside + 28, screenType.note, problems);
  if (spec.bar) drawBar(stage, spec, from, bar, problems);
  return finish(pen, spec.id, height, problems);
}

/** The largest size at which a dish of this shape is as high as there is room. */
function fitting(spec: Dish, high: number): DishSize {
  const size = screenSize(high);
  const reach = reachOf(spec.shape, size);
  return 2 * reach.y > high ? screenSize((high * high) / (2 * reach.y)) : size;
}

function drawCounter(
  { pen }: Stage,
  spec: Dish,
  food: DishCounters | undefined,
  x: number,
  y: number,
  radius: number,
  pictureOf: PictureOf,
): void {
  const kind = food && spec.kinds[food.kind];
  const look =
    food && kind
      ? {
          texture: kind.texture,
          letter: kind.letter,
          picture: food.picture,
          marked: kind.look === 'new',
          waiting: kind.look === 'waiting',
        }
      : { empty: true };
  screenCounter(pen, x, y, radius, look, pictureOf);
}

/** Heights of the words, each as near to its leader as the others and the foot let it. */
function slots(wanted: readonly number[], last: number): number[] {
  const out: number[] = [];
  const step =
    wanted.length > 1
      ? Math.max(LABEL.tight, Math.min(LABEL.step, (last - LABEL.top) / (wanted.length - 1)))
      : 0;
  for (const [i, y] of wanted.entries())
    out.push(Math.max(y, i === 0 ? LABEL.top : (out[i - 1] ?? 0) + step));
  for (let i = out.length - 1; i >= 0; i--)
    out[i] = Math.min(out[i] ?? 0, i === out.length - 1 ? last : (out[i + 1] ?? 0) - step);
  return out;
}

/** The name, and its foods in the longest wording that fits. */
function drawWords(
  stage: Stage,
  spec: Dish,
  kind: Dish['kinds'][number],
  x: number,
  y: number,
  color: string,
  problems: Problem[],
): void {
  const { pen, width } = stage;
  const number = kind.number ? { number: kind.number } : {};
  put(stage, spec, kind.name, x, y + 2, { ...screenType.name, weight: 800, color, ...number }, problems);
  const note = kind.notes.find((words) => pen.set(words, screenType.note).width <= width - x);
  const last = note ?? kind.notes.at(-1);
  if (last) put(stage, spec, last, x, y + 2 + LABEL.note, screenType.note, problems);
}

function put(
  { pen, width }: Stage,
  spec: Dish,
  words: string,
  x: number,
  baseline: number,
  role: Parameters<typeof pen.set>[1],
  problems: Problem[],
): void {
  const line = pen.set(words, role);
  if (x + line.width > width + 1) problems.push(outside(spec.id, words));
  pen.put(line, x, baseline);
}

function drawBar(stage: Stage, spec: Dish, x: number, y: number, problems: Problem[]): void {
  const { pen } = stage;
  const { bar } = spec;
  if (!bar) return;
  const cells = (goal: boolean) =>
    spec.kinds
      .toReversed()
      .flatMap((kind) =>
        Array.from({ length: goal ? kind.goal : kind.parts }, () =>
          goal || kind.look !== 'waiting' ? kind.texture : undefined,
        ),
      );
  for (const [i, goal] of [false, true].entries()) {
    const top = y + i * BAR.step;
    const role = { ...screenType.label };
    const line = pen.set(goal ? bar.goal : bar.own, role);
    if (line.width > BAR.words - 8) problems.push(outside(spec.id, goal ? bar.goal : bar.own));
    pen.put(line, x, centered(top + BAR.high / 2, role.size));
    const textures = cells(goal);
    for (let cell = 0; cell < COUNTERS; cell++) {
      const [left, texture] = [x + BAR.words + cell * BAR.cell, textures[cell]];
      if (!texture) {
        pen.rect(left + 1.5, top + 1.5, BAR.cell - 3, BAR.high - 3, {
          edge: pen.palette.hair,
          width: 3,
          dash: [5, 6],
        });
        continue;
      }
      pen.rect(left, top, BAR.cell, BAR.high, { fill: pen.palette.paper });
      pen.placeWide(left, BAR.cell, top, [
        flatTexture(texture, BAR.cell, BAR.high, { medium: 'screen', color: pen.palette.ink }),
      ]);
      pen.rect(left, top, BAR.cell, BAR.high, { edge: pen.palette.ink, width: 2.5 });
    }
  }
}
