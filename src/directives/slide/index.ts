import { holderPiece } from '../service.js';

/** One thing on the screen, with its minutes and what the speaker says and does. */
export const slide = holderPiece('slide', 'at top level');
