import type { Problem } from '../diagnostics/index.js';
import type { DrawOptions } from './options.js';
import { createPen, type Pen } from './pen.js';
import { figureProblem } from './problems.js';

/** Height of a figure between a title of one line and a shelf of two. */
export const STAGE_HEIGHT = 468;

/** What drawing a figure on a slide starts from. */
export interface Stage {
  readonly pen: Pen;
  readonly width: number;
  /** The shelf's upper edge: the figure's foot. */
  readonly height: number;
}

export function createStage(options: DrawOptions): Stage {
  return { pen: createPen(options), width: options.width, height: options.height ?? STAGE_HEIGHT };
}

/** More than a hall can follow. `attribute` is what the author may write to show fewer. */
export function tooMany(id: string, what: string, count: number, most: number, attribute: string): Problem {
  return figureProblem(
    'figures/too-many',
    `In figure “${id}”, ${count} ${what} are too many for a slide; the most is ${most}.`,
    {
      hint: `Choose with \`${attribute}\`; the handout may show them all.`,
      actual: String(count),
      expected: [String(most)],
    },
  );
}

export function tooHigh(id: string, missing: number): Problem {
  const pixels = Math.ceil(missing);
  return figureProblem(
    'figures/too-high',
    `On the slide, figure “${id}” is ${pixels} ${pixels === 1 ? 'pixel' : 'pixels'} too high.`,
    { hint: 'Show fewer measures or rows, or let the title and the shelf take fewer lines.' },
  );
}
