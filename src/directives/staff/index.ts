import { holderPiece } from '../service.js';

/** What is only for the leader’s page. */
export const staff = holderPiece('staff', 'at top level');
