import type { DirectivePart } from '../../lesson/index.js';
import { type Computed, directive, type View, type ViewContext } from '../contract.js';
import { written } from '../written.js';
import { schema, type Values } from './schema.js';
import { terms } from './terms.js';

function read(part: DirectivePart): Values | undefined {
  const figure = written(part, 'figure')?.value;
  return figure ? { figure } : undefined;
}

/** The figure computes its own numbers where it stands first. */
function compute(): Computed {
  return { numbers: [], facts: { foods: [], nutrients: [] } };
}

function view(values: Values, _: Computed, context: ViewContext): View {
  return context.other(values.figure) ?? { blocks: [] };
}

/** A figure that stands elsewhere in the lesson, again: on a slide, or as an exercise on the worksheet. */
export const show = directive({ schema, terms, read, compute, view });
