import type { Drawn, DrawOptions } from '../options.js';
import type { BrickRows } from '../spec.js';
import { drawBricksOnPaper } from './paper.js';
import { drawBricksOnScreen } from './screen.js';

export function drawBrickRows(spec: BrickRows, options: DrawOptions): Drawn {
  return options.medium === 'paper' ? drawBricksOnPaper(spec, options) : drawBricksOnScreen(spec, options);
}
