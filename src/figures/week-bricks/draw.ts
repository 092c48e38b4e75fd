import type { Drawn, DrawOptions } from '../options.js';
import type { WeekBricks } from '../spec.js';
import { drawWeekOnPaper } from './paper.js';
import { drawWeekOnScreen } from './screen.js';

export function drawWeekBricks(spec: WeekBricks, options: DrawOptions): Drawn {
  return options.medium === 'paper' ? drawWeekOnPaper(spec, options) : drawWeekOnScreen(spec, options);
}
