import { directive } from '../contract.js';
import { compute } from './compute.js';
import { read } from './read.js';
import { schema } from './schema.js';
import { terms } from './terms.js';
import { view } from './view.js';

/** Canned, frozen, fresh and dried forms of one food, side by side on one basis. */
export const formCompare = directive({ schema, terms, read, compute, view });
