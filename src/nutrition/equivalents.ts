import type { Weighable } from './food-measures.js';
import { GUIDANCE_SOURCES, type GuidanceEdition } from './guidance-patterns.js';
import { gramsOf, type Portion } from './portion.js';
import type { Checked } from './published.js';
import type { VolumeUnit } from './quantity.js';
import type { Reckoned } from './reckoned.js';
import { inWords, ok, type Result, refuse } from './result.js';
import { combine, FROM_LESSON, type Working } from './working.js';

/** Food groups that count in equivalents. */
export const EQUIVALENT_GROUPS = ['vegetables', 'fruit', 'dairy', 'grains', 'protein foods'] as const;
export type EquivalentGroup = (typeof EQUIVALENT_GROUPS)[number];
export type EquivalentUnit = 'cup-equivalent' | 'ounce-equivalent';

/** How much of a kind of food is one equivalent. */
export interface EquivalentRule {
  readonly group: EquivalentGroup;
  readonly count: number;
  /** A volume or weight of the food, or `each` for one piece of it. */
  readonly measure: VolumeUnit | 'oz' | 'each';
  readonly checked: Checked;
}

const rule = (
  group: EquivalentGroup,
  count: number,
  measure: EquivalentRule['measure'],
  checked: Checked = 'memory',
) => ({
  group,
  count,
  measure,
  checked,
});

/**
 * One equivalent by kind of food, from the notes of the patterns of the 2020 edition (appendix 3). Dried fruit and
 * juice were read in copies; the others are from memory. Beans have two rules, and a row counts by one of them.
 */
export const EQUIVALENT_RULES = {
  vegetable: [rule('vegetables', 1, 'cup')],
  'raw leafy greens': [rule('vegetables', 2, 'cup')],
  'dried vegetable': [rule('vegetables', 0.5, 'cup')],
  'vegetable juice': [rule('vegetables', 1, 'cup', 'copies')],
  fruit: [rule('fruit', 1, 'cup')],
  'dried fruit': [rule('fruit', 0.5, 'cup', 'copies')],
  'fruit juice': [rule('fruit', 1, 'cup', 'copies')],
  'milk, yogurt or fortified soy drink': [rule('dairy', 1, 'cup')],
  'natural cheese': [rule('dairy', 1.5, 'oz')],
  'processed cheese': [rule('dairy', 2, 'oz')],
  'cooked grain': [rule('grains', 0.5, 'cup')],
  'dry grain': [rule('grains', 1, 'oz')],
  bread: [rule('grains', 1, 'oz')],
  'cereal flakes': [rule('grains', 1, 'cup')],
  'cooked meat, poultry or seafood': [rule('protein foods', 1, 'oz')],
  egg: [rule('protein foods', 1, 'each')],
  'cooked beans': [rule('protein foods', 0.25, 'cup'), rule('vegetables', 1, 'cup')],
  tofu: [rule('protein foods', 0.25, 'cup')],
  'nut butter': [rule('protein foods', 1, 'tbsp')],
  'nuts and seeds': [rule('protein foods', 0.5, 'oz')],
} as const satisfies Readonly<Record<string, readonly EquivalentRule[]>>;
export type EquivalentKind = keyof typeof EQUIVALENT_RULES;

/** Equivalents of a row of a day, unrounded. */
export interface Equivalents extends Reckoned<EquivalentUnit> {
  readonly value: number;
  readonly edition: GuidanceEdition;
  readonly group: EquivalentGroup;
  readonly kind: EquivalentKind;
  readonly estimated: boolean;
}

/** What an equivalent is counted from. */
export interface EquivalentQuestion {
  readonly food: Weighable;
  readonly portion: Portion;
  readonly kind: EquivalentKind;
  readonly edition: GuidanceEdition;
  /** Needed for beans only: the group that this row counts in. */
  readonly countAs?: EquivalentGroup;
}

/**
 * Cup- or ounce-equivalents of a portion: `portion / one`, where one equivalent is weighed by the food's own measures.
 * Refused: the 2025 edition, which counts servings whose sizes are not known; beans without their group; a group that
 * the kind does not count in; a food that lacks the measure.
 */
export function equivalentsOf(question: EquivalentQuestion): Result<Equivalents> {
  const { food, portion, kind, edition, countAs } = question;
  if (edition !== 'us-2020') {
    return refuse(
      `${GUIDANCE_SOURCES[edition]} counts servings, and their sizes are not known.`,
      'Name the edition us-2020, or leave the equivalents out.',
    );
  }
  const rules: readonly EquivalentRule[] = EQUIVALENT_RULES[kind];
  const groups = rules.map(({ group }) => group);
  const one =
    countAs === undefined && rules.length > 1
      ? undefined
      : rules.find(({ group }) => group === (countAs ?? groups[0]));
  if (one === undefined) {
    return refuse(
      countAs === undefined
        ? `${food.name} counts as ${groups.join(' or as ')}, never as both.`
        : `${food.name} does not count as ${countAs}.`,
      `Write which: ${inWords(groups)}.`,
      groups,
    );
  }
  const unit = one.measure === 'each' ? null : one.measure;
  const weight = gramsOf({ count: one.count, unit, measure: unit, size: null }, food);
  if (!weight.ok) return weight;
  return ok({
    value: portion.grams.value / weight.value.grams.value,
    unit: one.group === 'grains' || one.group === 'protein foods' ? 'ounce-equivalent' : 'cup-equivalent',
    working: combine('portion / one', [
      { name: 'portion', item: portion.working },
      { name: 'one', item: byRule(weight.value.working, edition) },
    ]),
    edition,
    group: one.group,
    kind,
    estimated: portion.estimated || weight.value.estimated,
  });
}

/** Totals of a day by group; a group of which nothing is eaten is 0. */
export type EquivalentTotals = Readonly<Record<EquivalentGroup, number>>;

/**
 * Sums the equivalents of a day. Each row has its words; the same words may stand twice (two meals), but the same
 * beans count in one group all day. Refused otherwise, and when two editions meet.
 */
export function sumEquivalents(
  rows: readonly { readonly words: string; readonly equivalents: Equivalents }[],
): Result<EquivalentTotals> {
  const editions = new Set(rows.map(({ equivalents }) => equivalents.edition));
  if (editions.size > 1) {
    return refuse(
      `Numbers of ${inWords([...editions])} stand together.`,
      'Take all of them from one edition.',
    );
  }
  const groups = new Map<string, EquivalentGroup>();
  for (const { words, equivalents } of rows) {
    const before = groups.get(words) ?? equivalents.group;
    if (before !== equivalents.group) {
      return refuse(
        `${words} counts as ${before} and as ${equivalents.group}.`,
        'Beans count as vegetables or as protein foods, never as both.',
      );
    }
    groups.set(words, equivalents.group);
  }
  const total = (group: EquivalentGroup) =>
    rows
      .filter(({ equivalents }) => equivalents.group === group)
      .map(({ equivalents }) => equivalents.value)
      .sort((a, b) => a - b)
      .reduce((so, value) => so + value, 0);
  return ok({
    vegetables: total('vegetables'),
    fruit: total('fruit'),
    dairy: total('dairy'),
    grains: total('grains'),
    'protein foods': total('protein foods'),
  });
}

/** The count of one equivalent comes from the edition and not from the lesson. */
function byRule(working: Working, edition: GuidanceEdition): Working {
  return {
    ...working,
    inputs: working.inputs.map((one) =>
      one.source === FROM_LESSON ? { ...one, source: `${GUIDANCE_SOURCES[edition]} appendix 3` } : one,
    ),
  };
}
