import type { Desk } from '../desk.js';
import { addArtifact, type PageDraft } from '../pen.js';
import { paintRow } from '../rows.js';
import type { Draft } from '../structure.js';
import { mm } from '../tokens.js';

/** Paints the mark; `spoken` on the one page where it is read aloud. */
export type DraftMark = (page: PageDraft, spoken: boolean) => void;

const SPINE = { width: mm(5.6), pad: mm(3) } as const;

/** "Draft, do not hand out": a bar in the end margin of every page, so that a proof keeps its page breaks. */
export function layDraftMark(desk: Desk, node: Draft, words: string): DraftMark {
  const { set, pen, grid, type } = desk;
  const { colors } = pen;
  const role = { ...type.stamp, size: 11, leading: 13, weight: 800 } as const;
  const [row] = set.words(node, words, { width: 1e6, role, color: colors.paper }).rows;
  return (page, spoken) => {
    if (!row) return;
    const x = grid.width - grid.safe - SPINE.width;
    const ground = pen.rect(x, grid.top, SPINE.width, row.width + 2 * SPINE.pad, { fill: colors.ink });
    const inner: PageDraft = { index: page.index, items: [] };
    const left = pen.left(x, SPINE.width);
    // Set at the origin, then turned a quarter clockwise about it.
    paintRow(inner, { ...pen, left: (at) => at }, row, 0, 0);
    const turn = [0, 1, -1, 0, left + SPINE.width / 2 + row.height / 2, grid.top + SPINE.pad] as const;
    addArtifact(page, 'background', [ground]);
    for (const item of inner.items) {
      if (item.kind !== 'content') continue;
      const marks = [{ kind: 'group', at: turn, marks: item.marks } as const];
      page.items.push(spoken ? { ...item, marks } : { kind: 'artifact', of: 'pagination', marks });
    }
  };
}
