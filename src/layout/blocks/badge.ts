import type { Desk } from '../desk.js';
import { addArtifact, type PageDraft } from '../pen.js';
import { paintRow } from '../rows.js';
import type { Draft } from '../structure.js';
import { mm } from '../tokens.js';

const RADIUS = mm(3.2);
/** Room that a number badge takes at the start of a line. */
export const BADGE_INDENT = mm(8.4);

/** A number, white on an ink disc. The number is text of its own element; the disc is its ground. */
export function layBadge(
  desk: Desk,
  node: Draft,
  number: number,
): (page: PageDraft, x: number, top: number) => void {
  const { pen, set, type } = desk;
  const text = set.words(node, String(number), { width: 1e6, role: type.badge, color: pen.colors.paper });
  return (page, x, top) => {
    const row = text.rows[0];
    if (!row) return;
    addArtifact(page, 'background', [
      pen.circle(x + RADIUS, top + RADIUS - mm(0.1), RADIUS, { fill: pen.colors.ink }),
    ]);
    // Digits are as tall as capitals, 0.668 em: their middle stands in the middle of the disc.
    const baseline = top + RADIUS - mm(0.1) + 0.334 * type.badge.size;
    paintRow(page, pen, row, x + RADIUS, baseline - row.baseline, 'center');
  };
}
