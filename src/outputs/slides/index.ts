export { measureSlides, type SlideFits } from './fits.js';
export { layOutDeck } from './lay-out.js';
export { slideCodes, slideProblem } from './problems.js';
export type { SlideTools } from './tools.js';
