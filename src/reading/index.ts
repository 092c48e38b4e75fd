export { aboveGrade, GRADE_LIMIT } from './grade-limit.js';
export { fullerThan, isLevel, LEVELS, type Level } from './levels.js';
