import type { Expected } from './expected.js';

const HALL = 'Hall KD et al. Lancet 2011;378:826-37, web appendix, and its numbers by Runge-Kutta';
const MIFFLIN = 'Mifflin MD et al. Am J Clin Nutr 1990;51:241-7, by hand';
const NEED_2023 = 'National Academies 2023, DRI for Energy, Table S-2';
const WOMAN = ['sex=female', 'age=40', 'height=165cm', 'weight=80kg', 'activity=1.5'] as const;

/** The published values of the tests of the core, asked for on the command line. */
export const PEOPLE: readonly Expected[] = [
  {
    source: MIFFLIN,
    call: ['resting-energy', 'sex=male', 'age=45', 'height=178cm', 'weight=90kg'],
    gives: { 'resting energy': [1792.5, 0.5], equation: 'Mifflin-St Jeor 1990, simplified form' },
  },
  {
    source: 'the same woman in pounds and feet: 40 years, 165 cm, 80 kg give 1470.25 kcal',
    call: ['resting-energy', 'sex=female', 'age=40', 'height=1.65m', 'weight=176.37 lb'],
    gives: { 'resting energy': [1470.25, 0.5] },
  },
  {
    source: 'regression form, printed as 1508 in a worked example of the equation',
    call: ['mifflin', 'sex=female', 'age=25', 'height=178cm', 'weight=68kg', 'form=regression'],
    gives: { 'resting energy': [1507.82, 1] },
  },
  {
    source: 'what is not known stays not known',
    call: ['resting-energy', 'sex=male', 'age=45', 'height=unknown', 'weight=90kg'],
    gives: { 'resting energy': null },
  },
  {
    source: 'Henry CJK. Public Health Nutr 2005;8:1133-52',
    call: ['oxford-energy', 'sex=male', 'age=45', 'weight=90kg'],
    gives: { 'basal energy': [1871, 1] },
  },
  {
    source: 'Henry 2005; the constant from memory',
    call: ['oxford-energy', 'sex=male', 'age=25', 'height=180cm', 'weight=80kg', 'form=weight-and-height'],
    gives: { 'basal energy': [1828.4, 1] },
  },
  {
    source: NEED_2023,
    call: ['energy-need', 'sex=male', 'age=30', 'height=170cm', 'weight=70kg', 'activity=inactive'],
    gives: { 'energy need': [2520.17, 1] },
  },
  {
    source: `${NEED_2023}; the constant below zero`,
    call: ['eer', 'sex=male', 'age=30', 'height=178cm', 'weight=80kg', 'activity=very-active'],
    gives: { 'energy need': [3464.6, 1] },
  },
  {
    source: 'IOM 2002/2005, table of needs at age 30, prints 1625',
    call: [
      'energy-need-2005',
      'sex=female',
      'age=30',
      'height=1.5m',
      'weight=41.625kg',
      'activity=sedentary',
    ],
    gives: { 'energy need': [1625, 3] },
  },
  {
    source: 'Health Canada, DRI tables: active from 1.68',
    call: ['activity-level', 'level=1.68'],
    gives: { activity: 'active' },
  },
  {
    source: 'CDC cut points: 29.95 prints as 30.0 and is still overweight',
    call: ['bmi', 'height=65in', 'weight=180lb', 'age=40'],
    gives: { 'body mass index': [29.953, 0.01], class: 'overweight' },
  },
  {
    source: 'the same height as 5 ft 5 in',
    call: ['body-mass-index', 'height=5 ft 5 in', 'weight=180 lb'],
    gives: { 'body mass index': [29.953, 0.01] },
  },
  {
    source: `${HALL}; 12.65 MJ a day is the published baseline`,
    call: ['weight-baseline', 'sex=male', 'age=23', 'height=180cm', 'weight=100kg', 'activity=1.5'],
    gives: {
      fat: [27.238, 0.01],
      'intake that keeps the weight': [12650 / 4.184, 5],
      'moving about': [29.52, 0.1],
      'rest of the day': [5076, 50],
    },
  },
  {
    source: HALL,
    call: ['weight-course', ...WOMAN, 'change=-500kcal', 'day=365'],
    gives: { weight: [66.26, 0.3], 'change of weight': [-13.74, 0.3] },
  },
  {
    source: HALL,
    call: ['weight-course', ...WOMAN, 'change=-250 kcal', 'day=1095'],
    gives: { weight: [68.42, 0.3] },
  },
  {
    source: `${HALL}: 5 MJ a day less than 12.65 MJ for 180 days, then 10.9 MJ`,
    call: [
      'weight-course',
      ...['sex=male', 'age=23', 'height=180cm', 'weight=100kg', 'activity=1.5'],
      ...['change=-5000kJ', 'day=365', 'later-change=-1750kJ', 'later-day=180'],
    ],
    gives: { weight: [80.71, 0.3], pace: 'never drawn' },
  },
  {
    source: 'Hall 2011, its model at the corners of the band; its rule of thumb, 6.3 kg, lies between',
    call: ['weight-band', ...WOMAN.slice(0, 4), 'change=-300kcal', 'month=12'],
    gives: { 'change of weight': [[-8.6, -5.81], 0.3], 'pace of its fastest course': 'ok' },
  },
  {
    source: `${HALL}: 250 kcal a day less reaches 73.19 kg on day 365`,
    call: ['constant-change', ...WOMAN, 'goal=73.19kg', 'days=365'],
    gives: { 'change of intake': [-250, 10] },
  },
  {
    source: 'Hall 2011, web appendix, table of the straight form: 83.3, 507 and 351 at 30 kg of fat',
    call: ['linear-weight', 'fat=30kg', 'moving=30'],
    gives: {
      'expenditure follows each kg by': [83.3, 1],
      'time in which 63 percent comes': [507, 2],
      'half time': [351, 2],
    },
  },
  {
    source: 'Hall 2011: 100 kJ a day per kg, half in about one year, 95 percent in about three',
    call: ['weight-rule-of-thumb', 'change=-500kJ'],
    gives: {
      'in the end': [-5, 0.01],
      'after about one year': [-2.5, 0.01],
      'after about three years': [-4.75, 0.01],
    },
  },
  {
    source: 'Wishnofsky 1958, shown wrong since: 500 kcal for 7 days would be a pound',
    call: ['static-rule', 'change=500kcal', 'days=7'],
    gives: { 'change of weight': [1, 0.05] },
  },
  {
    source: 'common practice: half a pound a week while 15 lb or less are left',
    call: ['eased-pace', 'age=40', 'height=165cm', 'weight=200lb', 'lose=10lb'],
    gives: { '10 lb lost after': [20, 0] },
  },
  {
    source: 'common practice: at 57.5 lb, halfway between 15 and 100, 1.25 lb a week',
    call: ['pace-at', 'left=57.5lb', 'weight=200lb'],
    gives: { pace: [1.25, 1e-9] },
  },
  { source: 'CDC, 1 to 2 lb a week', call: ['weekly-pace', 'loss=2.5lb'], gives: { pace: 'too fast' } },
  {
    source: '2013 AHA/ACC/TOS guideline, recommendation 3a',
    call: ['intake-floor', 'sex=female', 'intake=1150kcal'],
    gives: { intake: 'below guideline range' },
  },
  {
    source: '2013 AHA/ACC/TOS guideline: 3 to 5 percent',
    call: ['useful-loss', 'weight=90kg'],
    gives: { 'useful loss': [[2.7, 4.5], 0.01] },
  },
];
