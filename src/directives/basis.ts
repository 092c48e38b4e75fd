import type { Report } from '../diagnostics/index.js';
import type { Attribute } from '../lesson/index.js';
import { type Basis, parseBasis, writeAmount } from '../nutrition/index.js';
import { type directiveCodes, readProblem } from './problems.js';

/** A basis as pages print it. */
export interface PrintedBasis extends Basis {
  /** The amount without its state: `1/2 cup`. */
  readonly portion: string;
}

/** The one amount on which all rows stand; white space is evened out. Nothing after a problem. */
export function readBasis(
  attribute: Attribute,
  code: keyof typeof directiveCodes,
  report: Report,
): PrintedBasis | undefined {
  const basis = parseBasis(attribute.value.trim().replace(/\s+/g, ' '));
  if (basis.ok) return { ...basis.value, portion: writeAmount(basis.value.amount) };
  report.add(readProblem(code, basis, attribute.place));
  return undefined;
}
