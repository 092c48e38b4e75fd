import type { Problem } from '../../diagnostics/index.js';
import { figureProblem } from '../problems.js';
import type { DishCounters } from '../spec.js';
import { COUNTERS } from './places.js';

/** Foods whose counters are whole and together twelve, or none and a problem. A blank has none and needs none. */
export function soundFoods(
  id: string,
  foods: readonly DishCounters[],
  blank: boolean,
  problems: Problem[],
): readonly DishCounters[] {
  if (blank) return [];
  const sum = foods.reduce((so, { parts }) => so + parts, 0);
  if (sum === COUNTERS && foods.every(({ parts }) => Number.isInteger(parts) && parts >= 0)) return foods;
  problems.push(
    figureProblem('figures/not-drawable', `In figure “${id}”, the counters are ${sum} and not ${COUNTERS}.`, {
      hint: 'The parts of a dish are whole counters that are twelve together.',
      actual: String(sum),
      expected: [String(COUNTERS)],
    }),
  );
  return [];
}

export function noPicture(id: string, name: string): Problem {
  return figureProblem('figures/no-picture', `In figure “${id}”, there is no picture “${name}”.`, {
    hint: 'See `assets/pictures/pictures.tsv` for the names.',
    actual: name,
  });
}
