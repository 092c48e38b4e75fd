import type { Color } from './drawing.js';

/** Red, green and blue from 0 to 255 of `#rrggbb`. */
export function channels(color: Color): readonly [number, number, number] {
  const number = Number.parseInt(color.slice(1), 16);
  return [(number >> 16) & 255, (number >> 8) & 255, number & 255];
}

/** The color that lies `share` of the way from the first to the second, channel by channel. */
export function mixColors(from: Color, to: Color, share: number): Color {
  const [a, b] = [channels(from), channels(to)];
  const mixed = a.map((v, i) => Math.round(v + ((b[i] ?? v) - v) * share));
  return `#${mixed.map((v) => v.toString(16).padStart(2, '0')).join('')}`;
}

/** Relative luminance from 0 (black) to 1 (white), by WCAG 2.1, definition of "relative luminance". */
export function luminance(color: Color): number {
  const [r, g, b] = channels(color).map((v) => {
    const share = v / 255;
    return share <= 0.03928 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * (r ?? 0) + 0.7152 * (g ?? 0) + 0.0722 * (b ?? 0);
}

/** Contrast ratio from 1 to 21, by WCAG 2.1, definition of "contrast ratio". */
export function contrast(a: Color, b: Color): number {
  const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light + 0.05) / (dark + 0.05);
}
