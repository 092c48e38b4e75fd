import { directive } from '../contract.js';
import { compute } from './compute.js';
import { read } from './read.js';
import { schema, type Values } from './schema.js';
import { terms } from './terms.js';
import { view } from './view.js';

/** The same dish for another need: what goes, what comes, and what is lost with it. */
export const plateTurn = directive({
  schema,
  terms,
  read,
  compute,
  view,
  refersTo: ({ of }: Values) => [{ id: of.id, place: of.place, wants: 'dish' }],
});
