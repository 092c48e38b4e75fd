import { textPiece } from '../service.js';

/** A word of the term list. */
export const term = textPiece('t', 'in running text, after a blank or an opening mark');
