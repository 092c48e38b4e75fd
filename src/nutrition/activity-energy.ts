import { weightInKg } from './adult.js';
import { known, notKnown } from './arithmetic.js';
import type { Checked } from './published.js';
import type { MassUnit } from './quantity.js';
import type { Measured } from './reckoned.js';
import { ok, type Result, refuse } from './result.js';
import { FROM_LESSON, input, substitute, type Worked, type Working } from './working.js';

/** Editions of the compendium; the same code can have another value in each, so a value carries its edition. */
export type MetEdition = 2011 | 2024;

/** Energy of an activity as multiples of sitting quietly. */
export interface MetRow {
  readonly edition: MetEdition;
  /** Five digits; `null` where only the name was seen. */
  readonly code: string | null;
  readonly activity: string;
  readonly met: number;
  readonly checked: Checked;
}

/**
 * A few everyday activities. Sources: 2024 Adult Compendium of Physical Activities (ages 19 to 59), J Sport Health Sci
 * 2024;13:6-12; 2011 Compendium of Physical Activities, Med Sci Sports Exerc 2011;43:1575-1581.
 */
export const MET_ROWS: readonly MetRow[] = [
  in2024('17165', 'walking the dog', 3.0),
  in2024('17170', 'walking, 2.5 mph', 3.0),
  in2024('17190', 'walking, 2.8 to 3.4 mph', 3.8),
  in2024('17200', 'walking, 3.5 to 3.9 mph', 4.8),
  in2024('17220', 'walking, 4.0 to 4.4 mph', 5.5),
  in2024('01014', 'bicycling, general', 7.0),
  in2024('01018', 'bicycling, 5.5 mph', 3.5),
  in2024('01011', 'bicycling to work, own pace', 6.8),
  in2024('01040', 'bicycling, 14 to 15.9 mph', 10.0),
  in2024('12050', 'running, 6 to 6.3 mph', 9.3),
  in2024('12080', 'running, 7.5 mph', 11.8),
  in2024('18310', 'swimming, leisurely', 6.0),
  in2024('02150', 'yoga, hatha', 2.3),
  in2024('02175', 'yoga, general', 2.3),
  in2024('15675', 'tennis, general', 6.8),
  in2024('15660', 'table tennis', 4.0),
  in2024('15720', 'volleyball, social', 3.0),
  in2011('17165', 'walking the dog', 3.0, 'copies'),
  in2011('17170', 'walking, 2.5 mph', 3.0, 'copies'),
  in2011('17190', 'walking, 2.8 to 3.2 mph', 3.5, 'copies'),
  in2011('17200', 'walking, 3.5 mph', 4.3, 'copies'),
  in2011('17220', 'walking, 4.0 mph', 5.0, 'copies'),
  in2011('01015', 'bicycling, general', 7.5, 'memory'),
  in2011('01018', 'bicycling, 5.5 mph', 3.5, 'memory'),
  in2011('01011', 'bicycling to work, own pace', 6.8, 'memory'),
  in2011('01040', 'bicycling, 14 to 15.9 mph', 10.0, 'memory'),
  in2011('12050', 'running, 6 mph', 9.8, 'copies'),
  in2011('18310', 'swimming, leisurely', 6.0, 'memory'),
  in2011('02150', 'yoga, hatha', 2.5, 'memory'),
  in2011('15675', 'tennis, general', 7.3, 'memory'),
  in2011('15660', 'table tennis', 4.0, 'memory'),
  in2011('15720', 'volleyball, social', 3.0, 'memory'),
  in2011(null, 'vacuuming', 3.3, 'copies'),
  in2011(null, 'making beds', 3.3, 'copies'),
  in2011(null, 'scrubbing floors', 3.5, 'copies'),
  in2011(null, 'mowing the lawn', 5.0, 'copies'),
];

/**
 * The row of a code, or of an activity's name where there is no code, in one edition. A value is never taken from the
 * other edition; when only that has it, the refusal says so.
 */
export function metOf(codeOrActivity: string, edition: MetEdition): Result<MetRow> {
  const all = MET_ROWS.filter(({ code, activity }) => code === codeOrActivity || activity === codeOrActivity);
  const row = all.find((one) => one.edition === edition);
  if (row !== undefined) return ok(row);
  const [other] = all;
  return refuse(
    `The ${edition} compendium has no "${codeOrActivity}" in this table.`,
    other === undefined
      ? 'Use a five-digit code or an activity of the table.'
      : `The ${other.edition} edition has it; editions are not mixed.`,
  );
}

export type Intensity = 'light' | 'moderate' | 'vigorous';

/** Moderate is 3 to below 6 MET, vigorous 6 and more (Physical Activity Guidelines 2018, from memory). */
export function intensityOf(met: number): Intensity {
  return met >= VIGOROUS ? 'vigorous' : met >= MODERATE ? 'moderate' : 'light';
}
const MODERATE = 3;
const VIGOROUS = 6;

/**
 * `by kilogram` takes 1 MET as 1 kcal per kg and hour, as the compendium does; `by oxygen` takes it as 3.5 mL of oxygen
 * per kg and minute at 200 mL for a kcal, which is 5 percent more. Say which; never mix them.
 */
export type MetForm = 'by kilogram' | 'by oxygen';

export interface ActivityEnergyOptions {
  readonly form?: MetForm;
  /** Without what sitting quietly would have used (MET − 1). */
  readonly net?: boolean;
  /** Years, where known: the 2024 edition is for 19 to 59. */
  readonly age?: number;
}

/** Shown to the nearest 10 kcal, because the table promises no more. */
export const ACTIVITY_ENERGY_STEP = 10;

/**
 * Energy of an activity in kcal: MET × kg × hours, or MET × 3.5 × kg ÷ 200 × minutes. For clinicians who check the
 * tool; material for learners shows no energy burned. Unknown weight or minutes give an unknown result. Refuses
 * minutes below zero or above a day, weights outside 20–400 kg, and ages outside 19–59 with the 2024 edition, which
 * has another table for older adults. Sources: the compendium of the row; the oxygen form is the metabolic equation
 * of exercise testing (from memory).
 */
export function activityEnergy(
  row: MetRow,
  weight: Measured<MassUnit>,
  minutes: number | null,
  options: ActivityEnergyOptions = {},
): Result<Worked<'kcal'>> {
  const { form = 'by kilogram', net = false, age } = options;
  const kg = weightInKg(weight);
  if (!kg.ok) return kg;
  if (minutes !== null && !(minutes >= 0 && minutes <= MINUTES_A_DAY))
    return refuse(`${minutes} is no number of minutes of a day.`, 'Write minutes, from 0 to 1440.');
  if (row.edition === 2024 && age !== undefined && !(age >= AGES.from && age < AGES.before)) {
    return refuse(
      `The 2024 compendium is for ages ${AGES.from} to ${AGES.before - 1}; this example is ${age}.`,
      'Older adults have a compendium of their own, which this table does not hold.',
    );
  }
  const source = `compendium-${row.edition}`;
  const multiple = net ? '(met - 1)' : 'met';
  const inputs = [
    input('met', row.met, 'MET', row.code === null ? source : `${source} ${row.code}`, row.activity),
    input('weight', kg.value.value, 'kg', ''),
    input('minutes', minutes, 'min', FROM_LESSON),
  ];
  const outer: Working =
    form === 'by kilogram'
      ? { formula: `${multiple} * weight * minutes / 60`, inputs }
      : { formula: `${multiple} * 3.5 * weight / 200 * minutes`, inputs };
  const perMinute = form === 'by kilogram' ? 1 / 60 : 3.5 / 200;
  const above = net ? row.met - 1 : row.met;
  const value =
    kg.value.value === null || minutes === null ? null : above * kg.value.value * minutes * perMinute;
  return ok({
    quantity: value === null ? notKnown('kcal') : known(value, 'kcal'),
    working: substitute(outer, 'weight', kg.value.working),
    estimated: true,
  });
}

const MINUTES_A_DAY = 1440;
/** Ages of the 2024 edition. */
const AGES = { from: 19, before: 60 };

function in2024(code: string, activity: string, met: number): MetRow {
  return { edition: 2024, code, activity, met, checked: 'copies' };
}

function in2011(code: string | null, activity: string, met: number, checked: Checked): MetRow {
  return { edition: 2011, code, activity, met, checked };
}
