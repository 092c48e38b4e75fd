import type { PDFContext, PDFRef } from 'pdf-lib';
import type { StructureNode } from '../../../layout/index.js';

/** What stands on a page for an element: a marked-content sequence, or an annotation. */
export type Content =
  | { readonly kind: 'marked'; readonly page: PDFRef; readonly mcid: number; readonly order: number }
  | { readonly kind: 'object'; readonly page: PDFRef; readonly object: PDFRef; readonly order: number };

/** An element of the structure tree with its place in the file. */
export interface Element {
  readonly node: StructureNode;
  readonly ref: PDFRef;
  readonly parent: Element | undefined;
  readonly children: readonly Element[];
  /** Its own language or that of the nearest element around it. */
  readonly language: string;
  /** In the order of the pages; grows while pages are drawn. */
  readonly content: Content[];
  /** What its content says, in reading order, and whether some of it runs from right to left. */
  text: string;
  rightToLeft: boolean;
}

export interface Elements {
  readonly root: Element;
  /** From the root down, parents first. */
  readonly all: readonly Element[];
  /** The element of an id. An id that stands nowhere is a bug of the layout and throws. */
  find(id: string, page: number): Element;
}

/** Gives every node its object number. An id that stands twice is a bug of the layout and throws. */
export function createElements(context: PDFContext, structure: StructureNode, language: string): Elements {
  const byId = new Map<string, Element>();
  const all: Element[] = [];
  const create = (node: StructureNode, parent: Element | undefined): Element => {
    const children: Element[] = [];
    const element: Element = {
      node,
      ref: context.nextRef(),
      parent,
      children,
      language: node.language ?? parent?.language ?? language,
      content: [],
      text: '',
      rightToLeft: false,
    };
    if (byId.has(node.id)) throw new Error(`The structure holds the id "${node.id}" twice.`);
    byId.set(node.id, element);
    all.push(element);
    for (const child of node.children) children.push(create(child, element));
    return element;
  };
  const root = create(structure, undefined);
  return {
    root,
    all,
    find(id, page) {
      const found = byId.get(id);
      if (!found)
        throw new Error(`Page ${page + 1} holds content of "${id}", which is not in the structure.`);
      return found;
    },
  };
}

/** One kid of an element, in reading order. */
export type Kid = { readonly element: Element } | { readonly content: Content };

/**
 * An element's own content and its children in one row. Children keep the order of the structure;
 * own content goes before the first child that comes later on the pages.
 */
export function kidsOf(element: Element): Kid[] {
  const kids: Kid[] = [];
  let next = 0;
  for (const child of element.children) {
    const start = firstOrder(child);
    for (; start !== undefined && next < element.content.length; next++) {
      const content = element.content[next];
      if (!content || content.order > start) break;
      kids.push({ content });
    }
    kids.push({ element: child });
  }
  for (const content of element.content.slice(next)) kids.push({ content });
  return kids;
}

function firstOrder(element: Element): number | undefined {
  let first = element.content[0]?.order;
  for (const child of element.children) {
    const order = firstOrder(child);
    if (order !== undefined && (first === undefined || order < first)) first = order;
  }
  return first;
}
