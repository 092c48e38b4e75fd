import type { Place, Report } from '../diagnostics/index.js';
import { checkProblem } from './codes.js';

/** How people score a text by hand, and from which share of the points on it is good enough. */
export const TALLIES = {
  /** Patient Education Materials Assessment Tool, AHRQ: points of agreed items ÷ items that apply. */
  understandability: { passes: 70 },
  actionability: { passes: 70 },
  /** Clear Communication Index, CDC: parts that do not apply are left out. */
  'clear-communication': { passes: 90 },
  /** Suitability Assessment of Materials, Doak, Doak and Root 1996: 0 to 2 points an item; below 40 not suitable. */
  suitability: { passes: 40 },
} as const;
export type TallyName = keyof typeof TALLIES;

/** One tally that a person made of a lesson's text. */
export interface Tally {
  readonly measure: TallyName;
  readonly points: number;
  /** Points that could be had: items that do not apply are left out. */
  readonly of: number;
  readonly role: string;
  readonly date: string;
  readonly place?: Place;
}

/** Points as a share of those that could be had, in percent, not rounded. */
export function tallyShare({ points, of }: Pick<Tally, 'points' | 'of'>): number {
  return (points / of) * 100;
}

export function tallyPasses(tally: Pick<Tally, 'measure' | 'points' | 'of'>): boolean {
  return tallyShare(tally) >= TALLIES[tally.measure].passes;
}

/** Doak, Doak and Root 1996: 70 percent and more, 40 to 69, below. */
export function suitabilityBand(share: number): 'superior' | 'adequate' | 'not suitable' {
  return share >= 70 ? 'superior' : share >= TALLIES.suitability.passes ? 'adequate' : 'not suitable';
}

/** P10: a tally that a person made lies below what its measure asks for. Without a tally nothing is said. */
export function checkTallies({ tallies }: { readonly tallies: readonly Tally[] }, report: Report): void {
  for (const tally of tallies) {
    if (tallyPasses(tally)) continue;
    const { measure, points, of, role, date, place } = tally;
    report.add(
      checkProblem(
        'P10',
        `Tallied on ${date} (${role}), ${measure}: ${points} of ${of} points, ${tallyShare(tally).toFixed(0)} percent.`,
        {
          ...(place ? { place } : {}),
          hint: `From ${TALLIES[measure].passes} percent on it is good enough. Mend what lost the points, then tally again.`,
        },
      ),
    );
  }
}
