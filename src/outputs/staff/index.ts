import type { Sheet } from '../../document/index.js';
import type { SheetPlan } from '../../layout/index.js';

/** The leader's page: a small title, as long as it needs to be. */
export function staffPlan(sheet: Sheet): SheetPlan {
  return { masthead: { mark: { kind: 'emblem', picture: sheet.emblem } }, numbers: new Map() };
}
