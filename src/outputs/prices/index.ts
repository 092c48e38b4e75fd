import type { SheetPlan } from '../../layout/index.js';

/** The form on which prices are written down in the shops: a small title beside a pencil, one piece of paper. */
export function pricesPlan(): SheetPlan {
  return { masthead: { mark: { kind: 'emblem', picture: 'pencil' } }, numbers: new Map(), mostPages: 2 };
}
