import type { Mark } from '../../src/figures/index.js';
import { type Bounds, boundsOf, type Page, type Pages, type StructureNode } from '../../src/layout/index.js';

/** All nodes of the tree, parents before children. */
export function nodesOf(node: StructureNode): StructureNode[] {
  return [node, ...node.children.flatMap(nodesOf)];
}

export function rolesOf(pages: Pages): string[] {
  return nodesOf(pages.structure).map((node) => node.role);
}

function textsOf(marks: readonly Mark[]): string[] {
  return marks.flatMap((mark) =>
    mark.kind === 'text' ? [mark.line.text] : mark.kind === 'group' ? textsOf(mark.marks) : [],
  );
}

/** What a reader hears of one element and all below it, in the order of the pages. */
export function spoken(pages: Pages, node: StructureNode = pages.structure): string {
  const ids = new Set(nodesOf(node).map((n) => n.id));
  return pages.pages
    .flatMap((page) => page.items)
    .flatMap((item) => (item.kind === 'content' && ids.has(item.node) ? textsOf(item.marks) : []))
    .join(' ')
    .replace(/[\u2066-\u2069]/g, '')
    .replace(/\s+/g, ' ')
    .trim();
}

export function nodesWith(pages: Pages, role: string): StructureNode[] {
  return nodesOf(pages.structure).filter((node) => node.role === role);
}

export interface PlacedText {
  readonly page: number;
  readonly text: string;
  readonly bounds: Bounds;
  readonly node: string | undefined;
}

/** Every visible line of text with the box of its letters: from the top of capitals to the baseline. */
export function placedTexts(pages: Pages): PlacedText[] {
  const found: PlacedText[] = [];
  pages.pages.forEach((page, index) => {
    for (const item of page.items) {
      if (item.kind === 'link') continue;
      for (const { mark, bounds } of visibleTexts(item.marks)) {
        const node = item.kind === 'content' ? item.node : undefined;
        found.push({ page: index, text: mark.line.text, bounds, node });
      }
    }
  });
  return found;
}

type TextMark = Extract<Mark, { readonly kind: 'text' }>;

function sizeOf(mark: TextMark): number {
  return Math.max(...mark.line.runs.map((run) => run.size));
}

function visibleTexts(
  marks: readonly Mark[],
  wrap: (m: Mark) => Mark = (m) => m,
): { mark: TextMark; bounds: Bounds }[] {
  return marks.flatMap((mark) => {
    if (mark.kind === 'group') {
      const around = (inner: Mark): Mark =>
        wrap({ kind: 'group', marks: [inner], ...(mark.at ? { at: mark.at } : {}) });
      return visibleTexts(mark.marks, around);
    }
    if (mark.kind !== 'text' || mark.hidden || mark.line.text.trim() === '') return [];
    // Letters fill about 0.7 em above the baseline and 0.2 em below; leading may overlap, letters may not.
    const size = sizeOf(mark);
    const tight = { ...mark, line: { ...mark.line, ascent: 0.7 * size, descent: 0.16 * size } };
    const [bounds] = boundsOf([wrap(tight)]);
    return bounds ? [{ mark, bounds }] : [];
  });
}

/** Pairs of visible texts on one page whose letters lie on each other. */
export function collisions(pages: Pages): string[] {
  const found: string[] = [];
  const texts = [...placedTexts(pages)].sort((a, b) => a.page - b.page || a.bounds.top - b.bounds.top);
  texts.forEach((a, index) => {
    for (const b of texts.slice(index + 1)) {
      const down = Math.min(a.bounds.bottom, b.bounds.bottom) - b.bounds.top;
      if (a.page !== b.page || down <= 0.3) break;
      const across = Math.min(a.bounds.right, b.bounds.right) - Math.max(a.bounds.left, b.bounds.left);
      if (across > 0.3) found.push(`page ${a.page + 1}: “${a.text}” and “${b.text}”`);
    }
  });
  return found;
}

/**
 * Marks of a page that come nearer to an edge than the printer's margin of 8.5 mm. Text counts by its
 * ink: accents reach 0.95 em up, the deepest Arabic tails 0.4 em down (measured on the fonts).
 */
export function outsideSafe(page: Page): Bounds[] {
  const safe = (8.5 * 72) / 25.4 - 0.01;
  const marks = page.items.flatMap((item) => (item.kind === 'link' ? [] : item.marks));
  return boundsOf(marks.map(inked)).filter(
    (b) => b.left < safe || b.top < safe || b.right > page.width - safe || b.bottom > page.height - safe,
  );
}

function inked(mark: Mark): Mark {
  if (mark.kind === 'group') return { ...mark, marks: mark.marks.map(inked) };
  if (mark.kind !== 'text') return mark;
  const { ascent, descent } = mark.line;
  const size = sizeOf(mark);
  return {
    ...mark,
    line: { ...mark.line, ascent: Math.min(ascent, 0.95 * size), descent: Math.min(descent, 0.4 * size) },
  };
}

/**
 * Faults of the structure: an id twice, content of no element, an element named by nothing, headings
 * with a gap, elements whose content comes in another order than the tree.
 */
export function structureFaults(pages: Pages): string[] {
  const nodes = nodesOf(pages.structure);
  const ids = new Set(nodes.map((node) => node.id));
  const faults: string[] = [];
  if (ids.size !== nodes.length) faults.push('an id stands twice');
  const seen = new Set<string>();
  for (const page of pages.pages)
    for (const item of page.items) {
      if (item.kind === 'artifact') continue;
      if (!ids.has(item.node)) faults.push(`content of ${item.node}, which is not in the tree`);
      if (item.kind === 'content') seen.add(item.node);
    }
  const order = [...seen];
  const inTree = [...ids].filter((id) => seen.has(id));
  const wrong = inTree.findIndex((id, index) => order[index] !== id);
  if (wrong >= 0) faults.push(`the tree has ${inTree[wrong]} where the pages have ${order[wrong]}`);
  for (const node of nodes)
    if (node.children.length === 0 && !seen.has(node.id) && node.role !== 'TD' && node.role !== 'TH')
      faults.push(`${node.role} ${node.id} is empty`);
  let last = 0;
  for (const node of nodes) {
    const level = /^H([1-4])$/.exec(node.role)?.[1];
    if (level === undefined) continue;
    if (Number(level) > last + 1) faults.push(`${node.role} after H${last}`);
    last = Number(level);
  }
  for (const node of nodes)
    if ((node.role === 'Figure' || node.role === 'Form') && !node.alt)
      faults.push(`${node.role} without words`);
  return faults;
}
