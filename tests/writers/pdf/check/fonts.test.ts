import { PDFDict } from 'pdf-lib';
import { describeFaults, first, name, stream } from './faults.js';

describeFaults('fonts', [
  [
    'a font that is not embedded',
    (d) => first(d, 'Type', 'FontDescriptor').delete(name('FontFile2')),
    '7.21.4.1',
    /is not embedded/,
  ],
  [
    'a font that is no font',
    (d) => stream(d, first(d, 'Type', 'FontDescriptor'), 'FontFile2', () => 'x'.repeat(40)),
    '7.21.4.1',
    /cannot be read/,
  ],
  [
    'a font that does not say its letters',
    (d) => first(d, 'Subtype', 'Type0').delete(name('ToUnicode')),
    '7.21.7',
    /does not say which letters/,
  ],
  [
    'a glyph that says nothing',
    (d) =>
      stream(d, first(d, 'Subtype', 'Type0'), 'ToUnicode', (t) => t.replace(/<0001> <[^>]*>/, '<0001> <>')),
    '7.21.7',
    /without saying/,
  ],
  [
    'a letter that cannot be one',
    (d) =>
      stream(d, first(d, 'Subtype', 'Type0'), 'ToUnicode', (t) =>
        t.replace(/<0001> <[^>]*>/, '<0001> <FEFF>'),
      ),
    '7.21.7',
    /cannot be one/,
  ],
  [
    'no map to glyphs',
    (d) => first(d, 'Subtype', 'CIDFontType2').delete(name('CIDToGIDMap')),
    '7.21.3.2',
    /no map/,
  ],
  [
    'the box for a missing letter',
    (d) => stream(d, first(d, 'Subtype', 'CIDFontType2'), 'CIDToGIDMap', (t) => t.replace(/[\s\S]/g, '\0')),
    '7.21.8',
    /missing letter/,
  ],
  [
    'a glyph that the font lacks',
    (d) => stream(d, first(d, 'Subtype', 'CIDFontType2'), 'CIDToGIDMap', (t) => t.replace(/[\s\S]/g, '\xfe')),
    '7.21.4.1',
    /lacks a glyph/,
  ],
  [
    'widths that differ',
    (d) => first(d, 'Subtype', 'CIDFontType2').set(name('W'), d.context.obj([1, 500, 5000])),
    '7.21.5',
    /another width/,
  ],
  [
    'a font that is not there',
    (d) => d.getPage(0).node.lookup(name('Resources'), PDFDict).delete(name('Font')),
    '7.21.4.1',
    /font that is not there/,
  ],
]);
