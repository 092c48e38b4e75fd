import { PDFDict, PDFRawStream } from 'pdf-lib';
import { dictionariesWith } from '../objects.js';
import { content, describeFaults, first, name, stream } from './faults.js';

describeFaults('content', [
  [
    'a shape outside of everything',
    (d) => content(d, (t) => `${t}0 0 5 5 re\nf\n`),
    '7.1',
    /A shape is neither/,
  ],
  [
    'text outside of everything',
    (d) => content(d, (t) => t.replace('/H1 <</MCID 0>> BDC', '/H1 BMC')),
    '7.1',
    /Text is neither/,
  ],
  [
    'a picture outside of everything',
    (d) => content(d, (t) => `${t}/X1 Do\n`),
    '7.1',
    /A group of drawings is neither/,
  ],
  [
    'an artifact inside content',
    (d) => content(d, (t) => t.replace('/H1 <</MCID 0>> BDC', '$&\n/Artifact BMC\nEMC')),
    '7.1',
    /artifact stands inside/,
  ],
  [
    'content inside an artifact',
    (d) =>
      content(d, (t) =>
        t.replace('/H1 <</MCID 0>> BDC', '/Artifact BMC\n$&').replace('EMC\n/P', 'EMC\nEMC\n/P'),
      ),
    '7.1',
    /inside an artifact/,
  ],
  [
    'content inside content',
    (d) =>
      content(d, (t) =>
        t.replace('EMC\n/P <</MCID 1>>', '/P <</MCID 1>>').replace('EMC\n/Span', 'EMC\nEMC\n/Span'),
      ),
    '7.1',
    /inside other tagged/,
  ],
  ['content with no end', (d) => content(d, (t) => t.replace(/EMC\n$/, '')), '7.1', /does not end/],
  ['content with no beginning', (d) => content(d, (t) => `EMC\n${t}`), '7.1', /never began/],
  [
    'one number twice',
    (d) => content(d, (t) => t.replace('/P <</MCID 1>>', '/P <</MCID 0>>')),
    '7.1',
    /same number 0/,
  ],
  [
    'a picture in the content',
    (d) => content(d, (t) => t.replace('BT', 'BI /W 1 /H 1 ID x EI BT')),
    '7.1',
    /inside the content/,
  ],
  ['content that is none', (d) => content(d, (t) => `${t}(`), '7.1', /cannot be read: A string does not end/],
  [
    'content in a group',
    (d) => {
      const form = dictionariesWith(d, 'Subtype', 'Form').find((f) => !f.has(name('Matrix')));
      const holder = first(d, 'Type', 'ExtGState');
      if (!form || !holder) throw new Error('No form.');
      const shared = d.getPage(0).node.lookup(name('Resources'), PDFDict).lookup(name('XObject'), PDFDict);
      stream(d, shared, 'X1', (t) => `/P <</MCID 99>> BDC\n${t}EMC\n`);
    },
    '7.1',
    /tagged content \(P\) of its own/,
  ],
  [
    'a drawing from another file',
    (d) => {
      const shared = d.getPage(0).node.lookup(name('Resources'), PDFDict).lookup(name('XObject'), PDFDict);
      const form = shared.lookup(name('X1'));
      if (form instanceof PDFRawStream) form.dict.set(name('Ref'), d.context.obj({}));
    },
    '7.20',
    /another file/,
  ],
  [
    'words in a language that is none',
    (d) => content(d, (t) => t.replace('BT\n', 'BT\n/Span <</Lang (in Spanish)>> BDC\nEMC\n')),
    '7.2',
    /"in Spanish" is no language tag/,
  ],
]);
