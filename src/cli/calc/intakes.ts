import {
  averageRequirement,
  INTAKES,
  type IntakeName,
  type LifeStage,
  lifeStageOf,
  ok,
  type ReferenceIntake,
  type Result,
  referenceIntake,
  sodiumReductionLevel,
  upperLimit,
} from '../../nutrition/index.js';
import { choice } from './choices.js';
import { type Answer, calculation, type Values } from './contract.js';
import { number, optional } from './fields.js';
import { ofNumber, ofWord } from './values.js';

/** Whom an intake is looked up for. */
export const SOMEONE = {
  age: number('years', 'years since birth; half a year is 0.5'),
  sex: optional(choice(['female', 'male'], 'needed from nine years on'), 'not said'),
  state: optional(choice(['pregnancy', 'lactation'], 'has values of its own'), 'neither'),
};
export const NUTRIENT = choice(Object.keys(INTAKES) as IntakeName[], 'the nutrient');

export function stageOf({ age, sex, state }: Values<typeof SOMEONE>): Result<LifeStage> {
  return lifeStageOf({
    years: age,
    ...(sex === undefined ? {} : { sex }),
    ...(state === undefined ? {} : { state }),
  });
}

export const KINDS: Readonly<Record<ReferenceIntake['kind'], string>> = {
  requirement: 'estimated average requirement',
  allowance: 'recommended dietary allowance',
  adequate: 'adequate intake',
  upper: 'tolerable upper intake level',
  reduction: 'chronic disease risk reduction intake',
};

function intakeAnswer(
  values: Values<typeof SOMEONE>,
  look: (stage: LifeStage) => Result<ReferenceIntake>,
): Result<Answer> {
  const stage = stageOf(values);
  if (!stage.ok) return stage;
  const found = look(stage.value);
  if (!found.ok) return found;
  const { kind, value, unit, counts, source, checked, note } = found.value;
  return ok({
    results: [
      {
        ...ofNumber(KINDS[kind], value, `${unit} a day`),
        ...(counts === undefined ? {} : { says: `counts ${counts}` }),
      },
      ofWord('life stage', stage.value),
    ],
    sources: [source],
    checked,
    cautions: note === undefined ? [] : [note],
  });
}

export const FOR_GROUPS =
  'healthy people of the life stage in the United States and Canada; bands end on the birthday';

export const INTAKE_LEVELS = [
  calculation({
    name: 'reference-intake',
    also: ['dri', 'rda'],
    what: 'the intake to reach: the allowance, or where none is set the adequate intake',
    inputs: { nutrient: NUTRIENT, ...SOMEONE },
    example: ['nutrient=calcium', 'age=60', 'sex=female'],
    holdsFor: FOR_GROUPS,
    sources: ['nasem-dri'],
    compute: ({ nutrient, ...who }) => intakeAnswer(who, (stage) => referenceIntake(nutrient, stage)),
  }),
  calculation({
    name: 'average-requirement',
    also: ['ear'],
    what: 'the estimated average requirement',
    inputs: { nutrient: NUTRIENT, ...SOMEONE },
    example: ['nutrient=vitamin C', 'age=25', 'sex=male'],
    holdsFor: `${FOR_GROUPS}; for groups, not for one person`,
    sources: ['nasem-dri'],
    compute: ({ nutrient, ...who }) => intakeAnswer(who, (stage) => averageRequirement(nutrient, stage)),
  }),
  calculation({
    name: 'upper-limit',
    also: ['ul', 'upper-level'],
    what: 'the tolerable upper intake level, with what it counts',
    inputs: { nutrient: NUTRIENT, ...SOMEONE },
    example: ['nutrient=magnesium', 'age=25', 'sex=male'],
    holdsFor: `${FOR_GROUPS}; where none is set not every amount is safe`,
    sources: ['nasem-dri'],
    compute: ({ nutrient, ...who }) => intakeAnswer(who, (stage) => upperLimit(nutrient, stage)),
  }),
  calculation({
    name: 'sodium-reduction-level',
    also: ['cdrr'],
    what: 'the intake of sodium above which less is better; it is no upper level',
    inputs: SOMEONE,
    example: ['age=40', 'sex=female'],
    holdsFor: FOR_GROUPS,
    sources: ['nasem-dri'],
    compute: (who) => intakeAnswer(who, sodiumReductionLevel),
  }),
];
