import type { Place } from '../../diagnostics/index.js';
import type { KnownDirective } from '../../lesson/index.js';
import type { Amount, LengthUnit, MassUnit } from '../../nutrition/index.js';

export const schema: KnownDirective = {
  name: 'pace-chart',
  forms: ['leaf'],
  id: 'required',
  attributes: {
    show: {
      kind: { is: 'choice', of: ['band', 'pace'] },
      required: true,
      help: 'band: what one steady change does over months; pace: a loss that eases, in weeks',
    },
    example: {
      kind: { is: 'text' },
      required: true,
      help: 'the invented adult, such as woman, 45, 165 cm, 82 kg, mostly sitting',
    },
    change: {
      kind: { is: 'text' },
      help: 'for a band: 250 kcal a day; in steps 100 kcal a day; 200 kcal a day from month 4',
    },
    months: { kind: { is: 'whole', from: 1, to: 36 }, help: 'for a band: how long (12 when left out)' },
    'to-lose': { kind: { is: 'text' }, help: 'for a pace: how much the invented adult loses, such as 60 lb' },
    seed: {
      kind: { is: 'whole', from: 0, to: 999_999 },
      help: 'for a band: the order of the lines on the worksheet (0 when left out)',
    },
  },
};

export const WHO = ['woman', 'man', 'adult'] as const;
export type Who = (typeof WHO)[number];
export const ACTIVITIES = ['mostly sitting', 'some walking', 'much walking'] as const;
export type Activity = (typeof ACTIVITIES)[number];

export interface Height {
  readonly value: number;
  readonly unit: LengthUnit;
}

/** The invented adult, never a reader. */
export interface Example {
  readonly who: Who;
  readonly age: number | null;
  readonly height: Height;
  readonly weight: Amount<MassUnit>;
  readonly activity?: Activity;
  readonly place: Place;
}

/** From a month on (1 is the first), so many kcal a day less than before all change. */
export interface ChangeStep {
  readonly fromMonth: number;
  readonly kcal: number;
}

export interface BandValues {
  readonly show: 'band';
  readonly id: string;
  readonly example: Example;
  readonly steps: readonly [ChangeStep, ...ChangeStep[]];
  readonly months: number;
  readonly seed: number;
  readonly place: Place;
  readonly changePlace: Place;
}

export interface PaceValues {
  readonly show: 'pace';
  readonly id: string;
  readonly example: Example;
  readonly toLose: Amount<MassUnit>;
  readonly place: Place;
}

export type Values = BandValues | PaceValues;
