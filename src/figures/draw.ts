import { drawBrickRows } from './brick-rows/draw.js';
import { drawChangeBand } from './change-band/draw.js';
import { drawCostRungs } from './cost-rungs/draw.js';
import { drawDish } from './dish/draw.js';
import { drawDishTurn } from './dish-turn/draw.js';
import { drawDotLanes } from './dot-lanes/draw.js';
import { drawLineChoice } from './line-choice/draw.js';
import { drawMeasureRow } from './measure-row/draw.js';
import type { Drawn, DrawOptions } from './options.js';
import { drawShareRows } from './share-rows/draw.js';
import type { FigureSpec } from './spec.js';
import { drawStepTiles } from './step-tiles/draw.js';
import { drawSwaps } from './swaps/draw.js';
import { drawTallyGrid } from './tally-grid/draw.js';
import { drawWeekBricks } from './week-bricks/draw.js';

/**
 * Draws a figure at the size there is. Paper figures get the height that they need; slide figures fill
 * the height that is given. The drawing is always there; where words do not fit, lie on each other or
 * lack a letter, a problem says so, and nothing is made smaller or left out to hide it.
 */
export function draw(spec: FigureSpec, options: DrawOptions): Drawn {
  switch (spec.kind) {
    case 'dot-lanes':
      return drawDotLanes(spec, options);
    case 'change-band':
      return drawChangeBand(spec, options);
    case 'line-choice':
      return drawLineChoice(spec, options);
    case 'brick-rows':
      return drawBrickRows(spec, options);
    case 'measure-row':
      return drawMeasureRow(spec, options);
    case 'share-rows':
      return drawShareRows(spec, options);
    case 'step-tiles':
      return drawStepTiles(spec, options);
    case 'tally-grid':
      return drawTallyGrid(spec, options);
    case 'week-bricks':
      return drawWeekBricks(spec, options);
    case 'dish':
      return drawDish(spec, options);
    case 'dish-turn':
      return drawDishTurn(spec, options);
    case 'swaps':
      return drawSwaps(spec, options);
    case 'cost-rungs':
      return drawCostRungs(spec, options);
  }
}
