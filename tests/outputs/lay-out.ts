import { createReport, type Problem } from '../../src/diagnostics/index.js';
import type { Sheet } from '../../src/document/index.js';
import { figureTools, type Pages, type PaperOptions } from '../../src/layout/index.js';
import { layOutSheet } from '../../src/outputs/paper.js';
import { fonts, plainFigures } from '../layout/tools.js';

const real = figureTools(fonts, plainFigures.picture);

/** Lays a sheet out with real figures, on Letter in color unless said. */
export function layOut(
  sheet: Sheet,
  options: Partial<PaperOptions> = {},
): { readonly pages: Pages; readonly problems: readonly Problem[] } {
  const report = createReport();
  const base = { paper: 'letter', ink: 'color', fonts, figures: real, date: '2027-02-01' } as const;
  return { pages: layOutSheet(sheet, { ...base, ...options }, report), problems: report.problems };
}
