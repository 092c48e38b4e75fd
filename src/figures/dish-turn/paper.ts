import type { Problem } from '../../diagnostics/index.js';
import { type PictureOf, paperCounter, pictureFinder } from '../dish/counter.js';
import { paperSize } from '../dish/paper.js';
import { lieIn } from '../dish/places.js';
import { noPicture, soundFoods } from '../dish/sound.js';
import { drawVessel, reachOf } from '../dish/vessel.js';
import { mm } from '../geometry.js';
import type { Drawn, DrawOptions } from '../options.js';
import { createSheet, finish, outside, type Sheet } from '../sheet.js';
import type { DishCounters, DishTurn } from '../spec.js';
import { drawTurnKey, drawTurnLanes } from './lanes.js';
import { drawSwapRows, fitBetween } from './swaps.js';

const RADIUS = mm(5.6);

/** A dish before and after, its swaps and what moved, on paper. */
export function drawTurnOnPaper(spec: DishTurn, options: DrawOptions): Drawn {
  const sheet = createSheet(options);
  const problems: Problem[] = [];
  const reject = (words: string) => problems.push(outside(spec.id, words));
  const pictureOf = pictureFinder(options.picture, options.ink, (name) =>
    problems.push(noPicture(spec.id, name)),
  );
  let y = 0;
  if (spec.dishes) {
    const [between, foot] = drawDishes(sheet, spec, pictureOf, problems, reject);
    y = foot + sheet.slack(3, 5);
    if (!between) y = drawSwapRows(sheet, spec.swaps, y, pictureOf, reject) + mm(2);
  } else y = drawSwapRows(sheet, spec.swaps, mm(0.6), pictureOf, reject);
  y = drawTurnLanes(sheet, spec, y, reject);
  if (spec.dishes && spec.mode !== 'blank') y = drawTurnKey(sheet, spec, y, reject);
  return finish(sheet.pen, spec.id, y + mm(0.5), problems);
}

/** Both dishes at the ends of the measure. Tells whether the swaps stand between them, and where the dishes end. */
function drawDishes(
  sheet: Sheet,
  spec: DishTurn,
  pictureOf: PictureOf,
  problems: Problem[],
  reject: (words: string) => void,
): readonly [boolean, number] {
  const { pen, type } = sheet;
  const size = paperSize(RADIUS, RADIUS * 2.4);
  const reach = reachOf(spec.shape, size);
  const titles = [spec.before.title, spec.after?.title ?? spec.words.after].map((words) =>
    pen.paragraph(words, type.name, Math.max(2 * reach.x, mm(60)), { align: 'center', balance: true }),
  );
  const step = type.name.size * 1.18;
  const high = Math.max(...titles.map(({ lines }) => lines.length)) * step;
  const middle = high + mm(2.4) + reach.y;
  const half = Math.max(reach.x + mm(0.6), mm(30));
  const sides: readonly (readonly DishCounters[] | undefined)[] = [spec.before.foods, spec.after?.foods];
  for (const [i, given] of sides.entries()) {
    const x = i === 0 ? half : pen.width - half;
    const title = titles[i];
    if (title?.overflow) reject(i === 0 ? spec.before.title : (spec.after?.title ?? ''));
    const wide = Math.max(2 * reach.x, mm(60));
    if (title) pen.putParagraph(title, x - wide / 2, wide, type.name.size * 0.8, step);
    drawVessel(pen, spec.shape, x, middle, size);
    const foods = soundFoods(spec.id, given ?? [], given === undefined, problems);
    for (const place of lieIn(spec.shape, foods)) {
      const food = place.member === undefined ? undefined : foods[place.member];
      const kind = food && spec.kinds[food.kind];
      const look =
        food && kind
          ? {
              texture: kind.texture,
              letter: kind.letter,
              picture: food.picture,
              marked: food.changed === true,
            }
          : { empty: true };
      paperCounter(pen, x + place.x * size.pitch, middle + place.y * size.pitch, RADIUS, look, pictureOf);
    }
  }
  const between = fitBetween(sheet, spec.swaps, 2 * half, pen.width - 2 * half, middle, reach.y, pictureOf);
  return [between, middle + reach.y];
}
