export { contrast, luminance } from './color.js';
export { draw } from './draw.js';
export * from './drawing.js';
export {
  type BoxName,
  createFrames,
  type Frame,
  type FrameBox,
  type FrameMaker,
  type FrameRequest,
  type Master,
} from './frames.js';
export { isOneInk, toOneInk } from './one-ink.js';
export type { Drawn, DrawOptions } from './options.js';
export { centeredPicture, loadPictures, type Pictures } from './pictures.js';
export { figureCodes } from './problems.js';
export { signMarks } from './signs.js';
export * from './spec.js';
export { type ReadSvg, readSvg, type VectorPicture } from './svg/read-svg.js';
export { type TextBox, textBoxes } from './text-boxes.js';
export { type FigureLevel, type Palette, paletteFor } from './tokens.js';
export { shelfMarks, VESSELS, type Vessel, vessel } from './vessels.js';
