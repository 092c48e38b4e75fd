import type { Drawn, DrawOptions } from '../options.js';
import type { MeasureRow } from '../spec.js';
import { drawMeasuresOnPaper } from './paper.js';
import { drawMeasuresOnScreen } from './screen.js';

/** Cups and spoons in outline with the line to fill them to: at true size on paper where they fit. */
export function drawMeasureRow(spec: MeasureRow, options: DrawOptions): Drawn {
  return options.medium === 'paper'
    ? drawMeasuresOnPaper(spec, options)
    : drawMeasuresOnScreen(spec, options);
}
