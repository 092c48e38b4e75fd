import { holderPiece } from '../service.js';

/** What the speaker says; it goes to the notes and the interpreter’s copy. */
export const say = holderPiece('say', 'in a slide, or in a level of a slide');
