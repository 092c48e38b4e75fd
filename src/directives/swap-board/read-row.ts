import { nearest, type Place } from '../../diagnostics/index.js';
import type { Row } from '../../lesson/index.js';
import { type Food, parseAmount, testNeeds } from '../../nutrition/index.js';
import { isFood } from '../../records/index.js';
import { splitArrow } from '../arrow-row.js';
import type { ReadContext } from '../contract.js';
import { readFoodRow } from '../food-row.js';
import { foodProblem, quoted, readProblem } from '../problems.js';
import type { Piece } from '../row.js';
import { pairOf } from './prices.js';
import { SWAP_NUTRIENTS, type SwapRow, type Values } from './schema.js';

const FACTS = ['job', 'use', 'trap'] as const;
const LONGEST = 60;
/** A swap is one idea; no dish is better than another. */
const RANKS =
  /\b(?:better|best|worse|worst|healthier|healthiest|superior|inferior|good for you|bad for you)\b/i;

/** Reads one swap; reports what cannot be read, and then there is none. */
export function readRow(
  row: Row,
  basis: string | undefined,
  needs: Values['needs'],
  context: ReadContext,
): SwapRow | undefined {
  const fault = (
    code: 'directives/swap' | 'directives/row-fact',
    reason: string,
    hint: string,
    place: Place,
    near: readonly string[] = [],
  ): undefined => context.report.add(readProblem(code, { reason, hint, near }, place)) as undefined;
  const split = splitArrow(row);
  if (!split)
    return fault(
      'directives/swap',
      `${quoted(row.text)} is no swap.`,
      'Write one food, an arrow and one food: 1 cup whole milk -> 1 cup soy drink, calcium added.',
      row.place,
    );
  const { facts, strays } = split;
  const [stray] = strays;
  const other = [...facts].find(([name]) => !FACTS.some((fact) => fact === name));
  const hint = 'After the new food a row may say job = calcium, protein and use = soups.';
  if (stray)
    return fault('directives/row-fact', `${quoted(stray.text)} is no fact of this row.`, hint, stray.place);
  if (other)
    return fault(
      'directives/row-fact',
      `A row of swap-board knows no ${quoted(other[0])}.`,
      hint,
      other[1].place,
      nearest(other[0], FACTS),
    );
  const [inner] = row.rows;
  if (inner) return fault('directives/row-fact', 'A swap holds no list of its own.', hint, inner.place);
  for (const name of ['job', 'use'] as const) {
    const fact = facts.get(name);
    if (!fact) continue;
    if (fact.text === '' || fact.text.length > LONGEST)
      return fault('directives/row-fact', `${name} takes 1 to ${LONGEST} letters.`, hint, fact.place);
    if (RANKS.test(fact.text))
      return fault(
        'directives/row-fact',
        `${quoted(fact.text)} ranks foods.`,
        'A swap is one idea and no better dish: name the dish, the season or the rule of faith.',
        fact.place,
      );
  }
  const [old, fresh] = [split.old, split.fresh].map((piece) => readFoodRow(withBasis(piece, basis), context));
  const trapPiece = facts.get('trap');
  const trap = trapPiece && readTrap(trapPiece, needs, context);
  if (!old || !fresh || (trapPiece && !trap)) return undefined;
  if (old.food.id === fresh.food.id)
    return fault(
      'directives/swap',
      `${old.food.name} on both sides is no swap.`,
      'Name another food.',
      row.place,
    );
  if (NOT_EATEN_SO.has(old.food.state) !== NOT_EATEN_SO.has(fresh.food.state))
    return fault(
      'directives/swap',
      `${quoted(old.words)} and ${quoted(fresh.words)} do not stand side by side: one is not as it is eaten.`,
      'Name both cooked and drained, or both dry.',
      row.place,
    );
  const job = partsOf(facts.get('job')?.text ?? '');
  const use = facts.get('use')?.text;
  const prices = pairOf(old.food, fresh.food, context.prices, context.on);
  return {
    old,
    fresh,
    job,
    brings: SWAP_NUTRIENTS.filter((name) => job.some((one) => one.toLowerCase() === name.toLowerCase())),
    ...(use ? { use } : {}),
    ...(trap ? { trap } : {}),
    ...(prices ? { prices } : {}),
    place: row.place,
  };
}

function partsOf(words: string): string[] {
  return words
    .split(',')
    .map((word) => word.trim().replace(/\s+/g, ' '))
    .filter(Boolean);
}

function withBasis(piece: Piece, basis: string | undefined): Piece {
  const amount = parseAmount(piece.text);
  return basis === undefined || !amount.ok || amount.value.amount !== null
    ? piece
    : { ...piece, text: `${basis} ${piece.text}` };
}

/** A trap has to be one: a food that surely breaks a need. */
function readTrap(piece: Piece, needs: Values['needs'], { foods, report }: ReadContext): Food | undefined {
  const food = foods.find(piece.text);
  if (!isFood(food)) {
    report.add(foodProblem(piece.text, food, piece.place));
    return undefined;
  }
  if (testNeeds(food, needs, { coconut: 'not said' }).some(({ verdict }) => verdict === 'breaks'))
    return food;
  report.add(
    readProblem(
      'directives/row-fact',
      {
        reason: `${quoted(food.name)} is no trap: it is not known to break a need of this board.`,
        hint: 'Name a food that surely breaks one, or leave it out: one is found for you.',
      },
      piece.place,
    ),
  );
  return undefined;
}

/** States in which a food waits for the pot or the strainer. */
export const NOT_EATEN_SO: ReadonlySet<Food['state']> = new Set([
  'dry',
  'frozen, unprepared',
  'canned, with liquid',
]);
