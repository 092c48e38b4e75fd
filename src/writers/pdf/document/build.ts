import { PDFContext, type PDFRef, PDFString } from 'pdf-lib';
import type { Pages } from '../../../layout/index.js';
import { createResources } from '../resources/resources.js';
import { createElements } from '../structure/elements.js';
import { createParentTree } from '../structure/parent-tree.js';
import { writeStructure } from '../structure/tree.js';
import { writeInfo } from './metadata.js';
import { writeOutline } from './outline.js';
import { type Shared, writePage } from './page.js';

/** A file's objects, all but its XMP packet, which waits at `metadata`. */
export interface Built {
  readonly context: PDFContext;
  readonly metadata: PDFRef;
  /** Addresses that were left out because a handout must not carry them. */
  readonly refused: readonly { readonly href: string; readonly page: number }[];
}

/** Turns pages into PDF objects. Object numbers follow from the pages alone. */
export function buildObjects(pages: Pages): Built {
  if (pages.pages.length === 0) throw new Error('A PDF needs at least one page.');
  const context = PDFContext.create();
  const catalog = context.nextRef();
  const metadata = context.nextRef();
  const pageTree = context.nextRef();
  const pageRefs = pages.pages.map(() => context.nextRef());
  const shared: Shared = {
    context,
    resources: createResources(context),
    elements: createElements(context, pages.structure, pages.language),
    parentTree: createParentTree(),
    pageTree,
    order: 0,
  };
  const refused: { href: string; page: number }[] = [];
  for (const [index, page] of pages.pages.entries()) {
    const ref = pageRefs[index];
    if (ref) writePage(shared, page, index, ref, (href, at) => refused.push({ href, page: at }));
  }
  shared.resources.finish();
  context.assign(pageTree, context.obj({ Type: 'Pages', Kids: pageRefs, Count: pageRefs.length }));
  const heights = pages.pages.map((page) => page.height);
  const structure = writeStructure(context, shared.elements, shared.parentTree, heights);
  const outline = writeOutline(context, pages.outline, pageRefs);
  context.assign(
    catalog,
    context.obj({
      Type: 'Catalog',
      Pages: pageTree,
      Metadata: metadata,
      Lang: PDFString.of(pages.language),
      MarkInfo: { Marked: true },
      StructTreeRoot: structure,
      ViewerPreferences: {
        DisplayDocTitle: true,
        ...(pages.direction === 'rtl' ? { Direction: 'R2L' } : {}),
      },
      ...(outline ? { Outlines: outline } : {}),
    }),
  );
  context.trailerInfo.Root = catalog;
  context.trailerInfo.Info = writeInfo(context, pages);
  return { context, metadata, refused };
}
