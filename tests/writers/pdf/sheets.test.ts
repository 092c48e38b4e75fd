import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import type { Sheet } from '../../../src/document/index.js';
import { figureTools } from '../../../src/layout/index.js';
import { layOutSheet } from '../../../src/outputs/paper.js';
import { writePdf } from '../../../src/writers/pdf/index.js';
import { arabic, everything, handout, worksheet } from '../../layout/sample.js';
import { fonts, plainFigures } from '../../layout/tools.js';
import { contentOf } from './objects.js';
import { type Branch, expectedTree, readTree } from './read-back.js';

const SHEETS: readonly (readonly [string, Sheet])[] = [
  ['short handout', handout('short')],
  ['plain handout', handout('plain')],
  ['worksheet', worksheet('worksheet')],
  ['key', worksheet('key')],
  ['Arabic handout', arabic()],
  ['handout of every block', everything()],
];

function layOut(sheet: Sheet, ink: 'color' | 'one') {
  const figures = figureTools(fonts, plainFigures.picture);
  return layOutSheet(sheet, { paper: 'a4', ink, fonts, figures, date: '2027-02-01' }, createReport());
}

/** pdf.js gives what an element says outright (ActualText) as its alternative; figures have a true one. */
function withoutActualText(branch: Branch): Branch {
  const { alt, ...rest } = branch;
  const kids = rest.kids.map((kid) => (typeof kid === 'string' ? kid : withoutActualText(kid)));
  const own = branch.role === 'Figure' || branch.role === 'Form';
  return { ...rest, kids, ...(own && alt !== undefined ? { alt } : {}) };
}

/** Boxes to a thousandth of a point, as the file has them. */
function rounded(branch: Branch): Branch {
  const kids = branch.kids.map((kid) => (typeof kid === 'string' ? kid : rounded(kid)));
  const box = branch.box?.map((value) => Math.round(value * 1000) / 1000);
  return { ...branch, kids, ...(box ? { box } : {}) };
}

describe.each(SHEETS)('the %s as a file', (_, sheet) => {
  it('is without fault and has the structure and the words of its pages, read back by pdf.js', async () => {
    const pages = layOut(sheet, 'color');
    const report = createReport();
    const bytes = await writePdf(pages, { name: 'sheet.pdf' }, report);
    expect(report.problems).toEqual([]);
    for (const [index] of pages.pages.entries()) {
      const tree = (await readTree(bytes, index + 1)).map(withoutActualText).map(rounded);
      expect(tree).toEqual(expectedTree(pages, index + 1).map(rounded));
      expect(JSON.stringify(tree).length).toBeGreaterThan(200);
    }
  });

  it('has black and nothing else in its build of one ink', async () => {
    const pages = layOut(sheet, 'one');
    const bytes = await writePdf(pages, { name: 'sheet.pdf' }, createReport());
    for (const [index] of pages.pages.entries()) {
      const colors = (await contentOf(bytes, index + 1)).match(/^[\d. ]+ (g|G|rg|RG|k|K)$/gm);
      expect(new Set(colors?.map((color) => color.toLowerCase()))).toEqual(new Set(['0 g', '1 g']));
    }
  });
});
