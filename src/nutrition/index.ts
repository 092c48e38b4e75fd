export * from './food.js';
export * from './quantity.js';
