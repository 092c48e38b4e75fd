import type { Expected } from './expected.js';

const SR = 'USDA National Nutrient Database for Standard Reference, release 28';

/** Food: its energy, parts, portions, cooking and price. */
export const FOOD: readonly Expected[] = [
  {
    source: '21 CFR 101.9(c)(1)(i)(B): 4, 4 and 9 kcal a gram, by hand',
    call: ['food-energy', 'fat=8g', 'carbohydrate=37g', 'protein=3g'],
    gives: { energy: [232, 1e-9] },
  },
  {
    source: 'Regulation (EU) 1169/2011, Annex XIV: 37, 17 and 17 kJ a gram, by hand',
    call: ['food-energy', 'method=eu', 'unit=kJ', 'fat=8g', 'carbohydrate=37g', 'protein=3g'],
    gives: { energy: [976, 1e-9] },
  },
  {
    source: 'factors 4, 4 and 9: 120 + 32 + 90 = 242 kcal',
    call: ['energy-shares', 'carbohydrate=30g', 'protein=8g', 'fat=10g'],
    gives: { carbohydrate: [(120 / 242) * 100, 1e-9], fat: [(90 / 242) * 100, 1e-9] },
  },
  {
    source: 'Institute of Medicine 2005: 45 to 65 percent; 225 to 325 g at 2000 kcal',
    call: ['amdr', 'of=carbohydrate', 'energy=2000kcal'],
    gives: { carbohydrate: [[225, 325], 1e-9] },
  },
  {
    source: 'ratio in use: 120 g to 40 g are 3 to 1, 1080 of 1240 kcal from fat',
    call: ['ketogenic-ratio', 'fat=120g', 'protein=25g', 'carbohydrate=15g'],
    gives: { ratio: [3, 1e-9], 'energy from fat': [(1080 / 1240) * 100, 1e-9] },
  },
  {
    source: 'a 4 to 1 diet has 90 percent of its energy from fat',
    call: ['energy-from-fat', 'ratio=4'],
    gives: { 'energy from fat': [90, 1e-9] },
  },
  {
    source: 'common practice: 15 g a choice',
    call: ['carbohydrate-choices', 'carbohydrate=37g'],
    gives: { choices: [37 / 15, 1e-9], 'shown as': [2.5, 0] },
  },
  {
    source: 'exchange lists, common practice, from memory: starch 15 g, 3 g and 80 kcal; fat 5 g and 45 kcal',
    call: ['exchanges', 'starch=2', 'fat=1'],
    gives: { carbohydrate: [30, 0], protein: [6, 0], energy: [205, 0] },
  },
  {
    source: 'US standard drink: 12 fl oz of beer of 5 percent hold 14 g',
    call: ['alcohol', 'volume=12 fl oz', 'strength=5%'],
    gives: { alcohol: [14, 0.1], 'standard drinks': [1, 0.01] },
  },
  {
    source: 'NIH Office of Dietary Supplements: 800 IU of vitamin D are 20 µg',
    call: ['iu', 'form=vitamin D', 'amount=800IU'],
    gives: { mass: [20, 1e-9] },
  },
  {
    source: `${SR}, record 16347: 1 cup of 169 g`,
    call: ['grams', 'food=pinto beans, canned, drained and rinsed', 'amount=2 cups'],
    gives: { weight: [338, 1e-9] },
  },
  {
    source: `${SR}: 212 mg in 100 g, 169 g a cup`,
    call: ['nutrient', 'food=pinto beans, canned, drained and rinsed', 'nutrient=sodium', 'amount=1 cup'],
    gives: { sodium: [358.28, 1e-9] },
  },
  {
    source: `${SR}: 239 mg in 100 g, 169 g a cup`,
    call: [
      'nutrient-on-basis',
      ...['food=pinto beans, canned, drained', 'nutrient=sodium', 'basis=1 cup, ready to eat'],
    ],
    gives: { sodium: [403.91, 1e-9] },
  },
  {
    source: 'Dietary Guidelines for Americans, 2020-2025: half a cup of dried fruit is a cup-equivalent',
    call: ['equivalents', 'food=raisins', 'amount=1/4 cup', 'edition=us-2020'],
    gives: { fruit: [0.5, 1e-9], 'counts as': 'dried fruit' },
  },
  {
    source: 'NIST Handbook 44, Appendix C: the pound is 453.59237 g exactly',
    call: ['convert', 'amount=2 lb', 'to=g'],
    gives: { amount: [907.18474, 1e-9] },
  },
  {
    source: 'NIST Handbook 44, Appendix C: a cup is 236.588 mL',
    call: ['convert', 'amount=1 cup', 'to=mL'],
    gives: { amount: [236.588, 0.001] },
  },
  {
    source: 'common practice in Australia: a tablespoon of 20 mL',
    call: ['kitchen', 'region=AU'],
    gives: { cup: [250, 0], tbsp: [20, 0], tsp: [5, 0] },
  },
  {
    source: 'by hand: a third of 236.588 mL',
    call: ['pourable', 'volume=80mL'],
    gives: { pour: '1/3 cup', 'that is': [78.863, 0.001] },
  },
  {
    source: 'USDA Table of Nutrient Retention Factors, release 6, code 3005: 55 percent of vitamin C',
    call: ['retention', 'code=3005', 'nutrient=vitamin C', 'amount=200mg'],
    gives: { 'after cooking': [110, 1e-9] },
  },
  {
    source: 'the same code, with a yield of 0.9, by hand',
    call: ['cooked-per-100g', 'code=3005', 'nutrient=vitamin C', 'amount=30mg', 'yield=0.9'],
    gives: { 'in 100 g cooked': [(30 * 0.55) / 0.9, 1e-9] },
  },
  {
    source: 'USDA Table of Cooking Yields for Meat and Poultry, 2014, as seen in copies: bacon',
    call: ['cooking-yield', 'food=bacon pan fried'],
    gives: { 'pork, cured, bacon, pan-fried': [0.32, 0.03] },
  },
  {
    source: 'by hand',
    call: ['weighed-yield', 'before=1 lb', 'after=12 oz'],
    gives: { yield: [0.75, 1e-9] },
  },
  {
    source: 'Jones and Mount 2009: draining takes 36 percent of 440 mg at most; others found 8',
    call: ['rinse', 'kind=beans', 'treatment=drained', 'label=440mg'],
    gives: { left: [[281.6, 404.8], 0.1], gone: [[35.2, 158.4], 0.1] },
  },
  {
    source: 'Jones and Mount 2009: up to 41 percent by draining and rinsing',
    call: ['rinse-claim', 'kind=beans', 'says=up to', 'share=41%'],
    gives: { 'the claim': 'holds' },
  },
  {
    source: `${SR}: 277 g drained of 442 g`,
    call: ['drained-weight', 'kind=pinto beans'],
    gives: { 'drained share': [277 / 442, 1e-4] },
  },
  {
    source: 'USDA Economic Research Service 2022: fresh cherries, 1.73 dollars a cup',
    call: ['cost-of-a-cup', 'price=4.66', 'size=1 lb', 'eaten=0.342 lb', 'yields=0.92'],
    gives: { cost: [173.2, 0.1] },
  },
  {
    source: 'USDA Economic Research Service 2022: canned cherries, 3.56 dollars a cup',
    call: ['cost', 'price=5.24', 'size=1 lb', 'eaten=0.441 lb', 'yields=0.65'],
    gives: { cost: [355.5, 0.5] },
  },
  {
    source: 'by hand: the cap keeps two of ten dollars back; 18 dollars buy 10 cups at 1.73',
    call: ['tokens', 'own=10.00', 'match=1 to 1', 'cap=8.00', 'token=1.00', 'cost-of-a-cup=1.73'],
    gives: { matched: [800, 0], together: [1800, 0], 'whole cups': [10, 0] },
  },
];
