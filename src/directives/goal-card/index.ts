import { type Computed, directive } from '../contract.js';
import { read } from './read.js';
import { schema } from './schema.js';
import { terms } from './terms.js';
import { view } from './view.js';

/** Nothing is computed or kept: what people write is theirs. */
function compute(): Computed {
  return { numbers: [], facts: { foods: [], nutrients: [] } };
}

/** A card for one small thing that its owner will do. */
export const goalCard = directive({ schema, terms, read, compute, view });
