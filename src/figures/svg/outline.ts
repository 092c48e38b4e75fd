import type { Point } from '../geometry.js';
import { ellipsePath, linePath, pathOf, polyPath, rectPath } from '../shapes.js';
import { PathDataError, readPathData } from './path-data.js';
import type { SvgElement } from './tree.js';
import { readLength, readNumbers } from './values.js';

/** The size that per cent counts of. */
export interface Viewport {
  readonly width: number;
  readonly height: number;
}

const SHAPES = new Set(['path', 'rect', 'circle', 'ellipse', 'line', 'polyline', 'polygon']);

export const isShape = (element: SvgElement): boolean => SHAPES.has(element.name);

/**
 * The outline of a basic shape as path data with M, L, C and Z; empty for a shape without extent.
 * `wrong` is told each attribute that makes no sense; the shape is then left out.
 */
export function outlineOf(
  element: SvgElement,
  properties: ReadonlyMap<string, string>,
  viewport: Viewport,
  wrong: (property: string, value: string) => void,
): string {
  let sound = true;
  const length = (name: string, whole: number): number | undefined => {
    const text = properties.get(name);
    if (text === undefined || text.trim() === 'auto') return undefined;
    const value = readLength(text, whole);
    if (value !== undefined) return value;
    wrong(name, text);
    sound = false;
    return undefined;
  };
  const { width, height } = viewport;
  /** Per cent of a length without direction counts of this (SVG 2, section 8.9). */
  const diagonal = Math.sqrt((width * width + height * height) / 2);
  const across = (name: string) => length(name, width) ?? 0;
  const down = (name: string) => length(name, height) ?? 0;
  const path = (() => {
    switch (element.name) {
      case 'path':
        return drawPath(properties.get('d') ?? '', wrong);
      case 'rect': {
        const [w, h] = [across('width'), down('height')];
        const [rx, ry] = [length('rx', width), length('ry', height)];
        return w > 0 && h > 0 ? roundedRect(across('x'), down('y'), w, h, rx ?? ry ?? 0, ry ?? rx ?? 0) : '';
      }
      case 'circle': {
        const r = length('r', diagonal) ?? 0;
        return r > 0 ? ellipsePath(across('cx'), down('cy'), r, r) : '';
      }
      case 'ellipse': {
        const [rx, ry] = [length('rx', width), length('ry', height)];
        const [x, y] = [rx ?? ry ?? 0, ry ?? rx ?? 0];
        return x > 0 && y > 0 ? ellipsePath(across('cx'), down('cy'), x, y) : '';
      }
      case 'line':
        return linePath(across('x1'), down('y1'), across('x2'), down('y2'));
      default:
        return drawPoints(properties.get('points') ?? '', element.name === 'polygon', wrong);
    }
  })();
  return sound ? path : '';
}

function drawPath(data: string, wrong: (property: string, value: string) => void): string {
  if (data.trim() === '' || data.trim() === 'none') return '';
  try {
    return pathOf(readPathData(data), 5);
  } catch (error) {
    if (!(error instanceof PathDataError)) throw error;
    wrong('d', error.message);
    return '';
  }
}

function drawPoints(text: string, closed: boolean, wrong: (property: string, value: string) => void): string {
  const numbers = readNumbers(text);
  if (!numbers || numbers.length % 2 === 1) {
    wrong('points', text);
    return '';
  }
  const points: Point[] = [];
  for (let i = 0; i < numbers.length; i += 2) points.push([numbers[i] ?? 0, numbers[i + 1] ?? 0]);
  return points.length < 2 ? '' : polyPath(points, closed);
}

/** A rectangle whose corners may be quarter ellipses. */
function roundedRect(x: number, y: number, w: number, h: number, rx: number, ry: number): string {
  const [a, b] = [Math.min(Math.max(0, rx), w / 2), Math.min(Math.max(0, ry), h / 2)];
  if (a === 0 || b === 0) return rectPath(x, y, w, h);
  if (a === b) return rectPath(x, y, w, h, a);
  const [r, e] = [x + w, y + h];
  const d = `M${x + a} ${y}H${r - a}A${a} ${b} 0 0 1 ${r} ${y + b}V${e - b}A${a} ${b} 0 0 1 ${r - a} ${e}H${x + a}A${a} ${b} 0 0 1 ${x} ${e - b}V${y + b}A${a} ${b} 0 0 1 ${x + a} ${y}Z`;
  return pathOf(readPathData(d), 5);
}
