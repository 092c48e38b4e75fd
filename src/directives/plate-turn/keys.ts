import type { DishForm, DishKindName } from '../../nutrition/index.js';
import type { Key } from './terms.js';

/** Terms by what they name. */
export const FORM_TERMS = {
  bowl: 'form-bowl',
  plate: 'form-plate',
  tray: 'form-tray',
  'lunch-box': 'form-lunch-box',
  'shared-pot': 'form-shared-pot',
} as const satisfies Readonly<Record<DishForm, Key>>;

export const KIND_TERMS = {
  'vegetables and fruit': 'kind-produce',
  protein: 'kind-protein',
  'grain or starch': 'kind-grain',
} as const satisfies Readonly<Record<DishKindName, Key>>;

export const LETTER_TERMS = {
  'vegetables and fruit': 'letter-produce',
  protein: 'letter-protein',
  'grain or starch': 'letter-grain',
} as const satisfies Readonly<Record<DishKindName, Key>>;
