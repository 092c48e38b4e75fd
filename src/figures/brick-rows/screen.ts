import type { Drawn, DrawOptions } from '../options.js';
import type { BrickRows } from '../spec.js';
import { drawBricksOnPaper } from './paper.js';
export function drawBricksOnScreen(spec: BrickRows, options: DrawOptions): Drawn {
  return drawBricksOnPaper(spec, options);
}
