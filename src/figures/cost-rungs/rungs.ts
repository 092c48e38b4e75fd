import type { Problem } from '../../diagnostics/index.js';
import { figureProblem } from '../problems.js';
import type { CostRung, CostRungs } from '../spec.js';

/** A brick of a rung: how much of it is there, from 0 to 1. */
export type Fill = number;

/** The bricks of one rung, the last one cut at its true place; `whole` rounds to bricks, and never to none. */
export function bricksOf({ value }: CostRung, { worth, whole }: CostRungs): readonly Fill[] {
  if (value === null) return [];
  const count = value / worth;
  const rounded = Math.round(count);
  const shown = whole && rounded > 0 ? rounded : count;
  return Array.from({ length: Math.max(1, Math.ceil(shown - 1e-9)) }, (_, k) =>
    Math.min(1, Math.max(0, shown - k)),
  );
}

/** How many bricks the longest rung needs; at least one, for a rung without a price. */
export function longest(spec: CostRungs): number {
  return Math.max(1, ...spec.rungs.map((rung) => bricksOf(rung, spec).length));
}

/** The same ladder with costs that can be drawn; each that cannot is a problem. */
export function drawableRungs(spec: CostRungs, problems: Problem[]): CostRungs {
  const wrong = (message: string, actual: number) =>
    problems.push(
      figureProblem('figures/not-drawable', `In figure “${spec.id}”, ${message}.`, {
        hint: 'Costs and the worth of a brick are above zero.',
        actual: String(actual),
      }),
    );
  let { worth } = spec;
  if (!(Number.isFinite(worth) && worth > 0)) {
    wrong(`a brick is worth ${worth}`, worth);
    worth = 1;
  }
  const rungs = spec.rungs.filter(({ value, words }) => {
    const sound = value === null || (Number.isFinite(value) && value >= 0 && value / worth <= MOST_BRICKS);
    if (!sound) wrong(`“${words}” costs ${value}`, value);
    return sound;
  });
  return { ...spec, worth, rungs };
}
const MOST_BRICKS = 40;
