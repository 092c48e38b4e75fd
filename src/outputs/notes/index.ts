import type { Sheet } from '../../document/index.js';
import type { SheetPlan } from '../../layout/index.js';

/** The speaker's notes on paper, a section for each slide. */
export function notesPlan(sheet: Sheet): SheetPlan {
  return { masthead: { mark: { kind: 'emblem', picture: sheet.emblem } }, numbers: new Map() };
}
