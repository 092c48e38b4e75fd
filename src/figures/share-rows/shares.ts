import type { Problem } from '../../diagnostics/index.js';
import { figureProblem } from '../problems.js';
import type { ShareRow, ShareRows } from '../spec.js';

/** One brick is 5 percent, so that twenty are the whole. */
export const BRICK_PERCENT = 5;
export const BRICKS = 100 / BRICK_PERCENT;

/** The same figure with shares that can be drawn; each that cannot is a problem. */
export function drawableShares(spec: ShareRows, problems: Problem[]): ShareRows {
  const inside = (value: number) => Number.isFinite(value) && value >= 0 && value <= 100 + 1e-9;
  const rows = spec.rows.filter(({ name, share, range }) => {
    const sound = share === null || inside(share);
    if (sound && (!range || (inside(range.low) && inside(range.high) && range.low <= range.high)))
      return true;
    problems.push(
      figureProblem('figures/not-drawable', `In figure “${spec.id}”, “${name}” is ${share} percent.`, {
        hint: 'A share is a number from 0 to 100, and so are both ends of its range.',
        actual: String(share),
      }),
    );
    return false;
  });
  return { ...spec, rows };
}

/** How much of a brick is filled, from 0 to 1; nothing of a row that is not known. */
export function filled({ share }: ShareRow, brick: number): number {
  return Math.min(1, Math.max(0, (share ?? 0) / BRICK_PERCENT - brick));
}
