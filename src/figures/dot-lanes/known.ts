import type { Problem } from '../../diagnostics/index.js';
import { figureProblem } from '../problems.js';
import type { Lane, LaneDot } from '../spec.js';

export type KnownDot = LaneDot & { readonly value: number };

/** Dots that have a place; one that lies below zero or is no number is a problem. */
export function knownDots(id: string, lane: Lane, problems: Problem[]): KnownDot[] {
  return lane.dots.flatMap((dot): KnownDot[] => {
    const { value } = dot;
    if (value === null) return [];
    if (Number.isFinite(value) && value >= 0) return [{ ...dot, value }];
    problems.push(
      figureProblem(
        'figures/not-drawable',
        `In figure “${id}”, ${dot.letter} has ${value} on “${lane.name}”.`,
        {
          hint: 'A lane starts at zero. Say what is not known as not known.',
          actual: String(value),
        },
      ),
    );
    return [];
  });
}
