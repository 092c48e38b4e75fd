import type { BandPoint, ChangeBand } from '../spec.js';
import { CAP_HEIGHT } from '../tokens.js';
import type { BandLook } from './look.js';

/** The plot's edges, and where months and changes stand in it. */
export interface Plot {
  readonly axis: number;
  readonly right: number;
  /** The line of today. */
  readonly top: number;
  readonly foot: number;
  readonly x: (month: number) => number;
  readonly y: (less: number) => number;
  /** The band's ends at a place across, between its points. */
  readonly at: (x: number) => Pick<BandPoint, 'least' | 'most'>;
}

export function createPlot(spec: ChangeBand, look: BandLook): Plot {
  const { pen, type, gap, tick, ring, monthsOnTop } = look;
  const marks = [spec.today, ...spec.marks.map(({ words }) => words)].map(
    (words) => pen.set(words, { ...type.mark, weight: 700 }).width,
  );
  const axis = Math.max(look.axis, Math.max(...marks) + gap * 1.6);
  const right = pen.width - ring - 1;
  const top = monthsOnTop ? tick + type.month.size * 1.35 : (type.mark.size * CAP_HEIGHT) / 2 + 1;
  const foot = look.fixed === undefined ? top + look.plot : look.fixed - look.type.mark.size * 0.6;
  const scale = Math.max(1e-9, ...spec.marks.map(({ at }) => at), ...spec.points.map(({ most }) => most));
  const x = (month: number) => axis + ((right - axis) * month) / spec.months;
  const y = (less: number) => top + ((foot - top) * less) / scale;
  const at = (place: number) => {
    const month = ((place - axis) / (right - axis)) * spec.months;
    const next = spec.points.findIndex((p) => p.month >= month);
    const after = spec.points[next < 0 ? spec.points.length - 1 : next];
    const before = spec.points[Math.max(0, (next < 0 ? spec.points.length : next) - 1)];
    if (!after || !before || after.month === before.month || month >= after.month)
      return after ?? { least: 0, most: 0 };
    const share = Math.max(0, (month - before.month) / (after.month - before.month));
    const mix = (from: number, to: number) => from + (to - from) * share;
    return { least: mix(before.least, after.least), most: mix(before.most, after.most) };
  };
  return { axis, right, top, foot, x, y, at };
}
