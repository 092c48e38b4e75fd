import type { Problem } from '../../diagnostics/index.js';
import type { Drawn, DrawOptions } from '../options.js';
import { finish, outside } from '../sheet.js';
import type { StepTiles } from '../spec.js';
import { createStage, tooHigh, tooMany } from '../stage.js';
import { screenLines, screenType } from '../tokens.js';
import { drawChevron, setTile, type TileLook, tileHeight } from './tile.js';

const MOST = 3;
const WIDTH = 368;

/** Up to three tiles that stand on the shelf. */
export function drawTilesOnScreen(spec: StepTiles, options: DrawOptions): Drawn {
  const { pen, width, height } = createStage(options);
  const problems: Problem[] = [];
  if (spec.tiles.length > MOST) problems.push(tooMany(spec.id, 'steps', spec.tiles.length, MOST, 'months'));
  const gap = (width - MOST * WIDTH) / (MOST - 1);
  const tiles = spec.tiles.slice(0, MOST).map((tile) => setTile(pen, tile, LOOK));
  const row = {
    above: Math.max(0, ...tiles.map(({ above }) => above)),
    below: Math.max(0, ...tiles.map(({ below }) => below)),
  };
  const high = tileHeight(LOOK, row.above, row.below);
  const top = height - high - screenLines.shelf;
  if (top < 0) problems.push(tooHigh(spec.id, -top));
  for (const [i, tile] of tiles.entries()) {
    const x = i * (WIDTH + gap);
    if (tile.tooWide) problems.push(outside(spec.id, tile.tooWide));
    tile.put(x, top, row);
    if (i > 0) drawChevron(pen, x - gap / 2, top + high / 2, 11, screenLines.box);
  }
  return finish(pen, spec.id, height, problems);
}

const LOOK: TileLook = {
  width: WIDTH,
  tab: 48,
  padding: 14,
  radius: 8,
  month: { ...screenType.label, weight: 700 },
  action: { size: 36, weight: 600, leading: 42 },
  effect: { size: 32, weight: 500, leading: 36 },
  box: 34,
  boxGap: 14,
  boxLine: screenLines.track,
  outline: screenLines.track,
  firm: screenLines.post,
  hair: screenLines.track,
  writing: 60,
};
