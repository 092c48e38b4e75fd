export { type SvgOptions, writeSvg } from './write.js';
