import { directive } from '../contract.js';
import { compute } from './compute.js';
import { read } from './read.js';
import { schema } from './schema.js';
import { terms } from './terms.js';
import { view } from './view.js';

/** Where the energy of a day or a meal comes from: carbohydrate, protein, fat, and alcohol where there is any. */
export const energySplit = directive({ schema, terms, read, compute, view });
