import { nearest } from '../diagnostics/index.js';
import {
  type DishFood,
  type DishKindName,
  dishKindOf,
  isVolumeUnit,
  parseAmount,
  type ServedVolume,
  volumeAsServed,
  volumeOf,
} from '../nutrition/index.js';
import type { ReadContext } from './contract.js';
import { type FoodRow, readFoodRow } from './food-row.js';
import { quoted, readProblem } from './problems.js';
import type { Piece, RowPieces } from './row.js';

/** A row of a dish, read. */
export interface DishRow extends DishFood {
  readonly words: string;
  /** The kind that was written or taken for a food of two kinds. */
  readonly countsAs?: DishKindName;
  readonly piece: Piece;
}

/** What a row may say after its food. */
export const DISH_FACTS = ['counts', 'volume'] as const;

/** How authors write the kind that a food of two kinds counts as. */
const COUNTS: ReadonlyMap<string, DishKindName> = new Map([
  ['protein', 'protein'],
  ['grain', 'grain or starch'],
  ['starch', 'grain or starch'],
]);

/**
 * Reads a food of a dish with its kind and its volume as served. A food of two kinds needs `counts`, or takes
 * `instead`, the kind of what it replaces, where that is one of the two. Reports what cannot be read.
 */
export function readDishRow(
  piece: Piece,
  facts: RowPieces['facts'],
  context: ReadContext,
  instead?: DishKindName,
): DishRow | undefined {
  const row = readFoodRow(piece, context);
  if (!row) return undefined;
  const kind = kindOf(row, facts.get('counts'), context, instead);
  if (kind === undefined) return undefined;
  const { food, portion, words } = row;
  if (kind.name === null) return { food, portion, words, piece, fills: null };
  const volume = volumeIn(row, facts.get('volume'), context);
  return volume
    ? {
        food,
        portion,
        words,
        piece,
        fills: { kind: kind.name, volume },
        ...(kind.said ? { countsAs: kind.name } : {}),
      }
    : undefined;
}

function kindOf(
  { food, piece }: FoodRow,
  counts: Piece | undefined,
  { report }: ReadContext,
  instead: DishKindName | undefined,
): { readonly name: DishKindName | null; readonly said: boolean } | undefined {
  const written = counts === undefined ? undefined : COUNTS.get(counts.text.trim().toLowerCase());
  if (counts && !written) {
    report.add(
      readProblem(
        'directives/row-fact',
        {
          reason: `A food counts as protein or as grain, not as ${quoted(counts.text)}.`,
          hint: 'Write counts = protein or counts = grain.',
          near: nearest(counts.text, ['protein', 'grain']),
        },
        counts.place,
      ),
    );
    return undefined;
  }
  const open = dishKindOf(food);
  const taken = !open.ok && !written && instead && open.near?.includes(instead) ? instead : written;
  const kind = taken === undefined ? open : dishKindOf(food, taken);
  if (kind.ok) return { name: kind.value, said: !open.ok };
  report.add(
    readProblem(
      'directives/dish-kind',
      {
        reason: kind.reason,
        hint: written ? (kind.hint ?? '') : 'Write ; counts = protein or ; counts = grain in the row.',
      },
      (written ? counts : undefined)?.place ?? piece.place,
    ),
  );
  return undefined;
}

/** The volume as it lies on the dish: as the row says, or through the amount and the food's own cup. */
function volumeIn(
  row: FoodRow,
  stated: Piece | undefined,
  { report }: ReadContext,
): ServedVolume | undefined {
  if (stated) {
    const read = parseAmount(stated.text);
    const amount = read.ok && read.value.rest === '' ? read.value.amount : null;
    if (amount?.unit && isVolumeUnit(amount.unit) && amount.size === null) {
      const volume = volumeOf(amount, row.portion, row.food);
      if (volume.ok) return volume.value;
    }
    report.add(
      readProblem(
        'directives/amount',
        { reason: `${quoted(stated.text)} is no volume.`, hint: 'Write it as volume = 1/2 cup.' },
        stated.place,
      ),
    );
    return undefined;
  }
  const volume = volumeAsServed(row.amount, row.portion, row.food);
  if (volume.ok) return volume.value;
  report.add(
    readProblem(
      'directives/amount',
      {
        reason: volume.reason,
        hint: 'Say in the row how much room it takes on the dish, such as ; volume = 1/2 cup.',
      },
      row.piece.place,
    ),
  );
  return undefined;
}
