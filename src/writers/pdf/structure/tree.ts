import { type PDFContext, type PDFDict, PDFHexString, PDFName, type PDFRef, PDFString } from 'pdf-lib';
import type { StructureNode } from '../../../layout/index.js';
import { type Element, type Elements, type Kid, kidsOf } from './elements.js';
import type { ParentTree } from './parent-tree.js';

/** Writes the structure tree and gives back its root's place. */
export function writeStructure(
  context: PDFContext,
  elements: Elements,
  parentTree: ParentTree,
  pageHeights: readonly number[],
): PDFRef {
  const rootRef = context.nextRef();
  for (const element of elements.all) {
    const dict = context.obj({
      Type: 'StructElem',
      S: element.node.role,
      P: element.parent?.ref ?? rootRef,
    });
    const kids = kidsOf(element).map((kid) => kidObject(context, kid));
    if (kids.length > 0) dict.set(PDFName.of('K'), context.obj(kids));
    describe(context, dict, element, pageHeights);
    context.assign(element.ref, dict);
  }
  const root = context.obj({
    Type: 'StructTreeRoot',
    K: [elements.root.ref],
    ParentTree: parentTree.write(context),
    ParentTreeNextKey: parentTree.nextKey,
  });
  const notes = elements.all.filter((element) => element.node.role === 'Note');
  if (notes.length > 0) root.set(PDFName.of('IDTree'), idTree(context, notes));
  context.assign(rootRef, root);
  return rootRef;
}

function kidObject(context: PDFContext, kid: Kid): PDFRef | PDFDict {
  if ('element' in kid) return kid.element.ref;
  const { content } = kid;
  return content.kind === 'marked'
    ? context.obj({ Type: 'MCR', Pg: content.page, MCID: content.mcid })
    : context.obj({ Type: 'OBJR', Pg: content.page, Obj: content.object });
}

function describe(
  context: PDFContext,
  dict: PDFDict,
  element: Element,
  pageHeights: readonly number[],
): void {
  const { node } = element;
  const text = (key: string, value: string | undefined) => {
    if (value !== undefined) dict.set(PDFName.of(key), PDFHexString.fromText(value));
  };
  text('Alt', node.alt);
  text('T', node.title);
  text('ActualText', actualText(element));
  if (node.language !== undefined) dict.set(PDFName.of('Lang'), PDFString.of(node.language));
  if (node.role === 'Note') dict.set(PDFName.of('ID'), PDFHexString.fromText(node.id));
  const attributes = attributesOf(context, node, pageHeights);
  if (attributes) dict.set(PDFName.of('A'), attributes);
}

/**
 * Right-to-left text is drawn from left to right, and readers of the file guess its order back. The
 * element says it outright, but not where that would hide a link or another element inside.
 */
function actualText({ node, children, content, text, rightToLeft }: Element): string | undefined {
  const whole = children.length === 0 && content.every((piece) => piece.kind === 'marked');
  return rightToLeft && whole && node.alt === undefined ? text.trim() : undefined;
}

function attributesOf(
  context: PDFContext,
  node: StructureNode,
  pageHeights: readonly number[],
): PDFDict | undefined {
  if (node.role === 'TH' && node.scope) return context.obj({ O: 'Table', Scope: node.scope });
  if (node.role === 'L' && node.numbering) return context.obj({ O: 'List', ListNumbering: node.numbering });
  if (node.role !== 'Figure' || !node.box) return undefined;
  const { page, x, y, width, height } = node.box;
  const pageHeight = pageHeights[page];
  if (pageHeight === undefined)
    throw new Error(`Figure "${node.id}" stands on page ${page + 1}, which is not there.`);
  const box = [x, pageHeight - y - height, x + width, pageHeight - y];
  return context.obj({
    O: 'Layout',
    BBox: box.map((value) => Math.round(value * 1000) / 1000),
    Placement: 'Block',
  });
}

function idTree(context: PDFContext, notes: readonly Element[]): PDFRef {
  const hex = (id: string) => PDFHexString.fromText(id);
  // A name tree is sorted by the bytes of its keys.
  const sorted = notes
    .map((note) => ({ key: hex(note.node.id), ref: note.ref }))
    .sort((a, b) => (a.key.asString() < b.key.asString() ? -1 : 1));
  return context.register(context.obj({ Names: sorted.flatMap(({ key, ref }) => [key, ref]) }));
}
