import { holderPiece } from '../service.js';

/** What is only for the worksheet and its key. */
export const worksheet = holderPiece('worksheet', 'at top level');
