import type { Drawn, DrawOptions } from '../options.js';
import type { DotLanes } from '../spec.js';
import { drawLanesOnPaper } from './paper.js';
import { drawLanesOnScreen } from './screen.js';

export function drawDotLanes(spec: DotLanes, options: DrawOptions): Drawn {
  return options.medium === 'paper' ? drawLanesOnPaper(spec, options) : drawLanesOnScreen(spec, options);
}
