import type { Place } from '../../diagnostics/index.js';
import type { KnownDirective } from '../../lesson/index.js';
import type { Food, Kitchen, PourInto, WrittenAmount } from '../../nutrition/index.js';

export const MEASURES = ['cup', 'spoon', 'gram', 'hand'] as const;
export type MeasureName = (typeof MEASURES)[number];

/** What an author may write for the cup, and the cup and spoons that it means. */
export const CUPS = {
  '240 mL': 'us label',
  '250 mL': 'metric',
  '200 mL': 'cup of 200 mL',
} as const satisfies Readonly<Record<string, Kitchen>>;

export const schema: KnownDirective = {
  name: 'portion-guide',
  forms: ['leaf'],
  id: 'required',
  attributes: {
    foods: {
      kind: { is: 'text' },
      required: true,
      help: 'one to six foods parted by ;, each with an amount if it is not the usual one: 3/4 cup oats, dry; canola oil',
    },
    measures: {
      kind: { is: 'list', of: MEASURES },
      help: 'what people measure with: cup; spoon; gram; hand (the first three when left out)',
    },
    'locale-cup': {
      kind: { is: 'choice', of: ['auto', ...Object.keys(CUPS)] },
      help: 'what a cup holds: auto takes 240 mL or 250 mL as the site measures (auto when left out)',
    },
  },
};

export interface GuideRow {
  /** The food in the author's words, without its amount. */
  readonly words: string;
  readonly food: Food;
  /** Missing for the food's usual portion. */
  readonly amount: WrittenAmount | null;
  readonly place: Place;
}

export interface Values {
  readonly id: string;
  readonly rows: readonly GuideRow[];
  readonly into: readonly PourInto[];
  readonly measures: readonly MeasureName[];
  /** Missing when the site's own measures decide. */
  readonly kitchen?: Kitchen;
}

export const MOST_ROWS = 6;
