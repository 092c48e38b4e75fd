import type { TermTable } from '../../languages/index.js';

/** It prints no words of its own. */
export const terms: TermTable = { en: {} };
