import type { Color } from '../drawing.js';
import { type ColorValue, readColor, readLength, readNumbers, readShare } from './values.js';

/** A fill or stroke as written: nothing, a color, or a gradient with the color to use without it. */
export type PaintValue = 'none' | ColorValue | { readonly id: string; readonly instead: ColorValue | 'none' };

/** The properties that children inherit. */
export interface Style {
  readonly fill: PaintValue;
  readonly fillOpacity: number;
  readonly evenOdd: boolean;
  readonly clipEvenOdd: boolean;
  readonly stroke: PaintValue;
  readonly strokeOpacity: number;
  readonly strokeWidth: number;
  readonly dash: readonly number[];
  readonly cap: 'butt' | 'round' | 'square';
  readonly join: 'miter' | 'round' | 'bevel';
  readonly color: Color;
  readonly visible: boolean;
}

export const START: Style = {
  fill: { color: '#000000', opacity: 1 },
  fillOpacity: 1,
  evenOdd: false,
  clipEvenOdd: false,
  stroke: 'none',
  strokeOpacity: 1,
  strokeWidth: 1,
  dash: [],
  cap: 'butt',
  join: 'miter',
  color: '#000000',
  visible: true,
};

/** Attributes with those of the `style` attribute on top, as CSS ranks them. */
export function propertiesOf(attributes: Readonly<Record<string, string>>): ReadonlyMap<string, string> {
  const found = new Map(Object.entries(attributes));
  for (const declaration of (attributes.style ?? '').split(';')) {
    const colon = declaration.indexOf(':');
    if (colon < 0) continue;
    const value = declaration.slice(colon + 1).replace(/!\s*important\s*$/i, '');
    found.set(declaration.slice(0, colon).trim().toLowerCase(), value.trim());
  }
  return found;
}

/** The id in `url(#id)`. */
export function urlId(text: string): string | undefined {
  return /^url\(\s*['"]?#([^'")\s]+)['"]?\s*\)/.exec(text.trim())?.[1];
}

function paint(text: string, color: Color): PaintValue | undefined {
  const value = text.trim();
  if (value === 'none') return 'none';
  if (/^currentcolor$/i.test(value)) return { color, opacity: 1 };
  const id = urlId(value);
  if (id === undefined) return readColor(value);
  const after = value.slice(value.indexOf(')') + 1).trim();
  const instead = after === '' ? 'none' : paint(after, color);
  return instead === undefined || (instead !== 'none' && 'id' in instead) ? undefined : { id, instead };
}

/** The style of an element inside `parent`; `wrong` is told each property whose value makes no sense. */
export function styleOf(
  parent: Style,
  properties: ReadonlyMap<string, string>,
  wrong: (property: string, value: string) => void,
): Style {
  /** The property read, or the parent's when it is absent, inherited or makes no sense. */
  const take = <T>(property: string, read: (text: string) => T | undefined, inherited: T): T => {
    const text = properties.get(property);
    if (text === undefined || text.trim() === 'inherit') return inherited;
    const value = read(text);
    if (value !== undefined) return value;
    wrong(property, text);
    return inherited;
  };
  const word =
    <T extends string>(...allowed: readonly T[]) =>
    (text: string): T | undefined =>
      allowed.find((a) => a === text.trim());
  const color = take('color', (text) => readColor(text)?.color, parent.color);
  const rule = (text: string) => {
    const found = word('nonzero', 'evenodd')(text);
    return found && found === 'evenodd';
  };
  const dash = take(
    'stroke-dasharray',
    (text) => (text.trim() === 'none' ? [] : readNumbers(text.replace(/px/g, ''))),
    parent.dash,
  );
  return {
    fill: take('fill', (text) => paint(text, color), parent.fill),
    fillOpacity: take('fill-opacity', readShare, parent.fillOpacity),
    evenOdd: take('fill-rule', rule, parent.evenOdd),
    clipEvenOdd: take('clip-rule', rule, parent.clipEvenOdd),
    stroke: take('stroke', (text) => paint(text, color), parent.stroke),
    strokeOpacity: take('stroke-opacity', readShare, parent.strokeOpacity),
    strokeWidth: take('stroke-width', (text) => readLength(text), parent.strokeWidth),
    dash: dash.some((d) => d < 0) || dash.every((d) => d === 0) ? [] : dash,
    cap: take('stroke-linecap', word('butt', 'round', 'square'), parent.cap),
    join: take('stroke-linejoin', word('miter', 'round', 'bevel'), parent.join),
    color,
    visible: take(
      'visibility',
      (text) => {
        const found = word('visible', 'hidden', 'collapse')(text);
        return found && found === 'visible';
      },
      parent.visible,
    ),
  };
}
