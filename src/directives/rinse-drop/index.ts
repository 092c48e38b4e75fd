import { directive } from '../contract.js';
import { compute } from './compute.js';
import { read } from './read.js';
import { schema } from './schema.js';
import { terms } from './terms.js';
import { view } from './view.js';

/** What draining and rinsing takes away: a range, on the basis of the studies. */
export const rinseDrop = directive({ schema, terms, read, compute, view });
