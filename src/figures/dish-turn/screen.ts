import type { Problem } from '../../diagnostics/index.js';
import { drawArrow } from '../arrow.js';
import { pictureFinder, screenCounter } from '../dish/counter.js';
import { lieIn } from '../dish/places.js';
import { screenSize } from '../dish/screen.js';
import { noPicture, soundFoods } from '../dish/sound.js';
import { drawVessel, reachOf } from '../dish/vessel.js';
import type { Drawn, DrawOptions } from '../options.js';
import { finish, outside } from '../sheet.js';
import type { DishCounters, DishTurn } from '../spec.js';
import { createStage, tooHigh, tooMany } from '../stage.js';
import { screenType } from '../tokens.js';

const DISH = 330;
const TITLE = 48;
const MOST_SWAPS = 4;
const ARROW = 54;
const STEP = 40;
/** Between the words of two swaps, and from a dish to the words. */
const APART = 20;
const CLEAR = 28;

/** Two dishes on a slide, the changed counters filled, and between them what goes and what comes. */
export function drawTurnOnScreen(spec: DishTurn, options: DrawOptions): Drawn {
  const { pen, width, height } = createStage(options);
  const problems: Problem[] = [];
  const reject = (words: string) => problems.push(outside(spec.id, words));
  const pictureOf = pictureFinder(options.picture, options.ink, (name) =>
    problems.push(noPicture(spec.id, name)),
  );
  if (spec.swaps.length > MOST_SWAPS)
    problems.push(tooMany(spec.id, 'swaps', spec.swaps.length, MOST_SWAPS, 'need='));
  const size = screenSize(DISH);
  const reach = reachOf(spec.shape, size);
  if (TITLE + 2 * reach.y + 8 > height) problems.push(tooHigh(spec.id, TITLE + 2 * reach.y + 8 - height));
  const y = height - reach.y - 6;
  const sides: readonly (readonly DishCounters[] | undefined)[] = [spec.before.foods, spec.after?.foods];
  const half = Math.max(reach.x + 4, 165);
  for (const [i, given] of sides.entries()) {
    const x = i === 0 ? half : width - half;
    const words = i === 0 ? spec.before.title : (spec.after?.title ?? spec.words.after);
    const title = pen.set(words, { ...screenType.label, weight: 700 });
    if (title.width > width / 2 - 16) reject(words);
    // A long title keeps to its own half of the stage.
    pen.put(
      title,
      i === 0 ? Math.max(0, x - title.width / 2) : Math.min(width - title.width, x - title.width / 2),
      y - reach.y - 16,
    );
    drawVessel(pen, spec.shape, x, y, size);
    const foods = soundFoods(spec.id, given ?? [], given === undefined, problems);
    for (const place of lieIn(spec.shape, foods)) {
      const food = place.member === undefined ? undefined : foods[place.member];
      const kind = food && spec.kinds[food.kind];
      screenCounter(
        pen,
        x + place.x * size.pitch,
        y + place.y * size.pitch,
        size.radius,
        // The counters are too small for letters of 24 points; texture and picture tell the kinds apart.
        food && kind
          ? { texture: kind.texture, picture: food.picture, marked: food.changed === true }
          : { empty: true },
        pictureOf,
      );
    }
  }
  const [from, to] = [2 * half + CLEAR, width - 2 * half - CLEAR];
  const rows = spec.swaps.map(({ old, fresh }) => ({
    old: pen.paragraph(old.name, screenType.note, to - from),
    fresh: pen.paragraph(
      fresh.name,
      { ...screenType.note, weight: 800, color: pen.palette.accent },
      to - from - ARROW,
    ),
  }));
  const highs = rows.map(({ old, fresh }) => (old.lines.length + fresh.lines.length) * STEP);
  const whole = highs.reduce((so, one) => so + one, 0) + APART * Math.max(0, rows.length - 1);
  if (whole > height - TITLE) problems.push(tooHigh(spec.id, whole - height + TITLE));
  let top = y - whole / 2;
  for (const [i, { old, fresh }] of rows.entries()) {
    if (old.overflow) reject(spec.swaps[i]?.old.name ?? '');
    if (fresh.overflow) reject(spec.swaps[i]?.fresh.name ?? '');
    pen.putParagraph(old, from, to - from, top + 30, STEP);
    const second = top + old.lines.length * STEP;
    drawArrow(pen, { from, to: from + ARROW - 14, y: second + 20, head: 18, width: 6 });
    pen.putParagraph(fresh, from + ARROW, to - from - ARROW, second + 30, STEP);
    top += (highs[i] ?? 0) + APART;
  }
  return finish(pen, spec.id, height, problems);
}
