import {
  afterCooking,
  asGiven,
  cookedPer100g,
  FROM_LESSON,
  findRetentionCodes,
  findYields,
  input,
  ok,
  RETENTION_NUTRIENTS,
  type Result,
  refuse,
  retentionOf,
  unitRatio,
  weighedYield,
} from '../../nutrition/index.js';
import { choice } from './choices.js';
import { calculation, type Field } from './contract.js';
import { amount, measured, number, words } from './fields.js';
import { ofNumber, ofWord, ofWorked, quantityOf } from './values.js';

const CODE: Field<string> = {
  help: 'code of the retention release, or words of the food and method that fit one code only',
  units: [],
  read: (text): Result<string> => {
    if (/^\d{1,4}$/.test(text.trim())) return ok(text.trim());
    const found = findRetentionCodes(text);
    const [only, ...more] = found;
    if (only !== undefined && more.length === 0) return ok(only.code);
    const listed = found.slice(0, 8).map(({ code, method }) => `${code} ${method}`);
    return found.length === 0
      ? refuse(`No retention code fits "${text}".`, 'Write fewer words, or the four digits of the code.')
      : refuse(
          `${found.length} retention codes fit "${text}": ${listed.join('; ')}${found.length > 8 ? ' …' : ''}.`,
          'Write one of the codes.',
        );
  },
};
const AMOUNT = measured(['mg', 'g', 'µg'], 'in the uncooked food');
const RETAINED = choice(RETENTION_NUTRIENTS, 'the nutrient');
export const COOKING = [
  calculation({
    name: 'retention',
    what: 'what stays of a nutrient when a food is cooked',
    inputs: { code: CODE, nutrient: RETAINED, amount: AMOUNT },
    example: ['code=3005', 'nutrient=vitamin C', 'amount=100mg'],
    holdsFor: 'a whole amount of a food that is not cooked yet; applied once',
    sources: ['usda-retention-2007'],
    compute: ({ code, nutrient, amount }) => {
      const retention = retentionOf(code, nutrient);
      if (!retention.ok) return retention;
      const working = asGiven(input('raw', amount.value, amount.unit, FROM_LESSON));
      const kept = afterCooking({ quantity: quantityOf(amount), working, estimated: false }, retention.value);
      if (!kept.ok) return kept;
      return ok({
        results: [ofWorked('after cooking', kept.value), ofWord('method', retention.value.method)],
        cautions: ['An estimate; a record of the cooked food is better.'],
      });
    },
  }),
  calculation({
    name: 'cooked-per-100g',
    what: 'what 100 g of the cooked food hold: retention and yield together',
    inputs: {
      code: CODE,
      nutrient: RETAINED,
      amount: { ...AMOUNT, help: 'in 100 g of the uncooked food' },
      yield: number('', 'weight after cooking ÷ weight before'),
    },
    example: ['code=3005', 'nutrient=vitamin C', 'amount=30mg', 'yield=0.9'],
    holdsFor: 'a record of food that is not cooked yet; never for one that is',
    sources: ['usda-retention-2007'],
    compute: ({ code, nutrient, amount, yield: factor }) => {
      const retention = retentionOf(code, nutrient);
      if (!retention.ok) return retention;
      const cooked = cookedPer100g(quantityOf(amount), FROM_LESSON, retention.value, {
        factor,
        source: FROM_LESSON,
      });
      if (!cooked.ok) return cooked;
      return ok({
        results: [ofWorked('in 100 g cooked', cooked.value), ofWord('method', retention.value.method)],
        cautions: ['An estimate; a record of the cooked food is better.'],
      });
    },
  }),
  calculation({
    name: 'cooking-yield',
    what: 'published yields of a food: weight after cooking ÷ weight before',
    inputs: { food: words('words of the food and the way of cooking') },
    example: ['food=bacon pan fried'],
    holdsFor: 'the cut and method of the row; where the food table has both records, take the cooked one',
    sources: ['usda-cooking-yields-2014'],
    compute: ({ food }) => {
      const rows = findYields(food);
      if (!rows.ok) return rows;
      return ok({
        results: rows.value.slice(0, 12).map(({ food: name, method, factor, span, checked }) => ({
          ...ofNumber(`${name}, ${method}`, factor, 'g cooked per g raw'),
          says: `${span === null ? 'no span given' : `${span.low} to ${span.high}`}; ${checked === 'memory' ? 'from memory' : 'published'}`,
        })),
        cautions:
          rows.value.length > 12 ? [`${rows.value.length - 12} more rows fit; write more words.`] : [],
      });
    },
  }),
  calculation({
    name: 'weighed-yield',
    what: 'a yield that somebody weighed',
    inputs: {
      before: amount(['g', 'kg', 'oz', 'lb'], 'before cooking'),
      after: amount(['g', 'kg', 'oz', 'lb'], 'after it'),
    },
    example: ['before=100g', 'after=240g'],
    holdsFor: 'one food and one way of cooking; factors under 0.2 or over 5 are slips',
    sources: [],
    compute: ({ before, after }) => {
      const grams = (one: typeof before) => one.value * unitRatio(one.unit, 'g');
      const found = weighedYield(grams(before), grams(after), FROM_LESSON);
      return found.ok
        ? ok({ results: [ofNumber('yield', found.value.factor, 'g cooked per g raw')] })
        : found;
    },
  }),
];
