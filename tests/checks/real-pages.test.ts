import { describe, expect, it } from 'vitest';
import { boxesOf } from '../../src/cautions/index.js';
import { type Built, checkCautionsKept, checkStructure } from '../../src/checks/index.js';
import { createReport } from '../../src/diagnostics/index.js';
import type { Sheet } from '../../src/document/index.js';
import type { Pages } from '../../src/layout/index.js';
import { layOutSheet } from '../../src/outputs/paper.js';
import type { Level } from '../../src/reading/index.js';
import { fonts, plainFigures } from '../layout/tools.js';
import { asSheet, found, pulled, sheet, standingOf } from './fixtures.js';

const KINDS = ['handout', 'worksheet', 'key'] as const;
const LEVELS: readonly Level[] = ['short', 'plain', 'fuller'];

function laidOut(s: Sheet, paper: 'letter' | 'a4'): Pages {
  return layOutSheet(
    s,
    { paper, ink: 'color', fonts, figures: plainFigures, date: '2026-12-01' },
    createReport(),
  );
}
const check = (built: Built) => [
  ...found((r) => checkCautionsKept({ pulled, built: [built], standing: standingOf }, r)),
  ...found((r) => checkStructure({ built: [built] }, r)),
];

describe('pages as the program lays them out', () => {
  it.each(
    KINDS.flatMap((kind) =>
      LEVELS.flatMap((level) => (['letter', 'a4'] as const).map((paper) => [kind, level, paper] as const)),
    ),
  )('hold every caution whole and are tagged: %s, %s, %s', (kind, level, paper) => {
    const s = sheet(kind, level);
    expect(check(asSheet(`${kind}-${level}-${paper}`, s, laidOut(s, paper)))).toEqual([]);
  });

  it('are found out when any one caution is taken off them', () => {
    const s = sheet('handout', 'plain');
    const pages = laidOut(s, 'letter');
    const lines = s.cautions.lines.map((l) => ({
      id: l.id,
      start: l.inlines
        .map((i) => i.text)
        .join('')
        .slice(0, 18),
    }));
    for (const { id, start } of lines) {
      const node = nodeThatSays(pages, start);
      const off: Pages = {
        ...pages,
        pages: pages.pages.map((p) => ({
          ...p,
          items: p.items.filter((i) => i.kind === 'artifact' || i.node !== node),
        })),
      };
      expect(check(asSheet('handout', s, off)), id).toContainEqual(
        expect.stringContaining(`\`${id}\` is not on the finished pages.`),
      );
    }
    expect(lines).toHaveLength(boxesOf(pulled).length);
  });
});

function nodeThatSays(pages: Pages, words: string): string {
  const item = pages.pages
    .flatMap((p) => p.items)
    .find(
      (i) => i.kind === 'content' && i.marks.some((m) => m.kind === 'text' && m.line.text.startsWith(words)),
    );
  if (item?.kind !== 'content') throw new Error(`No line says "${words}".`);
  return item.node;
}
