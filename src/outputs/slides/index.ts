export { partCautions } from './cautions.js';
export { layOutDeck, type SlideTools, shelfFits } from './lay-out.js';
export { slideCodes } from './problems.js';
