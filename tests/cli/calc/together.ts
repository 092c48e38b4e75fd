import type { Expected } from './expected.js';

const SR = 'USDA National Nutrient Database for Standard Reference, release 28';

/** Several foods together, and foods on their way to the plate. */
export const TOGETHER: readonly Expected[] = [
  {
    source: `${SR}: 436 mg of potassium in 100 g of beans, 146 in onions; retention code 3006 keeps all`,
    call: [
      'recipe',
      'ingredients=300 g of pinto beans, cooked; 100 g of onion, raw @3006',
      'nutrient=potassium',
      'servings=2',
    ],
    gives: { recipe: [1454, 1e-9], serving: [727, 1e-9], '100 g': [363.5, 1e-9], weight: [400, 1e-9] },
  },
  {
    source: `${SR}: 239 mg of sodium in 100 g canned and drained, 1 mg boiled without salt`,
    call: [
      'compare-foods',
      'foods=100 g of pinto beans, canned, drained; 100 g of pinto beans, cooked',
      'nutrient=sodium',
      'wanted=most',
    ],
    gives: { most: 'pinto beans, canned, drained', sodium: [239, 1e-9] },
  },
  {
    source: 'largest remainder by hand: 7.2, 2.4 and 2.4 parts',
    call: ['dish-parts', 'vegetables-and-fruit=360mL', 'protein=120mL', 'grain-or-starch=120mL'],
    gives: { 'vegetables and fruit': [7, 0], protein: [3, 0], 'grain or starch': [2, 0] },
  },
  {
    source: 'milk is one of the nine major allergens',
    call: ['need-test', 'food=whole milk', 'need=dairy-free'],
    gives: { 'dairy-free': 'breaks' },
  },
  {
    source: 'whey is milk, 21 USC 321(qq)',
    call: ['ingredients-test', 'ingredients=water, whey, salt', 'need=dairy-free'],
    gives: { 'dairy-free': 'breaks' },
  },
  {
    source: `${SR}: 113 mg of calcium × 244 g; 123 mg × 243 g`,
    call: ['swap', 'from=whole milk', 'to=soy drink, calcium added', 'nutrient=calcium', 'needs=dairy-free'],
    gives: { 'calcium before': [275.72, 1e-6], 'calcium after': [298.89, 1e-6], lost: 'no' },
  },
  {
    source: 'position on vegetarian patterns of 2025, from memory: vitamin B12 has to be named',
    call: ['nutrients-at-risk', 'pattern=vegan'],
    gives: { 'vitamin B12': 'must say' },
  },
  {
    source: 'by hand: one kilogram and three packages of 450 g, 2.40 + 3 × 1.50',
    call: [
      'basket',
      ...['list=rice: 900 g / 1 kg / 2.40; beans: 1 kg / 450 g / 1.50', 'budget=10.00', 'people=2', 'days=7'],
    ],
    gives: { total: [690, 0], left: [310, 0], beans: [3, 0], 'a person and day': [690 / 14, 1e-9] },
  },
  {
    source: `${SR}: 146 mg of potassium in onions; all kept, in nine tenths of the weight`,
    call: ['cooked-food', 'food=onion, raw', 'nutrient=potassium', 'code=3006', 'yield=0.9'],
    gives: { 'in 100 g cooked': [146 / 0.9, 1e-9] },
  },
  {
    source: 'common practice: a pound of dry pinto beans makes 2.3 to 2.5 pounds cooked',
    call: ['plate-yield', 'bought=pinto beans, dry', 'eaten=pinto beans, cooked'],
    gives: { cooking: [2.4, 0.1] },
  },
  {
    source: `${SR}: 169 g fill a cup, 236.588 mL`,
    call: ['served-volume', 'food=pinto beans, canned, drained and rinsed', 'amount=169 g'],
    gives: { volume: [236.588, 0.001] },
  },
  {
    source: 'the same cup',
    call: ['pour', 'food=pinto beans, canned, drained and rinsed', 'amount=170 g'],
    gives: { pour: '1 cup', weight: [169, 1e-6] },
  },
  {
    source: 'definition of the scales: 165 °F are 73.9 °C',
    call: ['temperature', 'degrees=165', 'scale=F'],
    gives: { temperature: [73.889, 0.001], 'a limit is rounded': 'up' },
  },
];
