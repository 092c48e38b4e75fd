import type { PDFDict, PDFRef } from 'pdf-lib';
import type { Findings } from './finding.js';
import type { PageContent } from './marked-content.js';
import { entry, type File, listOf, numberOf, resolve, sameRef } from './objects.js';
import type { Structure } from './structure.js';

/** A page with its content. */
export interface ReadPage {
  readonly ref: PDFRef;
  readonly dict: PDFDict;
  /** From 1. */
  readonly number: number;
  readonly content: PageContent;
}

/**
 * Holds pages and structure against each other: every tagged piece of content belongs to one
 * element, the parent tree leads back to it, and a page's content stands in the structure's order.
 */
export function checkLinksToPages(
  file: File,
  pages: readonly ReadPage[],
  structure: Structure,
  findings: Findings,
): void {
  for (const { ref, dict, number, content } of pages) {
    const place = [...content.sequences.keys()];
    const parents = resolve(file, structure.parentsAt(numberOf(entry(file, dict, 'StructParents'))));
    const owners = listOf(parents);
    const inTree = structure.order.filter((piece) => sameRef(piece.page, ref));
    if (place.length > 0 && !parents)
      findings.add('7.1', 'The parent tree knows nothing of the page.', number);
    for (const { mcid, tag } of content.sequences.values()) {
      const named = inTree.filter((piece) => piece.mcid === mcid);
      if (named.length !== 1)
        findings.add(
          '7.1',
          `A piece of content (${tag} ${mcid}) stands ${named.length === 0 ? 'nowhere' : 'more than once'} in the structure tree.`,
          number,
        );
      const owner = named[0]?.part;
      if (owner && parents && !sameRef(owners[mcid], owner.ref))
        findings.add('7.1', `The parent tree leads from ${tag} ${mcid} to another element.`, number);
      if (owner && owner.role !== tag)
        findings.add('7.1', `Content of an element (${owner.role}) is marked as ${tag}.`, number);
    }
    let reached = -1;
    for (const { mcid, part } of inTree) {
      const at = place.indexOf(mcid);
      if (at < 0)
        findings.add('7.1', `An element (${part.role}) has content ${mcid} that is not there.`, number);
      else if (at < reached)
        findings.add(
          '7.2',
          `The reading order of the content and of the tags differ at ${part.role} ${mcid}.`,
          number,
        );
      reached = Math.max(reached, at);
    }
  }
  for (const { page, part } of structure.order)
    if (!pages.some((known) => sameRef(known.ref, page)))
      findings.add('7.1', `An element (${part.role}) has content on a page that is not there.`);
}
