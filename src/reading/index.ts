export { fullerThan, isLevel, LEVELS, type Level } from './levels.js';
