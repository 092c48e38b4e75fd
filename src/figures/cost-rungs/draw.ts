import type { Drawn, DrawOptions } from '../options.js';
import type { CostRungs } from '../spec.js';
import { drawRungsOnPaper } from './paper.js';
import { drawRungsOnScreen } from './screen.js';

export function drawCostRungs(spec: CostRungs, options: DrawOptions): Drawn {
  return options.medium === 'paper' ? drawRungsOnPaper(spec, options) : drawRungsOnScreen(spec, options);
}
