import type { Drawn, DrawOptions } from '../options.js';
import type { DishTurn } from '../spec.js';
import { drawTurnOnPaper } from './paper.js';
import { drawTurnOnScreen } from './screen.js';

export function drawDishTurn(spec: DishTurn, options: DrawOptions): Drawn {
  return options.medium === 'paper' ? drawTurnOnPaper(spec, options) : drawTurnOnScreen(spec, options);
}
