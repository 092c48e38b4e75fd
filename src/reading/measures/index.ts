// A face of its own, beside that of the levels: word lists take time to load, and most commands need none.
export { type Counts, countReading } from './counts.js';
export type { Checked, Scale, Score, Warning } from './formula.js';
export { ENOUGH_WORDS, type Measured, measureReading, type NotMeasured } from './measure.js';
export { type Piece, piecesOf } from './pieces.js';
export { MEASURED, type MeasuredLanguage, measuredLanguage } from './spoken-in.js';
