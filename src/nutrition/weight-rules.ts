import { known, notKnown } from './arithmetic.js';
import type { EnergyUnit } from './quantity.js';
import type { Measured } from './reckoned.js';
import { ok, type Result, refuse } from './result.js';
import { unitRatio } from './units.js';
import { WEIGHT_MODEL } from './weight-constants.js';
import { FROM_LESSON, input, type Worked } from './working.js';

/** What the rules of thumb say of a change of intake that is held for good; a loss is below zero. */
export interface RuleOfThumb {
  readonly eventual: Worked<'kg'>;
  /** Half of it. */
  readonly afterOneYear: Worked<'kg'>;
  /** 95 percent of it. */
  readonly afterThreeYears: Worked<'kg'>;
}

/** kJ a day for each kg in the end (24 kcal a day per kg, 10 kcal a day per lb). */
export const KJ_A_DAY_PER_KG = 100;

/**
 * The rules of thumb that were published with the dynamic model, for an average overweight adult: each 100 kJ
 * a day is about 1 kg in the end, half of it in about one year and 95 percent in about three. A rule for groups; the
 * equations give 0.8 to 1.5 kg by body fat. Some pages misprint it as ten pounds in the first year for
 * 100 kcal a day; it is about five. Unknown in, unknown out.
 * Source: Hall KD et al. Lancet 2011;378:826-837 (as quoted twice).
 */
export function ruleOfThumb(change: Measured<EnergyUnit>): RuleOfThumb {
  const each = unitRatio(change.unit, 'kJ');
  const part = (share: number, note: string): Worked<'kg'> => ({
    quantity:
      change.value === null ? notKnown('kg') : known(((change.value * each) / KJ_A_DAY_PER_KG) * share, 'kg'),
    working: {
      formula: 'change * kj_each / per_kg * share',
      inputs: [
        ...inKj(change, each),
        input('per_kg', KJ_A_DAY_PER_KG, 'kJ a day per kg', WEIGHT_MODEL),
        input('share', share, '', WEIGHT_MODEL, note),
      ],
    },
    estimated: true,
  });
  return {
    eventual: part(1, 'in the end'),
    afterOneYear: part(0.5, 'after about one year'),
    afterThreeYears: part(0.95, 'after about three years'),
  };
}

/** The static rule's energy of a pound. */
export const KCAL_PER_POUND = 3500;
export const NOT_REAL =
  'not a forecast: the static rule leaves out that the body uses less as it gets lighter';

/** A number that may be shown only to say why it misleads. */
export interface StaticChange extends Worked<'lb'> {
  readonly warning: typeof NOT_REAL;
}

/**
 * What the static rule of 3500 kcal a pound would say: change × days ÷ 3500, in lb; a loss is below zero. Only to
 * show that it misleads: it overstated losses in seven supervised studies, and more so with time. Unknown in,
 * unknown out. Refuses days below zero.
 * Source: Wishnofsky M. Am J Clin Nutr 1958;6:542-546 (from memory). Against it: Hall KD. Int J Obes 2008;32:573-576;
 * Thomas DM et al. Int J Obes 2013;37:1611-1613; Hall KD, Chow CC. Int J Obes 2013;37:1614 (from memory).
 */
export function staticRule(change: Measured<EnergyUnit>, days: number): Result<StaticChange> {
  if (!(days >= 0 && Number.isFinite(days)))
    return refuse(`${days} is no number of days.`, 'Count days from the start.');
  const each = unitRatio(change.unit, 'kcal');
  return ok({
    quantity:
      change.value === null ? notKnown('lb') : known((change.value * each * days) / KCAL_PER_POUND, 'lb'),
    working: {
      formula: 'change * kcal_each * days / per_pound',
      inputs: [
        input('change', change.value, `${change.unit} a day`, FROM_LESSON),
        input('kcal_each', each, `kcal per ${change.unit}`, 'definition of the units'),
        input('days', days, 'days', FROM_LESSON),
        input('per_pound', KCAL_PER_POUND, 'kcal per lb', 'wishnofsky-1958', NOT_REAL),
      ],
    },
    estimated: true,
    warning: NOT_REAL,
  });
}

function inKj(change: Measured<EnergyUnit>, each: number) {
  return [
    input('change', change.value, `${change.unit} a day`, FROM_LESSON),
    input('kj_each', each, `kJ per ${change.unit}`, 'definition of the units'),
  ];
}
