export { contrast, luminance } from './color.js';
export * from './drawing.js';
export { figureCodes } from './problems.js';
export * from './spec.js';
export { type ReadSvg, readSvg, type VectorPicture } from './svg/read-svg.js';
