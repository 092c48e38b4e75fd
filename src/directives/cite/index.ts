import { textPiece } from '../service.js';

/** Points to a source, which prints in the list of sources. */
export const cite = textPiece('cite', 'in running text, after a blank or an opening mark');
