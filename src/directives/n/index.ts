import { textPiece } from '../service.js';

/** A number in running text, computed and locked. */
export const number = textPiece('n', 'in running text, after a blank or an opening mark');
