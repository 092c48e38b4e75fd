import type { Pages, Role } from './pages.js';
import type { PageDraft } from './pen.js';
import type { Draft } from './structure.js';

/** Keeps headings in order without gaps: a head of the third level right under the title is one of the second. */
export interface Outline {
  /** The role for a head that wants this level. */
  role(level: 2 | 3 | 4): Role;
  /** What comes now stands under the title again. */
  restart(): void;
}

export function createOutline(): Outline {
  let last = 1;
  return {
    role(level) {
      last = Math.min(level, last + 1);
      return `H${last}` as Role;
    },
    restart() {
      last = 1;
    },
  };
}

/** Bookmarks: the title and the heads of the second level, each with the page on which it stands. */
export function outlineOf(root: Draft, pages: readonly PageDraft[]): Pages['outline'] {
  const texts = new Map<string, { title: string; page: number }>();
  for (const page of pages)
    for (const item of page.items) {
      if (item.kind !== 'content') continue;
      const words = item.marks.flatMap((m) => (m.kind === 'text' ? [m.line.text.trim()] : [])).join(' ');
      const known = texts.get(item.node);
      texts.set(item.node, {
        title: known ? `${known.title} ${words}` : words,
        page: known?.page ?? page.index,
      });
    }
  const heads = (node: Draft): Draft[] =>
    node.role === 'H1' || node.role === 'H2' ? [node] : node.children.flatMap(heads);
  return heads(root).flatMap((head) => {
    const own = [head, ...head.children].flatMap((node) => texts.get(node.id) ?? []);
    const first = own[0];
    return first ? [{ title: own.map((o) => o.title).join(' '), page: first.page }] : [];
  });
}
