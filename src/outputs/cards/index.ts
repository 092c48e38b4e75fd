import type { SheetPlan } from '../../layout/index.js';

/** Cards to cut: a small title, then the cards over the whole measure. */
export function cardsPlan(): SheetPlan {
  return { masthead: {}, numbers: new Map() };
}
