export { layOutDeck, type SlideTools } from './lay-out.js';
export { slideCodes } from './problems.js';
