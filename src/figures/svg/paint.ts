import type { Mark, Paint } from '../drawing.js';
import type { Box } from '../geometry.js';
import { pathBox } from '../shapes.js';
import { gradientPaint, middleOf } from './gradients.js';
import type { Viewport } from './outline.js';
import type { PaintValue, Style } from './style.js';
import type { SvgElement } from './tree.js';

type ById = ReadonlyMap<string, SvgElement>;

/**
 * A shape with its fill and line: one mark, or two where their opacity differs, since a line has none
 * of its own. `simplified` is told what is drawn in a simpler way.
 */
export function paintShape(
  path: string,
  style: Style,
  viewport: Viewport,
  byId: ById,
  simplified: (what: string) => void,
): Mark[] {
  const box = pathBox(path);
  const find = (value: PaintValue, opacity: number) =>
    paintOf(value, opacity, { box, style, viewport, byId, simplified });
  const fill = find(style.fill, style.fillOpacity);
  const line = style.strokeWidth > 0 ? find(style.stroke, style.strokeOpacity) : undefined;
  const filled: Mark[] = fill
    ? [
        {
          kind: 'shape',
          path,
          fill: fill.paint,
          ...(fill.opacity < 1 ? { fillOpacity: fill.opacity } : {}),
          ...(style.evenOdd ? { evenOdd: true } : {}),
        },
      ]
    : [];
  if (!line) return filled;
  let { paint, opacity } = line;
  if (typeof paint !== 'string') {
    const middle = middleOf(paint);
    simplified('a gradient along a line becomes its middle color');
    opacity *= middle.opacity;
    paint = middle.color;
  }
  const stroke = {
    color: paint,
    width: style.strokeWidth,
    ...(style.dash.length > 0 ? { dash: style.dash } : {}),
    ...(style.cap === 'butt' ? {} : { cap: style.cap }),
    ...(style.join === 'miter' ? {} : { join: style.join }),
  };
  const [last] = filled;
  if (opacity >= 1 && last?.kind === 'shape') return [{ ...last, stroke }];
  const only: Mark = { kind: 'shape', path, stroke };
  return [...filled, opacity < 1 ? { kind: 'group', opacity, marks: [only] } : only];
}

interface Setting {
  readonly box: Box | undefined;
  readonly style: Style;
  readonly viewport: Viewport;
  readonly byId: ById;
  readonly simplified: (what: string) => void;
}

/** What a fill or line is painted with; `undefined` when nothing shows. */
function paintOf(
  value: PaintValue,
  opacity: number,
  setting: Setting,
): { readonly paint: Paint; readonly opacity: number } | undefined {
  if (value === 'none') return undefined;
  if ('color' in value) {
    const whole = opacity * value.opacity;
    return whole > 0 ? { paint: value.color, opacity: whole } : undefined;
  }
  const { box, style, viewport, byId, simplified } = setting;
  const target = byId.get(value.id);
  if (!target) return paintOf(value.instead, opacity, setting);
  const gradient = gradientPaint(target, byId, box, viewport, style.color);
  if (!gradient) return undefined;
  if (gradient.simplified) simplified(gradient.simplified);
  const whole = opacity * gradient.opacity;
  return whole > 0 ? { paint: gradient.paint, opacity: whole } : undefined;
}
