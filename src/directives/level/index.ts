import { holderPiece } from '../service.js';

/** Words of one reading level. */
export const level = holderPiece('level', 'at top level, or in slide, worksheet, staff or only');
