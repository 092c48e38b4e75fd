import type { DishForm, DishKindName } from '../../nutrition/index.js';
import type { Extent } from '../compute-dish.js';
import type { Beside } from './schema.js';
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

/** The words of the kinds where there is little room. */
export const BAR_TERMS = {
  'vegetables and fruit': 'bar-produce',
  protein: 'bar-protein',
  'grain or starch': 'bar-grain',
} as const satisfies Readonly<Record<DishKindName, Key>>;

export const LETTER_TERMS = {
  'vegetables and fruit': 'letter-produce',
  protein: 'letter-protein',
  'grain or starch': 'letter-grain',
} as const satisfies Readonly<Record<DishKindName, Key>>;

export const EXTENT_TERMS = {
  none: 'extent-none',
  little: 'extent-little',
  some: 'extent-some',
  half: 'extent-half',
  most: 'extent-most',
  all: 'extent-all',
} as const satisfies Readonly<Record<Extent, Key>>;

export const BESIDE_TERMS = {
  drink: 'beside-drink',
  fat: 'beside-fat',
  calcium: 'beside-calcium',
  other: 'beside-other',
} as const satisfies Readonly<Record<Beside | 'other', Key>>;

export const LACKS_TERMS = {
  fat: 'lacks-fat',
  calcium: 'lacks-calcium',
} as const satisfies Readonly<Record<Exclude<Beside, 'drink'>, Key>>;
