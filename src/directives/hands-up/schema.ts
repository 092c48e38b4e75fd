import type { Place } from '../../diagnostics/index.js';
import type { InlineNode, KnownDirective } from '../../lesson/index.js';

export const FEWEST_OPTIONS = 2;
export const MOST_OPTIONS = 4;
export const MOST_MINUTES = 15;
export const USUAL_MINUTES = 2;

export const schema: KnownDirective = {
  name: 'hands-up',
  forms: ['container'],
  id: 'required',
  attributes: {
    minutes: {
      kind: { is: 'whole', from: 1, to: MOST_MINUTES },
      help: `how long it takes, 1 to ${MOST_MINUTES} minutes (${USUAL_MINUTES} when left out)`,
    },
  },
  body: ['rows', 'text'],
};

/** When people were asked: once, or before and after. */
export type Round = 'count' | 'before' | 'after';

export interface Option {
  readonly words: string;
  readonly inlines: readonly InlineNode[];
  /** What the leader does when most people choose it. */
  readonly next?: readonly InlineNode[];
  /** People by round, in the order of `rounds`. */
  readonly people: readonly number[];
  readonly place: Place;
}

export interface Values {
  readonly id: string;
  readonly minutes: number;
  readonly question: readonly InlineNode[];
  readonly options: readonly Option[];
  /** Rounds that were counted; none before the talk. */
  readonly rounds: readonly Round[];
}
