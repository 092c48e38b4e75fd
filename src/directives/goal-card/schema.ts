import type { KnownDirective } from '../../lesson/index.js';

/** What a card asks for; nothing of it says who somebody is. */
export const FIELDS = ['what', 'how-much', 'when', 'how-often', 'how-sure'] as const;
export type FieldName = (typeof FIELDS)[number];
/** The four words of sureness. */
export const SURE = ['not-yet', 'maybe', 'likely', 'sure'] as const;
export type Sureness = (typeof SURE)[number];

export const COPIES = [2, 4] as const;
export type Copies = (typeof COPIES)[number];

export const schema: KnownDirective = {
  name: 'goal-card',
  forms: ['leaf', 'container'],
  id: 'required',
  attributes: {
    fields: {
      kind: { is: 'list', commas: true },
      help: 'what the card asks, of what, how-much, when, how-often and how-sure (all five when left out)',
    },
    copies: {
      kind: { is: 'choice', of: COPIES.map(String) },
      help: 'how many cards stand on a sheet to cut, 2 or 4 (2 when left out)',
    },
  },
  body: ['rows'],
};

/** A filled card: what stands in each field, and the word that is ringed. */
export interface Sample {
  readonly words: Readonly<Partial<Record<FieldName, string>>>;
  readonly sure?: Sureness;
}

export interface Values {
  readonly id: string;
  readonly fields: readonly FieldName[];
  readonly copies: Copies;
  /** The author's sample; without one the program's own stands in. */
  readonly sample?: Sample;
}
