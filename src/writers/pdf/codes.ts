import { type CodeTable, problemsOf } from '../../diagnostics/index.js';

/** Problems of finished PDFs. */
export const pdfCodes = {
  A04: {
    severity: 'stop',
    rule: 'A built PDF keeps the rules of PDF/UA-1 (ISO 14289-1) that a program can check.',
    about:
      'People who listen to a page, or feel it in braille, get only what the tags in the PDF say: headings in order, tables with header cells, pictures with words, a title and a language. The built file is read back and checked; while something is missing it does not claim to be accessible and is withheld. If the message names something in your lesson, such as a heading that skips a level, mend it there; if not, the program itself is wrong.',
  },
} as const satisfies CodeTable;

export const pdfProblem = problemsOf(pdfCodes);
