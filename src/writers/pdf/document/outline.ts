import { type PDFContext, PDFHexString, type PDFRef } from 'pdf-lib';
import type { Pages } from '../../../layout/index.js';

/** Bookmarks, one below the other; `undefined` when there are none. */
export function writeOutline(
  context: PDFContext,
  outline: Pages['outline'],
  pageRefs: readonly PDFRef[],
): PDFRef | undefined {
  if (outline.length === 0) return undefined;
  const root = context.nextRef();
  const refs = outline.map(() => context.nextRef());
  for (const [index, { title, page }] of outline.entries()) {
    const ref = refs[index];
    const target = pageRefs[page];
    if (!ref || !target)
      throw new Error(`The bookmark "${title}" leads to page ${page + 1}, which is not there.`);
    const previous = refs[index - 1];
    const next = refs[index + 1];
    context.assign(
      ref,
      context.obj({
        Title: PDFHexString.fromText(title),
        Parent: root,
        ...(previous ? { Prev: previous } : {}),
        ...(next ? { Next: next } : {}),
        Dest: [target, 'Fit'],
      }),
    );
  }
  const [first] = refs;
  const last = refs.at(-1);
  if (first && last)
    context.assign(root, context.obj({ Type: 'Outlines', First: first, Last: last, Count: outline.length }));
  return root;
}
