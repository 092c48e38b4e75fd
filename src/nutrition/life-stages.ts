import { ok, type Result, refuse } from './result.js';

/** Whom an intake is looked up for. */
export interface Someone {
  /** Age in years, zero or more; part years count as they stand, so half a year is 0.5. */
  readonly years: number;
  /** Needed from the ninth birthday on, unless `state` says it. */
  readonly sex?: 'female' | 'male';
  readonly state?: 'pregnancy' | 'lactation';
}

/** An age that nobody has reached. */
const OLDEST = 130;

/**
 * Each stage holds from one birthday until the day before another: the day somebody turns 51 starts the next
 * band, and over 70 begins on the 71st birthday. Source of the bands: National Academies, DRI summary tables.
 */
const STAGES = [
  { stage: 'infants 0 to 6 months', from: 0, until: 0.5 },
  { stage: 'infants 6 to 12 months', from: 0.5, until: 1 },
  { stage: 'children 1 to 3 years', from: 1, until: 4 },
  { stage: 'children 4 to 8 years', from: 4, until: 9 },
  { stage: 'males 9 to 13 years', from: 9, until: 14, sex: 'male' },
  { stage: 'males 14 to 18 years', from: 14, until: 19, sex: 'male' },
  { stage: 'males 19 to 30 years', from: 19, until: 31, sex: 'male' },
  { stage: 'males 31 to 50 years', from: 31, until: 51, sex: 'male' },
  { stage: 'males 51 to 70 years', from: 51, until: 71, sex: 'male' },
  { stage: 'males over 70 years', from: 71, until: OLDEST, sex: 'male' },
  { stage: 'females 9 to 13 years', from: 9, until: 14, sex: 'female' },
  { stage: 'females 14 to 18 years', from: 14, until: 19, sex: 'female' },
  { stage: 'females 19 to 30 years', from: 19, until: 31, sex: 'female' },
  { stage: 'females 31 to 50 years', from: 31, until: 51, sex: 'female' },
  { stage: 'females 51 to 70 years', from: 51, until: 71, sex: 'female' },
  { stage: 'females over 70 years', from: 71, until: OLDEST, sex: 'female' },
  { stage: 'pregnancy 14 to 18 years', from: 14, until: 19, sex: 'female', state: 'pregnancy' },
  { stage: 'pregnancy 19 to 30 years', from: 19, until: 31, sex: 'female', state: 'pregnancy' },
  { stage: 'pregnancy 31 to 50 years', from: 31, until: 51, sex: 'female', state: 'pregnancy' },
  { stage: 'lactation 14 to 18 years', from: 14, until: 19, sex: 'female', state: 'lactation' },
  { stage: 'lactation 19 to 30 years', from: 19, until: 31, sex: 'female', state: 'lactation' },
  { stage: 'lactation 31 to 50 years', from: 31, until: 51, sex: 'female', state: 'lactation' },
] as const;
export type LifeStage = (typeof STAGES)[number]['stage'];

interface Stage {
  readonly stage: LifeStage;
  readonly from: number;
  readonly until: number;
  readonly sex?: 'female' | 'male';
  readonly state?: 'pregnancy' | 'lactation';
}

/** The life stages of the Dietary Reference Intakes, in the order of their tables. */
export const LIFE_STAGES: readonly LifeStage[] = STAGES.map(({ stage }) => stage);

/**
 * The life stage of somebody, for the reference intakes: at 50.99 years the band is 31 to 50, at 51 it is 51 to 70.
 * Refuses an age below 0 or from 130 on, a missing sex from nine years on, and pregnancy or lactation of a male
 * or outside 14 to 50 years, for which no reference intakes are set.
 */
export function lifeStageOf(someone: Someone): Result<LifeStage> {
  const { years, sex, state } = someone;
  if (!(years >= 0 && years < OLDEST)) {
    return refuse(`An age of ${years} years is not between 0 and ${OLDEST}.`, 'Write the age in years.');
  }
  if (state === undefined && sex === undefined && years >= 9) {
    return refuse('From nine years on the reference intakes differ by sex.', 'Say female or male.', [
      'female',
      'male',
    ]);
  }
  const known: Stage['sex'] = state === undefined || sex !== undefined ? sex : 'female';
  const rows: readonly Stage[] = STAGES;
  const found = rows.find(
    (row) =>
      years >= row.from &&
      years < row.until &&
      row.state === state &&
      (row.sex === undefined || row.sex === known),
  );
  return found === undefined
    ? refuse(
        `There are no reference intakes for ${state} of a ${known} of ${years} years.`,
        'They are set for females from 14 to 50 years; at other ages ask a clinician.',
      )
    : ok(found.stage);
}
