import type { DirectivePart } from '../../lesson/index.js';
import { type Computed, directive, type View } from '../contract.js';
import { schema, type Values } from './schema.js';
import { terms } from './terms.js';

function read(part: DirectivePart): Values | undefined {
  const label = part.attributes.get('label')?.value.trim();
  const lines = Number(part.attributes.get('lines')?.value ?? 2);
  return label ? { label, lines } : undefined;
}

/** Nothing is computed: what people write is theirs. */
function compute(): Computed {
  return { numbers: [], facts: { foods: [], nutrients: [] } };
}

function view(values: Values): View {
  return { blocks: [{ kind: 'write', label: values.label, lines: values.lines }] };
}

/** Lines to write on. */
export const write = directive({ schema, terms, read, compute, view });
