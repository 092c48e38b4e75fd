import type { Checked } from './published.js';

/**
 * The Dietary Reference Intakes of the National Academies for the United States and Canada, by life stage.
 * Each list follows `LIFE_STAGES`: infants 0 to 6 and 6 to 12 months; children 1 to 3 and 4 to 8; males 9 to 13,
 * 14 to 18, 19 to 30, 31 to 50, 51 to 70, over 70; females the same; pregnancy 14 to 18, 19 to 30, 31 to 50;
 * lactation the same. A value that the reports do not set is `-`; it is never zero.
 */

/** The reports, by the short names that the rows use. */
export const INTAKE_REPORTS = {
  'calcium-1997': 'DRI for calcium, phosphorus, magnesium, vitamin D and fluoride, 1997',
  'b-1998':
    'DRI for thiamin, riboflavin, niacin, B6, folate, B12, pantothenic acid, biotin and choline, 1998',
  'antioxidants-2000': 'DRI for vitamin C, vitamin E, selenium and carotenoids, 2000',
  'micronutrients-2001': 'DRI for vitamin A, vitamin K, iron, zinc, iodine and other elements, 2001',
  'macronutrients-2005': 'DRI for energy, carbohydrate, fiber, fat, fatty acids and protein, 2002/2005',
  'water-2005': 'DRI for water, potassium, sodium, chloride and sulfate, 2005',
  'calcium-2011': 'DRI for calcium and vitamin D, 2011',
  'sodium-2019': 'DRI for sodium and potassium, 2019',
} as const;

/** One value a life stage, in the order of `LIFE_STAGES`, with blanks between; `-` is a value that is not set. */
export type ByLifeStage = string;

export interface IntakeRow {
  /** Per day. */
  readonly unit: 'g' | 'mg' | 'µg' | 'L';
  readonly report: keyof typeof INTAKE_REPORTS;
  /** What the unit counts, where one mass of the nutrient is not like another. */
  readonly counts?: 'RAE' | 'DFE' | 'NE' | 'alpha-tocopherol';
  /** Estimated average requirement. */
  readonly requirement?: ByLifeStage;
  /** Estimated average requirement in g per kg of body weight. */
  readonly requirementPerKg?: ByLifeStage;
  /** Recommended dietary allowance. */
  readonly allowance?: ByLifeStage;
  /** Adequate intake, where an allowance could not be set. */
  readonly adequate?: ByLifeStage;
  /** Tolerable upper intake level. */
  readonly upper?: ByLifeStage;
  /** What the upper level counts, where it is not all of the nutrient in all food; from memory. */
  readonly upperCounts?: string;
  /** Chronic disease risk reduction intake: lower an intake that is above it. It is no upper level. */
  readonly reduction?: ByLifeStage;
  readonly note?: string;
}

/**
 * How the table was checked: allowances, adequate intakes and upper levels were compared, 156 cells, in two
 * independent public tables, and sodium and potassium in copies of the 2019 report. The 2011 report's text sets
 * an adequate intake of vitamin D for infants; its summary table lost the mark, and some copies call it an
 * allowance. Chloride and water still stand as in 2005.
 */
export const INTAKES_CHECKED: Checked = 'copies';

const TABLE = {
  fat: {
    unit: 'g',
    report: 'macronutrients-2005',
    adequate: '31 30 - - - - - - - - - - - - - - - - - - - -',
  },
  'linoleic acid': {
    unit: 'g',
    report: 'macronutrients-2005',
    adequate: '4.4 4.6 7 10 12 16 17 17 14 14 10 11 12 12 11 11 13 13 13 13 13 13',
  },
  'alpha-linolenic acid': {
    unit: 'g',
    report: 'macronutrients-2005',
    adequate: '0.5 0.5 0.7 0.9 1.2 1.6 1.6 1.6 1.6 1.6 1 1.1 1.1 1.1 1.1 1.1 1.4 1.4 1.4 1.3 1.3 1.3',
  },
  carbohydrate: {
    unit: 'g',
    report: 'macronutrients-2005',
    requirement: '- - 100 100 100 100 100 100 100 100 100 100 100 100 100 100 135 135 135 160 160 160',
    allowance: '- - 130 130 130 130 130 130 130 130 130 130 130 130 130 130 175 175 175 210 210 210',
    adequate: '60 95 - - - - - - - - - - - - - - - - - - - -',
  },
  fiber: {
    unit: 'g',
    report: 'macronutrients-2005',
    adequate: '- - 19 25 31 38 38 38 30 30 26 26 25 25 21 21 28 28 28 29 29 29',
  },
  protein: {
    unit: 'g',
    report: 'macronutrients-2005',
    requirementPerKg:
      '- 1 0.87 0.76 0.76 0.73 0.66 0.66 0.66 0.66 0.76 0.71 0.66 0.66 0.66 0.66 0.88 0.88 0.88 1.05 1.05 1.05',
    allowance: '- 11 13 19 34 52 56 56 56 56 34 46 46 46 46 46 71 71 71 71 71 71',
    adequate: '9.1 - - - - - - - - - - - - - - - - - - - - -',
    note: 'the allowance is for the reference body weight',
  },
  water: {
    unit: 'L',
    report: 'water-2005',
    adequate: '0.7 0.8 1.3 1.7 2.4 3.3 3.7 3.7 3.7 3.7 2.1 2.3 2.7 2.7 2.7 2.7 3 3 3 3.8 3.8 3.8',
    note: 'from all drinks and food',
  },
  'vitamin A': {
    unit: 'µg',
    report: 'micronutrients-2001',
    counts: 'RAE',
    requirement: '- - 210 275 445 630 625 625 625 625 420 485 500 500 500 500 530 550 550 885 900 900',
    allowance: '- - 300 400 600 900 900 900 900 900 600 700 700 700 700 700 750 770 770 1200 1300 1300',
    adequate: '400 500 - - - - - - - - - - - - - - - - - - - -',
    upper:
      '600 600 600 900 1700 2800 3000 3000 3000 3000 1700 2800 3000 3000 3000 3000 2800 3000 3000 2800 3000 3000',
    upperCounts: 'preformed vitamin A only',
  },
  'vitamin C': {
    unit: 'mg',
    report: 'antioxidants-2000',
    requirement: '- - 13 22 39 63 75 75 75 75 39 56 60 60 60 60 66 70 70 96 100 100',
    allowance: '- - 15 25 45 75 90 90 90 90 45 65 75 75 75 75 80 85 85 115 120 120',
    adequate: '40 50 - - - - - - - - - - - - - - - - - - - -',
    upper:
      '- - 400 650 1200 1800 2000 2000 2000 2000 1200 1800 2000 2000 2000 2000 1800 2000 2000 1800 2000 2000',
  },
  'vitamin D': {
    unit: 'µg',
    report: 'calcium-2011',
    requirement: '- - 10 10 10 10 10 10 10 10 10 10 10 10 10 10 10 10 10 10 10 10',
    allowance: '- - 15 15 15 15 15 15 15 20 15 15 15 15 15 20 15 15 15 15 15 15',
    adequate: '10 10 - - - - - - - - - - - - - - - - - - - -',
    upper: '25 38 63 75 100 100 100 100 100 100 100 100 100 100 100 100 100 100 100 100 100 100',
  },
  'vitamin E': {
    unit: 'mg',
    report: 'antioxidants-2000',
    counts: 'alpha-tocopherol',
    requirement: '- - 5 6 9 12 12 12 12 12 9 12 12 12 12 12 12 12 12 16 16 16',
    allowance: '- - 6 7 11 15 15 15 15 15 11 15 15 15 15 15 15 15 15 19 19 19',
    adequate: '4 5 - - - - - - - - - - - - - - - - - - - -',
    upper: '- - 200 300 600 800 1000 1000 1000 1000 600 800 1000 1000 1000 1000 800 1000 1000 800 1000 1000',
    upperCounts: 'supplemental alpha-tocopherol',
  },
  'vitamin K': {
    unit: 'µg',
    report: 'micronutrients-2001',
    adequate: '2 2.5 30 55 60 75 120 120 120 120 60 75 90 90 90 90 75 90 90 75 90 90',
  },
  thiamin: {
    unit: 'mg',
    report: 'b-1998',
    requirement: '- - 0.4 0.5 0.7 1 1 1 1 1 0.7 0.9 0.9 0.9 0.9 0.9 1.2 1.2 1.2 1.2 1.2 1.2',
    allowance: '- - 0.5 0.6 0.9 1.2 1.2 1.2 1.2 1.2 0.9 1 1.1 1.1 1.1 1.1 1.4 1.4 1.4 1.4 1.4 1.4',
    adequate: '0.2 0.3 - - - - - - - - - - - - - - - - - - - -',
  },
  riboflavin: {
    unit: 'mg',
    report: 'b-1998',
    requirement: '- - 0.4 0.5 0.8 1.1 1.1 1.1 1.1 1.1 0.8 0.9 0.9 0.9 0.9 0.9 1.2 1.2 1.2 1.3 1.3 1.3',
    allowance: '- - 0.5 0.6 0.9 1.3 1.3 1.3 1.3 1.3 0.9 1 1.1 1.1 1.1 1.1 1.4 1.4 1.4 1.6 1.6 1.6',
    adequate: '0.3 0.4 - - - - - - - - - - - - - - - - - - - -',
  },
  niacin: {
    unit: 'mg',
    report: 'b-1998',
    counts: 'NE',
    requirement: '- - 5 6 9 12 12 12 12 12 9 11 11 11 11 11 14 14 14 13 13 13',
    allowance: '- - 6 8 12 16 16 16 16 16 12 14 14 14 14 14 18 18 18 17 17 17',
    adequate: '2 4 - - - - - - - - - - - - - - - - - - - -',
    upper: '- - 10 15 20 30 35 35 35 35 20 30 35 35 35 35 30 35 35 30 35 35',
    upperCounts: 'supplements and fortified food',
  },
  'vitamin B6': {
    unit: 'mg',
    report: 'b-1998',
    requirement: '- - 0.4 0.5 0.8 1.1 1.1 1.1 1.4 1.4 0.8 1 1.1 1.1 1.3 1.3 1.6 1.6 1.6 1.7 1.7 1.7',
    allowance: '- - 0.5 0.6 1 1.3 1.3 1.3 1.7 1.7 1 1.2 1.3 1.3 1.5 1.5 1.9 1.9 1.9 2 2 2',
    adequate: '0.1 0.3 - - - - - - - - - - - - - - - - - - - -',
    upper: '- - 30 40 60 80 100 100 100 100 60 80 100 100 100 100 80 100 100 80 100 100',
  },
  folate: {
    unit: 'µg',
    report: 'b-1998',
    counts: 'DFE',
    requirement: '- - 120 160 250 330 320 320 320 320 250 330 320 320 320 320 520 520 520 450 450 450',
    allowance: '- - 150 200 300 400 400 400 400 400 300 400 400 400 400 400 600 600 600 500 500 500',
    adequate: '65 80 - - - - - - - - - - - - - - - - - - - -',
    upper: '- - 300 400 600 800 1000 1000 1000 1000 600 800 1000 1000 1000 1000 800 1000 1000 800 1000 1000',
    upperCounts: 'folic acid from supplements and fortified food',
  },
  'vitamin B12': {
    unit: 'µg',
    report: 'b-1998',
    requirement: '- - 0.7 1 1.5 2 2 2 2 2 1.5 2 2 2 2 2 2.2 2.2 2.2 2.4 2.4 2.4',
    allowance: '- - 0.9 1.2 1.8 2.4 2.4 2.4 2.4 2.4 1.8 2.4 2.4 2.4 2.4 2.4 2.6 2.6 2.6 2.8 2.8 2.8',
    adequate: '0.4 0.5 - - - - - - - - - - - - - - - - - - - -',
  },
  'pantothenic acid': {
    unit: 'mg',
    report: 'b-1998',
    adequate: '1.7 1.8 2 3 4 5 5 5 5 5 4 5 5 5 5 5 6 6 6 7 7 7',
  },
  biotin: {
    unit: 'µg',
    report: 'b-1998',
    adequate: '5 6 8 12 20 25 30 30 30 30 20 25 30 30 30 30 30 30 30 35 35 35',
  },
  choline: {
    unit: 'mg',
    report: 'b-1998',
    adequate: '125 150 200 250 375 550 550 550 550 550 375 400 425 425 425 425 450 450 450 550 550 550',
    upper:
      '- - 1000 1000 2000 3000 3500 3500 3500 3500 2000 3000 3500 3500 3500 3500 3000 3500 3500 3000 3500 3500',
  },
  calcium: {
    unit: 'mg',
    report: 'calcium-2011',
    requirement:
      '- - 500 800 1100 1100 800 800 800 1000 1100 1100 800 800 1000 1000 1000 800 800 1000 800 800',
    allowance:
      '- - 700 1000 1300 1300 1000 1000 1000 1200 1300 1300 1000 1000 1200 1200 1300 1000 1000 1300 1000 1000',
    adequate: '200 260 - - - - - - - - - - - - - - - - - - - -',
    upper:
      '1000 1500 2500 2500 3000 3000 2500 2500 2000 2000 3000 3000 2500 2500 2000 2000 3000 2500 2500 3000 2500 2500',
  },
  chromium: {
    unit: 'µg',
    report: 'micronutrients-2001',
    adequate: '0.2 5.5 11 15 25 35 35 35 30 30 21 24 25 25 20 20 29 30 30 44 45 45',
  },
  copper: {
    unit: 'µg',
    report: 'micronutrients-2001',
    requirement: '- - 260 340 540 685 700 700 700 700 540 685 700 700 700 700 785 800 800 985 1000 1000',
    allowance: '- - 340 440 700 890 900 900 900 900 700 890 900 900 900 900 1000 1000 1000 1300 1300 1300',
    adequate: '200 220 - - - - - - - - - - - - - - - - - - - -',
    upper:
      '- - 1000 3000 5000 8000 10000 10000 10000 10000 5000 8000 10000 10000 10000 10000 8000 10000 10000 8000 10000 10000',
  },
  fluoride: {
    unit: 'mg',
    report: 'calcium-1997',
    adequate: '0.01 0.5 0.7 1 2 3 4 4 4 4 2 3 3 3 3 3 3 3 3 3 3 3',
    upper: '0.7 0.9 1.3 2.2 10 10 10 10 10 10 10 10 10 10 10 10 10 10 10 10 10 10',
  },
  iodine: {
    unit: 'µg',
    report: 'micronutrients-2001',
    requirement: '- - 65 65 73 95 95 95 95 95 73 95 95 95 95 95 160 160 160 209 209 209',
    allowance: '- - 90 90 120 150 150 150 150 150 120 150 150 150 150 150 220 220 220 290 290 290',
    adequate: '110 130 - - - - - - - - - - - - - - - - - - - -',
    upper: '- - 200 300 600 900 1100 1100 1100 1100 600 900 1100 1100 1100 1100 900 1100 1100 900 1100 1100',
  },
  iron: {
    unit: 'mg',
    report: 'micronutrients-2001',
    requirement: '- 6.9 3 4.1 5.9 7.7 6 6 6 6 5.7 7.9 8.1 8.1 5 5 23 22 22 7 6.5 6.5',
    allowance: '- 11 7 10 8 11 8 8 8 8 8 15 18 18 8 8 27 27 27 10 9 9',
    adequate: '0.27 - - - - - - - - - - - - - - - - - - - - -',
    upper: '40 40 40 40 40 45 45 45 45 45 40 45 45 45 45 45 45 45 45 45 45 45',
  },
  magnesium: {
    unit: 'mg',
    report: 'calcium-1997',
    requirement: '- - 65 110 200 340 330 350 350 350 200 300 255 265 265 265 335 290 300 300 255 265',
    allowance: '- - 80 130 240 410 400 420 420 420 240 360 310 320 320 320 400 350 360 360 310 320',
    adequate: '30 75 - - - - - - - - - - - - - - - - - - - -',
    upper: '- - 65 110 350 350 350 350 350 350 350 350 350 350 350 350 350 350 350 350 350 350',
    upperCounts: 'supplements and medicines only',
  },
  manganese: {
    unit: 'mg',
    report: 'micronutrients-2001',
    adequate: '0.003 0.6 1.2 1.5 1.9 2.2 2.3 2.3 2.3 2.3 1.6 1.6 1.8 1.8 1.8 1.8 2 2 2 2.6 2.6 2.6',
    upper: '- - 2 3 6 9 11 11 11 11 6 9 11 11 11 11 9 11 11 9 11 11',
  },
  molybdenum: {
    unit: 'µg',
    report: 'micronutrients-2001',
    requirement: '- - 13 17 26 33 34 34 34 34 26 33 34 34 34 34 40 40 40 35 36 36',
    allowance: '- - 17 22 34 43 45 45 45 45 34 43 45 45 45 45 50 50 50 50 50 50',
    adequate: '2 3 - - - - - - - - - - - - - - - - - - - -',
    upper:
      '- - 300 600 1100 1700 2000 2000 2000 2000 1100 1700 2000 2000 2000 2000 1700 2000 2000 1700 2000 2000',
  },
  phosphorus: {
    unit: 'mg',
    report: 'calcium-1997',
    requirement: '- - 380 405 1055 1055 580 580 580 580 1055 1055 580 580 580 580 1055 580 580 1055 580 580',
    allowance: '- - 460 500 1250 1250 700 700 700 700 1250 1250 700 700 700 700 1250 700 700 1250 700 700',
    adequate: '100 275 - - - - - - - - - - - - - - - - - - - -',
    upper:
      '- - 3000 3000 4000 4000 4000 4000 4000 3000 4000 4000 4000 4000 4000 3000 3500 3500 3500 4000 4000 4000',
  },
  selenium: {
    unit: 'µg',
    report: 'antioxidants-2000',
    requirement: '- - 17 23 35 45 45 45 45 45 35 45 45 45 45 45 49 49 49 59 59 59',
    allowance: '- - 20 30 40 55 55 55 55 55 40 55 55 55 55 55 60 60 60 70 70 70',
    adequate: '15 20 - - - - - - - - - - - - - - - - - - - -',
    upper: '45 60 90 150 280 400 400 400 400 400 280 400 400 400 400 400 400 400 400 400 400 400',
  },
  zinc: {
    unit: 'mg',
    report: 'micronutrients-2001',
    requirement: '- 2.5 2.5 4 7 8.5 9.4 9.4 9.4 9.4 7 7.3 6.8 6.8 6.8 6.8 10.5 9.5 9.5 10.9 10.4 10.4',
    allowance: '- 3 3 5 8 11 11 11 11 11 8 9 8 8 8 8 12 11 11 13 12 12',
    adequate: '2 - - - - - - - - - - - - - - - - - - - - -',
    upper: '4 5 7 12 23 34 40 40 40 40 23 34 40 40 40 40 34 40 40 34 40 40',
  },
  potassium: {
    unit: 'mg',
    report: 'sodium-2019',
    adequate:
      '400 860 2000 2300 2500 3000 3400 3400 3400 3400 2300 2300 2600 2600 2600 2600 2600 2900 2900 2500 2800 2800',
  },
  sodium: {
    unit: 'mg',
    report: 'sodium-2019',
    adequate:
      '110 370 800 1000 1200 1500 1500 1500 1500 1500 1200 1500 1500 1500 1500 1500 1500 1500 1500 1500 1500 1500',
    reduction:
      '- - 1200 1500 1800 2300 2300 2300 2300 2300 1800 2300 2300 2300 2300 2300 2300 2300 2300 2300 2300 2300',
  },
  chloride: {
    unit: 'g',
    report: 'water-2005',
    adequate: '0.18 0.57 1.5 1.9 2.3 2.3 2.3 2.3 2 1.8 2.3 2.3 2.3 2.3 2 1.8 2.3 2.3 2.3 2.3 2.3 2.3',
    upper: '- - 2.3 2.9 3.4 3.6 3.6 3.6 3.6 3.6 3.4 3.6 3.6 3.6 3.6 3.6 3.6 3.6 3.6 3.6 3.6 3.6',
  },
  boron: {
    unit: 'mg',
    report: 'micronutrients-2001',
    upper: '- - 3 6 11 17 20 20 20 20 11 17 20 20 20 20 17 20 20 17 20 20',
  },
  nickel: {
    unit: 'mg',
    report: 'micronutrients-2001',
    upper: '- - 0.2 0.3 0.6 1 1 1 1 1 0.6 1 1 1 1 1 1 1 1 1 1 1',
  },
  vanadium: {
    unit: 'mg',
    report: 'micronutrients-2001',
    upper: '- - - - - - 1.8 1.8 1.8 1.8 - - 1.8 1.8 1.8 1.8 - - - - - -',
  },
} as const satisfies Readonly<Record<string, IntakeRow>>;
export type IntakeName = keyof typeof TABLE;

export const INTAKES: Readonly<Record<IntakeName, IntakeRow>> = TABLE;
