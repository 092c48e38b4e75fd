import { directive } from '../contract.js';
import { compute } from './compute.js';
import { read } from './read.js';
import { schema } from './schema.js';
import { terms } from './terms.js';
import { view } from './view.js';

/** Questions whose answers are computed from the same records as the figures. */
export const quiz = directive({ schema, terms, read, compute, view });
