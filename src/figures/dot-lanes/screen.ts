import type { Drawn, DrawOptions } from '../options.js';
import type { DotLanes } from '../spec.js';
import { drawLanesOnPaper } from './paper.js';
export function drawLanesOnScreen(spec: DotLanes, options: DrawOptions): Drawn {
  return drawLanesOnPaper(spec, options);
}
