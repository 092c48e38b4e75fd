import { type Computed, directive } from '../contract.js';
import { read } from './read.js';
import { schema } from './schema.js';
import { terms } from './terms.js';
import { view } from './view.js';

/** Nothing is computed: it is the speaker who is checked. */
function compute(): Computed {
  return { numbers: [], facts: { foods: [], nutrients: [] } };
}

/** Open prompts by which a speaker finds out how clear the talk was. */
export const teachBack = directive({ schema, terms, read, compute, view, forLeaders: true });
