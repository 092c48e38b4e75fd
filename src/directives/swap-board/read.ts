import { type RoomGroup, roomIn } from '../../cautions/index.js';
import type { DirectivePart } from '../../lesson/index.js';
import { type Food, NEED_NAMES, parseAmount } from '../../nutrition/index.js';
import { isFood } from '../../records/index.js';
import type { ReadContext } from '../contract.js';
import type { FoodRow } from '../food-row.js';
import { quoted, readProblem } from '../problems.js';
import { written } from '../written.js';
import { NOT_EATEN_SO, readRow } from './read-row.js';
import { MOST_ROWS, type SwapRow, type Values } from './schema.js';

/** Rooms that some foods are kept from. */
const GUARDED: readonly RoomGroup[] = ['infants', 'small children', 'no potassium salt'];

/** Reads needs and swaps. Whatever cannot be read is reported, and then nothing is shown. */
export function read(part: DirectivePart, context: ReadContext): Values | undefined {
  const { report, prices, front } = context;
  const basis = readBasisAmount(part, context);
  const need = written(part, 'need');
  const asked = need ? need.value.split(/[;,]/).map((word) => word.trim()) : [];
  const needs = NEED_NAMES.filter((name) => asked.includes(name));
  if (part.rows.length === 0 || part.rows.length > MOST_ROWS) {
    report.add(
      readProblem(
        'directives/rows',
        {
          reason: `A swap-board takes 1 to ${MOST_ROWS} swaps, and this one has ${part.rows.length}.`,
          hint: 'Write a row for each, and a second board for more.',
        },
        part.bodyPlace ?? part.place,
      ),
    );
    return undefined;
  }
  // A word that is no need was reported when the lesson was read.
  if (basis === null || !part.id || needs.length < new Set(asked).size) return undefined;
  const rows = part.rows.map((row) => readRow(row, basis, needs, context));
  const good = rows.flatMap((row) => row ?? []);
  if (good.length < rows.length || !allDiffer(good, context)) return undefined;
  return {
    id: part.id,
    needs,
    rows: good,
    offers: offersOf(context),
    rooms: new Set(GUARDED.filter((room) => roomIn(front.audience, room) !== undefined)),
    currency: prices.currency,
    place: part.place,
  };
}

/** The amount for foods without one; `null` after a problem. */
function readBasisAmount(part: DirectivePart, { report }: ReadContext): string | undefined | null {
  const basis = written(part, 'basis');
  if (!basis) return undefined;
  const amount = parseAmount(basis.value);
  if (amount.ok && amount.value.amount !== null && amount.value.rest === '') return basis.value.trim();
  report.add(
    readProblem(
      'directives/basis',
      { reason: `${quoted(basis.value)} is no amount.`, hint: 'Write one amount, such as basis="1 cup".' },
      basis.place,
    ),
  );
  return null;
}

function allDiffer(rows: readonly SwapRow[], { report }: ReadContext): boolean {
  const same = (a: FoodRow, b: FoodRow) => a.food.id === b.food.id;
  const twice = rows.find((row, i) =>
    rows.slice(0, i).some((one) => same(one.old, row.old) && same(one.fresh, row.fresh)),
  );
  if (!twice) return true;
  report.add(
    readProblem(
      'directives/same-row',
      { reason: 'This swap stands above already.', hint: 'Take one of the two rows out.' },
      twice.place,
    ),
  );
  return false;
}

/** Foods as they are eaten. */
function offersOf({ foods }: ReadContext): Food[] {
  return foods.names.flatMap((name) => {
    const food = foods.find(name);
    return isFood(food) && !NOT_EATEN_SO.has(food.state) && !food.flags.includes('raw-animal') ? [food] : [];
  });
}
