import {
  EQUIVALENT_GROUPS,
  EQUIVALENT_RULES,
  type EquivalentKind,
  equivalentKindOf,
  equivalentsOf,
  GUIDANCE_EDITIONS,
  gramsOf,
  NUTRIENTS,
  type NutrientName,
  nutrientIn,
  ok,
  parseBasis,
  valueOnBasis,
} from '../../nutrition/index.js';
import { foodAmount } from './amounts.js';
import { choice } from './choices.js';
import { calculation } from './contract.js';
import { optional, words } from './fields.js';
import { KITCHEN } from './units.js';
import { ofNumber, ofReckoned, ofWord, ofWorked } from './values.js';

const FOOD = words('a food of the table, such as pinto beans, canned, drained');
const EVERYDAY = 'foods of the table of everyday foods; platework foods finds them';

export const PORTIONS = [
  calculation({
    name: 'portion-weight',
    also: ['grams'],
    what: 'what an amount of a food weighs',
    inputs: { food: FOOD, amount: foodAmount('the amount, such as 1 cup'), kitchen: KITCHEN },
    example: ['food=pinto beans, canned, drained and rinsed', 'amount=1 cup'],
    holdsFor: EVERYDAY,
    sources: [],
    compute: ({ food, amount, kitchen }, shelf) => {
      const found = shelf.food(food);
      if (!found.ok) return found;
      const portion = gramsOf(amount, found.value, kitchen);
      if (!portion.ok) return portion;
      const { grams, working, estimated } = portion.value;
      return ok({
        results: [ofNumber('weight', grams.value, grams.unit, working)],
        cautions: estimated ? ['The weight of the measure is an estimate.'] : [],
      });
    },
  }),
  calculation({
    name: 'nutrient-in-portion',
    also: ['nutrient'],
    what: 'what an amount of a food holds of a nutrient',
    inputs: {
      food: FOOD,
      nutrient: choice(Object.keys(NUTRIENTS) as NutrientName[], 'the nutrient'),
      amount: foodAmount('the amount, such as 1 cup'),
      kitchen: KITCHEN,
    },
    example: ['food=pinto beans, canned, drained and rinsed', 'nutrient=sodium', 'amount=1 cup'],
    holdsFor: `${EVERYDAY}; a blank in the record is not known, never zero`,
    sources: [],
    compute: ({ food, nutrient, amount, kitchen }, shelf) => {
      const found = shelf.food(food);
      if (!found.ok) return found;
      const portion = gramsOf(amount, found.value, kitchen);
      if (!portion.ok) return portion;
      const worked = nutrientIn(found.value, nutrient, portion.value);
      return ok({
        results: [ofWorked(nutrient, worked)],
        cautions: worked.estimated ? ['The weight of the measure is an estimate.'] : [],
      });
    },
  }),
  calculation({
    name: 'nutrient-on-basis',
    what: 'the same on a basis that says the state, such as 1 cup, ready to eat',
    inputs: {
      food: FOOD,
      nutrient: choice(Object.keys(NUTRIENTS) as NutrientName[], 'the nutrient'),
      basis: words('amount and state'),
      kitchen: KITCHEN,
    },
    example: ['food=pinto beans, canned, drained', 'nutrient=sodium', 'basis=1 cup, ready to eat'],
    holdsFor: `${EVERYDAY}; a food in another state is refused`,
    sources: [],
    compute: ({ food, nutrient, basis, kitchen }, shelf) => {
      const read = parseBasis(basis);
      if (!read.ok) return read;
      const found = shelf.food(food);
      if (!found.ok) return found;
      const value = valueOnBasis(found.value, nutrient, read.value, kitchen);
      return value.ok ? ok({ results: [ofWorked(nutrient, value.value.worked)] }) : value;
    },
  }),
  calculation({
    name: 'equivalents',
    also: ['cup-equivalents', 'ounce-equivalents'],
    what: 'cup- or ounce-equivalents of an amount of a food',
    inputs: {
      food: FOOD,
      amount: foodAmount('the amount, such as 1 cup'),
      edition: choice(GUIDANCE_EDITIONS, 'the edition; there is no default'),
      kind: optional(
        choice(Object.keys(EQUIVALENT_RULES) as EquivalentKind[], 'what it counts as'),
        'by the food',
      ),
      'count-as': optional(
        choice(EQUIVALENT_GROUPS, 'the group, for beans, which count in one of two'),
        'the only group',
      ),
      kitchen: KITCHEN,
    },
    example: ['food=raisins', 'amount=1/4 cup', 'edition=us-2020'],
    holdsFor: 'the edition of 2020; the one of 2025 counts servings whose sizes are not known',
    sources: ['dga-2020-2025'],
    compute: ({ food, amount, edition, kind, kitchen, 'count-as': countAs }, shelf) => {
      const found = shelf.food(food);
      if (!found.ok) return found;
      const portion = gramsOf(amount, found.value, kitchen);
      if (!portion.ok) return portion;
      const known = kind === undefined ? equivalentKindOf(found.value) : ok(kind);
      if (!known.ok) return known;
      const counted = equivalentsOf({
        food: found.value,
        portion: portion.value,
        kind: known.value,
        edition,
        ...(countAs === undefined ? {} : { countAs }),
      });
      if (!counted.ok) return counted;
      return ok({
        results: [ofReckoned(counted.value.group, counted.value), ofWord('counts as', known.value)],
        cautions: counted.value.estimated ? ['The weight of a measure is an estimate.'] : [],
      });
    },
  }),
];
