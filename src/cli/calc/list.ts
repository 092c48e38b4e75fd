import { ACTIVITY } from './activity.js';
import { BASKETS } from './basket.js';
import { CLAIMS } from './claims.js';
import { COMPARING_CLAIMS } from './comparing-claims.js';
import { COMPOSITION } from './composition.js';
import type { Calculation } from './contract.js';
import { COOKING } from './cooking.js';
import { DISHES } from './dishes.js';
import { ENERGY } from './energy.js';
import { FOOD_ENERGY } from './food-energy.js';
import { GUIDANCE } from './guidance.js';
import { INTAKE_SHARES } from './intake-shares.js';
import { INTAKE_LEVELS } from './intakes.js';
import { LABELS } from './labels.js';
import { MONEY } from './money.js';
import { NEEDS_TESTS } from './needs.js';
import { PLATED } from './plated.js';
import { PORTIONS } from './portions.js';
import { RINSING } from './rinsing.js';
import { MEASURES } from './units.js';
import { WEIGHT_BANDS } from './weight-band.js';
import { WEIGHT_COURSES } from './weight-model.js';
import { WEIGHT_PACES } from './weight-paces.js';
import { WEIGHT_RULES } from './weight-rules.js';
import { WORD_CLAIMS } from './word-claims.js';

/** Calculations that belong together, under a heading of the list. */
export interface Area {
  readonly heading: string;
  readonly entries: readonly Calculation[];
}

/** Every calculation, in the order of the printed list. */
export const AREAS: readonly Area[] = [
  { heading: 'Energy of a person', entries: ENERGY },
  { heading: 'Body weight', entries: [...WEIGHT_COURSES, ...WEIGHT_BANDS, ...WEIGHT_RULES, ...WEIGHT_PACES] },
  { heading: 'Labels', entries: LABELS },
  { heading: 'Claims on labels', entries: [...CLAIMS, ...COMPARING_CLAIMS, ...WORD_CLAIMS] },
  { heading: 'What food is made of', entries: [...FOOD_ENERGY, ...COMPOSITION] },
  { heading: 'Reference intakes', entries: [...INTAKE_LEVELS, ...INTAKE_SHARES] },
  { heading: 'Guidance', entries: GUIDANCE },
  { heading: 'Portions and measures', entries: [...PORTIONS, ...MEASURES] },
  { heading: 'Cooking, draining and rinsing', entries: [...COOKING, ...PLATED, ...RINSING] },
  { heading: 'Recipes, dishes and comparing', entries: DISHES },
  { heading: 'Needs and swaps', entries: NEEDS_TESTS },
  { heading: 'Activity', entries: ACTIVITY },
  { heading: 'Money', entries: [...MONEY, ...BASKETS] },
];

export const CALCULATIONS: readonly Calculation[] = AREAS.flatMap(({ entries }) => entries);
