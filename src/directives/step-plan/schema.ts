import type { Place } from '../../diagnostics/index.js';
import type { KnownDirective } from '../../lesson/index.js';
import type { Food, NutrientName, Portion, WrittenAmount } from '../../nutrition/index.js';

/** What a step may tell besides the food itself; never energy or weight. */
export const TOLD = [
  'added sugars',
  'sugars',
  'sodium',
  'saturated fat',
  'fiber',
] as const satisfies readonly NutrientName[];
export type Told = (typeof TOLD)[number];

export const MONTHS = [
  'jan',
  'feb',
  'mar',
  'apr',
  'may',
  'jun',
  'jul',
  'aug',
  'sep',
  'oct',
  'nov',
  'dec',
] as const;
export type Month = (typeof MONTHS)[number];

export const schema: KnownDirective = {
  name: 'step-plan',
  forms: ['container'],
  id: 'required',
  body: ['rows'],
  attributes: {
    start: { kind: { is: 'text' }, required: true, help: 'the first month, such as 2027-01' },
    months: { kind: { is: 'text' }, required: true, help: 'how many months the plan has, from 1 to 12' },
  },
};

/** What a step may touch in somebody's care: names of our own, for the conditions of the register. */
export const TOUCHES = [
  'cuts carbohydrate',
  'cuts sweet drinks',
  'skips a meal',
  'cuts salt',
  'salt substitute',
  'adds fiber',
  'adds water',
  'adds protein',
  'greens',
  'supplement',
  'activity',
  'alcohol',
] as const;
export type Touch = (typeof TOUCHES)[number];

export const DAYS_A_WEEK = 7;

/** How often a step is taken, as the row says it. */
export interface Often {
  readonly times: number;
  readonly per: 'day' | 'week';
}

/** A food that comes or goes, with the amount of one time. */
export interface Portioned {
  readonly way: 'less' | 'more';
  readonly food: Food;
  readonly portion: Portion;
  readonly amount: WrittenAmount | null;
  readonly words: string;
  /** Without it the food's own added sugars, sugars or amount is told. */
  readonly tells?: Told;
  readonly place: Place;
}

export interface StepRow {
  /** What it is called in ids: `jan`, and `jan-2` for a second step of that month. */
  readonly key: string;
  readonly month: Month;
  /** Counted from the first month, which is 0. */
  readonly at: number;
  /** In the author's words, without a full stop. */
  readonly action: string;
  readonly touches: readonly Touch[];
  /** Not known unless the row says it; once a day is never assumed. */
  readonly often?: Often;
  readonly change?: Portioned;
  /** What another directive of the lesson found to go away. */
  readonly rinse?: { readonly id: string; readonly place: Place };
  readonly place: Place;
}

export interface Values {
  readonly id: string;
  /** The months of the plan in their order. */
  readonly months: readonly Month[];
  /** The month of the day of the build, counted as `at`; the first one where the plan does not hold it. */
  readonly now: number;
  readonly steps: readonly StepRow[];
  readonly place: Place;
}
