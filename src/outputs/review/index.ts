import type { SheetPlan } from '../../layout/index.js';

export { type CautionForReview, type ForReview, type ReviewWords, reviewBlocks } from './blocks.js';

/** The reviewer's sheet: everything that is shown and where it comes from, in small tables over the whole page. */
export function reviewPlan(): SheetPlan {
  return { masthead: {}, numbers: new Map() };
}
