import type { Pen } from '../pen.js';
import type { StepTile } from '../spec.js';
import { CAP_HEIGHT, type Role } from '../tokens.js';

/** Sizes of a tile, in the units of its medium. */
export interface TileLook {
  readonly width: number;
  readonly tab: number;
  readonly padding: number;
  readonly radius: number;
  readonly month: Role;
  readonly action: Role & { readonly leading: number };
  readonly effect: Role & { readonly leading: number };
  readonly box: number;
  readonly boxGap: number;
  readonly boxLine: number;
  readonly outline: number;
  readonly firm: number;
  readonly hair: number;
  /** Between two lines to write on. */
  readonly writing: number;
}

export const BOXES = 4;
const WRITING_LINES = 3;

/** A tile whose words are set: what is still open is how high its row is. */
export interface SetTile {
  /** Of the action, or of the lines to write on. */
  readonly above: number;
  readonly below: number;
  /** Words that are wider than the tile. */
  readonly tooWide: string | undefined;
  readonly put: (x: number, y: number, row: { readonly above: number; readonly below: number }) => void;
}

/** Height of a tile from its tab to its foot. */
export function tileHeight(look: TileLook, above: number, below: number): number {
  const foot = below > 0 ? look.padding * 1.3 + below : 0;
  return look.tab + look.padding * 3 + above + look.box + foot;
}

export function setTile(pen: Pen, tile: StepTile, look: TileLook): SetTile {
  const { palette } = pen;
  const inner = look.width - 2 * look.padding;
  const blank = tile.action === '';
  const onTab = tile.current ? palette.paper : palette.ink;
  const month = pen.set(tile.month, { ...look.month, color: onTab });
  const action = pen.paragraph(tile.action, look.action, inner);
  // A range keeps together where it can; in a narrow tile its ends part.
  const spans = (parted: boolean) =>
    tile.effect.map(({ text, number }) => ({
      text: parted ? text.replaceAll('\u00a0', ' ') : text,
      data: { color: palette.ink, ...(number === undefined ? {} : { number }) },
    }));
  const whole = pen.paragraph(spans(false), look.effect, inner);
  const effect = widest(whole) <= inner ? whole : pen.paragraph(spans(true), look.effect, inner);
  const wide =
    widest(action) > inner
      ? tile.action
      : widest(effect) > inner
        ? tile.effect.map(({ text }) => text).join('')
        : undefined;
  return {
    above: blank ? WRITING_LINES * look.writing : action.lines.length * look.action.leading,
    below: tile.effect.length === 0 ? 0 : effect.lines.length * look.effect.leading,
    tooWide: month.width > inner ? tile.month : wide,
    put: (x, y, row) => {
      const height = tileHeight(look, row.above, row.below);
      const edge = tile.current ? palette.accent : palette.ink;
      const width = tile.current ? look.firm : look.outline;
      // Lines stand inside, so that nothing is cut at the edge of the drawing.
      const half = width / 2;
      const [left, top, inside] = [x + half, y + half, look.width - width];
      pen.rect(left, top, inside, height - width, { fill: palette.paper, edge, width, radius: look.radius });
      const fill = tile.current ? palette.accent : palette.tint;
      pen.rect(left, top, inside, look.tab - width, { fill, edge, width, radius: look.radius });
      pen.put(month, x + look.width / 2, y + look.tab / 2 + (look.month.size * CAP_HEIGHT) / 2, 'middle');
      const under = y + look.tab + look.padding;
      if (blank)
        for (let i = 1; i <= WRITING_LINES; i++)
          pen.line(
            x + look.padding,
            under + i * look.writing,
            x + look.padding + inner,
            under + i * look.writing,
            {
              edge: palette.hair,
              width: look.hair,
            },
          );
      else
        pen.putParagraph(
          action,
          x + look.padding,
          inner,
          under + look.action.size * 0.95,
          look.action.leading,
        );
      const boxes = under + row.above + look.padding;
      drawBoxes(pen, look, x + look.padding, boxes);
      if (tile.effect.length === 0) return;
      const line = boxes + look.box + look.padding;
      pen.line(x + look.padding, line, x + look.padding + inner, line, {
        edge: palette.hair,
        width: look.hair,
      });
      const first = line + look.padding * 0.5 + look.effect.size * 0.95;
      pen.putParagraph(effect, x + look.padding, inner, first, look.effect.leading);
    },
  };
}

function drawBoxes(pen: Pen, look: TileLook, x: number, y: number): void {
  for (let i = 0; i < BOXES; i++)
    pen.rect(x + i * (look.box + look.boxGap), y, look.box, look.box, {
      fill: pen.palette.paper,
      edge: pen.palette.ink,
      width: look.boxLine,
      radius: look.radius / 2,
    });
}

function widest(paragraph: ReturnType<Pen['paragraph']>): number {
  return Math.max(0, ...paragraph.lines.map(({ width }) => width));
}

/** A mark in the reading direction between two tiles, with its middle at x, y. */
export function drawChevron(pen: Pen, x: number, y: number, size: number, width: number): void {
  pen.poly(
    [
      [x - size / 2, y - size],
      [x + size / 2, y],
      [x - size / 2, y + size],
    ],
    { edge: pen.palette.ink, width },
  );
}
