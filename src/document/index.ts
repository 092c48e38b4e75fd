export * from './blocks.js';
export * from './document.js';
export * from './numbers.js';
