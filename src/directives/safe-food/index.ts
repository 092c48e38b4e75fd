import { directive } from '../contract.js';
import { compute } from './compute.js';
import { read } from './read.js';
import { schema } from './schema.js';
import { terms } from './terms.js';
import { view } from './view.js';

/** Food kept safe: what to do, with its times and temperatures, and what to throw out. */
export const safeFood = directive({ schema, terms, read, compute, view });
