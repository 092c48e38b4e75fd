import type { Expected } from './expected.js';

const DRI = 'National Academies, Dietary Reference Intakes, summary tables';
const DGA = 'Dietary Guidelines for Americans, 2020-2025';

/** Reference intakes, guidance and activity, as the tables print them. */
export const INTAKES: readonly Expected[] = [
  {
    source: DRI,
    call: ['rda', 'nutrient=calcium', 'age=60', 'sex=female'],
    gives: { 'recommended dietary allowance': [1200, 0] },
  },
  {
    source: DRI,
    call: ['rda', 'nutrient=iron', 'age=25', 'sex=female', 'state=pregnancy'],
    gives: { 'recommended dietary allowance': [27, 0] },
  },
  {
    source: DRI,
    call: ['ear', 'nutrient=vitamin C', 'age=25', 'sex=male'],
    gives: { 'estimated average requirement': [75, 0] },
  },
  {
    source: DRI,
    call: ['upper-limit', 'nutrient=magnesium', 'age=25', 'sex=male'],
    gives: { 'tolerable upper intake level': [350, 0] },
  },
  {
    source: 'National Academies 2019, sodium and potassium',
    call: ['cdrr', 'age=40', 'sex=female'],
    gives: { 'chronic disease risk reduction intake': [2300, 0] },
  },
  {
    source: 'National Academies 2019: 2600 mg of potassium are adequate for women',
    call: ['reference-intake-percent', 'nutrient=potassium', 'amount=1.3g', 'age=30', 'sex=female'],
    gives: { 'percent of the intake': [50, 1e-9] },
  },
  {
    source: `${DRI}: 2500 mg of calcium`,
    call: [
      'against-upper-limit',
      ...['nutrient=calcium', 'amount=2000mg', 'counted=all food', 'age=40', 'sex=male'],
    ],
    gives: { 'the amount is': 'within' },
  },
  {
    source: `${DRI}, 2001: 18 mg × 1.8`,
    call: ['meatless-intake', 'nutrient=iron', 'age=30', 'sex=female'],
    gives: { allowance: [32.4, 1e-9] },
  },
  {
    source: `${DGA}, table A1-2`,
    call: ['guidance-pattern', 'edition=us-2020', 'energy=2000kcal'],
    gives: { vegetables: [[2.5, 2.5], 0], fruit: [[2, 2], 0], grains: [[6, 6], 0] },
  },
  {
    source: `${DGA}: less than 10 percent of the energy`,
    call: ['guidance-limit', 'edition=us-2020', 'topic=added sugars'],
    gives: { 'added sugars': [10, 0] },
  },
  {
    source: `${DGA}, table A2-1`,
    call: [
      'guidance-energy-need',
      ...['edition=us-2020', 'sex=female', 'age=30', 'activity=moderately active'],
    ],
    gives: { 'energy level': [2000, 0] },
  },
  {
    source: 'definition: 1 MET is 1 kcal per kg and hour; 3 × 70 × 0.5',
    call: ['met', 'activity=walking, 2.5 mph', 'edition=2024', 'weight=70kg', 'minutes=30'],
    gives: { energy: [105, 1e-9], 'metabolic equivalent': [3, 0] },
  },
  {
    source: 'Physical Activity Guidelines for Americans, 2018: a vigorous minute counts as two',
    call: ['aerobic-week', 'moderate=30; 30', 'vigorous=30'],
    gives: { 'moderate equivalents': [120, 0], '150 minutes reached': 'no', 'missing to 150': [30, 0] },
  },
  {
    source: 'the same guidelines: strength on two days; balance for older adults',
    call: [
      'activity-week',
      'moves=1 moderate 50; 3 moderate 50; 5 moderate 50; 2 strength; 4 strength',
      'group=older adult',
    ],
    gives: { '150 minutes reached': 'yes', 'days with strength work': [2, 0], 'balance work': 'no' },
  },
  {
    source: 'the same guidelines: 60 minutes a day from 6 to 17 years',
    call: ['child-week', 'minutes=60; 75; 20; unknown; 45; 90; 60'],
    gives: { 'days with 60 minutes': [4, 0], 'days not known': [1, 0] },
  },
];
