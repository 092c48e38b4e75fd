import type { Place } from '../../diagnostics/index.js';
import type { InlineNode, KnownDirective } from '../../lesson/index.js';
import type { Basis, Food, NutrientName } from '../../nutrition/index.js';

export const schema: KnownDirective = {
  name: 'form-compare',
  forms: ['container'],
  id: 'required',
  attributes: {
    food: {
      kind: { is: 'text' },
      required: true,
      help: 'the food whose forms are compared, such as pinto beans',
    },
    basis: {
      kind: { is: 'text' },
      required: true,
      help: 'the one amount for all rows, such as 1 cup, ready to eat; 100 g; or 1 can',
    },
    show: {
      kind: { is: 'list' },
      required: true,
      help: 'what is compared, parted by semicolons, the most important first: sodium; fiber; vitamin C',
    },
  },
  body: ['rows'],
};

/** What a row may say after its form. */
export const FACTS = ['choose', 'from', 'word'] as const;

/** One form of the food. */
export interface FormRow {
  /** The form in the author's words; the row's name in ids. */
  readonly words: string;
  readonly letter: string;
  readonly food: Food;
  /** "when you have time to soak and cook" */
  readonly choose?: readonly InlineNode[];
  /** The letter of the row from which the arrow of the first lane comes, and its word. */
  readonly look?: { readonly from: string; readonly word: string };
  readonly place: Place;
}

export interface Values {
  readonly id: string;
  /** The food in the author's words. */
  readonly food: string;
  readonly basis: Basis & { readonly portion: string };
  readonly basisPlace: Place;
  readonly nutrients: readonly NutrientName[];
  readonly rows: readonly FormRow[];
}

/** A figure holds at most so many rows and measures: more do not fit on the screen or in the rail. */
export const MOST_ROWS = 4;
export const MOST_MEASURES = 6;
