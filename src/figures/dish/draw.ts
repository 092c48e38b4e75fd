import type { Drawn, DrawOptions } from '../options.js';
import type { Dish } from '../spec.js';
import { drawDishOnPaper } from './paper.js';
import { drawDishOnScreen } from './screen.js';

export function drawDish(spec: Dish, options: DrawOptions): Drawn {
  return options.medium === 'paper' ? drawDishOnPaper(spec, options) : drawDishOnScreen(spec, options);
}
