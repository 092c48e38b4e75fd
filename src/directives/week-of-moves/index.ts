import { directive } from '../contract.js';
import { compute } from './compute.js';
import { read } from './read.js';
import { schema } from './schema.js';
import { terms } from './terms.js';
import { view } from './view.js';

/** A week of activity that adds up, against what guidelines name; no word of burned energy. */
export const weekOfMoves = directive({ schema, terms, read, compute, view });
