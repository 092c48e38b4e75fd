import { PDFDict, PDFHexString, PDFString } from 'pdf-lib';
import { describeFaults, element, name } from './faults.js';

describeFaults('headings, figures and notes', [
  [
    'a first heading of level 2',
    (d) => element(d, 'H1').set(name('S'), name('H2')),
    '7.4.2',
    /first heading \("Beans.*"\) is of level 2/,
  ],
  [
    'a heading that jumps',
    (d) => element(d, 'H2').set(name('S'), name('P')),
    '7.4.2',
    /\("Ask first"\) jumps from level 1 to 3/,
  ],
  ['an empty heading', (d) => element(d, 'H3').delete(name('K')), '7.4.2', /level 3 is empty/],
  ['a figure without words', (d) => element(d, 'Figure').delete(name('Alt')), '7.3', /no alternative text/],
  [
    'a figure with empty words',
    (d) => element(d, 'Figure').set(name('Alt'), PDFHexString.fromText(' ')),
    '7.3',
    /no alternative text/,
  ],
  [
    'a figure without a box',
    (d) => element(d, 'Figure').delete(name('A')),
    '7.3',
    /\("Dots.*"\) has no bounding box/,
  ],
  [
    'a figure with a flat box',
    (d) =>
      element(d, 'Figure')
        .lookup(name('A'), PDFDict)
        .set(name('BBox'), d.context.obj([1, 1, 1, 1])),
    '7.3',
    /no bounding box/,
  ],
  ['a figure with nothing in it', (d) => element(d, 'Figure').delete(name('K')), '7.3', /nothing drawn/],
  ['a note without ID', (d) => element(d, 'Note').delete(name('ID')), '7.9', /note has no ID/],
  [
    'two notes with one ID',
    (d) => {
      element(d, 'P').set(name('S'), name('Note'));
      element(d, 'Note').set(name('ID'), PDFString.of('x'));
      element(d, 'Note', 1).set(name('ID'), PDFString.of('x'));
    },
    '7.9',
    /same ID "x"/,
  ],
  [
    'a place to write without words',
    (d) => element(d, 'P').set(name('S'), name('Form')),
    '7.18.4',
    /place to write has no words/,
  ],
]);
