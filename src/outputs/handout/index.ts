import type { SheetPlan } from '../../layout/index.js';

/** A take-home sheet: the message in a band, and no more than the two sides of one piece of paper. */
export function handoutPlan(): SheetPlan {
  return { masthead: 'band', numbers: new Map(), mostPages: 2, aimPages: 2 };
}
