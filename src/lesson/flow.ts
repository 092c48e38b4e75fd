import type { RootContent, Table } from 'mdast';
import { problem } from './codes.js';
import { toInlineNodes } from './inline.js';
import { type InlineContext, spanOf } from './inline-context.js';
import type { HeadingLevel, ListItem, Part, TableCell } from './lesson.js';
import { placeOf } from './source.js';

/** Plain Markdown, block by block. Whatever is refused is reported and left out or kept as its words. */
export function toParts(nodes: readonly RootContent[], context: InlineContext, inContainer: boolean): Part[] {
  return nodes.flatMap((node) => toPart(node, context, inContainer));
}

function toPart(node: RootContent, context: InlineContext, inContainer: boolean): readonly Part[] {
  const { source, report } = context;
  const place = placeOf(source, ...spanOf(node));
  const words = () => [
    {
      kind: 'paragraph' as const,
      children: [
        { kind: 'text' as const, text: source.text.slice(...spanOf(node)).replace(/\s+/g, ' '), place },
      ],
      place,
    },
  ];
  switch (node.type) {
    case 'heading': {
      const children = toInlineNodes(node.children, context);
      if (source.text[spanOf(node)[0]] === '#' || !inContainer)
        return [{ kind: 'heading', level: node.depth as HeadingLevel, children, place }];
      report.add(
        problem('lesson/underline', 'The line of hyphens below turns this text into a heading.', {
          place: { file: place.file, line: place.endLine ?? place.line, column: 1 },
          hint: 'Delete the hyphens; write a heading with number signs.',
        }),
      );
      return [{ kind: 'paragraph', children, place }];
    }
    case 'paragraph':
      return [{ kind: 'paragraph', children: toInlineNodes(node.children, context), place }];
    case 'list':
      return [
        {
          kind: 'list',
          ordered: node.ordered === true,
          ...(node.ordered && typeof node.start === 'number' && node.start !== 1
            ? { start: node.start }
            : {}),
          items: node.children.map(
            (item): ListItem => ({
              parts: toParts(item.children, context, inContainer),
              ...(typeof item.checked === 'boolean' ? { checked: item.checked } : {}),
              place: placeOf(source, ...spanOf(item)),
            }),
          ),
          place,
        },
      ];
    case 'table':
      return [tablePart(node, context)];
    case 'blockquote':
      return [{ kind: 'quote', parts: toParts(node.children, context, inContainer), place }];
    case 'code':
      return [{ kind: 'code', text: node.value, place }];
    case 'thematicBreak':
      report.add(
        problem('lesson/rule-line', 'This rule line does nothing.', {
          place,
          hint: 'Delete it. A slide is a container of its own.',
        }),
      );
      return [];
    case 'html':
      report.add(
        problem('lesson/html', 'Raw HTML is off; it would print as it stands.', {
          place,
          hint: /^<!--/.test(node.value)
            ? 'Delete the comment. Words for the leader go into a staff container.'
            : 'Delete it, or write it in Markdown. A container needs no HTML around it.',
          actual: node.value.slice(0, 60),
        }),
      );
      return words();
    case 'footnoteDefinition':
      report.add(
        problem('lesson/footnote', 'Footnotes are not used.', {
          place,
          hint: 'Write the words in the text, or name the source with :cite[…].',
        }),
      );
      return [];
    case 'definition':
      return [];
    default:
      return words();
  }
}

function tablePart(node: Table, context: InlineContext): Part {
  const { source, report } = context;
  const [headRow, ...body] = node.children;
  const cellsOf = (row: typeof headRow): TableCell[] =>
    (row?.children ?? []).map((cell) => ({
      children: toInlineNodes(cell.children, context),
      place: placeOf(source, ...spanOf(cell)),
    }));
  const head = cellsOf(headRow);
  const rows = body.map((row) => {
    const cells = cellsOf(row);
    const place = placeOf(source, ...spanOf(row));
    if (cells.length !== head.length) {
      report.add(
        problem('lesson/table', `This row has ${cells.length} cells and the head has ${head.length}.`, {
          place,
          hint: 'Give the row as many cells as the head; leave a cell empty where there is nothing to say.',
        }),
      );
    }
    return Array.from({ length: head.length }, (_, index) => cells[index] ?? { children: [], place });
  });
  return { kind: 'table', align: node.align ?? [], head, rows, place: placeOf(source, ...spanOf(node)) };
}
