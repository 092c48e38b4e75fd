import {
  cookedFood,
  FROM_LESSON,
  gramsOf,
  NUTRIENTS,
  type NutrientName,
  ok,
  onOtherScale,
  platedAs,
  pourOf,
  RETENTION_NUTRIENTS,
  type RetentionNutrient,
  refuse,
  safeRounding,
  volumeOf,
  writeCount,
} from '../../nutrition/index.js';
import { foodAmount } from './amounts.js';
import { choice } from './choices.js';
import { calculation } from './contract.js';
import { byDefault, number, words } from './fields.js';
import { KITCHEN } from './units.js';
import { ofNumber, ofReckoned, ofWord, ofWorked } from './values.js';

const BOTH = RETENTION_NUTRIENTS.filter(
  (name): name is NutrientName & RetentionNutrient => name in NUTRIENTS,
);
const FOOD = words('a food of the table');

/** A food on its way to the plate. */
export const PLATED = [
  calculation({
    name: 'cooked-food',
    what: 'what 100 g of a food hold when it is cooked, from its uncooked record',
    inputs: {
      food: FOOD,
      nutrient: choice(BOTH, 'the nutrient'),
      code: words('code of the retention release'),
      yield: number('', 'weight after cooking ÷ weight before'),
    },
    example: ['food=onion, raw', 'nutrient=potassium', 'code=3006', 'yield=0.9'],
    holdsFor: 'records of food that is not cooked yet; others are refused',
    sources: ['usda-retention-2007'],
    compute: ({ food, nutrient, code, yield: factor }, shelf) => {
      const found = shelf.food(food);
      if (!found.ok) return found;
      const cooked = cookedFood(found.value, nutrient, code, { factor, source: FROM_LESSON });
      if (!cooked.ok) return cooked;
      return ok({
        results: [ofWorked('in 100 g cooked', cooked.value)],
        cautions: ['An estimate; a record of the cooked food is better.'],
      });
    },
  }),
  calculation({
    name: 'plate-yield',
    what: 'weight on the plate ÷ weight bought: trimmed, drained or cooked, by two records',
    inputs: { bought: words('the food as bought'), eaten: words('the food of its kind as eaten') },
    example: ['bought=pinto beans, dry', 'eaten=pinto beans, cooked'],
    holdsFor: 'foods from which only water comes or goes; meat, milk and eggs are refused',
    sources: [],
    compute: ({ bought, eaten }, shelf) => {
      const from = shelf.food(bought);
      if (!from.ok) return from;
      const to = shelf.food(eaten);
      if (!to.ok) return to;
      const plated = platedAs(from.value, to.value);
      if (!plated.ok) return plated;
      const { yields, estimated } = plated.value;
      return ok({
        results:
          yields.length === 0
            ? [ofNumber('as bought', 1, 'g eaten per g bought')]
            : yields.map(({ what, factor, working }) =>
                ofNumber(what, factor, 'g eaten per g bought', working),
              ),
        cautions: estimated ? ['An estimate; a weighed yield is better.'] : [],
      });
    },
  }),
  calculation({
    name: 'served-volume',
    what: 'the volume of an amount of a food as served',
    inputs: { food: FOOD, amount: foodAmount('the amount, such as 100 g'), kitchen: KITCHEN },
    example: ['food=pinto beans, canned, drained and rinsed', 'amount=169 g'],
    holdsFor: 'foods that have a volume measure',
    sources: [],
    compute: ({ food, amount, kitchen }, shelf) => {
      const found = shelf.food(food);
      if (!found.ok) return found;
      const portion = gramsOf(amount, found.value, kitchen);
      if (!portion.ok) return portion;
      const volume = volumeOf(amount, portion.value, found.value, kitchen);
      if (!volume.ok) return volume;
      const { milliliters, working, estimated } = volume.value;
      return ok({
        results: [ofNumber('volume', milliliters, 'mL', working)],
        cautions: estimated ? ['The weight of the measure is an estimate.'] : [],
      });
    },
  }),
  calculation({
    name: 'pour',
    what: 'the nearest amount of a food that cups and spoons measure, and its weight',
    inputs: { food: FOOD, amount: foodAmount('the amount, such as 100 g'), kitchen: KITCHEN },
    example: ['food=pinto beans, canned, drained and rinsed', 'amount=170 g'],
    holdsFor: 'foods that have a volume measure',
    sources: [],
    compute: ({ food, amount, kitchen }, shelf) => {
      const found = shelf.food(food);
      if (!found.ok) return found;
      const pour = pourOf(amount, found.value, kitchen, ['cup', 'spoon']);
      if (!pour.ok) return pour;
      const { count, unit, grams, working, estimated } = pour.value;
      return ok({
        results: [ofWord('pour', `${writeCount(count)} ${unit}`), ofNumber('weight', grams, 'g', working)],
        cautions: estimated ? ['The weight of the measure is an estimate.'] : [],
      });
    },
  }),
  calculation({
    name: 'temperature',
    what: 'a temperature on the other scale, and how a limit is rounded there',
    inputs: {
      degrees: number('', 'the temperature', { signed: true, range: 'from absolute zero up' }),
      scale: choice(['F', 'C'], 'Fahrenheit or Celsius'),
      limit: byDefault(choice(['heat', 'cold'], 'heat to reach, or cold to keep'), 'heat'),
    },
    example: ['degrees=165', 'scale=F'],
    holdsFor: 'temperatures, not differences; rounded so that a limit is never less safe',
    sources: ['NIST Special Publication 811, appendix B'],
    compute: ({ degrees, scale, limit }) => {
      const coldest = scale === 'F' ? -459.67 : -273.15;
      if (degrees < coldest) return refuse(`Nothing is colder than ${coldest} °${scale}.`, 'Correct it.');
      const other = onOtherScale({ value: degrees, unit: `°${scale}` }, FROM_LESSON);
      return ok({
        results: [ofReckoned('temperature', other), ofWord('a limit is rounded', safeRounding(limit))],
      });
    },
  }),
];
