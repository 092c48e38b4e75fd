import type { Block, Cell, Inline } from '../../document/index.js';
import { BREAK, type Desk, type PaperBox, rowBoxes, type Slot } from '../desk.js';
import { addArtifact, type PageDraft } from '../pen.js';
import { paintText, type SetText } from '../rows.js';
import type { Draft } from '../structure.js';
import { mm, SPACE } from '../tokens.js';
import type { TypeRole } from '../type.js';
import { columnWidths } from './columns.js';
import { FIELD_HEIGHT, fieldWidth, layField, type PaintField } from './field.js';

type TableBlock = Block & { readonly kind: 'table' };

interface SetCell {
  readonly text?: SetText;
  readonly field?: PaintField;
  /** Where the field starts: after the text, if there is any. */
  readonly fieldX: number;
  readonly x: number;
  readonly width: number;
  readonly align: 'start' | 'end';
}

interface SetRow {
  readonly height: number;
  readonly padding: number;
  readonly cells: readonly SetCell[];
}

/**
 * A table in the column, or over the whole measure when its words ask for more. The header row stands
 * again on each page that continues it; rows are never split.
 */
export function tableBoxes(desk: Desk, block: TableBlock, at: Slot, parent: Draft): PaperBox[] {
  const { tree, set, type, pen, grid } = desk;
  const count = Math.max(block.head.length, ...block.rows.map((row) => row.length));
  if (count === 0) return [];
  const roles = {
    ...type,
    head: { ...type.table, weight: 700 },
    rowHead: { ...type.table, weight: 600 },
  } as const;
  const roleOf = (row: 'head' | number, column: number): TypeRole =>
    row === 'head' ? roles.head : block.rowHeads && column === 0 ? roles.rowHead : type.table;
  const padOf = (column: number) =>
    (column === 0 ? 0 : SPACE.tableCell) + (column === count - 1 ? 0 : SPACE.tableCell);
  const needs = Array.from({ length: count }, (_, column) => {
    const cells = [
      ...(block.head[column] ? [needOf(desk, block.head[column], roleOf('head', column))] : []),
      ...block.rows.flatMap((row) => (row[column] ? [needOf(desk, row[column], roleOf(0, column))] : [])),
    ];
    const pad = padOf(column);
    return {
      least: Math.max(0, ...cells.map((c) => c.least)) + pad,
      most: Math.max(0, ...cells.map((c) => c.most)) + pad,
      text: cells.reduce((sum, c) => sum + c.text, 0) / Math.max(1, cells.length) + pad,
    };
  });
  const wide = needs.reduce((sum, n) => sum + n.least, 0) > at.width || desk.sheet.kind === 'review';
  const slot = wide ? { x: grid.side, width: grid.measure } : at;
  const widths = columnWidths(needs, slot.width);
  const starts = widths.map((_, column) => slot.x + widths.slice(0, column).reduce((a, b) => a + b, 0));

  const node = tree.add(parent, 'Table');
  const caption = block.caption
    ? rowBoxes(
        desk,
        set.words(tree.add(node, 'Caption'), block.caption, { width: slot.width, role: roles.rowHead }),
        slot,
        { before: SPACE.textToFigure, cost: BREAK.paragraph },
      ).map((box): PaperBox => ({ ...box, keep: 'must' }))
    : [];

  const setRow = (cells: readonly Cell[], row: 'head' | number, section: Draft): SetRow => {
    const line = tree.add(section, 'TR');
    const hasField = cells.some((cell) => cell.field);
    const done = Array.from({ length: count }, (_, column): SetCell => {
      const cell = cells[column] ?? { inlines: [] };
      const head = row === 'head' || (block.rowHeads && column === 0);
      const spot = tree.add(
        line,
        head ? 'TH' : 'TD',
        head ? { scope: row === 'head' ? 'Column' : 'Row' } : {},
      );
      const x = (starts[column] ?? 0) + (column === 0 ? 0 : SPACE.tableCell);
      const width = (widths[column] ?? 0) - padOf(column);
      const align = cell.align ?? 'start';
      const beside = cell.field ? fieldWidth(desk, cell.field, type.table) + SPACE.tableCell : 0;
      const text = set.inlines(spot, cell.inlines, {
        width: cell.inlines.length > 0 ? width - beside : width,
        role: roleOf(row, column),
        tabular: align === 'end',
        place: block.place,
      });
      const field = cell.field ? layField(desk, cell.field, spot, { role: type.table }) : undefined;
      return {
        x,
        fieldX: x + (text.width > 0 ? text.width + SPACE.tableCell : 0),
        width,
        align,
        ...(text.rows.length > 0 ? { text } : {}),
        ...(field ? { field } : {}),
      };
    });
    const padding = hasField ? mm(1) : SPACE.tableRow;
    const inside = Math.max(
      type.table.leading,
      ...done.map((c) => Math.max(c.text?.height ?? 0, c.field ? FIELD_HEIGHT.table : 0)),
    );
    return { height: inside + 2 * padding, padding, cells: done };
  };

  const paintRow = (page: PageDraft, row: SetRow, top: number) => {
    for (const cell of row.cells) {
      const inside = row.height - 2 * row.padding;
      if (cell.text) {
        const drop = row.cells.some((c) => c.field) ? (inside - cell.text.height) / 2 : 0;
        const x = cell.align === 'end' ? cell.x + cell.width : cell.x;
        paintText(page, pen, cell.text, x, top + row.padding + drop, cell.align);
      }
      cell.field?.paint(page, cell.fieldX, top + row.padding, FIELD_HEIGHT.table);
    }
  };
  const rule = (page: PageDraft, y: number, width: number, color: string) =>
    addArtifact(page, 'layout', [pen.line(slot.x, y, slot.x + slot.width, y, { color, width })]);

  const headed = block.head.some((cell) => cell.inlines.some((i: Inline) => i.text.trim() !== ''));
  const head = headed ? setRow(block.head, 'head', tree.add(node, 'THead')) : undefined;
  const before = caption.length > 0 ? SPACE.tableRow : SPACE.textToFigure - SPACE.tableRow;
  const boxes: PaperBox[] = [];
  if (head) {
    boxes.push({
      height: head.height,
      before,
      keep: 'must',
      cost: BREAK.paragraph,
      ...(wide ? { railFrom: 0 } : {}),
      paint(page, top) {
        paintRow(page, head, top);
        rule(page, top + head.height, pen.strokes.firm, pen.colors.ink);
      },
    });
  }
  const body = tree.add(node, 'TBody');
  block.rows.forEach((cells, index) => {
    const row = setRow(cells, index, body);
    const last = index === block.rows.length - 1;
    const again = head && {
      height: head.height,
      paint: (page: PageDraft, top: number) => {
        asArtifact(page, () => paintRow(page, head, top));
        rule(page, top + head.height, pen.strokes.firm, pen.colors.ink);
      },
    };
    boxes.push({
      height: row.height,
      before: index === 0 && !head ? before : 0,
      // A page neither ends nor starts with a single row of a longer table.
      keep: block.rows.length > 2 && (index === 0 || index === block.rows.length - 2) ? 'wish' : false,
      cost: BREAK.row,
      ...(again ? { again } : {}),
      ...(wide ? { railFrom: 0 } : {}),
      paint(page, top) {
        paintRow(page, row, top);
        rule(page, top + row.height, pen.strokes.hair, last ? pen.colors.ink : pen.colors.hair);
      },
    });
  });
  return [...caption, ...boxes];
}

/** What is painted meanwhile repeats what was read before, so it becomes part of the layout. */
function asArtifact(page: PageDraft, paint: () => void): void {
  const from = page.items.length;
  paint();
  for (let i = from; i < page.items.length; i += 1) {
    const item = page.items[i];
    if (item?.kind === 'content') {
      page.items[i] = { kind: 'artifact', of: 'pagination', marks: item.marks };
    }
  }
}

function needOf(desk: Desk, cell: Cell, role: TypeRole) {
  const words = cell.inlines.flatMap((inline) =>
    inline.text.split(/[ \n]+/).map((text) => ({ ...inline, breakBefore: false, text })),
  );
  const own = cell.field ? fieldWidth(desk, cell.field, desk.type.table) : 0;
  const field = own + (own > 0 && cell.inlines.length > 0 ? SPACE.tableCell : 0);
  const tabular = cell.align === 'end';
  return {
    least: field + Math.max(0, ...words.map((word) => desk.set.measure([word], role, tabular))),
    most: field + desk.set.measure(cell.inlines, role, tabular),
    text: field + linesOf(cell.inlines).reduce((sum, line) => sum + desk.set.measure(line, role, tabular), 0),
  };
}

/** Stretches between the line breaks of a cell. */
function linesOf(inlines: readonly Inline[]): Inline[][] {
  const lines: Inline[][] = [[]];
  for (const inline of inlines) {
    if (inline.breakBefore) lines.push([]);
    lines.at(-1)?.push({ ...inline, breakBefore: false });
  }
  return lines;
}
