import { PDFBool, PDFDict, PDFString } from 'pdf-lib';
import { describeFaults, first, name, xmp } from './faults.js';

describeFaults('the file as a whole', [
  ['no PDF/UA identifier', (d) => xmp(d, (t) => t.replace(/<pdfuaid:part>.*\n/, '')), '5', /PDF\/UA-1/],
  ['another part', (d) => xmp(d, (t) => t.replace('part>1<', 'part>2<')), '5', /PDF\/UA-1/],
  [
    'not marked as tagged',
    (d) => d.catalog.delete(name('MarkInfo')),
    '7.1',
    /does not say that it is tagged/,
  ],
  [
    'doubtful tags',
    (d) => d.catalog.lookup(name('MarkInfo'), PDFDict).set(name('Suspects'), PDFBool.True),
    '7.1',
    /doubtful/,
  ],
  ['no structure tree', (d) => d.catalog.delete(name('StructTreeRoot')), '7.1', /no structure tree/],
  ['no metadata', (d) => d.catalog.delete(name('Metadata')), '7.1', /no metadata/],
  ['broken metadata', (d) => xmp(d, (t) => t.replace('</dc:title>', '')), '7.1', /metadata cannot be read/],
  [
    'metadata without title',
    (d) => xmp(d, (t) => t.replace(/<dc:title>.*<\/dc:title>/, '')),
    '7.1',
    /metadata has no title/,
  ],
  [
    'two titles',
    (d) => xmp(d, (t) => t.replace('three ways', 'two ways')),
    '7.1',
    /title is ".*two ways.*" and the file's/,
  ],
  ['two languages', (d) => xmp(d, (t) => t.replace('<rdf:li>en<', '<rdf:li>es<')), '7.2', /language is "es"/],
  ['no title', (d) => d.setTitle(' '), '7.1', /no title/],
  [
    'name of the file in the window',
    (d) => d.catalog.lookup(name('ViewerPreferences'), PDFDict).set(name('DisplayDocTitle'), PDFBool.False),
    '7.1',
    /instead of the title/,
  ],
  ['no language', (d) => d.catalog.delete(name('Lang')), '7.2', /file has no language/],
  [
    'a language that is none',
    (d) => d.catalog.set(name('Lang'), PDFString.of('in English')),
    '7.2',
    /"in English" is no/,
  ],
  ['a script', (d) => d.addJavaScript('hello', 'app.alert(1)'), '7.19', /holds a script/],
  [
    'an action on opening',
    (d) => d.catalog.set(name('OpenAction'), d.context.obj({ S: 'Named', N: 'Print' })),
    '7.19',
    /when it is opened/,
  ],
  ['actions on events', (d) => d.catalog.set(name('AA'), d.context.obj({})), '7.19', /when it is opened/],
  [
    'a program to start',
    (d) => first(d, 'Subtype', 'Link').set(name('A'), d.context.obj({ S: 'Launch' })),
    '7.19',
    /must not have: Launch/,
  ],
  [
    'an unsafe address',
    (d) =>
      first(d, 'Subtype', 'Link').set(
        name('A'),
        d.context.obj({ S: 'URI', URI: PDFString.of('javascript:x') }),
      ),
    '7.19',
    /"javascript:x", which is unsafe/,
  ],
  [
    'a dynamic form',
    (d) => d.catalog.set(name('AcroForm'), d.context.obj({ XFA: [] })),
    '7.15',
    /dynamic form/,
  ],
  [
    'a lock',
    (d) => {
      d.context.trailerInfo.Encrypt = d.context.obj({ Filter: 'Standard' });
    },
    '7.16',
    /locked/,
  ],
]);
