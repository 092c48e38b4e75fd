import {
  DAILY_VALUES,
  type DailyValueName,
  isLost,
  judgeSwap,
  NEED_NAMES,
  type NeedVerdict,
  NUTRIENTS,
  type NutrientName,
  nutrientIn,
  nutrientsAtRisk,
  ok,
  onlyIfFortified,
  PATTERNS_AT_RISK,
  swapChange,
  testFood,
  testIngredients,
  usualPortion,
} from '../../nutrition/index.js';
import { choice, several } from './choices.js';
import { calculation } from './contract.js';
import { byDefault, words } from './fields.js';
import { ofReckoned, ofWord, ofWorked } from './values.js';

const NEED = choice(NEED_NAMES, 'the need');
const COCONUT = byDefault(
  choice(['a tree nut', 'no tree nut', 'not said'], 'whether coconut counts as a nut'),
  'not said',
);
const FOOD = words('a food of the table');
const NEVER = 'what the table says of a food; what is not known never passes, and a label has the last word';
const RULES = ['definitions in common use and the nine major allergens, from memory'];

function verdict(name: string, { verdict, findings }: Pick<NeedVerdict, 'findings'> & { verdict: string }) {
  const results = [ofWord(name, verdict)];
  return { results, cautions: [...new Set(findings.map(({ reason }) => reason))] };
}

const VALUED: ReadonlySet<string> = new Set(Object.keys(DAILY_VALUES));

/** What people leave out of their food, and swaps. */
export const NEEDS_TESTS = [
  calculation({
    name: 'need-test',
    what: 'whether a food fits a way of eating, an allergy or a limit',
    inputs: { food: FOOD, need: NEED, coconut: COCONUT },
    example: ['food=pinto beans, canned, drained', 'need=vegan'],
    holdsFor: NEVER,
    sources: RULES,
    compute: ({ food, need, coconut }, shelf) => {
      const found = shelf.food(food);
      return found.ok ? ok(verdict(need, testFood(found.value, need, { coconut }))) : found;
    },
  }),
  calculation({
    name: 'ingredients-test',
    what: 'what an ingredient list says about a need; it can break it and never pass it',
    inputs: { ingredients: words('the list, with commas'), need: NEED, coconut: COCONUT },
    example: ['ingredients=water, whey, salt', 'need=dairy-free'],
    holdsFor: 'words of the lists here; an ingredient that is not known is reported, not taken for safe',
    sources: RULES,
    compute: ({ ingredients, need, coconut }) => {
      const found = testIngredients(ingredients, need, coconut);
      const { results, cautions } = verdict(need, found);
      const unknown = found.unknown.map((one) => `Not known: ${one}.`);
      return ok({ results, cautions: [...cautions, ...unknown] });
    },
  }),
  calculation({
    name: 'swap',
    what: 'whether a food may stand in for another, and what that changes in a usual portion',
    inputs: {
      from: words('the food that is replaced'),
      to: words('the food in its place'),
      nutrient: choice(Object.keys(NUTRIENTS) as NutrientName[], 'what is compared'),
      needs: several(NEED_NAMES, 'the needs in force'),
      coconut: COCONUT,
    },
    example: ['from=whole milk', 'to=soy drink, calcium added', 'nutrient=calcium', 'needs=dairy-free'],
    holdsFor: 'usual portions of both foods; every need in force is tested',
    sources: RULES,
    compute: ({ from, to, nutrient, needs, coconut }, shelf) => {
      const old = shelf.food(from);
      if (!old.ok) return old;
      const fresh = shelf.food(to);
      if (!fresh.ok) return fresh;
      const may = judgeSwap(fresh.value, needs, { coconut });
      if (!may.ok) return may;
      const before = nutrientIn(old.value, nutrient, usualPortion(old.value));
      const after = nutrientIn(fresh.value, nutrient, usualPortion(fresh.value));
      const lost = VALUED.has(nutrient) ? isLost(before, after, nutrient as DailyValueName) : undefined;
      return ok({
        results: [
          ofWorked(`${nutrient} before`, before),
          ofWorked(`${nutrient} after`, after),
          ofReckoned('change', swapChange(before, after)),
          ...(lost === undefined ? [] : [ofWord('lost', lost === null ? 'not known' : lost ? 'yes' : 'no')]),
        ],
        cautions: [
          ...may.value.conditions,
          ...may.value.notes,
          ...(onlyIfFortified(fresh.value, nutrient) ? ['Only if fortified; check the label.'] : []),
        ],
      });
    },
  }),
  calculation({
    name: 'nutrients-at-risk',
    what: 'nutrients that a way of eating can leave short',
    inputs: { pattern: choice(PATTERNS_AT_RISK, 'the way of eating') },
    example: ['pattern=vegan'],
    holdsFor: 'adults; it says of nobody that they lack it',
    sources: [],
    compute: ({ pattern }) => {
      const rows = nutrientsAtRisk(pattern);
      return ok({
        results: rows.map(({ nutrient, weight }) => ofWord(nutrient, weight)),
        sources: [...new Set(rows.map(({ source }) => source))],
        checked: 'memory',
      });
    },
  }),
];
