export * from './arithmetic.js';
export * from './food.js';
export * from './international-units.js';
export * from './quantity.js';
export * from './result.js';
export * from './rounding.js';
export * from './units.js';
export * from './working.js';
