import type { PDFContext, PDFDict } from 'pdf-lib';
import type { GradientStop, Paint } from '../../../figures/index.js';
import { channels, isNeutral } from '../content/color.js';

export type Gradient = Exclude<Paint, string>;

/** Stops in order, from 0 to 1 inclusive, never going back, as SVG says. */
function tidyStops(stops: readonly GradientStop[]): GradientStop[] {
  const out: GradientStop[] = [];
  let reached = 0;
  for (const stop of stops) {
    reached = Math.min(1, Math.max(reached, stop.offset));
    out.push({ ...stop, offset: reached });
  }
  const first = out[0];
  const last = out.at(-1);
  if (!first || !last) throw new Error('A gradient needs at least one stop.');
  if (first.offset > 0) out.unshift({ ...first, offset: 0 });
  if (last.offset < 1 || out.length === 1) out.push({ ...last, offset: 1 });
  return out;
}

/** True when some stop lets the ground show through. */
export function hasTransparentStop(gradient: Gradient): boolean {
  return gradient.stops.some((stop) => (stop.opacity ?? 1) < 1);
}

/** Axial or radial shading of the gradient's colors; gray only when no stop has a hue. */
export function colorShading(context: PDFContext, gradient: Gradient): PDFDict {
  const gray = gradient.stops.every((stop) => isNeutral(stop.color));
  return shading(context, gradient, gray ? 'DeviceGray' : 'DeviceRGB', (stop) =>
    gray ? channels(stop.color).slice(0, 1) : [...channels(stop.color)],
  );
}

/** The same shading with each stop's opacity as a shade of gray: the ground of a soft mask. */
export function opacityShading(context: PDFContext, gradient: Gradient): PDFDict {
  return shading(context, gradient, 'DeviceGray', (stop) => [stop.opacity ?? 1]);
}

function shading(
  context: PDFContext,
  gradient: Gradient,
  space: 'DeviceGray' | 'DeviceRGB',
  valuesOf: (stop: GradientStop) => number[],
): PDFDict {
  const coordinates =
    gradient.kind === 'linear'
      ? [...gradient.from, ...gradient.to]
      : [...gradient.center, 0, ...gradient.center, gradient.radius];
  return context.obj({
    ShadingType: gradient.kind === 'linear' ? 2 : 3,
    ColorSpace: space,
    Coords: coordinates.map(rounded),
    Function: stitched(context, tidyStops(gradient.stops), (stop) => valuesOf(stop).map(rounded)),
    Extend: [true, true],
  });
}

function stitched(
  context: PDFContext,
  stops: readonly GradientStop[],
  valuesOf: (stop: GradientStop) => number[],
): PDFDict {
  const pieces: PDFDict[] = [];
  const ends: number[] = [];
  for (const [index, stop] of stops.entries()) {
    const next = stops[index + 1];
    // Two stops at one place are a hard edge: there is no ramp between them to write.
    if (!next || next.offset === stop.offset) continue;
    pieces.push(
      context.obj({ FunctionType: 2, Domain: [0, 1], C0: valuesOf(stop), C1: valuesOf(next), N: 1 }),
    );
    ends.push(rounded(next.offset));
  }
  const only = pieces[0];
  if (pieces.length === 1 && only) return only;
  return context.obj({
    FunctionType: 3,
    Domain: [0, 1],
    Functions: pieces,
    Bounds: ends.slice(0, -1),
    Encode: pieces.flatMap(() => [0, 1]),
  });
}

function rounded(value: number): number {
  return Math.round(value * 1e5) / 1e5;
}
