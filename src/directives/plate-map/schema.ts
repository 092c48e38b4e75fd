import type { Place } from '../../diagnostics/index.js';
import type { KnownDirective } from '../../lesson/index.js';
import { DISH_FORMS, type DishFood, type DishForm, type DishKindName } from '../../nutrition/index.js';

export const schema: KnownDirective = {
  name: 'plate-map',
  forms: ['container'],
  id: 'required',
  attributes: {
    dish: {
      kind: { is: 'choice', of: DISH_FORMS },
      required: true,
      help: 'what it is served in: bowl, plate, tray, lunch-box or shared-pot',
    },
    serves: {
      kind: { is: 'whole', from: 1, to: 60 },
      help: 'how many people eat from it (1 when left out); totals are for one of them',
    },
    goal: {
      kind: { is: 'choice', of: ['balanced', 'none'] },
      help: 'balanced, when left out, sets the dish beside 6, 3 and 3 of twelve parts; none does not',
    },
  },
  body: ['rows'],
};

/** What may stand beside the dish, as rows `name = value`. */
export const BESIDE = ['drink', 'fat', 'calcium'] as const;
export type Beside = (typeof BESIDE)[number];

/** A food of the dish or of what stands beside it. */
export interface MapFood extends DishFood {
  /** The food's words, which name it in ids. */
  readonly words: string;
  /** The kind that a food of two kinds counts as. */
  readonly countsAs?: DishKindName;
  /** Where it stands, when that is beside the dish; `other` for a seasoning. */
  readonly beside?: Beside | 'other';
  /** False where the row has no amount and the usual portion was taken. */
  readonly measured: boolean;
  readonly place: Place;
}

/** A line beside the dish in words that are no food of the tables. */
export interface BesideWords {
  readonly beside: Beside;
  readonly text: string;
}

export interface Values {
  readonly id: string;
  readonly form: DishForm;
  readonly serves: number;
  readonly goal: boolean;
  readonly foods: readonly MapFood[];
  readonly written: readonly BesideWords[];
  readonly place: Place;
}

/** More foods than that cannot be told apart in twelve counters. */
export const MOST_FOODS = 12;

/** What is told of the whole meal, for one person. */
export const TOTALS = ['energy', 'protein', 'fiber', 'sodium', 'saturated fat'] as const;
