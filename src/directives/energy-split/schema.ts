import type { Place } from '../../diagnostics/index.js';
import type { KnownDirective } from '../../lesson/index.js';
import { ENERGY_SHARES, type EnergyShare, type Food, type Portion } from '../../nutrition/index.js';

/** How a day is meant. */
export const MEANINGS = ['example', 'plan', 'what is missing'] as const;
/** Whose day it is; a man's is asked about below a higher energy. */
export const PERSONS = ['adult', 'woman', 'man'] as const;

export const schema: KnownDirective = {
  name: 'energy-split',
  forms: ['container'],
  id: 'required',
  body: ['rows'],
  attributes: {
    show: {
      kind: { is: 'list', of: ENERGY_SHARES, commas: true },
      help: 'the parts that are drawn: carbohydrate, protein, fat, alcohol (those that are there when left out)',
    },
    beside: {
      kind: { is: 'choice', of: ['usual range', 'nothing'] },
      help: 'usual range sets the range for adults over each row (when left out); nothing leaves it away',
    },
    of: {
      kind: { is: 'choice', of: ['day', 'meal'] },
      help: 'day when the rows are all that is eaten in a day (when left out), meal when they are not',
    },
    as: {
      kind: { is: 'choice', of: MEANINGS },
      help: 'how the day is meant: example (when left out), plan, or what is missing, which says that it is no plan',
    },
    person: {
      kind: { is: 'choice', of: PERSONS },
      help: 'whose day it is: adult (when left out), woman or man',
    },
  },
};

/** One food of a meal. */
export interface Eaten {
  readonly food: Food;
  readonly portion: Portion;
  /** As the row writes it: `1/2 avocado`. */
  readonly words: string;
  readonly place: Place;
}

export interface Meal {
  readonly name: string;
  readonly foods: readonly Eaten[];
  /** Grams of alcohol that the row states. */
  readonly alcohol: number | null;
  readonly place: Place;
}

export interface Values {
  readonly id: string;
  readonly meals: readonly Meal[];
  readonly show: readonly EnergyShare[];
  readonly beside: boolean;
  readonly of: 'day' | 'meal';
  readonly as: (typeof MEANINGS)[number];
  readonly person: (typeof PERSONS)[number];
  /** Whether the lesson is for people whom few carbohydrates can harm: pregnancy, breastfeeding, under 18. */
  readonly guarded: boolean;
  readonly place: Place;
}
