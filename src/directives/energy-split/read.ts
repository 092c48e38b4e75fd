import { roomIn } from '../../cautions/index.js';
import type { DirectivePart, Row } from '../../lesson/index.js';
import { ENERGY_SHARES, parseAmount, portionOf } from '../../nutrition/index.js';
import { isFood } from '../../records/index.js';
import type { ReadContext } from '../contract.js';
import { foodProblem, quoted, readProblem } from '../problems.js';
import { type Piece, placeIn, splitRow } from '../row.js';
import { drinks } from './compute-grams.js';
import { type Eaten, MEANINGS, type Meal, PERSONS, type Values } from './schema.js';

const MOST_MEALS = 8;
const MOST_FOODS = 40;
/** Reads the meals. Whatever cannot be read is reported at its place, and then nothing is shown. */
export function read(part: DirectivePart, context: ReadContext): Values | undefined {
  const { report, front } = context;
  const is = (name: string) => part.attributes.get(name)?.value.trim();
  const meals = part.rows.map((row) => readMeal(row, context));
  const known = meals.flatMap((meal) => meal ?? []);
  const foods = known.reduce((sum, meal) => sum + meal.foods.length, 0);
  if (part.rows.length < 1 || part.rows.length > MOST_MEALS || foods > MOST_FOODS)
    report.add(
      readProblem(
        'directives/rows',
        {
          reason:
            foods > MOST_FOODS
              ? `There are ${foods} foods; the most is ${MOST_FOODS}.`
              : `There are ${part.rows.length} meals; 1 to ${MOST_MEALS} can be shown.`,
          hint: 'Write a row for each meal, such as breakfast: 1 cup oats, cooked ; 1 medium banana.',
        },
        part.bodyPlace,
      ),
    );
  else if (part.id && known.length === meals.length)
    return {
      id: part.id,
      meals: known,
      show: shown(is('show') ?? '', known),
      beside: is('beside') !== 'nothing',
      of: is('of') === 'meal' ? 'meal' : 'day',
      as: MEANINGS.find((one) => one === is('as')) ?? 'example',
      person: PERSONS.find((one) => one === is('person')) ?? 'adult',
      guarded: roomIn(front.audience, 'no weight') !== undefined,
      place: part.place,
    };
  return undefined;
}

/** The parts to draw, in their own order; alcohol unasked only where there is any. */
function shown(words: string, meals: readonly Meal[]): Values['show'] {
  const asked = words.split(/[;,]/).map((word) => word.trim());
  const named = ENERGY_SHARES.filter((share) => asked.includes(share));
  return named.length > 0
    ? named
    : ENERGY_SHARES.filter((share) => share !== 'alcohol' || meals.some(drinks));
}

function readMeal(row: Row, context: ReadContext): Meal | undefined {
  const { report } = context;
  const { main, facts, strays } = splitRow(row);
  const wrong = (reason: string, hint: string, place: Piece['place']): undefined =>
    report.add(readProblem('directives/row-fact', { reason, hint }, place)) as undefined;
  const colon = main.text.indexOf(':');
  const name = main.text.slice(0, colon).trim();
  if (colon < 1 || name === '')
    return wrong(
      `${quoted(main.text)} does not say which meal it is.`,
      'Write the meal first, as in breakfast: 1 cup oats, cooked.',
      main.place,
    );
  const after = main.text.slice(colon + 1);
  const text = after.trim();
  const from = main.place.column - row.place.column + colon + 1 + (after.length - after.trimStart().length);
  const first: Piece = { text, inlines: [], place: placeIn(row, from, text.length) };
  const foods = [first, ...strays].map((piece) => readFood(piece, context));
  const other = [...facts].find(([fact]) => fact !== 'alcohol');
  if (other)
    return wrong(
      `A meal has no fact "${other[0].slice(0, 80)}".`,
      'A meal may say alcohol = 14 g; foods are parted by semicolons.',
      other[1].place,
    );
  const stated = facts.get('alcohol');
  const alcohol = stated === undefined ? null : gramsIn(stated.text);
  if (alcohol === undefined)
    return wrong(
      `${quoted(stated?.text ?? '')} is no weight of alcohol.`,
      'Write grams: alcohol = 14 g.',
      first.place,
    );
  const known = foods.flatMap((food) => food ?? []);
  return known.length === foods.length ? { name, foods: known, alcohol, place: row.place } : undefined;
}

function readFood(piece: Piece, { foods, report }: ReadContext): Eaten | undefined {
  const read = parseAmount(piece.text);
  if (!read.ok) {
    report.add(readProblem('directives/amount', read, piece.place));
    return undefined;
  }
  const { amount, rest } = read.value;
  const found = foods.find(rest);
  if (!isFood(found)) {
    report.add(foodProblem(rest, found, piece.place));
    return undefined;
  }
  const portion = portionOf(amount, found);
  if (!portion.ok) {
    report.add(readProblem('directives/amount', portion, piece.place));
    return undefined;
  }
  const words = amount === null ? `${portion.value.words} ${piece.text}` : piece.text;
  return { food: found, portion: portion.value, words, place: piece.place };
}

function gramsIn(text: string): number | undefined {
  const read = parseAmount(text);
  const amount = read.ok && read.value.rest === '' ? read.value.amount : null;
  return amount?.unit === 'g' && amount.size === null
    ? amount.count
    : /^0 ?g$/.test(text.trim())
      ? 0
      : undefined;
}
