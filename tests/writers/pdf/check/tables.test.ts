import { describeFaults, element, elements, kids, name } from './faults.js';

describeFaults('tables and lists', [
  [
    'a table without header cells',
    (d) => {
      for (const head of elements(d, 'TH')) head.set(name('S'), name('TD'));
    },
    '7.5',
    /\("Form.*"\) has no header cell/,
  ],
  ['a header cell without scope', (d) => element(d, 'TH').delete(name('A')), '7.5', /header cell \("Form"\)/],
  ['rows of different length', (d) => kids(element(d, 'TR', 1)).remove(1), '7.2', /not of one length: 2, 1/],
  [
    'cells that reach over others',
    (d) => element(d, 'TD').set(name('A'), d.context.obj({ O: 'Table', ColSpan: 2 })),
    '7.2',
    /not of one length/,
  ],
  [
    'a row outside of a table',
    (d) => element(d, 'Table').set(name('S'), name('Div')),
    '7.2',
    /A TR stands in Div/,
  ],
  [
    'a paragraph in a row',
    (d) => element(d, 'TD').set(name('S'), name('P')),
    '7.2',
    /In a table row stands.*TH P/,
  ],
  ['two heads', (d) => element(d, 'TBody').set(name('S'), name('THead')), '7.2', /more than one THead/],
  [
    'a head without a body',
    (d) => element(d, 'TBody').set(name('S'), name('TFoot')),
    '7.2',
    /head and no body/,
  ],
  [
    'an item outside of a list',
    (d) => element(d, 'L').set(name('S'), name('Div')),
    '7.2',
    /A LI stands in Div/,
  ],
  ['a paragraph in a list', (d) => element(d, 'LI').set(name('S'), name('P')), '7.2', /In a list stands.*P/],
  [
    'an item without a body',
    (d) => element(d, 'LBody').set(name('S'), name('P')),
    '7.2',
    /In a list item stands.*Lbl P/,
  ],
  [
    'an order that is not told',
    (d) => elements(d, 'L')[1]?.delete(name('A')),
    '7.6',
    /counts its items \("A"\)/,
  ],
  [
    'an order that is not seen',
    (d) => {
      for (const label of elements(d, 'Lbl')) label.set(name('S'), name('LBody'));
    },
    '7.6',
    /ordered \(UpperAlpha\)/,
  ],
]);
