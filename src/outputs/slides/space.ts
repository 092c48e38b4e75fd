import type { Frame } from '../../figures/index.js';
import type { Draft } from '../../layout/structure.js';
import type { Easel } from './easel.js';

/** The stage of one slide and what stands round it. */
export interface StageSpace {
  readonly frame: Frame;
  /** Where the shelf begins. */
  readonly floor: number;
  /** Index of the page, for the place of a figure. */
  readonly page: number;
  /** The slide's element of the structure. */
  readonly section: Draft;
}

/** Words end so far above the shelf. */
export const CLEAR = 4;

/** Reports words that end below the shelf's edge. */
export function checkFloor(bottom: number, space: StageSpace, easel: Easel): void {
  const over = Math.ceil(bottom + CLEAR - space.floor);
  if (over <= 0) return;
  easel.problem(
    'slides/too-long',
    `the words end ${over} pixels below the shelf's edge.`,
    'Cut words, or part the slide in two.',
  );
}
