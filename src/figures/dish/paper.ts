import type { Problem } from '../../diagnostics/index.js';
import { mm } from '../geometry.js';
import type { Drawn, DrawOptions } from '../options.js';
import { createSheet, finish, outside, type Sheet } from '../sheet.js';
import type { Dish, DishCounters } from '../spec.js';
import { paperLines } from '../tokens.js';
import { drawBar } from './bar.js';
import { type PictureOf, paperCounter, pictureFinder } from './counter.js';
import { type DishAt, drawLabels, fitLabels, type Member } from './labels.js';
import { type Laid, layDish, type Placed } from './places.js';
import { noPicture, soundFoods } from './sound.js';
import { type DishSize, drawVessel, reachOf } from './vessel.js';

/** A dish of counters of this radius, on paper. */
export function paperSize(radius: number, pitch: number): DishSize {
  return {
    radius,
    pitch,
    margin: mm(1.9),
    rim: mm(3.4),
    plateRim: mm(4.6),
    outline: paperLines.firm,
    inner: paperLines.hair,
  };
}

/** A dish with its words and, under it, how it compares with the goal, on paper. */
export function drawDishOnPaper(spec: Dish, options: DrawOptions): Drawn {
  const sheet = createSheet(options);
  const { pen, axis, slack } = sheet;
  const problems: Problem[] = [];
  const reject = (words: string) => problems.push(outside(spec.id, words));
  const pictureOf = pictureFinder(options.picture, options.ink, (name) =>
    problems.push(noPicture(spec.id, name)),
  );
  const foods = soundFoods(spec.id, spec.foods, spec.mode === 'blank', problems);
  const radius = slack(5.7, 7.2);
  const size = paperSize(radius, radius * 2.25);
  const reach = reachOf(spec.shape, size);
  const dish: DishAt = { x: axis + (pen.width - axis) / 2, y: reach.y + mm(0.6), size, reach };
  drawVessel(pen, spec.shape, dish.x, dish.y, size);
  const parts = foods.map(({ parts: own }) => own);
  const found = foods.length > 0 ? labelled(sheet, spec, foods, dish) : undefined;
  const laid = found?.laid ?? layDish(spec.shape, parts, []);
  drawCounters(sheet, spec, foods, laid.counters, dish, pictureOf);
  let y = dish.y + reach.y;
  if (found) y = Math.max(y, drawLabels(sheet, found.labels, dish));
  else if (foods.length > 0) y = drawLegend(sheet, spec, foods, y + mm(4), pictureOf, reject);
  y = drawBar(sheet, spec, y + slack(4, 5), reject);
  return finish(pen, spec.id, y + mm(0.5), problems);
}

/** Words beside each food, or else beside each kind; nothing where neither fits. */
function labelled(sheet: Sheet, spec: Dish, foods: readonly DishCounters[], dish: DishAt) {
  for (const by of spec.by === 'food' ? (['food', 'kind'] as const) : (['kind'] as const)) {
    const members: readonly Member[] =
      by === 'food'
        ? foods
        : spec.kinds.map(({ name, notes, number }) => ({
            name,
            note: notes[0] ?? '',
            ...(number ? { number } : {}),
          }));
    for (const { sides, rows } of ORDERS) {
      const laid = by === 'food' ? byFood(spec, foods, sides, rows) : byKind(spec, foods, sides, rows);
      const labels = laid.leads && fitLabels(sheet, members, laid.leads, dish);
      if (labels) return { laid, labels };
    }
  }
  return undefined;
}

/** Ends of rows in the orders in which they are tried; the first in which all words fit is taken. */
const ORDERS = [
  { sides: ['end', 'start'], rows: [3, 1, 2, 0] },
  { sides: ['start', 'end'], rows: [3, 1, 2, 0] },
  { sides: ['end', 'start'], rows: [0, 2, 1, 3] },
  { sides: ['start', 'end'], rows: [2, 0, 3, 1] },
  { sides: ['end', 'start'], rows: [1, 3, 0, 2] },
] as const;

function byFood(
  spec: Dish,
  foods: readonly DishCounters[],
  sides: readonly ('start' | 'end')[],
  rows: readonly number[],
): Laid {
  return layDish(
    spec.shape,
    foods.map(({ parts }) => parts),
    sides,
    rows,
  );
}

/** Kinds get the ends; within them the foods follow one another. */
export function byKind(
  spec: Dish,
  foods: readonly DishCounters[],
  sides: readonly ('start' | 'end')[] = ['end', 'start'],
  rows?: readonly number[],
): Laid {
  const kinds = spec.kinds.map((_, kind) =>
    foods.reduce((so, food) => so + (food.kind === kind ? food.parts : 0), 0),
  );
  const laid = layDish(spec.shape, kinds, sides, rows);
  const queues = kinds.map((_, kind) =>
    foods.flatMap((food, i) => (food.kind === kind ? Array.from({ length: food.parts }, () => i) : [])),
  );
  // Foods of a kind from the lowest row upward and from the reading end, as the kinds are filled.
  const counters = laid.counters
    .toSorted((a, b) => b.row - a.row || b.x - a.x)
    .map((place): Placed => {
      const food = place.member === undefined ? undefined : queues[place.member]?.shift();
      const { member: _, ...empty } = place;
      return food === undefined ? empty : { ...empty, member: food };
    });
  return { ...laid, counters };
}

function drawCounters(
  { pen }: Sheet,
  spec: Dish,
  foods: readonly DishCounters[],
  counters: readonly Placed[],
  dish: DishAt,
  pictureOf: PictureOf,
): void {
  for (const { x, y, member } of counters) {
    const food = member === undefined ? undefined : foods[member];
    const kind = food && spec.kinds[food.kind];
    const look =
      food && kind
        ? { texture: kind.texture, letter: kind.letter, picture: food.picture, marked: food.changed === true }
        : { empty: true };
    paperCounter(
      pen,
      dish.x + x * dish.size.pitch,
      dish.y + y * dish.size.pitch,
      dish.size.radius,
      look,
      pictureOf,
    );
  }
}

/** Where words do not fit beside the dish: a counter for each food under it, with its words. */
function drawLegend(
  sheet: Sheet,
  spec: Dish,
  foods: readonly DishCounters[],
  y: number,
  pictureOf: PictureOf,
  reject: (words: string) => void,
): number {
  const { pen, type, axis, rail } = sheet;
  const radius = rail ? mm(5) : mm(6.4);
  const from = axis + 2 * radius + mm(3.4);
  const [nameStep, noteStep] = [type.name.size * 1.18, type.label.size * 1.25];
  const seen = new Set<number>();
  let top = y;
  for (const food of foods) {
    const kind = spec.kinds[food.kind];
    if (!kind || food.parts === 0 || (spec.by === 'kind' && seen.has(food.kind))) continue;
    seen.add(food.kind);
    const own =
      spec.by === 'kind' ? { name: kind.name, note: kind.notes[0] ?? '', number: kind.number } : food;
    const name = pen.paragraph(own.name, type.name, pen.width - from);
    const note = pen.paragraph(
      own.note,
      { ...type.label, ...(own.number ? { number: own.number } : {}) },
      pen.width - from,
    );
    if (name.overflow) reject(own.name);
    if (note.overflow) reject(own.note);
    const words = name.lines.length * nameStep + note.lines.length * noteStep;
    const height = Math.max(2 * radius + mm(1), words);
    const first = top + (height - words) / 2;
    paperCounter(
      pen,
      axis + radius + 0.5,
      top + height / 2,
      radius,
      { texture: kind.texture, letter: kind.letter, picture: food.picture },
      pictureOf,
    );
    pen.putParagraph(name, from, pen.width - from, first + type.name.size * 0.88, nameStep);
    pen.putParagraph(
      note,
      from,
      pen.width - from,
      first + name.lines.length * nameStep + type.label.size * 0.88,
      noteStep,
    );
    top += height + mm(1.4);
  }
  return top;
}
