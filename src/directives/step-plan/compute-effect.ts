import {
  asGiven,
  FROM_LESSON,
  input,
  nutrientIn,
  parseAmount,
  scaleWorked,
  type Worked,
  writeAmount,
  writeCount,
} from '../../nutrition/index.js';
import type { ComputeContext, ComputedNumber } from '../contract.js';
import type { Published } from '../published.js';
import { DAYS_A_WEEK, type Often, type Portioned, type StepRow, TOLD, type Told } from './schema.js';

/** What a step changes, and the id of the number that says it. */
export interface Effect {
  readonly number: string;
  readonly way: 'less' | 'more';
  /** Of what: a nutrient, or the food itself. */
  readonly of:
    | { readonly nutrient: Told }
    | { readonly food: string; readonly measure: string; readonly bare: boolean };
  /** For how long it is counted; `once` where nobody said how often, `serving` for what was rinsed. */
  readonly per: 'day' | 'week' | 'once' | 'serving';
  readonly known: boolean;
  readonly basis?: string;
}

export interface Made {
  readonly effect: Effect;
  /** None where another directive has it. */
  readonly number?: ComputedNumber;
}

/** What a step changes: a nutrient of what comes or goes, or its amount, times how often; or what rinsing takes away. */
export function effectOf(
  id: string,
  step: StepRow,
  published: ComputeContext['published'],
): Made | undefined {
  const { change, rinse, often, key } = step;
  if (rinse) {
    const gone = less(published(rinse.id));
    const [number] = gone?.numbers ?? [];
    const nutrient = TOLD.find((name) => name === gone?.nutrient);
    if (!gone || !nutrient || number === undefined) return undefined;
    const of = { nutrient };
    return { effect: { number, way: 'less', of, per: 'serving', known: true, basis: gone.basis } };
  }
  if (!change) return undefined;
  const nutrient = toldOf(change);
  const number = `${id}.${key}.${change.way}`;
  const { food, portion, way } = change;
  const record = { food: { id: food.id, ...food.record } };
  if (nutrient === undefined) {
    const { worked, measure, unit } = amountOver(change, often);
    const per = often ? 'week' : 'once';
    const what = `${food.name}, ${way}, ${per === 'once' ? 'each time' : 'a week'}`;
    return {
      effect: { number, way, of: { food: change.words, measure, bare: unit === '' }, per, known: true },
      number: {
        id: number,
        value: worked.quantity.value,
        ...worked.working,
        unit,
        sources: [],
        what,
        ...record,
      },
    };
  }
  const { quantity, working } = over(nutrientIn(food, nutrient, portion), often);
  const per = often?.per ?? 'once';
  const what = `${nutrient} in ${portion.words} of ${food.name}, ${per === 'once' ? 'each time' : `a ${per}`}`;
  const { value, unit } = quantity;
  return {
    effect: { number, way, of: { nutrient }, per, known: value !== null },
    number: { id: number, value, unit, ...working, sources: [food.record.source], what, ...record },
  };
}

/** What is told of a food: as the row says; else its added sugars, its sugars where nobody knows how much is added, or its amount. */
function toldOf({ way, tells, food: { per100g } }: Portioned): Told | undefined {
  if (tells) return tells;
  if (way === 'more') return undefined;
  if ((per100g['added sugars'] ?? 0) > 0) return 'added sugars';
  const sweet = per100g['added sugars'] === null && (per100g.sugars ?? 0) >= SWEET;
  return sweet ? 'sugars' : undefined;
}
/** Sugars in 100 g from which a food counts as sweet. House rule. */
const SWEET = 5;

/** So many times what one time is; what is not known stays so. */
function over(each: Worked, often: Often | undefined): Worked {
  return often ? scaleWorked(each, often.times, `times a ${often.per}`, FROM_LESSON) : each;
}

/** The food's own amount over a week, or of one time: in kitchen measures as written, else in grams. */
function amountOver({ amount, portion }: Portioned, often: Often | undefined) {
  const usual = amount ? undefined : parseAmount(portion.words);
  const one = amount ?? (usual?.ok ? usual.value.amount : null);
  const count = one ? one.count : portion.grams.value;
  const times = often ? often.times * (often.per === 'day' ? DAYS_A_WEEK : 1) : 1;
  const total = count * times;
  const named = one
    ? writeAmount({ ...one, count: total })
        .slice(writeCount(total).length)
        .trim()
    : 'g';
  const unit = one ? (one.unit ?? '') : 'g';
  const inputs = [
    input('count', count, one?.measure ?? 'g', FROM_LESSON),
    ...(often ? [input('times', often.times, `a ${often.per}`, FROM_LESSON)] : []),
  ];
  const formula = ['count', ...(often ? ['times'] : []), ...(often?.per === 'day' ? [DAYS_A_WEEK] : [])].join(
    ' * ',
  );
  return {
    worked: { quantity: { value: total }, working: { formula, inputs } },
    unit,
    measure: unit === '' ? named : '',
  };
}

/** How often, for the line that says what was counted. */
export function timesNumber(id: string, { key, often }: StepRow): ComputedNumber[] {
  if (!often) return [];
  const given = asGiven(input('times', often.times, `a ${often.per}`, FROM_LESSON));
  const what = `how many times a ${often.per}`;
  return [
    { id: `${id}.${key}.times`, value: often.times, unit: '', decimals: 0, ...given, sources: [], what },
  ];
}

/** What a directive of the lesson found to go away. */
export function less(found: Published | undefined) {
  return found?.kind === 'less' ? found : undefined;
}
