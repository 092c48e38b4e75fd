import { type PDFContext, PDFHexString, type PDFRef, PDFString } from 'pdf-lib';
import type { Item, Page } from '../../../layout/index.js';

export type LinkItem = Extract<Item, { readonly kind: 'link' }>;

const SCHEMES = ['http:', 'https:', 'mailto:', 'tel:'];

/**
 * The address as PDF wants it, in ASCII; `undefined` for one that a handout must not carry: a script,
 * a file, or no address at all.
 */
export function linkAddress(href: string): string | undefined {
  if (!URL.canParse(href)) return undefined;
  const url = new URL(href);
  return SCHEMES.includes(url.protocol) ? url.href : undefined;
}

/** A clickable area without a border, whose words are read aloud. `key` leads back to its element. */
export function writeLink(
  context: PDFContext,
  link: LinkItem,
  address: string,
  page: Page,
  pageRef: PDFRef,
  key: number,
): PDFRef {
  const round = (value: number) => Math.round(value * 1000) / 1000;
  return context.register(
    context.obj({
      Type: 'Annot',
      Subtype: 'Link',
      P: pageRef,
      Rect: [link.x, page.height - link.y - link.height, link.x + link.width, page.height - link.y].map(
        round,
      ),
      Border: [0, 0, 0],
      // Print it with the page.
      F: 4,
      Contents: PDFHexString.fromText(link.words),
      StructParent: key,
      A: { S: 'URI', URI: PDFString.of(escaped(address)) },
    }),
  );
}

/** Parentheses and backslashes mean something inside a PDF string. */
function escaped(text: string): string {
  return text.replace(/[\\()]/g, (character) => `\\${character}`);
}
