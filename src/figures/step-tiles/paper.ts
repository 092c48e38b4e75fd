import type { Problem } from '../../diagnostics/index.js';
import { mm } from '../geometry.js';
import type { Drawn, DrawOptions } from '../options.js';
import { createSheet, finish, outside, type Sheet } from '../sheet.js';
import type { StepTiles } from '../spec.js';
import { paperLines } from '../tokens.js';
import { drawChevron, setTile, type TileLook, tileHeight } from './tile.js';

const GAP = mm(4.2);

/** A strip of tiles over the whole measure, on paper; beginning readers get one below the other. */
export function drawTilesOnPaper(spec: StepTiles, options: DrawOptions): Drawn {
  const sheet = createSheet(options);
  const { pen, type, slack } = sheet;
  const problems: Problem[] = [];
  const most = perRow(spec, options);
  // Rows of about the same length look like one strip.
  const columns = Math.ceil(spec.tiles.length / Math.max(1, Math.ceil(spec.tiles.length / most)));
  const look = lookOf(sheet, (pen.width - GAP * (columns - 1)) / columns);
  let y = paperLines.bold / 2;
  for (let from = 0; from < spec.tiles.length; from += columns) {
    if (from > 0) y += slack(3, 4.5);
    const tiles = spec.tiles.slice(from, from + columns).map((tile) => setTile(pen, tile, look));
    const row = {
      above: Math.max(...tiles.map(({ above }) => above)),
      below: Math.max(...tiles.map(({ below }) => below)),
    };
    const height = tileHeight(look, row.above, row.below);
    for (const [i, tile] of tiles.entries()) {
      const x = i * (look.width + GAP);
      if (tile.tooWide) problems.push(outside(spec.id, tile.tooWide));
      tile.put(x, y, row);
      if (i > 0) drawChevron(pen, x - GAP / 2, y + height / 2, mm(1.5), paperLines.firm);
    }
    y += height;
  }
  const said = pen.paragraph(spec.words.boxes, { ...type.note, color: pen.palette.slate }, pen.width);
  y += mm(1.6) + type.note.size;
  pen.putParagraph(said, 0, pen.width, y, type.note.size * 1.25);
  y += (said.lines.length - 1) * type.note.size * 1.25 + type.note.size * 0.3;
  return finish(pen, spec.id, y + paperLines.bold / 2, problems);
}

/** Tiles side by side: six at the most, fewer where letters are large or a hand writes in them. */
function perRow({ mode }: StepTiles, { level }: DrawOptions): number {
  if (level === 'short') return mode === 'blank' ? 3 : 1;
  if (level === 'large') return 2;
  return mode === 'blank' ? 3 : 6;
}

function lookOf({ type, big }: Sheet, width: number): TileLook {
  const { label, note } = type;
  return {
    width,
    tab: Math.max(mm(6.2), label.size * 1.6),
    padding: mm(big ? 2.6 : 1.9),
    radius: mm(1.2),
    month: { ...label, weight: 700 },
    action: { ...(big ? type.name : label), weight: 600, leading: (big ? type.name : label).size * 1.22 },
    effect: {
      ...note,
      size: Math.max(9, big ? label.size : note.size),
      weight: 400,
      leading: (big ? label.size : note.size) * 1.22,
    },
    box: mm(big ? 5.4 : 4.2),
    boxGap: mm(1.2),
    boxLine: paperLines.line,
    outline: paperLines.line,
    firm: paperLines.bold,
    hair: paperLines.hair,
    writing: mm(8),
  };
}
