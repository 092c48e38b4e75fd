import type { Block, Cell, Inline } from '../document/index.js';
import type { DirectivePart, InlineNode, Part, TableCell } from './lesson.js';

type Look = Omit<Inline, 'text'>;

/** How the nodes that Markdown alone cannot resolve become text. */
export interface InlineContext {
  readonly number: (node: InlineNode & { readonly kind: 'number' }) => Inline;
  /** A word of the term list as it prints, with its meaning where that is told. */
  readonly term: (words: string) => string;
}

/** How the parts that Markdown alone cannot resolve become blocks. */
export interface BlockContext extends InlineContext {
  readonly directive: (part: DirectivePart) => readonly Block[];
  readonly picture: (node: InlineNode & { readonly kind: 'picture' }) => readonly Block[];
  /** On a worksheet an empty table cell is a box to write in. */
  readonly emptyCellsAreFields: boolean;
}

/** Running text, flattened: each stretch carries its whole look. Pictures are left to `toBlocks`. */
export function toInlines(nodes: readonly InlineNode[], context: InlineContext): Inline[] {
  const out: Inline[] = [];
  let breakNext = false;
  const push = (inline: Inline) => {
    const last = out.at(-1);
    if (last && !breakNext && sameLook(last, inline))
      out[out.length - 1] = { ...last, text: last.text + inline.text };
    else out.push(breakNext ? { ...inline, breakBefore: true } : inline);
    breakNext = false;
  };
  const walk = (list: readonly InlineNode[], look: Look): void => {
    for (const node of list) {
      switch (node.kind) {
        case 'text':
          push({ ...look, text: node.text });
          break;
        case 'term':
          push({ ...look, text: context.term(node.text) });
          break;
        case 'code':
          push({ ...look, code: true, text: node.text });
          break;
        case 'strong':
        case 'emphasis':
        case 'struck':
          walk(node.children, { ...look, [node.kind]: true });
          break;
        case 'link':
          walk(node.children, { ...look, href: node.href });
          break;
        case 'break':
          breakNext = true;
          break;
        case 'number':
          push({ ...look, ...context.number(node) });
          break;
        case 'cite':
          push({ ...look, text: '', cite: node.source });
          break;
        case 'picture':
          break;
      }
    }
  };
  walk(nodes, {});
  return trimEnds(out);
}

function sameLook(a: Inline, b: Inline): boolean {
  if (a.number || b.number || a.cite || b.cite || b.breakBefore) return false;
  return (
    a.strong === b.strong &&
    a.emphasis === b.emphasis &&
    a.struck === b.struck &&
    a.code === b.code &&
    a.href === b.href &&
    a.language === b.language
  );
}

function trimEnds(inlines: readonly Inline[]): Inline[] {
  const out = [...inlines];
  const first = out[0];
  if (first) out[0] = { ...first, text: first.text.trimStart() };
  const last = out.at(-1);
  if (last) out[out.length - 1] = { ...last, text: last.text.trimEnd() };
  return out.filter((i) => i.text !== '' || i.cite);
}

/** Parts as chosen for one audience → blocks. The title (`#`) is left to whoever prints it. */
export function toBlocks(parts: readonly Part[], context: BlockContext): Block[] {
  return parts.flatMap((part) => toBlock(part, context));
}

function toBlock(part: Part, context: BlockContext): readonly Block[] {
  const { place } = part;
  switch (part.kind) {
    case 'heading': {
      if (part.level === 1) return [];
      const level = Math.min(part.level, 4) as 2 | 3 | 4;
      return [{ kind: 'heading', level, inlines: toInlines(part.children, context), place }];
    }
    case 'paragraph':
      return paragraph(part, context);
    case 'list':
      return [
        {
          kind: 'list',
          ordered: part.ordered,
          ...(part.start === undefined ? {} : { start: part.start }),
          items: part.items.map((item) => toBlocks(item.parts, context)),
          place,
        },
      ];
    case 'table':
      return [table(part, context)];
    case 'quote':
      return [{ kind: 'quote', blocks: toBlocks(part.parts, context), place }];
    case 'code':
      return [{ kind: 'paragraph', inlines: [{ text: part.text, code: true }], place }];
    case 'directive':
      return context.directive(part);
    case 'holder':
      return toBlocks(part.parts, context);
  }
}

function paragraph(part: Part & { readonly kind: 'paragraph' }, context: BlockContext): Block[] {
  const blocks: Block[] = [];
  let run: InlineNode[] = [];
  const close = () => {
    const inlines = toInlines(run, context);
    if (inlines.length > 0) blocks.push({ kind: 'paragraph', inlines, place: part.place });
    run = [];
  };
  for (const node of part.children) {
    if (node.kind === 'picture') {
      close();
      blocks.push(...context.picture(node));
    } else run.push(node);
  }
  close();
  return blocks;
}

function table(part: Part & { readonly kind: 'table' }, context: BlockContext): Block {
  const align = (column: number) => (part.align[column] === 'right' ? { align: 'end' as const } : {});
  const plain = (cell: TableCell) => toInlines(cell.children, context);
  const words = (cell: TableCell | undefined) =>
    cell === undefined
      ? ''
      : plain(cell)
          .map((inline) => inline.text)
          .join('');
  const body = (row: readonly TableCell[]): Cell[] =>
    row.map((cell, column) => {
      const inlines = plain(cell);
      if (inlines.length > 0 || column === 0 || !context.emptyCellsAreFields)
        return { inlines, ...align(column) };
      const label = [words(row[0]), words(part.head[column])].filter(Boolean).join(', ');
      return { inlines, field: { label } };
    });
  return {
    kind: 'table',
    head: part.head.map((cell, column) => ({ inlines: plain(cell), ...align(column) })),
    rows: part.rows.map(body),
    rowHeads: true,
    place: part.place,
  };
}
