import { directive } from '../contract.js';
import { compute } from './compute.js';
import { read } from './read.js';
import { schema } from './schema.js';
import { terms } from './terms.js';
import { view } from './view.js';

/** A slow change of weight, honestly: a band of an invented adult, or a pace that eases. */
export const paceChart = directive({ schema, terms, read, compute, view, aboutWeight: true });
