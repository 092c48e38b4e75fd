import type { PDFContext, PDFObject, PDFRef } from 'pdf-lib';

/** The way back from pages and annotations to structure elements (ISO 32000-1, 14.7.4.4). */
export interface ParentTree {
  /** A key for a page; `owners[mcid]` is the element of that marked-content sequence. */
  addPage(owners: readonly PDFRef[]): number;
  /** A key for one annotation. */
  addObject(owner: PDFRef): number;
  readonly nextKey: number;
  write(context: PDFContext): PDFRef;
}

export function createParentTree(): ParentTree {
  const entries: (PDFRef | readonly PDFRef[])[] = [];
  return {
    addPage: (owners) => entries.push(owners) - 1,
    addObject: (owner) => entries.push(owner) - 1,
    get nextKey() {
      return entries.length;
    },
    write(context) {
      const nums: (number | PDFObject)[] = [];
      for (const [key, entry] of entries.entries())
        nums.push(key, isList(entry) ? context.register(context.obj([...entry])) : entry);
      return context.register(context.obj({ Nums: nums }));
    },
  };
}

function isList(entry: PDFRef | readonly PDFRef[]): entry is readonly PDFRef[] {
  return Array.isArray(entry);
}
