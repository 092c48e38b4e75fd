import type { DishCounters, DishTexture } from '../figures/index.js';
import type { DishKindName } from '../nutrition/index.js';
import type { DishPart } from './compute-dish.js';

/** Kinds are told apart by texture, letter and word, never by color. */
export const TEXTURES: Readonly<Record<DishKindName, DishTexture>> = {
  'vegetables and fruit': 'waves',
  protein: 'bars',
  'grain or starch': 'dots',
};

/** The order in which a dish is filled, which is the order of the kinds in a figure. */
export const FILL: readonly DishKindName[] = ['vegetables and fruit', 'protein', 'grain or starch'];

/** Counters of each food, in the order in which the dish is filled. */
export function countersOf(
  parts: readonly DishPart[],
  foods: readonly { readonly food: { readonly picture: string } }[],
  words: (part: DishPart) => Pick<DishCounters, 'name' | 'note' | 'number' | 'changed'>,
): DishCounters[] {
  return parts.map((part) => ({
    kind: FILL.indexOf(part.kind),
    picture: foods[part.index]?.food.picture ?? '',
    parts: part.parts,
    ...words(part),
  }));
}
