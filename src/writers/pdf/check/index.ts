export { checkPdf } from './check-pdf.js';
export type { Finding } from './finding.js';
