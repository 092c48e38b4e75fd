import { nearest } from '../../diagnostics/index.js';
import { kebab } from '../../document/index.js';
import type { DirectivePart, Row } from '../../lesson/index.js';
import { DISH_FORMS, type Food, parseAmount } from '../../nutrition/index.js';
import { isFood } from '../../records/index.js';
import type { ReadContext } from '../contract.js';
import { DISH_FACTS, readDishRow } from '../dish-row.js';
import { readFoodRow } from '../food-row.js';
import { quoted, readProblem } from '../problems.js';
import { type Piece, readFact, splitRow } from '../row.js';
import { BESIDE, type Beside, type BesideWords, type MapFood, MOST_FOODS, type Values } from './schema.js';

/** Reads the dish and what stands beside it. Whatever cannot be read is reported, and then nothing is shown. */
export function read(part: DirectivePart, context: ReadContext): Values | undefined {
  const is = (name: string) => part.attributes.get(name)?.value.trim();
  // Another word was reported when the lesson was read.
  const form = DISH_FORMS.find((one) => one === is('dish')) ?? 'plate';
  const serves = Number(is('serves') || '1');
  const rows = part.rows.map((row) => readRow(row, context));
  const good = rows.flatMap((row) => row ?? []);
  const foods = good.flatMap((row) => ('food' in row ? [row] : []));
  const inside = foods.filter(({ fills }) => fills);
  const wrong = (reason: string, hint: string) =>
    context.report.add(readProblem('directives/rows', { reason, hint }, part.bodyPlace ?? part.place));
  if (good.length === rows.length && inside.length === 0)
    wrong('There is no food in the dish.', 'Write a row for each food, such as 1 cup brown rice, cooked.');
  else if (foods.length > MOST_FOODS)
    wrong(`There are ${foods.length} foods; the most is ${MOST_FOODS}.`, 'Put foods of one pot together.');
  else if (part.id && Number.isInteger(serves) && serves > 0 && good.length === rows.length)
    return distinct(foods, context)
      ? {
          id: part.id,
          form,
          serves,
          goal: is('goal') !== 'none',
          foods,
          written: good.flatMap((row) => ('food' in row ? [] : [row])),
          place: part.place,
        }
      : undefined;
  return undefined;
}

function readRow(row: Row, context: ReadContext): MapFood | BesideWords | undefined {
  const { main, facts, strays } = splitRow(row);
  const beside = readFact(main);
  const fault = (reason: string, place: Piece['place'], near: readonly string[]): undefined =>
    context.report.add(
      readProblem(
        'directives/row-fact',
        { reason, hint: 'Write facts as name = value, each name once.', near },
        place,
      ),
    ) as undefined;
  const [stray] = strays;
  if (stray) return fault(`${quoted(stray.text)} is no fact of this row.`, stray.place, DISH_FACTS);
  const [inner] = row.rows;
  if (inner) return fault('A row of plate-map holds no list of its own.', inner.place, []);
  const other = [...facts].find(([name]) => !DISH_FACTS.some((fact) => fact === name));
  if (other)
    return fault(
      `A row of plate-map knows no ${quoted(other[0])}.`,
      other[1].place,
      nearest(other[0], DISH_FACTS),
    );
  if (beside) {
    const name = BESIDE.find((one) => one === beside.name);
    return name
      ? readBeside(name, beside.value, context)
      : fault(
          `Beside the dish stand drink, fat and calcium, and no ${quoted(beside.name)}.`,
          main.place,
          nearest(beside.name, BESIDE),
        );
  }
  if (main.text === '') return fault('This row names no food.', row.place, []);
  const read = readDishRow(main, facts, context);
  if (!read) return undefined;
  const { piece, ...food } = read;
  return {
    ...food,
    measured: portionWritten(main),
    ...(food.fills ? {} : { beside: sideOf(food.food) }),
    place: piece.place,
  };
}

/** A line beside the dish: a food, or words as they stand where it starts with no amount and is no food. */
function readBeside(beside: Beside, value: Piece, context: ReadContext): MapFood | BesideWords | undefined {
  const amount = parseAmount(value.text);
  if (value.text === '') {
    context.report.add(
      readProblem(
        'directives/row-fact',
        {
          reason: `Nothing stands after ${beside} =.`,
          hint: `Write it as ${beside} = water, or leave the row out.`,
        },
        value.place,
      ),
    );
    return undefined;
  }
  const bare = amount.ok && amount.value.amount === null;
  if (bare && !isFood(context.foods.find(value.text))) return { beside, text: value.text };
  const read = readFoodRow(value, context);
  if (!read) return undefined;
  const { food, portion, words } = read;
  return { food, portion, words, fills: null, beside, measured: read.amount !== null, place: value.place };
}

function portionWritten({ text }: Piece): boolean {
  const read = parseAmount(text);
  return read.ok && read.value.amount !== null;
}

function sideOf({ plate }: Food): Beside | 'other' {
  if (plate.includes('fat')) return 'fat';
  if (plate.includes('dairy or calcium')) return 'calcium';
  return plate.includes('drink') ? 'drink' : 'other';
}

/** Two rows of one name would have the same numbers. */
function distinct(foods: readonly MapFood[], { report }: ReadContext): boolean {
  const twice = foods.flatMap((food, i) => {
    const first = foods
      .slice(0, i)
      .find((one) => one.food.id === food.food.id || kebab(one.words) === kebab(food.words));
    return first ? [{ food, first }] : [];
  });
  for (const { food, first } of twice)
    report.add(
      readProblem(
        'directives/same-row',
        {
          reason: `${quoted(food.words)} is the same food as ${quoted(first.words)}.`,
          hint: 'Add the amounts up in one row.',
        },
        food.place,
      ),
    );
  return twice.length === 0;
}
