import { LIFE_STAGES, type LifeStage } from './life-stages.js';
import type { Published } from './published.js';
import type { MassUnit, Quantity } from './quantity.js';
import {
  INTAKE_REPORTS,
  INTAKES,
  INTAKES_CHECKED,
  type IntakeName,
  type IntakeRow,
} from './reference-intake-table.js';
import { ok, type Result, refuse } from './result.js';
import { dimensionOf, unitRatio } from './units.js';
import { FROM_LESSON, input, substitute, type Working } from './working.js';

/** Id of the source of all reference intakes. */
export const INTAKE_SOURCE = 'nasem-dri';

/** The kinds of reference intake. A reduction level is no upper level and is never given in its place. */
export type IntakeKind = 'requirement' | 'allowance' | 'adequate' | 'upper' | 'reduction';

/** One reference intake, per day. */
export interface ReferenceIntake extends Published {
  readonly nutrient: IntakeName;
  readonly stage: LifeStage;
  readonly kind: IntakeKind;
  readonly value: number;
  readonly unit: IntakeRow['unit'] | 'g per kg of body weight';
  /** What the value counts, where it is not the plain mass of the nutrient in all food. */
  readonly counts?: string;
}

/** Whether reference intakes are set for a nutrient of that name. */
export function isIntakeName(name: string): name is IntakeName {
  return Object.hasOwn(INTAKES, name);
}

/**
 * The intake that an eater of a life stage is advised to reach each day: the recommended dietary allowance, or
 * where none could be set the adequate intake. Refuses when the reports set neither.
 */
export function referenceIntake(nutrient: IntakeName, stage: LifeStage): Result<ReferenceIntake> {
  const found = cell(nutrient, stage, 'allowance') ?? cell(nutrient, stage, 'adequate');
  return found === null
    ? refuse(`No intake of ${nutrient} is set for ${stage}.`, 'Say that none is set; it is not zero.')
    : ok(found);
}

/** The estimated average requirement, per day; for protein in g per kg of body weight. For groups, not for a person. */
export function averageRequirement(nutrient: IntakeName, stage: LifeStage): Result<ReferenceIntake> {
  const found = cell(nutrient, stage, 'requirement');
  return found === null
    ? refuse(
        `No average requirement of ${nutrient} is set for ${stage}.`,
        'Say that none is set; it is not zero.',
      )
    : ok(found);
}

/**
 * The tolerable upper intake level, per day. `counts` says which sources it counts where it is not all of them.
 * Refuses when none is set, which does not mean that any amount is safe. Sodium has none.
 */
export function upperLimit(nutrient: IntakeName, stage: LifeStage): Result<ReferenceIntake> {
  const found = cell(nutrient, stage, 'upper');
  return found === null
    ? refuse(
        `No upper level of ${nutrient} is set for ${stage}.`,
        'Say that none is set; that does not make every amount safe.',
      )
    : ok(found);
}

/**
 * The chronic disease risk reduction intake of sodium, per day: lower an intake that is above it. It is neither
 * an upper level nor an intake to reach. None is set under one year.
 */
export function sodiumReductionLevel(stage: LifeStage): Result<ReferenceIntake> {
  const found = cell('sodium', stage, 'reduction');
  return found === null
    ? refuse(`No reduction level of sodium is set for ${stage}.`, 'Say that none is set; it is not zero.')
    : ok(found);
}

/** A share of a reference intake, unrounded, in percent; `null` when the amount is not known. */
export interface IntakePercent {
  readonly percent: number | null;
  readonly atLeast: boolean;
  readonly of: ReferenceIntake;
  readonly working: Working;
}

/**
 * An amount as percent of the intake to reach: amount ÷ reference intake × 100. The amount has to be counted as the
 * row counts it (µg RAE, µg DFE, mg NE, alpha-tocopherol). `working` is how the amount was got. Refuses where no
 * intake is set and units that measure something else.
 */
export function percentOfReferenceIntake(
  nutrient: IntakeName,
  stage: LifeStage,
  quantity: Quantity<MassUnit | 'L' | 'mL'>,
  working?: Working,
): Result<IntakePercent> {
  const intake = referenceIntake(nutrient, stage);
  if (!intake.ok) return intake;
  const { unit } = INTAKES[nutrient];
  if (dimensionOf(quantity.unit) !== dimensionOf(unit)) {
    return refuse(`The intake of ${nutrient} is set in ${unit}, not in ${quantity.unit}.`, `Use ${unit}.`);
  }
  const ratio = unitRatio(quantity.unit, unit);
  const { value, source } = intake.value;
  const outer: Working = {
    formula: ratio === 1 ? 'amount / reference_intake * 100' : 'amount * ratio / reference_intake * 100',
    inputs: [
      input('amount', quantity.value, quantity.unit, FROM_LESSON),
      input('reference_intake', value, `${unit} a day`, source, stage),
      ...(ratio === 1
        ? []
        : [input('ratio', ratio, `${unit} per ${quantity.unit}`, 'definition of the units')]),
    ],
  };
  return ok({
    percent: quantity.value === null ? null : ((quantity.value * ratio) / value) * 100,
    atLeast: quantity.atLeast,
    of: intake.value,
    working: working === undefined ? outer : substitute(outer, 'amount', working),
  });
}

/**
 * How an amount a day stands to the upper level. `counted` says what the amount counts: a level that counts
 * supplements or one form only cannot be held against the nutrient in all food, and is refused. An amount that
 * is at least so much can be known to be above the level and never to be within it.
 */
export function againstUpperLimit(
  nutrient: IntakeName,
  stage: LifeStage,
  quantity: Quantity<MassUnit>,
  counted: 'all food' | 'what the level counts',
): Result<'above' | 'within' | 'not known'> {
  const limit = upperLimit(nutrient, stage);
  if (!limit.ok) return limit;
  const { counts, value } = limit.value;
  const { unit, upperCounts } = INTAKES[nutrient];
  if (upperCounts !== undefined && counted === 'all food') {
    return refuse(
      `The upper level of ${nutrient} counts ${counts}.`,
      'Compare only that part of the intake, or leave the comparison out.',
    );
  }
  if (quantity.value === null) return ok('not known');
  if (quantity.value * unitRatio(quantity.unit, unit) > value) return ok('above');
  return ok(quantity.atLeast ? 'not known' : 'within');
}

/**
 * Factors for those who eat no meat, on the allowances: iron 1.8, zinc up to 1.5, since both are taken up less
 * from plants. Source: DRI for micronutrients, 2001, chapters on iron and zinc, from memory.
 */
export const MEATLESS_FACTORS = {
  iron: { factor: 1.8, upTo: false },
  zinc: { factor: 1.5, upTo: true },
} as const;

/** An allowance raised for those who eat no meat. */
export interface MeatlessIntake {
  readonly value: number;
  readonly unit: IntakeRow['unit'];
  /** True where the factor is the most that may be needed, so that the value is "up to". */
  readonly upTo: boolean;
  readonly working: Working;
}

/**
 * The allowance of iron or zinc for somebody who eats no meat: allowance × factor. Refuses the first half year, which
 * has an adequate intake and no allowance.
 */
export function meatlessIntake(
  nutrient: keyof typeof MEATLESS_FACTORS,
  stage: LifeStage,
): Result<MeatlessIntake> {
  const intake = cell(nutrient, stage, 'allowance');
  if (intake === null) {
    return refuse(
      `No allowance of ${nutrient} is set for ${stage}.`,
      'Say that none is set; it is not zero.',
    );
  }
  const { factor, upTo } = MEATLESS_FACTORS[nutrient];
  const { unit } = INTAKES[nutrient];
  const { value, source } = intake;
  return ok({
    value: value * factor,
    unit,
    upTo,
    working: {
      formula: 'reference_intake * factor',
      inputs: [
        input('reference_intake', value, `${unit} a day`, source, stage),
        input('factor', factor, 'times', `${INTAKE_SOURCE} 2001`, 'for those who eat no meat; from memory'),
      ],
    },
  });
}

function cell(nutrient: IntakeName, stage: LifeStage, kind: IntakeKind): ReferenceIntake | null {
  const row: IntakeRow = INTAKES[nutrient];
  const perKg = kind === 'requirement' ? row.requirementPerKg : undefined;
  const written = (perKg ?? row[kind])?.split(' ')[LIFE_STAGES.indexOf(stage)] ?? '-';
  if (written === '-') return null;
  const counts = kind === 'upper' ? (row.upperCounts ?? row.counts) : row.counts;
  return {
    nutrient,
    stage,
    kind,
    value: Number(written),
    unit: perKg === undefined ? row.unit : 'g per kg of body weight',
    source: `${INTAKE_SOURCE} ${INTAKE_REPORTS[row.report].slice(-4)}`,
    checked: INTAKES_CHECKED,
    ...(counts === undefined ? {} : { counts }),
    ...(row.note === undefined ? {} : { note: row.note }),
  };
}
