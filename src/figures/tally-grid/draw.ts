import type { Drawn, DrawOptions } from '../options.js';
import type { TallyGrid } from '../spec.js';
import { drawTallyOnPaper } from './paper.js';
import { drawTallyOnScreen } from './screen.js';

export function drawTallyGrid(spec: TallyGrid, options: DrawOptions): Drawn {
  return options.medium === 'paper' ? drawTallyOnPaper(spec, options) : drawTallyOnScreen(spec, options);
}
