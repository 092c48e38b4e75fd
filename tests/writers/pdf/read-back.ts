import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Mark } from '../../../src/figures/index.js';
import type { Pages, StructureNode } from '../../../src/layout/index.js';

/** One element or one piece of content as pdf.js has it. */
interface Tag {
  readonly role?: string;
  readonly type?: string;
  readonly id?: string;
  readonly alt?: string;
  readonly lang?: string;
  readonly bbox?: readonly number[];
  readonly children?: readonly Tag[];
}

export async function open(bytes: Uint8Array) {
  // pdf.js takes the bytes for itself.
  return getDocument({ data: bytes.slice(), verbosity: 0, useSystemFonts: false }).promise;
}

/** Title and the like, and the XMP packet by lower-case names. */
export async function metadataOf(
  bytes: Uint8Array,
): Promise<{ readonly info: Readonly<Record<string, unknown>>; readonly xmp: (name: string) => unknown }> {
  const pdf = await open(bytes);
  const { info, metadata } = await pdf.getMetadata();
  await pdf.destroy();
  return { info: { ...info }, xmp: (name) => metadata?.get(name) ?? null };
}

/** An element with its words, alike from pdf.js and from our own tree. */
export interface Branch {
  readonly role: string;
  readonly alt?: string;
  readonly lang?: string;
  readonly box?: readonly number[];
  /** Words of its own content, and its children, in reading order. */
  readonly kids: readonly (string | Branch)[];
}

/** The structure of one page as pdf.js reads it out of the finished file. */
export async function readTree(bytes: Uint8Array, page: number): Promise<Branch[]> {
  const pdf = await open(bytes);
  const proxy = await pdf.getPage(page);
  const texts = await textsOf(bytes, page);
  const tree = (await proxy.getStructTree()) as Tag | null;
  await pdf.destroy();
  const branch = (tag: Tag): string | Branch => {
    if (tag.type === 'content') return texts.get(tag.id ?? '') ?? '';
    if (tag.type === 'annotation' || tag.type === 'object') return '→';
    return {
      role: tag.role ?? '',
      ...(tag.alt === undefined ? {} : { alt: tag.alt }),
      ...(tag.lang === undefined ? {} : { lang: tag.lang }),
      ...(tag.bbox === undefined ? {} : { box: tag.bbox }),
      kids: (tag.children ?? []).map(branch),
    };
  };
  return (tree?.children ?? []).map(branch).flatMap(withContent);
}

/** pdf.js lists a table's rows of other pages too, without their words; those are left out. */
function withContent(kid: string | Branch): Branch[] {
  if (typeof kid === 'string') return [];
  const kids = kid.kids.flatMap((inner): (string | Branch)[] =>
    typeof inner === 'string' ? [inner] : withContent(inner),
  );
  return kids.length === 0 ? [] : [{ ...kid, kids }];
}

/** Words of each marked piece of content, without spaces: pdf.js makes those up from distances. */
export async function textsOf(bytes: Uint8Array, page: number): Promise<ReadonlyMap<string, string>> {
  const pdf = await open(bytes);
  const content = await (await pdf.getPage(page)).getTextContent({ includeMarkedContent: true });
  await pdf.destroy();
  const texts = new Map<string, string>();
  const stack: (string | undefined)[] = [];
  for (const item of content.items) {
    if ('type' in item) {
      if (item.type === 'endMarkedContent') stack.pop();
      else stack.push('id' in item && item.id ? item.id : undefined);
    } else {
      const id = stack.findLast((open) => open !== undefined);
      if (id !== undefined) texts.set(id, (texts.get(id) ?? '') + item.str.replace(/\s+/g, ''));
    }
  }
  return texts;
}

/** What each glyph of the page says, in the order of the content, as pdf.js maps the codes. */
export async function glyphTexts(bytes: Uint8Array, page: number): Promise<string[]> {
  const pdf = await open(bytes);
  const list = await (await pdf.getPage(page)).getOperatorList();
  await pdf.destroy();
  const out: string[] = [];
  for (const [index, fn] of list.fnArray.entries()) {
    if (fn !== OPS.showText) continue;
    const glyphs = list.argsArray[index]?.[0] as readonly (number | { unicode: string })[];
    out.push(glyphs.map((glyph) => (typeof glyph === 'number' ? '' : glyph.unicode)).join(''));
  }
  return out;
}

/** The same branches, from our own pages: what the file should hold for one page. */
export function expectedTree(pages: Pages, page: number): Branch[] {
  const items = pages.pages[page - 1]?.items ?? [];
  const height = pages.pages[page - 1]?.height ?? 0;
  const own = new Map<string, { order: number; text: string }[]>();
  let previous: string | undefined;
  for (const [order, item] of items.entries()) {
    const id = item.kind === 'artifact' ? undefined : item.node;
    if (id !== undefined) {
      const pieces = own.get(id) ?? [];
      own.set(id, pieces);
      const text = item.kind === 'content' ? saidBy(item.marks) : '→';
      const last = pieces.at(-1);
      // Neighbors of one element are one piece of content.
      if (last && item.kind === 'content' && previous === id && last.text !== '→') last.text += text;
      else pieces.push({ order, text });
    }
    previous = id;
  }
  const first = (node: StructureNode): number =>
    Math.min(own.get(node.id)?.[0]?.order ?? Number.POSITIVE_INFINITY, ...node.children.map(first));
  const branch = (node: StructureNode): Branch => {
    const kids = [
      ...(own.get(node.id) ?? []).map(({ order, text }) => ({ order, kid: text as string | Branch })),
      ...node.children
        .filter((c) => Number.isFinite(first(c)))
        .map((c) => ({ order: first(c), kid: branch(c) })),
    ];
    kids.sort((a, b) => a.order - b.order);
    const { box } = node;
    return {
      role: node.role,
      ...(node.alt === undefined ? {} : { alt: node.alt }),
      ...(node.language === undefined ? {} : { lang: node.language }),
      ...(box && box.page === page - 1
        ? { box: [box.x, height - box.y - box.height, box.x + box.width, height - box.y] }
        : {}),
      kids: kids.map(({ kid }) => kid),
    };
  };
  return Number.isFinite(first(pages.structure)) ? [branch(pages.structure)] : [];
}

/** Words of marks, without spaces and without the marks that only steer direction. */
function saidBy(marks: readonly Mark[]): string {
  return marks
    .map((mark) =>
      mark.kind === 'text'
        ? mark.line.text.replace(/[\s\p{Bidi_Control}]+/gu, '')
        : mark.kind === 'group'
          ? saidBy(mark.marks)
          : '',
    )
    .join('');
}
