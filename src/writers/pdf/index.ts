export { checkPdf, type Finding } from './check/index.js';
export { pdfCodes } from './codes.js';
export { type PdfOptions, writePdf } from './write.js';
