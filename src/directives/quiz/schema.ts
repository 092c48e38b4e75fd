import type { Place } from '../../diagnostics/index.js';
import type { InlineNode, KnownDirective } from '../../lesson/index.js';
import type { Basis, Food, NutrientName } from '../../nutrition/index.js';

export const schema: KnownDirective = {
  name: 'quiz',
  forms: ['container'],
  id: 'required',
  attributes: {
    basis: {
      kind: { is: 'text' },
      required: true,
      help: 'the one amount for all options, such as 1/2 cup, ready to eat',
    },
    seed: {
      kind: { is: 'whole', from: 0, to: 999_999 },
      help: 'shuffles the options, always the same way for the same seed (as written when left out)',
    },
  },
  body: ['rows'],
};

/** Options are foods and never acts, so that no wrong answer can state something unsafe. */
export interface Option {
  /** The food in the author's words. */
  readonly words: string;
  readonly food: Food;
  readonly why: readonly InlineNode[];
  readonly place: Place;
}

export interface Question {
  readonly prompt: readonly InlineNode[];
  readonly options: readonly Option[];
  readonly find: 'min' | 'max';
  readonly nutrient: NutrientName;
  readonly place: Place;
  readonly answerPlace: Place;
}

export interface Values {
  readonly id: string;
  readonly basis: Basis & { readonly portion: string };
  readonly questions: readonly Question[];
}

export const MOST_OPTIONS = 4;
