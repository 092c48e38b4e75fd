export { pdfCodes } from './codes.js';
export { writePdf } from './write.js';
