import { type Adult, type Ages, readAdult, type Sex } from './adult.js';
import { type EnergyEstimate, type EnergyRow, fromRow } from './energy-equation.js';
import type { Checked } from './published.js';
import { ok, type Result, refuse } from './result.js';

export type OxfordForm = 'weight' | 'weight and height';
type Band = '18-30' | '30-60' | '60+';

const CONFLICT = 'another public copy has 10.9 × weight + 677; the paper must be read again';
const FROM_MEMORY = 'not compared with the paper';
const LEADING = 'the constant is not compared with the paper';

/** kcal a day by weight in kg and height in meters. Only one row was seen whole in copies of the paper. */
export const OXFORD_ROWS: Readonly<Record<OxfordForm, Readonly<Record<Sex, Record<Band, EnergyRow>>>>> = {
  weight: {
    male: {
      '18-30': byWeight(16.0, 545, 'memory', FROM_MEMORY),
      '30-60': byWeight(14.2, 593, 'copies'),
      '60+': byWeight(13.5, 514, 'memory', FROM_MEMORY),
    },
    female: {
      '18-30': byWeight(13.1, 558, 'unsettled', FROM_MEMORY),
      '30-60': byWeight(9.74, 694, 'unsettled', CONFLICT),
      '60+': byWeight(10.1, 569, 'unsettled', FROM_MEMORY),
    },
  },
  'weight and height': {
    male: {
      '18-30': byBoth(14.4, 313, 113, 'memory', LEADING),
      '30-60': byBoth(11.4, 541, -137, 'memory', FROM_MEMORY),
      '60+': byBoth(11.4, 541, -256, 'memory', FROM_MEMORY),
    },
    female: {
      '18-30': byBoth(10.4, 615, -282, 'unsettled', FROM_MEMORY),
      '30-60': byBoth(8.18, 502, -11.6, 'unsettled', FROM_MEMORY),
      '60+': byBoth(8.52, 421, 10.7, 'unsettled', FROM_MEMORY),
    },
  },
};

const OXFORD_AGES: Ages = {
  from: 18,
  before: Number.POSITIVE_INFINITY,
  hint: 'Children have rows of their own, which this table does not hold.',
};

/**
 * Basal energy of an adult in kcal a day by Henry (the Oxford equations). Domain: 18 years and over, not pregnant
 * or breastfeeding. The published bands share their ends; here a band ends on the birthday, so 30 belongs
 * to 30–60 and 60 to 60+ (common practice, no source). `checked` says how far the row can be leaned on; the
 * women's rows are `unsettled`. An unknown age gives a refusal, because it chooses the row; other unknown
 * figures give an unknown result.
 * Source: Henry CJK. Public Health Nutr 2005;8(7A):1133-1152.
 */
export function oxfordEnergy(adult: Adult, form: OxfordForm): Result<EnergyEstimate> {
  const read = readAdult(adult, OXFORD_AGES);
  if (!read.ok) return read;
  const { value: age } = read.value.age;
  if (age === null) {
    return refuse(
      'The age is not known, so no row of the Oxford equations can be chosen.',
      'Give the age of the invented example.',
    );
  }
  const band: Band = age < 30 ? '18-30' : age < 60 ? '30-60' : '60+';
  const row = OXFORD_ROWS[form][adult.sex][band];
  const cautions = ['For groups; one person can be further off.'];
  if (row.checked !== 'copies') cautions.push(`Unverified row (${row.note}).`);
  return ok({
    ...fromRow(row, read.value),
    equation: `Henry (Oxford) 2005, ${form}, ${adult.sex} ${band}`,
    cautions,
  });
}

function byWeight(perKg: number, constant: number, checked: Checked, note?: string): EnergyRow {
  return { source: 'henry-2005', checked, constant, perKg, ...(note === undefined ? {} : { note }) };
}

function byBoth(perKg: number, each: number, constant: number, checked: Checked, note: string): EnergyRow {
  return { ...byWeight(perKg, constant, checked, note), perHeight: { each, unit: 'm' } };
}
