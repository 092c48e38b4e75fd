import type { Point } from '../geometry.js';
import type { Step } from '../shapes.js';

/** How many numbers each command takes. */
const TAKES: Readonly<Record<string, number>> = {
  M: 2,
  L: 2,
  H: 1,
  V: 1,
  C: 6,
  S: 4,
  Q: 4,
  T: 2,
  A: 7,
  Z: 0,
};
const NUMBER = /[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y;
const LIMIT = 1e9;

/** What is wrong with path data and where in it. */
export class PathDataError extends Error {}

/** Reads one number after spaces and at most one comma, or fails. */
function scan(text: string) {
  let at = 0;
  const skip = () => {
    while (/[\s,]/.test(text[at] ?? '')) at++;
  };
  return {
    get at() {
      return at;
    },
    done() {
      skip();
      return at >= text.length;
    },
    letter(): string | undefined {
      skip();
      const found = text[at];
      if (found === undefined || !/[a-zA-Z]/.test(found)) return undefined;
      at++;
      return found;
    },
    startsNumber() {
      skip();
      return /[+\-.\d]/.test(text[at] ?? '');
    },
    number(): number {
      skip();
      NUMBER.lastIndex = at;
      const found = NUMBER.exec(text)?.[0];
      const value = Number(found);
      if (found === undefined || !(Math.abs(value) <= LIMIT))
        throw new PathDataError(`no number at character ${at + 1}`);
      at += found.length;
      return value;
    },
    flag(): boolean {
      skip();
      const found = text[at];
      if (found !== '0' && found !== '1') throw new PathDataError(`no 0 or 1 at character ${at + 1}`);
      at++;
      return found === '1';
    },
  };
}

/**
 * SVG path data as absolute moves, lines, cubic curves and closings. Quadratic curves and elliptical
 * arcs become cubics (arcs by SVG 2, appendix B.2: at most a quarter turn each, off by less than
 * 0.03% of the radius). Throws `PathDataError` on what is not path data.
 */
export function readPathData(text: string): Step[] {
  const steps: Step[] = [];
  const source = scan(text);
  let at: Point = [0, 0];
  let start: Point = at;
  let handle: Point | undefined;
  let before = '';
  while (!source.done()) {
    const written = source.letter();
    const letter = (written ?? (before === 'M' ? 'L' : before === 'm' ? 'l' : before)) || '?';
    const command = letter.toUpperCase();
    const takes = TAKES[command];
    if (takes === undefined || (steps.length === 0 && command !== 'M'))
      throw new PathDataError(`no command at character ${source.at + 1}`);
    if (written === undefined && (takes === 0 || !source.startsNumber()))
      throw new PathDataError(`no command at character ${source.at + 1}`);
    const [ox, oy] = letter === command ? [0, 0] : at;
    const point = (): Point => [source.number() + ox, source.number() + oy];
    const curve = (p1: Point, p2: Point, p3: Point) => {
      steps.push({ command: 'C', points: [p1, p2, p3] });
      at = p3;
    };
    let next: Point | undefined;
    const from = at;
    const mirrored: Point = handle ? [2 * from[0] - handle[0], 2 * from[1] - handle[1]] : from;
    switch (command) {
      case 'M':
        at = point();
        start = at;
        steps.push({ command: 'M', points: [at] });
        break;
      case 'L':
        at = point();
        steps.push({ command: 'L', points: [at] });
        break;
      case 'H':
        at = [source.number() + ox, from[1]];
        steps.push({ command: 'L', points: [at] });
        break;
      case 'V':
        at = [from[0], source.number() + oy];
        steps.push({ command: 'L', points: [at] });
        break;
      case 'C': {
        const p1 = point();
        next = point();
        curve(p1, next, point());
        break;
      }
      case 'S': {
        const p1 = /[CS]/i.test(before) ? mirrored : from;
        next = point();
        curve(p1, next, point());
        break;
      }
      case 'Q':
      case 'T': {
        next = command === 'Q' ? point() : /[QT]/i.test(before) ? mirrored : from;
        const end = point();
        curve(third(from, next), third(end, next), end);
        break;
      }
      case 'A': {
        const radii: Point = [Math.abs(source.number()), Math.abs(source.number())];
        const turn = source.number();
        const large = source.flag();
        const sweep = source.flag();
        const end = point();
        const pieces = arc(from, end, radii, turn, large, sweep);
        for (const [p1, p2, p3] of pieces) curve(p1, p2, p3);
        if (pieces.length === 0) steps.push({ command: 'L', points: [end] });
        at = end;
        break;
      }
      default:
        steps.push({ command: 'Z', points: [] });
        at = start;
    }
    handle = next;
    before = letter;
  }
  return steps;
}

/** The handle of a cubic that draws the quadratic with this end and handle. */
function third(end: Point, handle: Point): Point {
  return [end[0] + (2 / 3) * (handle[0] - end[0]), end[1] + (2 / 3) * (handle[1] - end[1])];
}

/** An elliptical arc as cubics; none when it has no length or no radius (then it is a line). */
function arc(from: Point, to: Point, radii: Point, degrees: number, large: boolean, sweep: boolean) {
  let [rx, ry] = radii;
  if ((from[0] === to[0] && from[1] === to[1]) || rx === 0 || ry === 0) return [];
  const turn = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const [dx, dy] = [(from[0] - to[0]) / 2, (from[1] - to[1]) / 2];
  const [x, y] = [cos * dx + sin * dy, cos * dy - sin * dx];
  const reach = (x / rx) ** 2 + (y / ry) ** 2;
  if (reach > 1) {
    rx *= Math.sqrt(reach);
    ry *= Math.sqrt(reach);
  }
  const inside =
    Math.max(0, (rx * ry) ** 2 - (rx * y) ** 2 - (ry * x) ** 2) / ((rx * y) ** 2 + (ry * x) ** 2);
  const k = Math.sqrt(inside) * (large === sweep ? -1 : 1);
  const [mx, my] = [(k * rx * y) / ry, (-k * ry * x) / rx];
  const middle: Point = [
    cos * mx - sin * my + (from[0] + to[0]) / 2,
    sin * mx + cos * my + (from[1] + to[1]) / 2,
  ];
  const first = Math.atan2((y - my) / ry, (x - mx) / rx);
  let span = Math.atan2((-y - my) / ry, (-x - mx) / rx) - first;
  if (sweep && span < 0) span += 2 * Math.PI;
  if (!sweep && span > 0) span -= 2 * Math.PI;
  const pieces = Math.max(1, Math.ceil(Math.abs(span) / (Math.PI / 2) - 1e-9));
  const step = span / pieces;
  const reachOfHandle = (4 / 3) * Math.tan(step / 4);
  const place = (u: number, v: number): Point => [
    middle[0] + cos * rx * u - sin * ry * v,
    middle[1] + sin * rx * u + cos * ry * v,
  ];
  return Array.from({ length: pieces }, (_, i): readonly [Point, Point, Point] => {
    const [a, b] = [first + i * step, first + (i + 1) * step];
    const end = i === pieces - 1 ? to : place(Math.cos(b), Math.sin(b));
    return [
      place(Math.cos(a) - reachOfHandle * Math.sin(a), Math.sin(a) + reachOfHandle * Math.cos(a)),
      place(Math.cos(b) + reachOfHandle * Math.sin(b), Math.sin(b) - reachOfHandle * Math.cos(b)),
      end,
    ];
  });
}
