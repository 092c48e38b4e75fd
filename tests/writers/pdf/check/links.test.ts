import { describeFaults, element, first, kids, name } from './faults.js';

describeFaults('links', [
  [
    'a link without an element',
    (d) => kids(element(d, 'Link')).remove(1),
    '7.18.5',
    /does not belong to an element of the kind Link/,
  ],
  [
    'a link element without a link',
    (d) => kids(element(d, 'Link')).remove(1),
    '7.18.5',
    /\("page about beans"\) leads nowhere/,
  ],
  [
    'a link without words on the page',
    (d) => kids(element(d, 'Link')).remove(0),
    '7.18.5',
    /link has no words/,
  ],
  [
    'a link without words to hear',
    (d) => first(d, 'Subtype', 'Link').delete(name('Contents')),
    '7.18.5',
    /no words that say what it is for/,
  ],
  [
    'a link without its way back',
    (d) => first(d, 'Subtype', 'Link').delete(name('StructParent')),
    '7.18.5',
    /does not lead from an annotation/,
  ],
  [
    'an annotation of another kind',
    (d) => first(d, 'Subtype', 'Link').set(name('Subtype'), name('Text')),
    '7.18.1',
    /of the kind Annot/,
  ],
]);
