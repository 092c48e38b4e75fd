import { PDFArray, PDFDict, PDFNumber, PDFString } from 'pdf-lib';
import { content, describeFaults, element, kids, name, refOf } from './faults.js';

describeFaults('pages and structure', [
  ['content that no element has', (d) => kids(element(d, 'H1')).remove(0), '7.1', /H1 0\) stands nowhere/],
  [
    'content of two elements',
    (d) => kids(element(d, 'H2')).push(kids(element(d, 'H1')).get(0)),
    '7.1',
    /more than once/,
  ],
  [
    'content marked as another role',
    (d) => content(d, (t) => t.replace('/H1 <<', '/P <<')),
    '7.1',
    /element \(H1\) is marked as P/,
  ],
  [
    'an element without its content',
    (d) => kids(element(d, 'H1')).push(d.context.obj({ Type: 'MCR', Pg: d.getPage(0).ref, MCID: 999 })),
    '7.1',
    /content 999 that is not there/,
  ],
  [
    'content on a page that is not there',
    (d) =>
      kids(element(d, 'H1')).push(
        d.context.obj({ Type: 'MCR', Pg: element(d, 'H1') && refOf(d, d.catalog), MCID: 0 }),
      ),
    '7.1',
    /on a page that is not there/,
  ],
  [
    'a page without its way back',
    (d) => d.getPage(0).node.delete(name('StructParents')),
    '7.1',
    /knows nothing of the page/,
  ],
  [
    'a wrong way back',
    (d) => {
      const root = d.catalog.lookup(name('StructTreeRoot'), PDFDict);
      const nums = root.lookup(name('ParentTree'), PDFDict).lookup(name('Nums'), PDFArray);
      const key = d.getPage(0).node.lookup(name('StructParents'), PDFNumber).asNumber();
      nums.lookup(key * 2 + 1, PDFArray).set(0, refOf(d, element(d, 'H2')));
    },
    '7.1',
    /parent tree leads from H1 0/,
  ],
  [
    'tags in another order',
    (d) => {
      const list = kids(element(d, 'Document'));
      const title = list.get(0);
      list.remove(0);
      list.push(title);
    },
    '7.2',
    /order of the content and of the tags differ at H1/,
  ],
  [
    'a wrong parent',
    (d) => element(d, 'H1').set(name('P'), refOf(d, element(d, 'Table'))),
    '7.1',
    /names another parent/,
  ],
  [
    'an element twice',
    (d) => kids(element(d, 'Document')).push(refOf(d, element(d, 'H1'))),
    '7.1',
    /stands twice/,
  ],
  [
    'a role that is none',
    (d) => element(d, 'H1').set(name('S'), name('Headline')),
    '7.1',
    /"Headline" is no standard role/,
  ],
  [
    'content in a group of elements',
    (d) => element(d, 'H1').set(name('S'), name('Sect')),
    '7.1',
    /\(Sect\) that only groups/,
  ],
  [
    'an element of a language that is none',
    (d) => element(d, 'Span').set(name('Lang'), PDFString.of('Español!')),
    '7.2',
    /is no language tag/,
  ],
  ['no tab order', (d) => d.getPage(0).node.delete(name('Tabs')), '7.18.3', /tab key/],
]);
