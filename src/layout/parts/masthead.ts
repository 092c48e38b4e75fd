import { BREAK, type Desk, type PaperBox } from '../desk.js';
import { addArtifact, type PageDraft } from '../pen.js';
import { paintRow, paintText } from '../rows.js';
import { mm, SPACE } from '../tokens.js';
import { paintRule } from './section.js';

/** What stands at the start edge beside a small title. */
export type Mark =
  | { readonly kind: 'emblem'; readonly picture: string }
  | { readonly kind: 'tab'; readonly word: string };

const EMBLEM = {
  /** From the margin to the middle. */
  x: mm(17.5),
  radius: mm(17),
  tint: mm(15.1),
  paper: mm(13.4),
  picture: mm(23.1),
} as const;
const SMALL = { radius: mm(7), x: mm(7.5), picture: mm(8.6), row: mm(14.6), before: mm(2.6) } as const;
const BAND = {
  plain: { before: mm(3.6), top: mm(4), bottom: mm(4.6), emblem: mm(2.27) },
  short: { before: mm(6), top: mm(5), bottom: mm(5.6), emblem: mm(-0.13) },
} as const;
/** Tint that shows below the emblem where a message has one line only. */
const BELOW_EMBLEM = mm(3);

/** A sheet with a message: strip, title, and the band with the message and the emblem over its edge. */
export function mastheadBox(desk: Desk): PaperBox {
  const { tree, set, type, pen, grid, sheet } = desk;
  const title = set.words(tree.add(tree.root, 'H1'), sheet.title, { width: grid.column, role: type.title });
  const strip = layStrip(desk);
  const message = set.inlines(tree.add(tree.root, 'P'), sheet.message, {
    width: grid.column - mm(5),
    role: type.message,
  });
  const band = sheet.level === 'short' ? BAND.short : BAND.plain;
  const emblem = layEmblem(desk, sheet.emblem, EMBLEM);
  const titleTop = strip.height + SPACE.stripToTitle;
  const bandTop = titleTop + title.height + band.before;
  const middle = bandTop + band.emblem;
  const words = pen.strokes.bold + band.top + message.height + band.bottom;
  const hanging = emblem ? middle + EMBLEM.radius + BELOW_EMBLEM - bandTop : 0;
  const bandHeight = Math.max(words, hanging);
  return {
    height: bandTop + bandHeight,
    before: 0,
    keep: 'wish',
    cost: BREAK.section,
    railFrom: 0,
    paint(page, top) {
      paintRule(desk, page, top);
      paintText(page, pen, title, grid.axis, top + titleTop);
      strip.paint(page, top);
      paintBand(desk, page, top + bandTop, bandHeight);
      emblem?.(page, grid.side + EMBLEM.x, top + middle);
      paintText(
        page,
        pen,
        message,
        grid.axis,
        top + bandTop + (bandHeight - words) / 2 + pen.strokes.bold + band.top,
      );
    },
  };
}

function paintBand(desk: Desk, page: PageDraft, top: number, height: number): void {
  const { pen, grid } = desk;
  const { colors, strokes, ink } = pen;
  const edge = pen.rect(grid.side, top, grid.measure, strokes.bold, { fill: colors.accent });
  const half = strokes.line / 2;
  const ground =
    ink === 'one'
      ? pen.rect(grid.side + half, top + half, grid.measure - strokes.line, height - strokes.line, {
          fill: colors.paper,
          stroke: { color: colors.ink, width: strokes.line },
        })
      : pen.rect(grid.side, top, grid.measure, height, { fill: colors.tint });
  addArtifact(page, 'background', [ground, edge]);
}

/** A sheet without a message: strip, a small sign or tab at the start edge, and a smaller title. */
export function smallMastheadBox(desk: Desk, mark: Mark | undefined): PaperBox {
  const { tree, set, type, pen, grid, sheet } = desk;
  const title = set.words(tree.add(tree.root, 'H1'), sheet.title, {
    width: grid.column,
    role: type.smallTitle,
  });
  const tab = mark?.kind === 'tab' ? layTab(desk, mark.word) : undefined;
  const strip = layStrip(desk);
  const emblem = mark?.kind === 'emblem' ? layEmblem(desk, mark.picture, SMALL) : undefined;
  const row = Math.max(SMALL.row, title.height);
  const rowTop = strip.height + SMALL.before;
  return {
    height: rowTop + row,
    before: 0,
    keep: 'wish',
    cost: BREAK.section,
    railFrom: 0,
    paint(page, top) {
      const middle = top + rowTop + row / 2;
      paintRule(desk, page, top);
      paintText(page, pen, title, grid.axis, middle - title.height / 2);
      tab?.(page, grid.side, middle);
      strip.paint(page, top);
      emblem?.(page, grid.side + SMALL.x, middle);
    },
  };
}

/** Site at the start of the line, sheet and talk at its end; on two lines where one is too short. */
function layStrip(desk: Desk) {
  const { tree, set, type, pen, grid, sheet } = desk;
  const role = type.strip;
  const strong = { ...role, weight: 700 } as const;
  const gap = SPACE.columnGap;
  const startWidth = set.measure([{ text: sheet.strip.start }], strong);
  const endWidth = set.measure([{ text: sheet.strip.end }], role);
  const beside = startWidth + gap + endWidth <= grid.measure;
  const start = set.words(tree.add(tree.root, 'P'), sheet.strip.start, { width: grid.measure, role: strong });
  const end = set.words(tree.add(tree.root, 'P'), sheet.strip.end, {
    width: grid.measure,
    role,
    color: pen.colors.slate,
  });
  const top = SPACE.ruleHeight + SPACE.ruleToStrip;
  return {
    height: top + (beside ? Math.max(start.height, end.height) : start.height + end.height),
    paint(page: PageDraft, pageTop: number) {
      const y = paintText(page, pen, start, grid.side, pageTop + top);
      if (beside) paintText(page, pen, end, grid.side + grid.measure, pageTop + top, 'end');
      else paintText(page, pen, end, grid.side, y);
    },
  };
}

/** The word on an ink tab, as tall as the title beside it. */
function layTab(desk: Desk, word: string) {
  const { tree, set, type, pen } = desk;
  const text = set.words(tree.add(tree.root, 'P'), word, {
    width: 1e6,
    role: type.smallTitle,
    color: pen.colors.paper,
  });
  return (page: PageDraft, x: number, middle: number) => {
    const row = text.rows[0];
    if (!row) return;
    const height = row.height + mm(1.5);
    const ground = pen.rect(x, middle - height / 2, row.width + 2 * mm(4), height, { fill: pen.colors.ink });
    addArtifact(page, 'background', [ground]);
    paintRow(page, pen, row, x + mm(4), middle - row.height / 2 - mm(0.25));
  };
}

/** The lesson's counter: decoration, since the title says what it shows. */
function layEmblem(
  desk: Desk,
  name: string,
  size: {
    readonly radius: number;
    readonly picture: number;
    readonly tint?: number;
    readonly paper?: number;
  },
) {
  const { pen, figures } = desk;
  const drawing = name === '' ? undefined : figures.picture(name, pen.ink);
  if (!drawing) return undefined;
  const { colors, strokes } = pen;
  const scale = size.picture / Math.max(drawing.width, drawing.height);
  const [width, height] = [drawing.width * scale, drawing.height * scale];
  return (page: PageDraft, x: number, y: number) => {
    const large = size.tint !== undefined && size.paper !== undefined;
    const ring = { color: colors.ink, width: large ? strokes.firm : strokes.line };
    const discs = large
      ? [
          pen.circle(x, y, size.radius, { fill: colors.paper, stroke: ring }),
          pen.circle(x, y, size.tint ?? 0, {
            fill: colors.tint,
            ...(pen.ink === 'one' ? { stroke: { color: colors.ink, width: strokes.line } } : {}),
          }),
          ...(pen.ink === 'one' ? [] : [pen.circle(x, y, size.paper ?? 0, { fill: colors.paper })]),
        ]
      : [pen.circle(x, y, size.radius, { fill: colors.tint, stroke: ring })];
    const picture = pen.drawing(drawing.marks, x - width / 2, y - height / 2, width, scale);
    addArtifact(page, 'background', [...discs, picture]);
  };
}
