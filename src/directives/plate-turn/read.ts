import { nearest } from '../../diagnostics/index.js';
import type { DirectivePart, Row } from '../../lesson/index.js';
import { dishKindOf, type Food, NEED_NAMES, portionOf } from '../../nutrition/index.js';
import { isFood } from '../../records/index.js';
import { splitArrow } from '../arrow-row.js';
import type { ReadContext } from '../contract.js';
import { DISH_FACTS, readDishRow } from '../dish-row.js';
import { readFoodRow } from '../food-row.js';
import { quoted, readProblem } from '../problems.js';
import type { Piece } from '../row.js';
import { written } from '../written.js';
import { MOST_SWAPS, type Swap, type Values } from './schema.js';

/** Reads the needs and the swaps. Whatever cannot be read is reported, and then nothing is shown. */
export function read(part: DirectivePart, context: ReadContext): Values | undefined {
  const [of, need] = [written(part, 'of'), written(part, 'need')];
  const swaps = part.rows.map((row) => readSwap(row, context));
  const good = swaps.flatMap((swap) => swap ?? []);
  if (part.rows.length > MOST_SWAPS) {
    context.report.add(
      readProblem(
        'directives/rows',
        {
          reason: `There are ${part.rows.length} swaps; the most is ${MOST_SWAPS}.`,
          hint: 'Turn another dish, or turn this one twice.',
        },
        part.bodyPlace ?? part.place,
      ),
    );
    return undefined;
  }
  if (!part.id || !of || !need || good.length < swaps.length) return undefined;
  const asked = need.value.split(/[;,]/).map((word) => word.trim());
  const needs = NEED_NAMES.filter((name) => asked.includes(name));
  // A word that is no need was reported when the lesson was read.
  if (needs.length === 0 || needs.length < new Set(asked).size) return undefined;
  return {
    id: part.id,
    of: { id: of.value.trim(), place: of.place },
    needs,
    needPlace: need.place,
    swaps: good,
    offers: offersOf(context),
    place: part.place,
  };
}

function readSwap(row: Row, context: ReadContext): Swap | undefined {
  const fault = (
    code: 'directives/swap' | 'directives/row-fact',
    reason: string,
    hint: string,
    place: Piece['place'],
    near: readonly string[] = [],
  ): undefined => context.report.add(readProblem(code, { reason, hint, near }, place)) as undefined;
  const split = splitArrow(row);
  if (!split)
    return fault(
      'directives/swap',
      `${quoted(row.text)} is no swap.`,
      'Write one old food, an arrow and one new food: 3 oz salmon, baked -> 3/4 cup lentils, cooked.',
      row.place,
    );
  const { old, fresh, facts, strays } = split;
  const [stray] = strays;
  const other = [...facts].find(([name]) => !DISH_FACTS.some((fact) => fact === name));
  const hint = 'After the new food a row may say counts = protein and volume = 1/2 cup.';
  if (stray)
    return fault('directives/row-fact', `${quoted(stray.text)} is no fact of this row.`, hint, stray.place);
  if (other)
    return fault(
      'directives/row-fact',
      `A row of plate-turn knows no ${quoted(other[0])}.`,
      hint,
      other[1].place,
      nearest(other[0], DISH_FACTS),
    );
  const [inner] = row.rows;
  if (inner) return fault('directives/row-fact', 'A swap holds no list of its own.', hint, inner.place);
  const before = readFoodRow(old, context);
  const after = before && readDishRow(fresh, facts, context, kindOf(before.food));
  if (!before || !after) return undefined;
  const portion = portionOf(before.amount, before.food);
  return {
    old: {
      food: before.food,
      grams: before.amount !== null && portion.ok ? portion.value.grams.value : null,
      amount: before.amount,
      words: before.words,
      place: old.place,
    },
    fresh: after,
    ...(after.countsAs ? { countsAs: after.countsAs } : {}),
  };
}

/** The kind of the food that goes, which a new food of two kinds takes over. */
function kindOf(food: Food) {
  const kind = dishKindOf(food);
  return kind.ok && kind.value !== null ? kind.value : undefined;
}

/** Foods as they are eaten, to offer in a message. */
function offersOf({ foods }: ReadContext): Food[] {
  return foods.names.flatMap((name) => {
    const food = foods.find(name);
    return isFood(food) && !NOT_EATEN_SO.has(food.state) && !food.flags.includes('raw-animal') ? [food] : [];
  });
}

const NOT_EATEN_SO: ReadonlySet<Food['state']> = new Set([
  'dry',
  'frozen, unprepared',
  'canned, with liquid',
]);
