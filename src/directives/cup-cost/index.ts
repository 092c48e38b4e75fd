import { directive } from '../contract.js';
import { compute } from './compute.js';
import { read } from './read.js';
import { schema } from './schema.js';
import { terms } from './terms.js';
import { view } from './view.js';

/** What one cup of each food costs, from a dated price to the plate. */
export const cupCost = directive({ schema, terms, read, compute, view });
