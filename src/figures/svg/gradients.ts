import { mixColors } from '../color.js';
import type { Color, GradientStop, Matrix, Paint } from '../drawing.js';
import { type Box, IDENTITY, invert, multiply, type Point, transform } from '../geometry.js';
import { propertiesOf } from './style.js';
import type { SvgElement } from './tree.js';
import { readColor, readLength, readShare, readTransform } from './values.js';

/** Gradients may take what they lack from another one; longer chains are cut. */
const LONGEST_CHAIN = 8;

export interface GradientPaint {
  readonly paint: Paint;
  /** Of a gradient that turned out to be one color. */
  readonly opacity: number;
  /** Told to the author: something of it is drawn in a simpler way. */
  readonly simplified?: string;
}

/** A gradient and, after it, those that it refers to. */
function chainOf(element: SvgElement, byId: ReadonlyMap<string, SvgElement>): SvgElement[] {
  const chain: SvgElement[] = [];
  let next: SvgElement | undefined = element;
  while (next && !chain.includes(next) && chain.length < LONGEST_CHAIN) {
    chain.push(next);
    const href: string | undefined = next.attributes.href ?? next.attributes['xlink:href'];
    next = href === undefined ? undefined : byId.get(href.trim().slice(1));
  }
  return chain.filter((e) => e.name === 'linearGradient' || e.name === 'radialGradient');
}

function stopsOf(chain: readonly SvgElement[], color: Color): GradientStop[] {
  const owner = chain.find((e) => e.children.some((c) => c.name === 'stop'));
  let last = 0;
  return (owner?.children ?? [])
    .filter((child) => child.name === 'stop')
    .map((child) => {
      const properties = propertiesOf(child.attributes);
      last = Math.max(last, readShare(properties.get('offset') ?? '0') ?? 0);
      const written = properties.get('stop-color') ?? 'black';
      const own = /^\s*currentcolor\s*$/i.test(written) ? { color, opacity: 1 } : readColor(written);
      const opacity = (readShare(properties.get('stop-opacity') ?? '1') ?? 1) * (own?.opacity ?? 1);
      return { offset: last, color: own?.color ?? '#000000', ...(opacity < 1 ? { opacity } : {}) };
    });
}

/**
 * What the gradient paints a shape with, in the shape's own coordinates; `undefined` when it has no
 * stops or the shape has no extent (then nothing is painted, by SVG 2, section 14.2).
 */
export function gradientPaint(
  element: SvgElement,
  byId: ReadonlyMap<string, SvgElement>,
  box: Box | undefined,
  viewport: { readonly width: number; readonly height: number },
  color: Color,
): GradientPaint | undefined {
  const chain = chainOf(element, byId);
  const first = chain[0];
  const stops = stopsOf(chain, color);
  const lastStop = stops.at(-1);
  if (!first || !lastStop) return undefined;
  const solid = { paint: lastStop.color, opacity: lastStop.opacity ?? 1 };
  if (stops.length === 1) return solid;
  const look = (name: string) => chain.map((e) => e.attributes[name]).find((v) => v !== undefined);
  const ofBox = look('gradientUnits')?.trim() !== 'userSpaceOnUse';
  if (ofBox && (!box || box.right - box.left <= 0 || box.bottom - box.top <= 0)) return undefined;
  const units: Matrix =
    ofBox && box ? [box.right - box.left, 0, 0, box.bottom - box.top, box.left, box.top] : IDENTITY;
  const at = multiply(units, readTransform(look('gradientTransform') ?? '') ?? IDENTITY);
  const [wide, high] = ofBox ? [1, 1] : [viewport.width, viewport.height];
  const length = (name: string, instead: string, whole: number) =>
    readLength(look(name) ?? instead, whole) ?? readLength(instead, whole) ?? 0;
  const spread = look('spreadMethod')?.trim() ?? 'pad';
  const simplified = spread === 'pad' ? {} : { simplified: 'a repeating gradient runs once' };
  if (first.name === 'linearGradient') {
    const from: Point = [length('x1', '0%', wide), length('y1', '0%', high)];
    const to: Point = [length('x2', '100%', wide), length('y2', '0%', high)];
    const ends = placeLinear(at, from, to);
    return ends ? { paint: { kind: 'linear', ...ends, stops }, opacity: 1, ...simplified } : solid;
  }
  const center: Point = [length('cx', '50%', wide), length('cy', '50%', high)];
  const radius = length('r', '50%', Math.sqrt((wide * wide + high * high) / 2));
  if (!(radius > 0) || !invert(at)) return solid;
  const focal = [look('fx'), look('fy'), look('fr')].some((v) => v !== undefined);
  const off =
    focal &&
    (Math.abs(length('fx', `${center[0]}`, wide) - center[0]) > radius / 50 ||
      Math.abs(length('fy', `${center[1]}`, high) - center[1]) > radius / 50);
  return {
    paint: { kind: 'radial', center, radius, stops, ...(at === IDENTITY ? {} : { at }) },
    opacity: 1,
    ...(off ? { simplified: 'the focal point of a gradient moves to its center' } : simplified),
  };
}

/**
 * Ends of the linear gradient that looks like the given one after the matrix, also under a skew: the
 * share at a point q is affine, t(q) = (M⁻¹q - a)·d / d·d, so its gradient direction is M⁻ᵀd / d·d.
 */
function placeLinear(at: Matrix, from: Point, to: Point): { from: Point; to: Point } | undefined {
  const inverse = invert(at);
  const d: Point = [to[0] - from[0], to[1] - from[1]];
  const square = d[0] * d[0] + d[1] * d[1];
  if (!inverse || square === 0) return undefined;
  const slope: Point = [
    (inverse[0] * d[0] + inverse[1] * d[1]) / square,
    (inverse[2] * d[0] + inverse[3] * d[1]) / square,
  ];
  const steep = slope[0] * slope[0] + slope[1] * slope[1];
  const start = transform(at, from);
  return { from: start, to: [start[0] + slope[0] / steep, start[1] + slope[1] / steep] };
}

/** One color and opacity in place of a gradient. */
export function middleOf(paint: Exclude<Paint, string>): { color: Color; opacity: number } {
  const [first, ...rest] = paint.stops;
  if (!first) return { color: '#000000', opacity: 1 };
  const middle = rest.at(-1) ?? first;
  return {
    color: mixColors(first.color, middle.color, 0.5),
    opacity: ((first.opacity ?? 1) + (middle.opacity ?? 1)) / 2,
  };
}
