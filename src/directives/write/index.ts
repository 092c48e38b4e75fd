import type { DirectivePart } from '../../lesson/index.js';
import { type Computed, directive, type View } from '../contract.js';
import { written } from '../written.js';
import { MOST_LINES, schema, USUAL_LINES, type Values } from './schema.js';
import { terms } from './terms.js';

function read(part: DirectivePart): Values | undefined {
  const label = written(part, 'label')?.value.trim().replace(/\s+/g, ' ');
  return label ? { label, lines: linesOf(part) } : undefined;
}

/** A number of lines that is none was reported when the lesson was read; the usual number stands in its place. */
function linesOf(part: DirectivePart): number {
  const lines = Number(part.attributes.get('lines')?.value ?? USUAL_LINES);
  return Number.isInteger(lines) && lines >= 1 && lines <= MOST_LINES ? lines : USUAL_LINES;
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
