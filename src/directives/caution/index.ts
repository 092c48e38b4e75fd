import { readCaution } from '../../cautions/index.js';
import type { DirectivePart } from '../../lesson/index.js';
import { isSource } from '../../records/index.js';
import { type Computed, directive, type ReadContext, type View } from '../contract.js';
import { schema, type Values } from './schema.js';
import { terms } from './terms.js';

function read(part: DirectivePart, context: ReadContext): Values | undefined {
  const { register, language, on, level, sources, report } = context;
  const written = {
    ...(part.id ? { id: part.id } : {}),
    attributes: part.attributes,
    rows: part.rows,
    place: part.place,
  };
  const hasSource = (id: string) => isSource(sources.find(id));
  return readCaution(written, { register, language, on, ...(level ? { level } : {}), hasSource }, report);
}

function compute(values: Values): Computed {
  return { numbers: [], facts: { foods: [], nutrients: [], caution: values } };
}

/** Nothing stands here: a caution is lifted into the block of every sheet, worksheet and deck. */
function view(): View {
  return { blocks: [] };
}

/** The warning that cannot be lost, from the register or the lesson's own. */
export const caution = directive({ schema, terms, read, compute, view });
