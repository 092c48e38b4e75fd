import type { Report } from '../diagnostics/index.js';
import type { Sheet } from '../document/index.js';
import { compose, type Pages, type PaperOptions, type SheetPlan } from '../layout/index.js';
import { cardsPlan } from './cards/index.js';
import { handoutPlan } from './handout/index.js';
import { notesPlan } from './notes/index.js';
import { pricesPlan } from './prices/index.js';
import { reviewPlan } from './review/index.js';
import { staffPlan } from './staff/index.js';
import { keyPlan, withKeyStamp, worksheetPlan } from './worksheet/index.js';

/**
 * A sheet on pages of one paper in one ink, laid out anew for each. Always returns pages; what is too
 * long, too wide or has no glyph goes to the report.
 */
export function layOutSheet(sheet: Sheet, options: PaperOptions, report: Report): Pages {
  const printed = sheet.kind === 'key' ? withKeyStamp(sheet) : sheet;
  return compose(printed, planOf(printed), options, report);
}

function planOf(sheet: Sheet): SheetPlan {
  switch (sheet.kind) {
    case 'handout':
      return handoutPlan();
    case 'worksheet':
      return worksheetPlan(sheet);
    case 'key':
      return keyPlan(sheet);
    case 'staff':
      return staffPlan(sheet);
    case 'review':
      return reviewPlan();
    case 'cards':
      return cardsPlan();
    case 'prices':
      return pricesPlan();
    case 'notes':
      return notesPlan(sheet);
    default:
      return sheet.kind satisfies never;
  }
}
