import type { Frame } from '../../figures/index.js';
import type { Easel } from './easel.js';
import { slideProblem } from './problems.js';

/** The free part of the stage: from below the title to the shelf. */
export interface StageSpace {
  readonly frame: Frame;
  /** Where the shelf begins. */
  readonly floor: number;
  /** Index of the page, for the place of a figure. */
  readonly page: number;
}

/** Reports words that end below the shelf's edge. */
export function checkFloor(bottom: number, space: StageSpace, easel: Easel): void {
  if (bottom <= space.floor - 4) return;
  easel.report.add(
    slideProblem(
      'slides/too-long',
      `${easel.name}: the words end ${Math.ceil(bottom - space.floor + 4)} pixels below the shelf's edge.`,
      { hint: 'Cut words, or part the slide in two.' },
    ),
  );
}
