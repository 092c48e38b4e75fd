import { directive } from '../contract.js';
import { compute } from './compute.js';
import { read } from './read.js';
import { schema } from './schema.js';
import { terms } from './terms.js';
import { view } from './view.js';

/** One food for another: the job that it does, what changes, and what is lost. */
export const swapBoard = directive({ schema, terms, read, compute, view });
