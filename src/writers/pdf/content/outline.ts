import type { FontFace } from '../../../text/index.js';
import { operands } from './number.js';

/** A glyph that is drawn as a shape. `x` and `y` are its origin on the drawing, y down. */
export interface OutlinedGlyph {
  readonly font: FontFace;
  readonly glyph: number;
  readonly size: number;
  readonly x: number;
  readonly y: number;
}

const COMMAND = /([MLQCZ])([^MLQCZ]*)/g;

/** Path operators of a glyph's outline; the quadratic curves of TrueType become cubic ones. */
export function outlineOperators({ font, glyph, size, x, y }: OutlinedGlyph, digits: number): string {
  const scale = size / font.unitsPerEm;
  const place = (values: readonly number[]) =>
    values.map((v, i) => (i % 2 === 0 ? x + v * scale : y - v * scale));
  let out = '';
  let from: readonly [number, number] = [0, 0];
  for (const [, command = '', rest = ''] of font.path(glyph).matchAll(COMMAND)) {
    const values = (rest.match(/-?[\d.]+/g) ?? []).map(Number);
    const [a = 0, b = 0, c = 0, d = 0] = values;
    if (command === 'Z') out += 'h\n';
    else if (command === 'Q') {
      const curve = [
        from[0] + (2 / 3) * (a - from[0]),
        from[1] + (2 / 3) * (b - from[1]),
        c + (2 / 3) * (a - c),
        d + (2 / 3) * (b - d),
        c,
        d,
      ];
      out += `${operands(place(curve), digits)} c\n`;
    } else out += `${operands(place(values), digits)} ${{ M: 'm', L: 'l' }[command] ?? 'c'}\n`;
    from = [values.at(-2) ?? 0, values.at(-1) ?? 0];
  }
  return out;
}
