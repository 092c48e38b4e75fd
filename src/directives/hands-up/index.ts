import { directive } from '../contract.js';
import { compute } from './compute.js';
import { read } from './read.js';
import { schema } from './schema.js';
import { terms } from './terms.js';
import { view } from './view.js';

/** A quick show of hands about a habit, with a tally. */
export const handsUp = directive({ schema, terms, read, compute, view, forLeaders: true });
