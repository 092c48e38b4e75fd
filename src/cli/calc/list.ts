import type { Calculation } from './contract.js';
import { ENERGY } from './energy.js';
import { WEIGHT_BANDS } from './weight-band.js';
import { WEIGHT_COURSES } from './weight-model.js';
import { WEIGHT_PACES } from './weight-paces.js';
import { WEIGHT_RULES } from './weight-rules.js';

/** Calculations that belong together, under a heading of the list. */
export interface Area {
  readonly heading: string;
  readonly entries: readonly Calculation[];
}

/** Every calculation, in the order of the printed list. */
export const AREAS: readonly Area[] = [
  { heading: 'Energy of a person', entries: ENERGY },
  { heading: 'Body weight', entries: [...WEIGHT_COURSES, ...WEIGHT_BANDS, ...WEIGHT_RULES, ...WEIGHT_PACES] },
];

export const CALCULATIONS: readonly Calculation[] = AREAS.flatMap(({ entries }) => entries);
