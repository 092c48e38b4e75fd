import { problemsOf } from '../../diagnostics/index.js';
import type { Block, Picture } from '../../document/index.js';
import { type FigureTable, figureCodes, isOneInk, type Mark, toOneInk } from '../../figures/index.js';
import { topWithin } from '../bounds.js';
import { BREAK, type Desk, type PaperBox, type Slot } from '../desk.js';
import { addContent } from '../pen.js';
import { paintText, type SetText } from '../rows.js';
import type { Draft } from '../structure.js';
import { mm, SPACE } from '../tokens.js';

const figureProblem = problemsOf(figureCodes);

/**
 * A figure over the whole measure. It starts right under its text, beside a head that reaches
 * deeper, as long as nothing of it stands in the rail there.
 */
export function figureBoxes(
  desk: Desk,
  block: Block & { readonly kind: 'figure' },
  parent: Draft,
): PaperBox[] {
  const { grid, pen, tree } = desk;
  const { alternative } = block.figure;
  const node = tree.add(parent, 'Figure', { alt: `${alternative.label} ${alternative.reading}`.trim() });
  const table = hiddenTable(desk, alternative.table, parent);
  const { sheet, slack, report } = desk;
  const request = {
    width: grid.measure,
    ink: pen.ink,
    level: sheet.level,
    language: sheet.language,
    direction: pen.direction,
    slack,
    ...(block.place ? { place: block.place } : {}),
  };
  const drawing = desk.figures.draw(block.figure, request, report);
  const inRail = topWithin(drawing.marks, railSide(desk, drawing.width));
  return [
    {
      height: drawing.height,
      before: SPACE.textToFigure,
      keep: false,
      cost: BREAK.part,
      ...(inRail === undefined ? {} : { railFrom: inRail }),
      paint(page, top) {
        addContent(page, node, [pen.drawing(drawing.marks, grid.side, top, drawing.width)]);
        const x = pen.left(grid.side, drawing.width);
        node.box = { page: page.index, x, y: top, width: drawing.width, height: drawing.height };
        table(page, grid.side + mm(1), top + mm(1));
      },
    },
  ];
}

/** The part of a drawing that lies over the rail, in the drawing's own x. */
function railSide(desk: Desk, width: number): readonly [number, number] {
  const { rail } = desk.grid;
  return desk.pen.direction === 'rtl' ? [width - rail, width] : [0, rail];
}

/** So small that the whole table stands within its figure; it is only heard, searched and copied. */
const HIDDEN_SIZE = 1;
const HIDDEN_LEADING = 1.2;

/** The figure's data as a table that is not seen. */
function hiddenTable(desk: Desk, data: FigureTable, parent: Draft) {
  const { tree, set, pen } = desk;
  const role = { size: HIDDEN_SIZE, leading: HIDDEN_LEADING, weight: 400 } as const;
  const words = (node: Draft, text: string) => set.words(node, text, { width: 1e6, role });
  const node = tree.add(parent, 'Table');
  const caption = data.caption === '' ? undefined : words(tree.add(node, 'Caption'), data.caption);
  const lines: SetText[][] = [];
  if (data.head.length > 0) {
    const row = tree.add(tree.add(node, 'THead'), 'TR');
    lines.push(data.head.map((text) => words(tree.add(row, 'TH', { scope: 'Column' }), text)));
  }
  const body = tree.add(node, 'TBody');
  for (const cells of data.rows) {
    const row = tree.add(body, 'TR');
    lines.push(
      cells.map((text, index) =>
        words(index === 0 ? tree.add(row, 'TH', { scope: 'Row' }) : tree.add(row, 'TD'), text),
      ),
    );
  }
  return (page: Parameters<PaperBox['paint']>[0], x: number, top: number) => {
    const from = page.items.length;
    if (caption) paintText(page, pen, caption, x, top);
    let y = top + HIDDEN_LEADING;
    for (const row of lines) {
      let at = x;
      for (const cell of row) {
        paintText(page, pen, cell, at, y);
        at += cell.width + 2 * HIDDEN_SIZE;
      }
      y += HIDDEN_LEADING;
    }
    for (let i = from; i < page.items.length; i += 1) {
      const item = page.items[i];
      if (item?.kind === 'content') page.items[i] = { ...item, marks: item.marks.map(hidden) };
    }
  };
}

function hidden(mark: Mark): Mark {
  return mark.kind === 'text' ? { ...mark, hidden: true } : mark;
}

/** Pixels of the lesson's own pictures are at most this large on paper, so that none looks coarse. */
const LEAST_DPI = 130;
const TALLEST = mm(80);

/** A picture of the lesson's own, as wide as the column at most and never enlarged beyond its pixels. */
export function pictureBoxes(
  desk: Desk,
  block: Block & { readonly kind: 'picture' },
  at: Slot,
  parent: Draft,
): PaperBox[] {
  const { pen, tree } = desk;
  const picture = inkedPicture(desk, block);
  const node = tree.add(parent, 'Figure', { alt: block.alt });
  const natural = picture.kind === 'raster' ? 72 / LEAST_DPI : Number.POSITIVE_INFINITY;
  const scale = Math.min(at.width / picture.width, TALLEST / picture.height, natural);
  const [width, height] = [picture.width * scale, picture.height * scale];
  return [
    {
      height,
      before: SPACE.textToFigure,
      keep: false,
      cost: BREAK.part,
      paint(page, top) {
        const x = pen.left(at.x, width);
        const mark: Mark =
          picture.kind === 'raster'
            ? { kind: 'raster', raster: picture.raster, x, y: top, width, height }
            : pen.drawing(picture.marks, at.x, top, width, scale);
        addContent(page, node, [mark]);
        node.box = { page: page.index, x, y: top, width, height };
      },
    },
  ];
}

/** In one ink a colored vector picture becomes black lines, and that is said; pixels stay as they are. */
function inkedPicture(desk: Desk, { picture, place }: Block & { readonly kind: 'picture' }): Picture {
  if (desk.pen.ink !== 'one' || picture.kind !== 'vector' || isOneInk(picture.marks)) return picture;
  desk.report.add(
    figureProblem(
      'figures/one-ink-converted',
      'A colored picture is turned into black lines in the one-ink build.',
      {
        hint: 'Draw a one-ink twin and save it beside the picture as `<name>.one.svg`.',
        ...(place ? { place } : {}),
      },
    ),
  );
  return { ...picture, ...toOneInk(picture) };
}
