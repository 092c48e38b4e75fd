import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Drawing, FigureSpec, Mark } from '../../src/figures/index.js';
import type { FigureTools } from '../../src/layout/index.js';
import { mm } from '../../src/layout/index.js';
import { loadFonts } from '../../src/text/index.js';

const ASSETS = join(import.meta.dirname, '..', '..', 'assets');

/** Fonts of the program, read once for all tests of a file. */
export const fonts = loadFonts(
  (path) => new Uint8Array(readFileSync(join(ASSETS, 'fonts', path))),
  () =>
    new Uint8Array(
      readFileSync(
        join(import.meta.dirname, '..', '..', 'node_modules', 'harfbuzzjs', 'dist', 'harfbuzz-subset.wasm'),
      ),
    ),
);

function rect(x: number, y: number, width: number, height: number): Mark {
  const path = `M${x} ${y}L${x + width} ${y}L${x + width} ${y + height}L${x} ${y + height}Z`;
  return { kind: 'shape', path, stroke: { color: '#000000', width: 1 } };
}

/**
 * Figures of plain boxes: a legend in the column, then rows with a name in the rail. Layout needs no
 * more of a figure than its size and where it uses the rail.
 */
export const plainFigures: FigureTools = {
  draw(spec: FigureSpec, { width, direction, slack }): Drawing {
    const rows = spec.kind === 'dot-lanes' ? spec.lanes.length : 'rows' in spec ? spec.rows.length : 3;
    const legend = spec.kind === 'dot-lanes' ? mm(9) : 0;
    const pitch = mm(16 - 4 * slack);
    const axis = mm(42);
    const marks: Mark[] = legend > 0 ? [rect(axis, 1, width - axis - 1, legend - 2)] : [];
    for (let row = 0; row < rows; row += 1) {
      const y = legend + row * pitch;
      marks.push(rect(1, y + 3, mm(30), mm(8)), rect(axis, y + 3, width - axis - 1, mm(8)));
    }
    const at = [-1, 0, 0, 1, width, 0] as const;
    return {
      width,
      height: legend + rows * pitch,
      marks: direction === 'rtl' ? [{ kind: 'group', at, marks }] : marks,
    };
  },
  picture: () => ({ width: 32, height: 32, marks: [rect(2, 2, 28, 28)] }),
};
