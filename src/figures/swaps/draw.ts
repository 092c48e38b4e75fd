import type { Drawn, DrawOptions } from '../options.js';
import type { Swaps } from '../spec.js';
import { drawSwapsOnPaper } from './paper.js';
import { drawSwapOnScreen } from './screen.js';

export function drawSwaps(spec: Swaps, options: DrawOptions): Drawn {
  return options.medium === 'paper' ? drawSwapsOnPaper(spec, options) : drawSwapOnScreen(spec, options);
}
