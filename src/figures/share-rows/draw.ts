import type { Drawn, DrawOptions } from '../options.js';
import type { ShareRows } from '../spec.js';
import { drawSharesOnPaper } from './paper.js';
import { drawSharesOnScreen } from './screen.js';

export function drawShareRows(spec: ShareRows, options: DrawOptions): Drawn {
  return options.medium === 'paper' ? drawSharesOnPaper(spec, options) : drawSharesOnScreen(spec, options);
}
