import {
  isSmallReference,
  LABEL_NUTRIENTS,
  type LabeledFood,
  type LabelNutrient,
  ok,
  type Result,
  tryConvert,
  type Unit,
  type Verdict,
} from '../../nutrition/index.js';
import { choice } from './choices.js';
import type { Answer, Field, Shown, Values } from './contract.js';
import { amount, measured, optional } from './fields.js';
import { type Kebab, kebab, ofWord } from './values.js';

type Unknown = { readonly value: number | null; readonly unit: string };

/** The amounts that rules of labels look at; what is left out is not known, and never passes as low. */
const AMOUNTS = Object.fromEntries(
  Object.entries(LABEL_NUTRIENTS).map(([name, unit]) => [
    kebab(name),
    optional<Unknown>(
      measured(unit === 'kcal' ? ['kcal'] : unit === 'mg' ? ['mg', 'g'] : ['g', 'mg'], `${name}, unrounded`),
      'not known',
    ),
  ]),
) as Readonly<Record<Kebab<LabelNutrient>, Field<Unknown | undefined>>>;

/** A food as a claim on a label is judged by. */
export const LABELED = {
  per: amount(['g'], 'the weight that the amounts belong to'),
  ...AMOUNTS,
};

/** What a US claim is judged on beside the amounts. */
export const US_BASES = {
  reference: optional(amount(['g'], 'the reference amount'), 'not known'),
  small: optional(choice(['yes', 'no'], 'whether the reference amount is small'), 'yes up to 30 g'),
  serving: optional(amount(['g'], 'the labeled serving'), 'not known'),
};

/** The food of a call. */
export function labeledFood(
  values: Values<typeof LABELED>,
  bases: Partial<Values<typeof US_BASES>> = {},
  milliliters?: number,
): LabeledFood {
  const amounts = Object.fromEntries(
    Object.entries(LABEL_NUTRIENTS).flatMap(([name, unit]) => {
      const given = values[kebab(name as LabelNutrient)];
      if (given === undefined) return [];
      return [[name, inUnit(given, unit)]];
    }),
  );
  const { reference, small, serving } = bases;
  return {
    grams: values.per.value,
    amounts,
    ...(milliliters === undefined ? {} : { milliliters }),
    ...(serving === undefined ? {} : { servingGrams: serving.value }),
    ...(reference === undefined
      ? {}
      : {
          reference: {
            grams: reference.value,
            small:
              small === undefined
                ? isSmallReference({ amount: reference.value, unit: 'g' })
                : small === 'yes',
          },
        }),
  };
}

function inUnit({ value, unit }: Unknown, to: Unit): number | null {
  if (value === null) return null;
  const same = tryConvert({ value, unit: unit as Unit }, to);
  return same.ok ? same.value.value : null;
}

/** A verdict with each limit that it was held against. */
export function verdictAnswer(result: Result<Verdict>): Result<Answer> {
  if (!result.ok) return result;
  const { claim, allowed, findings, source, checked, note } = result.value;
  const limits = findings.map(({ limit, actual, holds, working }): Shown => {
    const { of, is, value, per } = limit;
    const unit = per === 'percent of energy' ? 'percent' : LABEL_NUTRIENTS[of[0] as LabelNutrient];
    return {
      name: `${of.join(' and ')}, ${per}`,
      value: actual,
      unit,
      says: `${is} ${value} ${unit}: ${holds}`,
      working,
    };
  });
  return ok({
    results: [ofWord(`${claim}, allowed`, allowed), ...limits],
    sources: [source],
    checked,
    cautions: note === undefined ? [] : [note],
  });
}
