import type { Place } from '../../diagnostics/index.js';
import type { InlineNode, KnownDirective } from '../../lesson/index.js';

export const MOST_OBJECTIVES = 6;
export const MOST_PROMPTS = 6;

export const schema: KnownDirective = {
  name: 'teach-back',
  forms: ['container'],
  id: 'required',
  attributes: {
    objective: {
      kind: { is: 'whole', from: 1, to: MOST_OBJECTIVES },
      help: 'which objective of the lesson all prompts ask about, counted from 1 (found by its words when left out)',
    },
  },
  body: ['rows'],
};

export interface Prompt {
  readonly words: readonly InlineNode[];
  /** What a clear answer holds. */
  readonly listenFor: readonly (readonly InlineNode[])[];
  /** The objective of the lesson that it asks about, in the author's words. */
  readonly objective: string;
}

export interface Values {
  readonly id: string;
  readonly prompts: readonly Prompt[];
  readonly place: Place;
}
