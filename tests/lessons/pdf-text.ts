import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

interface TreeNode {
  readonly role?: string;
  readonly alt?: string;
  readonly type?: string;
  readonly id?: string;
  readonly children?: readonly TreeNode[];
}

/** What another library reads out of a finished PDF: all words, and its structure as an outline. */
export interface ReadPdf {
  readonly pages: number;
  /** Words of each page in the order of the file, one blank between them. */
  readonly texts: readonly string[];
  readonly text: string;
  /** Alternatives of figures, in reading order. */
  readonly alternatives: readonly string[];
  /** Roles with their own text, in reading order: `H2 Try it this week`. */
  readonly outline: readonly string[];
}

export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const document = await getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 }).promise;
  const texts: string[] = [];
  const alternatives: string[] = [];
  const outline: string[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const content = await page.getTextContent({ includeMarkedContent: true });
    const byId = new Map<string, string>();
    const open: (string | undefined)[] = [];
    let all = '';
    for (const item of content.items) {
      if ('str' in item) {
        const piece = item.str + (item.hasEOL ? ' ' : '');
        all += piece;
        const id = open.findLast((one) => one !== undefined);
        if (id !== undefined) byId.set(id, (byId.get(id) ?? '') + piece);
      } else if (item.type === 'endMarkedContent') open.pop();
      else open.push('id' in item ? (item.id ?? undefined) : undefined);
    }
    texts.push(squeeze(all));
    const visit = (node: TreeNode): string => {
      if (node.type === 'content') return byId.get(node.id ?? '') ?? '';
      if (node.alt) alternatives.push(node.alt);
      const at = outline.push('') - 1;
      const own = (node.children ?? []).map(visit).join('');
      outline[at] = squeeze(`${node.role ?? ''} ${own}`);
      return own;
    };
    const tree = (await page.getStructTree()) as TreeNode | null;
    if (tree) visit(tree);
  }
  const pages = document.numPages;
  await document.destroy();
  return { pages, texts, text: texts.join(' '), alternatives, outline };
}

function squeeze(text: string): string {
  return text.replace(/\s+/gu, ' ').trim();
}
