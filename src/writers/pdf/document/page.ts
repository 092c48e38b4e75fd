import type { PDFContext, PDFRef } from 'pdf-lib';
import type { Mark } from '../../../figures/index.js';
import type { Item, Page } from '../../../layout/index.js';
import { spokenText } from '../content/clusters.js';
import { type Canvas, markOperators } from '../content/marks.js';
import { operand } from '../content/number.js';
import type { Resources } from '../resources/resources.js';
import type { Element, Elements } from '../structure/elements.js';
import { linkAddress, writeLink } from '../structure/links.js';
import type { ParentTree } from '../structure/parent-tree.js';

/** What all pages of one file share. */
export interface Shared {
  readonly context: PDFContext;
  readonly resources: Resources;
  readonly elements: Elements;
  readonly parentTree: ParentTree;
  readonly pageTree: PDFRef;
  /** Counts items over all pages: the reading order. */
  order: number;
}

const ARTIFACT = { pagination: 'Pagination', layout: 'Layout', background: 'Background' } as const;

/**
 * Draws one page and puts it into the file. Links to an address that a handout must not carry get no
 * clickable area; their words stay, and `refuse` is told.
 */
export function writePage(
  shared: Shared,
  page: Page,
  index: number,
  ref: PDFRef,
  refuse: (href: string, page: number) => void,
): void {
  const { context, elements, parentTree, resources } = shared;
  const owners: PDFRef[] = [];
  const annotations: PDFRef[] = [];
  // The one place where the layout's y down becomes PDF's y up.
  let content = `1 0 0 -1 0 ${operand(page.height)} cm\n`;
  for (const { head, items } of sequences(page.items)) {
    const order = shared.order++;
    if (head.kind === 'link') {
      const element = elements.find(head.node, index);
      if (element.node.role !== 'Link')
        throw new Error(`The link to ${head.href} belongs to "${head.node}", which is no Link.`);
      const address = linkAddress(head.href);
      if (address === undefined) {
        refuse(head.href, index);
        continue;
      }
      const object = writeLink(context, head, address, page, ref, parentTree.addObject(element.ref));
      annotations.push(object);
      element.content.push({ kind: 'object', page: ref, object, order });
      continue;
    }
    const element = head.kind === 'content' ? elements.find(head.node, index) : undefined;
    const drawn = drawItems(items, page, resources, element?.language);
    if (drawn === '') continue;
    if (element) {
      const mcid = owners.push(element.ref) - 1;
      element.content.push({ kind: 'marked', page: ref, mcid, order });
      for (const item of items) if (item.kind === 'content') listen(element, item.marks);
      content += `/${element.node.role} <</MCID ${mcid}>> BDC\n${drawn}EMC\n`;
    } else if (head.kind === 'artifact')
      content += `/Artifact <</Type /${ARTIFACT[head.of]}>> BDC\n${drawn}EMC\n`;
  }
  context.assign(
    ref,
    context.obj({
      Type: 'Page',
      Parent: shared.pageTree,
      MediaBox: [0, 0, page.width, page.height],
      Resources: resources.ref,
      Contents: context.register(context.flateStream(content)),
      StructParents: parentTree.addPage(owners),
      Tabs: 'S',
      ...(annotations.length > 0 ? { Annots: annotations } : {}),
    }),
  );
}

function drawItems(
  items: readonly Item[],
  page: Page,
  resources: Resources,
  language: Element['language'] | undefined,
): string {
  const canvas: Canvas = {
    resources,
    matrix: [1, 0, 0, -1, 0, page.height],
    pageWidth: page.width,
    pageHeight: page.height,
    language,
  };
  return items.map((item) => (item.kind === 'link' ? '' : markOperators(item.marks, canvas))).join('');
}

/** Notes what the marks say. */
function listen(element: Element, marks: readonly Mark[]): void {
  for (const mark of marks) {
    if (mark.kind === 'group') listen(element, mark.marks);
    if (mark.kind !== 'text') continue;
    element.text += spokenText(mark.line.text);
    element.rightToLeft ||= mark.line.runs.some((run) => run.rtl);
  }
}

/** Neighbors that belong to one element, or are artifacts of one kind, go out as one sequence. */
function sequences(items: readonly Item[]): { readonly head: Item; readonly items: Item[] }[] {
  const out: { readonly head: Item; readonly items: Item[] }[] = [];
  for (const item of items) {
    const last = out.at(-1);
    if (last && joins(last.head, item)) last.items.push(item);
    else out.push({ head: item, items: [item] });
  }
  return out;
}

function joins(a: Item, b: Item): boolean {
  if (a.kind === 'content') return b.kind === 'content' && a.node === b.node;
  return a.kind === 'artifact' && b.kind === 'artifact' && a.of === b.of;
}
