import type { ComputeContext, Computed } from '../contract.js';
import { type BandResult, computeBand } from './compute-band.js';
import { computePace, type PaceResult } from './compute-pace.js';
import type { Values } from './schema.js';

export type Result = (BandResult | PaceResult) & Computed;

/** What one change does, or a pace that eases; of an invented adult alone. */
export function compute(values: Values, context: ComputeContext): Result | undefined {
  return values.show === 'band' ? computeBand(values, context) : computePace(values, context);
}
