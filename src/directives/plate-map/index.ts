import { directive } from '../contract.js';
import { compute } from './compute.js';
import { read } from './read.js';
import { schema } from './schema.js';
import { terms } from './terms.js';
import { view } from './view.js';

/** What share of a meal is what: one dish in twelve parts. */
export const plateMap = directive({ schema, terms, read, compute, view });
