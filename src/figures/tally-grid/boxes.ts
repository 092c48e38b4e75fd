import type { Problem } from '../../diagnostics/index.js';
import { figureProblem } from '../problems.js';
import type { TallyGrid, TallyLine } from '../spec.js';

/** Boxes stand in three groups of five on a line. */
export const BOXES = 15;

/** One line of boxes: how many of them are filled, a part of one counted as such. */
export interface BoxLine {
  readonly line: TallyLine;
  readonly filled: number;
  /** The words and values of the line stand here; the second line of one round has none. */
  readonly first: boolean;
}

/** Lines of boxes of one answer: two for one round, else one for each. */
export function boxLines(lines: readonly TallyLine[], worth: number): readonly BoxLine[] {
  const [only, ...more] = lines;
  const boxes = (line: TallyLine) => (line.people ?? 0) / worth;
  if (!only || more.length > 0)
    return lines.map((line) => ({ line, filled: Math.min(BOXES, boxes(line)), first: true }));
  const all = boxes(only);
  return [
    { line: only, filled: Math.min(BOXES, all), first: true },
    { line: only, filled: Math.min(BOXES, Math.max(0, all - BOXES)), first: false },
  ];
}

/** The same figure with counts that can be drawn; each that cannot is a problem. */
export function drawableTally(spec: TallyGrid, problems: Problem[]): TallyGrid {
  const worth = Number.isFinite(spec.worth) && spec.worth > 0 ? spec.worth : 1;
  const rows = spec.rows.filter(({ name, lines }) => {
    const room = (lines.length > 1 ? BOXES : 2 * BOXES) * worth;
    const odd = lines.find(({ people }) => people !== null && !(people >= 0 && people <= room));
    if (!odd && worth === spec.worth) return true;
    problems.push(
      figureProblem(
        'figures/not-drawable',
        `In figure “${spec.id}”, “${name}” does not fit into its boxes.`,
        {
          hint: `Its boxes hold ${room} people; let one box stand for more.`,
          actual: String(odd?.people ?? spec.worth),
        },
      ),
    );
    return false;
  });
  return { ...spec, worth, rows };
}
