import type { Place } from '../../diagnostics/index.js';
import type { KnownDirective } from '../../lesson/index.js';
import {
  type DishKindName,
  type Food,
  NEED_NAMES,
  type NeedName,
  type WrittenAmount,
} from '../../nutrition/index.js';
import type { DishRow } from '../dish-row.js';

export const schema: KnownDirective = {
  name: 'plate-turn',
  forms: ['container'],
  id: 'required',
  attributes: {
    of: {
      kind: { is: 'text' },
      required: true,
      help: 'the id of the dish that is turned, a plate-map or another plate-turn of this lesson',
    },
    need: {
      kind: { is: 'list', of: NEED_NAMES, commas: true },
      required: true,
      help: 'what it is turned for, such as vegan,gluten-free; the dish has to pass every one',
    },
  },
  body: ['rows'],
};

/** One swap: the food that goes, by the dish's own row, and what comes for it. */
export interface Swap {
  readonly old: {
    readonly food: Food;
    /** What was written before it; the dish has to have as much. */
    readonly grams: number | null;
    readonly amount: WrittenAmount | null;
    readonly words: string;
    readonly place: Place;
  };
  readonly fresh: DishRow;
  /** The kind that a food of two kinds counts as on the new dish. */
  readonly countsAs?: DishKindName;
}

export interface Values {
  readonly id: string;
  readonly of: { readonly id: string; readonly place: Place };
  readonly needs: readonly NeedName[];
  readonly needPlace: Place;
  readonly swaps: readonly Swap[];
  /** Foods that may be offered where one has to go. */
  readonly offers: readonly Food[];
  readonly place: Place;
}

/** More swaps than that make another dish of it. */
export const MOST_SWAPS = 6;
