import { directive } from '../contract.js';
import { compute } from './compute.js';
import { read } from './read.js';
import { schema } from './schema.js';
import { terms } from './terms.js';
import { view } from './view.js';

/** How much an amount is, with the measures that people own. */
export const portionGuide = directive({ schema, terms, read, compute, view });
