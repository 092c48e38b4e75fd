export { type Bounds, boundsOf } from './bounds.js';
export { compose, type PaperOptions, type SheetPlan } from './compose.js';
export type { FigureRequest, FigureTools } from './desk.js';
export { figureTools } from './figure-tools.js';
export * from './pages.js';
export { layoutCodes } from './problems.js';
export { mm, type Paper } from './tokens.js';
