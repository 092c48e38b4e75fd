import { directive } from '../contract.js';
import { compute } from './compute.js';
import { read } from './read.js';
import { schema, type Values } from './schema.js';
import { terms } from './terms.js';
import { view } from './view.js';

/** One small change a month, with what it changes in terms of food; never in weight or energy. */
export const stepPlan = directive({
  schema,
  terms,
  read,
  compute,
  view,
  refersTo: ({ steps }: Values) =>
    steps.flatMap(({ rinse }) => (rinse ? [{ ...rinse, wants: 'less' as const }] : [])),
});
