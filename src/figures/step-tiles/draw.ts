import type { Drawn, DrawOptions } from '../options.js';
import type { StepTiles } from '../spec.js';
import { drawTilesOnPaper } from './paper.js';
import { drawTilesOnScreen } from './screen.js';

export function drawStepTiles(spec: StepTiles, options: DrawOptions): Drawn {
  return options.medium === 'paper' ? drawTilesOnPaper(spec, options) : drawTilesOnScreen(spec, options);
}
