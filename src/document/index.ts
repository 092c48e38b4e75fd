export * from './blocks.js';
export * from './document.js';
export * from './numbers.js';
export * from './walk.js';
