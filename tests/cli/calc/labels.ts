import type { Expected } from './expected.js';

const FAST = ['per=85g', 'reference=85g', 'serving=85g'] as const;

/** Labels and claims, by the rules as they are printed. */
export const LABELED: readonly Expected[] = [
  {
    source: '21 CFR 101.9(c)(9): the Daily Value of sodium is 2300 mg',
    call: ['daily-value-percent', 'nutrient=sodium', 'amount=460mg'],
    gives: { 'percent of the Daily Value': [20, 1e-9], 'a label declares': [20, 0], 'that is': 'high' },
  },
  {
    source: '21 CFR 101.9(c)(8)(iv): vitamin D 20 µg, for children of 1 to 3 years 15 µg',
    call: ['dv', 'nutrient=vitamin D', 'amount=3µg', 'group=children'],
    gives: { 'percent of the Daily Value': [20, 1e-9], 'Daily Value': [15, 0] },
  },
  {
    source: 'what is not known stays not known',
    call: ['dv', 'nutrient=iron', 'amount=unknown'],
    gives: { 'percent of the Daily Value': null },
  },
  {
    source: '21 CFR 101.9(c)(3): from 2 to 5 mg, less than 5',
    call: ['label-rounding', 'nutrient=cholesterol', 'amount=3mg'],
    gives: { 'a label declares': 'less than 5 mg' },
  },
  {
    source: '21 CFR 101.9(c)(4): above 140 mg to the nearest 10',
    call: ['label-rounding', 'nutrient=sodium', 'amount=0.447 g'],
    gives: { 'a label declares': '450 mg' },
  },
  {
    source: '21 CFR 101.9(c)(1): up to 50 kcal to the nearest 5',
    call: ['label-rounding', 'nutrient=calories', 'amount=47kcal'],
    gives: { 'a label declares': '45 kcal' },
  },
  {
    source: 'Regulation (EU) 1169/2011, Annex I: salt = sodium × 2.5',
    call: ['salt', 'sodium=400mg'],
    gives: { salt: [1, 1e-9] },
  },
  {
    source: 'the same turned around',
    call: ['sodium-from-salt', 'salt=6g'],
    gives: { sodium: [2400, 1e-9] },
  },
  {
    source: '21 CFR 101.61(b)(4): low sodium is 140 mg or less in a reference amount',
    call: ['us-claim', 'claim=low sodium', ...FAST, 'sodium=141mg'],
    gives: { 'low sodium, allowed': 'no' },
  },
  {
    source: '21 CFR 101.61(b)(2): very low sodium is 35 mg or less, and free is less than 5 mg',
    call: ['us-claim', 'about=sodium', ...FAST, 'sodium=35mg'],
    gives: { 'very low sodium, allowed': 'yes' },
  },
  {
    source: 'Regulation (EC) 1924/2006, Annex: low sodium is 0.12 g in 100 g',
    call: ['eu-claim', 'claim=low salt', 'per=100g', 'sodium=121mg'],
    gives: { 'low salt, allowed': 'no' },
  },
  {
    source: 'Codex CXG 23-1997: low sodium is 120 mg in 100 g',
    call: ['codex-claim', 'claim=low sodium', 'per=50g', 'sodium=60mg'],
    gives: { 'low sodium, allowed': 'yes', 'sodium, 100 g': [120, 1e-9] },
  },
  {
    source: '21 CFR 101.65(d)(3): mixed product, at most 15 percent of 2300 mg of sodium',
    call: [
      'healthy-claim',
      ...['kind=mixed product', 'holds-group=yes', 'per=100g', 'reference=100g', 'day=2030-01-01'],
      ...['added-sugars=5g', 'sodium=346mg', 'saturated-fat=2g'],
    ],
    gives: { 'healthy, allowed': 'no' },
  },
  {
    source: '21 CFR 101.61(b)(6): reduced is at least 25 percent less',
    call: ['less-claim', 'food=451mg', 'reference=600mg'],
    gives: { 'reduced or less (25 percent)': 'no', less: [24.8333, 0.001] },
  },
  {
    source: 'Regulation (EC) 1924/2006, Annex: reduced is at least 30 percent less',
    call: ['least-reduction', 'rules=eu', 'about=fat'],
    gives: { 'at least less': [30, 0] },
  },
  {
    source: '21 CFR 101.56(b)(1): half the energy from fat, so fat is at least halved',
    call: ['light-claim', 'fat=6g', 'energy=100kcal', 'reference-fat=10g', 'reference-energy=150kcal'],
    gives: { light: 'no', 'energy of the named food that comes from fat': [60, 1e-9] },
  },
  {
    source: '21 CFR 101.54(b) and (c): high from 20 percent, good source from 10; fiber 28 g',
    call: ['source-claim', 'nutrient=fiber', 'amount=2.8g', 'low-fat=yes'],
    gives: { word: 'good source', 'percent of the Daily Value': [10, 1e-9] },
  },
  {
    source: '21 CFR 101.54(e): more is at least 10 percent of the Daily Value, 1300 mg for calcium',
    call: ['more-claim', 'nutrient=calcium', 'food=299mg', 'reference=170mg'],
    gives: { allowed: 'no' },
  },
  {
    source: '21 CFR 101.60(c)(2)(ii): no ingredient that brings sugar, such as juice concentrate',
    call: [
      'no-added-sugars',
      ...['sugar-added=no', 'sugary-ingredient=yes', 'process-raises-sugars=no', 'usually-sweetened=yes'],
    ],
    gives: { allowed: 'no' },
  },
  {
    source: '21 CFR 101.61(c)(2): no salt added in making',
    call: ['no-salt-added', 'salt-added=yes', 'usually-salted=yes'],
    gives: { allowed: 'no' },
  },
  {
    source: '21 CFR 101.91(a)(3): less than 20 ppm',
    call: [
      'gluten-free-claim',
      ...['gluten=20ppm', 'gluten-grain=no', 'untreated-derivative=no', 'fermented=no'],
    ],
    gives: { allowed: 'no' },
  },
  {
    source: '7 CFR 205.301(c): from 70 percent, made with organic; water and salt are left out',
    call: ['organic-claim', 'organic=56g', 'all=100g', 'water-and-salt=20g'],
    gives: { organic: [70, 1e-9], wording: 'made with organic (specified ingredients)' },
  },
  {
    source: '21 CFR 101.12(b), table 2: pickles 30 g; small is 30 g or less',
    call: ['racc', 'kind=pickles'],
    gives: { 'reference amount': [30, 0], small: 'yes' },
  },
];
