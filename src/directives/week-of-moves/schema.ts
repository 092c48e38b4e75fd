import type { Place } from '../../diagnostics/index.js';
import type { KnownDirective } from '../../lesson/index.js';
import type { ActivityGroup, MoveKind } from '../../nutrition/index.js';

export const schema: KnownDirective = {
  name: 'week-of-moves',
  forms: ['container'],
  id: 'required',
  body: ['rows'],
  attributes: {
    for: {
      kind: { is: 'choice', of: ['adult', 'older-adult'] },
      help: 'whose week it is: adult (when left out), or older-adult, who adds balance work',
    },
  },
};

/** In the order of the guidelines' week; a row names its day in English, pages in their own language. */
export const DAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;
export type Day = (typeof DAYS)[number];

export const KINDS = [
  'light',
  'moderate',
  'vigorous',
  'strength',
  'balance',
] as const satisfies readonly MoveKind[];

/** One thing on one day. */
export interface MoveRow {
  /** What it is called in ids: `mon-walk`. */
  readonly key: string;
  readonly day: Day;
  /** In the author's words: `walk`. */
  readonly name: string;
  readonly minutes: number;
  readonly kind: MoveKind;
  /** Done sitting; it counts like any other. */
  readonly seated: boolean;
  readonly place: Place;
}

export interface Values {
  readonly id: string;
  readonly group: ActivityGroup;
  readonly moves: readonly MoveRow[];
  readonly place: Place;
}
