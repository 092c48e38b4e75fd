export * from './drawing.js';
export * from './spec.js';
