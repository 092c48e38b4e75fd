import type { Sheet } from '../../document/index.js';
import type { SheetPlan } from '../../layout/index.js';
import { numberTasks } from './tasks.js';

export { numberTasks } from './tasks.js';

/** A worksheet: a small title beside a pencil, its tasks numbered. It may run on, but aims at one piece of paper. */
export function worksheetPlan(sheet: Sheet): SheetPlan {
  return {
    masthead: { mark: { kind: 'emblem', picture: 'pencil' } },
    numbers: numberTasks(sheet.blocks),
    aimPages: 2,
  };
}

/** The key is the worksheet's own page with KEY in the pencil's place; its tasks have the same numbers. */
export function keyPlan(sheet: Sheet): SheetPlan {
  return {
    ...worksheetPlan(sheet),
    masthead: { mark: { kind: 'tab', word: sheet.words.key } },
  };
}

/** The key's word stands on every page, in the stamp too, so that a single page cannot pass for the blank. */
export function withKeyStamp(sheet: Sheet): Sheet {
  const { page } = sheet.stamp;
  if (page.includes(sheet.words.key)) return sheet;
  return { ...sheet, stamp: { ...sheet.stamp, page: `${sheet.words.key} · ${page}` } };
}
