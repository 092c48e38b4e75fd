import { cautionCodes } from '../cautions/index.js';
import { checkCodes } from '../checks/index.js';
import type { CodeInfo, CodeTable } from '../diagnostics/index.js';
import { directiveCodes } from '../directives/problems.js';
import { figureCodes } from '../figures/index.js';
import { layoutCodes } from '../layout/index.js';
import { lessonCodes } from '../lesson/index.js';
import { slideCodes } from '../outputs/slides/index.js';
import { recordCodes } from '../records/index.js';
import { localCodes } from '../records/local/index.js';
import { textCodes } from '../text/index.js';
import { pdfCodes } from '../writers/pdf/index.js';
import { computeCodes } from './compute.js';
import { pictureCodes } from './pictures.js';
import { readCodes } from './read.js';
import { settingCodes } from './settings.js';
import { fillCodes } from './to-fill.js';

const TABLES: readonly CodeTable[] = [
  lessonCodes,
  directiveCodes,
  computeCodes,
  readCodes,
  fillCodes,
  pictureCodes,
  cautionCodes,
  checkCodes,
  recordCodes,
  localCodes,
  settingCodes,
  textCodes,
  figureCodes,
  layoutCodes,
  slideCodes,
  pdfCodes,
];

/** Every code that the program can report, in alphabetical order, for `check --explain`. */
export function allCodes(): ReadonlyMap<string, CodeInfo> {
  const entries = TABLES.flatMap((table) => Object.entries(table));
  return new Map(entries.toSorted(([a], [b]) => (a < b ? -1 : 1)));
}
