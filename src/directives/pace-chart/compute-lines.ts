import { type Adult, bandOn, KCAL_PER_POUND, unitRatio, weightBand } from '../../nutrition/index.js';
import type { BandValues } from './schema.js';

export type LineKind = 'straight' | 'sudden' | 'real';

/** One line of the exercise. Shares of width and height; no number can be read from them. */
export interface ExerciseLine {
  readonly kind: LineKind;
  readonly points: readonly { readonly along: number; readonly down: number }[];
}

const YEARS = 2;
const POINTS = 24;
/** How far down the straight line ends, and how soon the sudden one has fallen. */
const FOOT = 0.94;
const SUDDEN = 0.1;
const ORDER: readonly LineKind[] = ['straight', 'sudden', 'real'];

/**
 * Which line is real? Over two years: the straight line of 3,500 kcal a pound, a sudden fall that stays, and the middle
 * of the model's band. Only shapes: what the straight line would say is not a number of this lesson. Where the band
 * would stop before two years, a smaller change shows the same shape.
 */
export function exerciseLines(adult: Adult, { steps, seed }: BandValues): readonly ExerciseLine[] {
  const kcal = Math.max(...steps.map((step) => step.kcal));
  const down = realShares(adult, kcal);
  const last = down.at(-1) ?? 0;
  const along = (index: number) => index / POINTS;
  const lines: readonly ExerciseLine[] = [
    {
      kind: 'straight',
      points: [
        { along: 0, down: 0 },
        { along: 1, down: FOOT },
      ],
    },
    {
      kind: 'sudden',
      points: [
        { along: 0, down: 0 },
        { along: SUDDEN, down: last },
        { along: 1, down: last },
      ],
    },
    { kind: 'real', points: down.map((share, index) => ({ along: along(index), down: share })) },
  ];
  return lines.map((_, index) => lines[(index + seed) % ORDER.length] as ExerciseLine);
}

/** The middle of the band as a share of what the straight line says at the end. */
function realShares(adult: Adult, kcal: number): readonly number[] {
  for (let less = kcal; less >= 1; less /= 2) {
    const band = weightBand(
      adult,
      [{ fromDay: 0, change: { value: -less, unit: 'kcal' } }],
      YEARS * 12,
      'lb',
    );
    if (!band.ok || band.value.stopped) continue;
    const days = 365 * YEARS;
    const straight = ((less * days) / KCAL_PER_POUND) * unitRatio('lb', 'kg');
    return Array.from({ length: POINTS + 1 }, (_, index) => {
      const found = bandOn(band.value, Math.round((days * index) / POINTS));
      const middle = found.ok ? -(found.value.range.low + found.value.range.high) / 2 : 0;
      return Math.max(0, Math.min(1, (middle / straight) * FOOT));
    });
  }
  return [];
}
