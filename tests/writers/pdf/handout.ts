import type { Mark } from '../../../src/figures/index.js';
import type { Pages, StructureNode } from '../../../src/layout/index.js';
import { createSheet, node, pagesOf, rectangle, type Sheet, words } from './sheet.js';

/** A line under the words that lead somewhere, with its clickable area. */
function link(sheet: Sheet, id: string, text: string, href: string): void {
  const top = sheet.y;
  sheet.say(id, [{ text, data: { color: '#1a4fa0', underline: true } }]);
  sheet.items.push({ kind: 'link', node: id, href, words: text, x: 40, y: top, width: 120, height: 17 });
}

function row(sheet: Sheet, ids: readonly string[], texts: readonly string[]): void {
  const top = sheet.y;
  for (const [index, id] of ids.entries()) {
    sheet.y = top;
    sheet.say(id, texts[index] ?? '', { x: 40 + index * 130, width: 120 });
  }
}

const picture: readonly Mark[] = [
  {
    kind: 'shape',
    path: rectangle(40, 470, 120, 60),
    fill: {
      kind: 'linear',
      from: [40, 470],
      to: [160, 470],
      stops: [
        { offset: 0, color: '#c04000' },
        { offset: 1, color: '#ffe0a0', opacity: 0.4 },
      ],
    },
  },
  {
    kind: 'group',
    at: [1, 0, 0, 1, 100, 500],
    opacity: 0.6,
    marks: [
      {
        kind: 'shape',
        path: 'M0 -20C11 -20 20 -11 20 0C20 11 11 20 0 20C-11 20 -20 11 -20 0C-20 -11 -11 -20 0 -20Z',
        fill: '#204060',
      },
    ],
  },
  ...words('120 mg', 480, { x: 60 }).marks,
];

/**
 * Two pages by hand with one of everything: headings, a paragraph with a link, lists in lists, a
 * figure with its hidden table, a table over two pages, a note, words in another language, furniture.
 */
export function handout(): Pages {
  const one = createSheet();
  one.aside('Pinewater Family Clinic');
  one.say('title', 'Beans and peas, three ways', { size: 22, leading: 28, weight: 700 });
  one.say('intro', 'Beans fill you up for little money. In Spanish they are called ');
  one.say('spanish', [{ text: 'frijoles', language: 'es', data: { color: '#000000' } }]);
  one.say('intro', '; read more on the ');
  link(one, 'more', 'page about beans', 'https://example.org/beans?q=(a)');
  one.say('forms', 'Forms', { size: 16, leading: 22, weight: 600 });
  one.say('dot-1', '•', { width: 20 });
  one.say('body-1', 'dried beans', { x: 60 });
  one.say('sub-1-label', 'A', { x: 60, width: 20 });
  one.say('sub-1-body', 'soaked overnight', { x: 80 });
  one.say('sub-2-label', 'B', { x: 60, width: 20 });
  one.say('sub-2-body', 'not soaked', { x: 80 });
  one.say('dot-2', '•', { width: 20 });
  one.say('body-2', 'canned beans', { x: 60 });
  one.y = 470;
  one.draw('figure', picture, 70);
  one.say('fc', 'Sodium by form', { hidden: true });
  row(one, ['fh1', 'fh2'], ['Form', 'Sodium']);
  one.items.push(...one.items.splice(-2).map((item) => hide(item)));
  row(one, ['fr1', 'fd1'], ['canned, drained', '360 mg']);
  one.items.push(...one.items.splice(-2).map((item) => hide(item)));
  row(one, ['th1', 'th2', 'th3'], ['Form', 'Sodium', 'Fiber']);
  row(one, ['r1', 'r1a', 'r1b'], ['dried', '2 mg', '15 g']);
  one.aside('Page 1 of 2');

  const two = createSheet();
  two.aside('Form  Sodium  Fiber');
  row(two, ['r2', 'r2a', 'r2b'], ['canned', '360 mg', '11 g']);
  two.say('rest', 'Rinse the beans to lose some salt.');
  two.say('note', '1 Counted from the USDA release 28.', { size: 10, leading: 14 });
  two.say('level3', 'Ask first', { size: 16, leading: 22, weight: 600 });
  two.say('end', 'Ask your care team about potassium.');
  two.aside('Page 2 of 2');

  return pagesOf([one, two], structure, {
    subject: 'Beans',
    outline: [
      { title: 'Beans and peas, three ways', page: 0 },
      { title: 'Ask first', page: 1 },
    ],
  });
}

function hide(item: ReturnType<typeof createSheet>['items'][number]) {
  if (item.kind === 'link') return item;
  return {
    ...item,
    marks: item.marks.map((mark) => (mark.kind === 'text' ? { ...mark, hidden: true } : mark)),
  };
}

const cells = (head: string, scope: 'Row' | undefined, ...rest: string[]): StructureNode[] => [
  node(head, scope ? 'TH' : 'TD', [], scope ? { scope } : {}),
  ...rest.map((id) => node(id, 'TD')),
];

const structure = node('document', 'Document', [
  node('title', 'H1'),
  node('intro', 'P', [node('spanish', 'Span', [], { language: 'es' }), node('more', 'Link')]),
  node('forms', 'H2'),
  node(
    'list',
    'L',
    [
      node('item-1', 'LI', [
        node('dot-1', 'Lbl'),
        node('both-1', 'LBody', [
          node('body-1', 'P'),
          node(
            'sub',
            'L',
            [
              node('sub-1', 'LI', [node('sub-1-label', 'Lbl'), node('sub-1-body', 'LBody')]),
              node('sub-2', 'LI', [node('sub-2-label', 'Lbl'), node('sub-2-body', 'LBody')]),
            ],
            { numbering: 'UpperAlpha' },
          ),
        ]),
      ]),
      node('item-2', 'LI', [node('dot-2', 'Lbl'), node('body-2', 'LBody')]),
    ],
    { numbering: 'Disc' },
  ),
  node('figure', 'Figure', [], {
    alt: 'Dots: dried beans have little sodium, canned beans much.',
    title: 'Sodium',
    box: { page: 0, x: 40, y: 470, width: 120, height: 60 },
  }),
  node('data', 'Table', [
    node('fc', 'Caption'),
    node('fr-head', 'TR', [
      node('fh1', 'TH', [], { scope: 'Column' }),
      node('fh2', 'TH', [], { scope: 'Column' }),
    ]),
    node('fr-1', 'TR', cells('fr1', 'Row', 'fd1')),
  ]),
  node('table', 'Table', [
    node('thead', 'THead', [
      node(
        'tr0',
        'TR',
        ['th1', 'th2', 'th3'].map((id) => node(id, 'TH', [], { scope: 'Column' })),
      ),
    ]),
    node('tbody', 'TBody', [
      node('tr1', 'TR', cells('r1', 'Row', 'r1a', 'r1b')),
      node('tr2', 'TR', cells('r2', 'Row', 'r2a', 'r2b')),
    ]),
  ]),
  node('rest', 'P'),
  node('note', 'Note'),
  node('level3', 'H3'),
  node('end', 'P'),
]);
