import { holderPiece } from '../service.js';

/** What happens in the room; it goes to the notes, and to a slide that shows nothing else. */
export const doing = holderPiece('do', 'in a slide, or in a level of a slide');
