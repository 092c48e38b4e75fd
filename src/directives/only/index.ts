import { holderPiece } from '../service.js';

/** Parts of one output. */
export const only = holderPiece('only', 'at top level');
