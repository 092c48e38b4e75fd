import { caution } from './caution/index.js';
import type { Directive } from './contract.js';
import { formCompare } from './form-compare/index.js';
import { quiz } from './quiz/index.js';
import { rinseDrop } from './rinse-drop/index.js';
import { show } from './show/index.js';
import { write } from './write/index.js';

/** Every directive that a lesson may use. To add one: its folder and its line here. */
export const DIRECTIVES: readonly Directive[] = [caution, formCompare, quiz, rinseDrop, show, write];
