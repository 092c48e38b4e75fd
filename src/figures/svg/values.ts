// Readers of single attribute values. Each returns `undefined` for what it does not know.
import type { Color, Matrix } from '../drawing.js';
import { IDENTITY, multiply } from '../geometry.js';

/** The color names that drawing programs write; the basic sixteen of CSS and a few more. */
const NAMES: Readonly<Record<string, Color>> = {
  black: '#000000',
  silver: '#c0c0c0',
  gray: '#808080',
  grey: '#808080',
  white: '#ffffff',
  maroon: '#800000',
  red: '#ff0000',
  purple: '#800080',
  fuchsia: '#ff00ff',
  magenta: '#ff00ff',
  green: '#008000',
  lime: '#00ff00',
  olive: '#808000',
  yellow: '#ffff00',
  navy: '#000080',
  blue: '#0000ff',
  teal: '#008080',
  aqua: '#00ffff',
  cyan: '#00ffff',
  orange: '#ffa500',
  brown: '#a52a2a',
  pink: '#ffc0cb',
};

export interface ColorValue {
  readonly color: Color;
  readonly opacity: number;
}

const hex2 = (value: number) =>
  Math.round(Math.min(255, Math.max(0, value)))
    .toString(16)
    .padStart(2, '0');

/** `#rgb`, `#rgba`, `#rrggbb`, `#rrggbbaa`, `rgb()`, `rgba()` and the names above. */
export function readColor(text: string): ColorValue | undefined {
  const value = text.trim().toLowerCase();
  const named = Object.hasOwn(NAMES, value) ? NAMES[value] : undefined;
  if (named) return { color: named, opacity: 1 };
  if (value === 'transparent') return { color: '#000000', opacity: 0 };
  const hex = /^#([0-9a-f]{3,4}|[0-9a-f]{6}|[0-9a-f]{8})$/.exec(value)?.[1];
  if (hex) {
    const digits = hex.length < 6 ? [...hex].map((d) => d + d).join('') : hex;
    const alpha = digits.length === 8 ? Number.parseInt(digits.slice(6), 16) / 255 : 1;
    return { color: `#${digits.slice(0, 6)}`, opacity: alpha };
  }
  const parts = /^rgba?\(([^()]*)\)$/
    .exec(value)?.[1]
    ?.split(/[\s,/]+/)
    .filter((p) => p !== '');
  if (!parts || parts.length < 3 || parts.length > 4) return undefined;
  const channel = (part: string | undefined) =>
    part?.endsWith('%')
      ? (readNumber(part.slice(0, -1)) ?? Number.NaN) * 2.55
      : (readNumber(part ?? '') ?? Number.NaN);
  const rgb = parts.slice(0, 3).map(channel);
  const opacity = parts[3] === undefined ? 1 : readShare(parts[3]);
  if (rgb.some((c) => Number.isNaN(c)) || opacity === undefined) return undefined;
  return { color: `#${rgb.map(hex2).join('')}`, opacity };
}

/** A plain number of sensible size. */
export function readNumber(text: string): number | undefined {
  const value = text.trim();
  if (!/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(value)) return undefined;
  const number = Number(value);
  return Math.abs(number) <= 1e9 ? number : undefined;
}

/** From 0 to 1, also as per cent; values outside are moved to the nearer end. */
export function readShare(text: string): number | undefined {
  const percent = text.trim().endsWith('%');
  const number = readNumber(percent ? text.trim().slice(0, -1) : text);
  return number === undefined ? undefined : Math.min(1, Math.max(0, percent ? number / 100 : number));
}

/** User units in one unit (CSS Values 4: 96 px to the inch). */
const UNITS: Readonly<Record<string, number>> = {
  '': 1,
  px: 1,
  pt: 4 / 3,
  pc: 16,
  in: 96,
  cm: 96 / 2.54,
  mm: 96 / 25.4,
};

/** A length in user units; per cent counts of `whole`. */
export function readLength(text: string, whole = 0): number | undefined {
  const found = /^(.*?)(%|[a-z]*)$/i.exec(text.trim());
  const number = readNumber(found?.[1] ?? '');
  const unit = (found?.[2] ?? '').toLowerCase();
  if (number === undefined) return undefined;
  if (unit === '%') return (number / 100) * whole;
  const factor = Object.hasOwn(UNITS, unit) ? UNITS[unit] : undefined;
  return factor === undefined ? undefined : number * factor;
}

export function readNumbers(text: string): readonly number[] | undefined {
  const parts = text.trim() === '' ? [] : text.trim().split(/[\s,]+/);
  const numbers = parts.map((p) => readNumber(p));
  return numbers.every((n) => n !== undefined) ? numbers : undefined;
}

/** A list of `matrix`, `translate`, `scale`, `rotate`, `skewX` and `skewY` as one matrix. */
export function readTransform(text: string): Matrix | undefined {
  let matrix = IDENTITY;
  const rest = text.replace(/([a-zA-Z]+)\s*\(([^()]*)\)[\s,]*/g, (_, name: string, inside: string) => {
    const numbers = readNumbers(inside);
    const step = numbers && stepOf(name, numbers);
    if (!step) return '?';
    matrix = multiply(matrix, step);
    return '';
  });
  return rest.trim() === '' && matrix.every((v) => Math.abs(v) <= 1e9) ? matrix : undefined;
}

function stepOf(name: string, numbers: readonly number[]): Matrix | undefined {
  const [a = 0, b, c, d, e, f] = numbers;
  const count = numbers.length;
  const angle = (a * Math.PI) / 180;
  switch (name) {
    case 'matrix':
      return count === 6 ? [a, b ?? 0, c ?? 0, d ?? 0, e ?? 0, f ?? 0] : undefined;
    case 'translate':
      return count === 1 || count === 2 ? [1, 0, 0, 1, a, b ?? 0] : undefined;
    case 'scale':
      return count === 1 || count === 2 ? [a, 0, 0, b ?? a, 0, 0] : undefined;
    case 'rotate': {
      if (count !== 1 && count !== 3) return undefined;
      const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
      const turn: Matrix = [cos, sin, -sin, cos, 0, 0];
      const [x, y] = [b ?? 0, c ?? 0];
      return multiply([1, 0, 0, 1, x, y], multiply(turn, [1, 0, 0, 1, -x, -y]));
    }
    case 'skewX':
      return count === 1 ? [1, 0, Math.tan(angle), 1, 0, 0] : undefined;
    case 'skewY':
      return count === 1 ? [1, Math.tan(angle), 0, 1, 0, 0] : undefined;
    default:
      return undefined;
  }
}
