import type { Color } from '../../../figures/index.js';
import { operand, operands } from './number.js';

/** Red, green and blue from 0 to 1. A color that is not `#rrggbb` is a bug of ours and throws. */
export function channels(color: Color): readonly [number, number, number] {
  const match = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(color);
  if (!match) throw new Error(`A color must be #rrggbb, not "${color}".`);
  const [, r = '', g = '', b = ''] = match;
  return [parseInt(r, 16) / 255, parseInt(g, 16) / 255, parseInt(b, 16) / 255];
}

/**
 * True when a color has no hue. Such colors go out as DeviceGray, so that a page of one ink prints
 * with black alone and not with a black mixed from four inks.
 */
export function isNeutral(color: Color): boolean {
  const [r, g, b] = channels(color);
  return r === g && g === b;
}

/** The operator that sets the color for filling or stroking. */
export function colorOperator(color: Color, use: 'fill' | 'stroke'): string {
  const rgb = channels(color);
  if (isNeutral(color)) return `${operand(rgb[0], 4)} ${use === 'fill' ? 'g' : 'G'}\n`;
  return `${operands(rgb, 4)} ${use === 'fill' ? 'rg' : 'RG'}\n`;
}
