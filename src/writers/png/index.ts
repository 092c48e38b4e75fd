export { type PngOptions, writePng } from './write.js';
