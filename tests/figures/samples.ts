import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type {
  BrickRows,
  ChangeBand,
  CostRungs,
  DotLanes,
  DrawOptions,
  LineChoice,
  MeasureRow,
  ShareRows,
  StepTiles,
  WeekBricks,
} from '../../src/figures/index.js';
import { fontsOnDisk } from '../text/fonts-on-disk.js';

export const fonts = fontsOnDisk();

/** A file below assets/, as the program reads it. */
export function asset(path: string): string {
  return readFileSync(fileURLToPath(new URL(`../../assets/${path}`, import.meta.url)), 'utf8');
}

const alternative = { label: 'Sample', reading: 'Sample.', table: { caption: '', head: [], rows: [] } };

/** Made-up amounts of the shape that a lesson has. */
export const lanes: DotLanes = {
  kind: 'dot-lanes',
  id: 'pinto',
  mode: 'shown',
  alternative,
  numbers: [],
  rows: [
    { letter: 'A', sign: 'bag', words: 'Dried, cooked at home' },
    { letter: 'B', sign: 'can', words: 'Canned, drained' },
    { letter: 'C', sign: 'strainer', words: 'Canned, drained and rinsed' },
  ],
  lanes: [
    {
      name: 'Sodium',
      note: 'a part of salt',
      dots: [
        { letter: 'A', value: 2, text: '2 mg', number: 'pinto.a' },
        { letter: 'B', value: 640, text: '640 mg', number: 'pinto.b' },
        { letter: 'C', value: 360, text: '360 mg', number: 'pinto.c' },
      ],
      look: { from: 'B', to: 'C', word: 'rinsing' },
    },
    {
      name: 'Fiber',
      dots: [
        { letter: 'A', value: 15.4, text: '15 g', number: 'pinto.d' },
        { letter: 'B', value: 9.3, text: '9 g', number: 'pinto.e' },
        { letter: 'C', value: null, text: 'not known', number: 'pinto.f' },
      ],
    },
  ],
};

export const bricks: BrickRows = {
  kind: 'brick-rows',
  id: 'rinse',
  mode: 'shown',
  alternative,
  numbers: [],
  worth: 20,
  rows: [
    { name: 'On the label', note: '460 mg sodium', sign: 'can', total: 460, sure: 460, possible: 460 },
    {
      name: 'After rinsing',
      note: '270 to 370 mg left',
      sign: 'strainer',
      total: 460,
      sure: 270,
      possible: 370,
      ends: { low: '270', high: '370', words: '270 to 370 mg' },
      look: 'somewhere in here',
    },
  ],
  words: { sure: 'still there', unsure: 'may be there', gone: 'gone' },
};

export const measures: MeasureRow = {
  kind: 'measure-row',
  id: 'pours',
  mode: 'shown',
  alternative,
  numbers: [],
  vessels: [
    {
      shape: 'cup',
      milliliters: 240,
      name: 'Cup',
      note: '240 mL',
      pours: [
        {
          name: 'Brown rice, cooked',
          amount: '1/2 cup',
          number: 'm.a',
          share: 0.5,
          under: [{ text: '100 g', number: 'm.b' }],
        },
        { name: 'Milk', amount: '1 cup', number: 'm.c', share: 1, under: [{ text: '250 g', number: 'm.d' }] },
      ],
    },
    {
      shape: 'spoon',
      milliliters: 15,
      name: 'Tablespoon',
      note: '15 mL',
      pours: [
        {
          name: 'Canola oil',
          amount: '1 tablespoon',
          number: 'm.e',
          share: 1,
          under: [{ text: '14 g', number: 'm.f' }],
        },
        {
          name: 'Peanut butter',
          amount: '2 tablespoons',
          number: 'm.g',
          share: 1,
          how: 'fill it 2 times',
          under: [{ text: '33 g', number: 'm.h' }],
        },
      ],
    },
  ],
  words: {
    check: { text: 'True size on paper: this line is 50 mm.', number: 'm.line' },
    smaller: 'Drawn smaller than true size.',
  },
};

/** The same in Arabic: letters with deep tails, and reading from right to left. */
export const arabicLanes: DotLanes = {
  ...lanes,
  rows: [
    { letter: 'أ', sign: 'bag', words: 'مجففة، مطبوخة في البيت' },
    { letter: 'ب', sign: 'can', words: 'معلبة، مع السائل' },
    { letter: 'ج', sign: 'strainer', words: 'معلبة، مصفّاة ومشطوفة' },
  ],
  lanes: [
    {
      name: 'الصوديوم',
      note: 'جزء من الملح',
      dots: [
        { letter: 'أ', value: 2, text: '2 ملغ', number: 'pinto.a' },
        { letter: 'ب', value: 640, text: '640 ملغ', number: 'pinto.b' },
        { letter: 'ج', value: 360, text: '360 ملغ', number: 'pinto.c' },
      ],
      look: { from: 'ب', to: 'ج', word: 'الشطف' },
    },
    {
      name: 'الألياف',
      dots: [
        { letter: 'أ', value: 15.4, text: '15 غ', number: 'pinto.d' },
        { letter: 'ب', value: 15.3, text: '15 غ', number: 'pinto.e' },
        { letter: 'ج', value: null, text: 'غير معروف', number: 'pinto.f' },
      ],
    },
  ],
};

export const arabicBricks: BrickRows = {
  ...bricks,
  rows: [
    { name: 'على العلبة', note: '460 ملغ صوديوم', sign: 'can', total: 460, sure: 460, possible: 460 },
    {
      name: 'بعد الشطف',
      note: 'من 270 إلى 370 ملغ',
      sign: 'strainer',
      total: 460,
      sure: 270,
      possible: 370,
      ends: { low: '270', high: '370', words: 'من 270 إلى 370 ملغ' },
      look: 'الباقي هنا، بين الرقمين',
    },
  ],
  words: { sure: 'باقٍ', unsure: 'قد يبقى', gone: 'زال' },
};

/** A band that eases over a year. */
export const band: ChangeBand = {
  kind: 'change-band',
  id: 'slow',
  mode: 'shown',
  alternative,
  numbers: [],
  months: 12,
  points: Array.from({ length: 25 }, (_, index) => {
    const part = 1 - Math.exp(-index / 20);
    return { month: index / 2, least: 15 * part, most: 22 * part };
  }),
  marks: [5, 10, 15, 20].map((at) => ({ at, words: `${at} lb less` })),
  ticks: [
    { month: 0, words: 'start' },
    { month: 3, words: '3 months' },
    { month: 6, words: '6 months' },
    { month: 12, words: '12 months' },
  ],
  posts: [3, 6, 12].map((month) => {
    const part = 1 - Math.exp(-month / 10);
    const [least, most] = [15 * part, 22 * part];
    return {
      month,
      least,
      most,
      words: `${Math.floor(least)} to ${Math.ceil(most)} lb`,
      number: `slow.${month}`,
    };
  }),
  today: 'today',
};

export const lineChoice: LineChoice = {
  kind: 'line-choice',
  id: 'which',
  mode: 'blank',
  alternative,
  numbers: [],
  lines: [
    {
      letter: 'A',
      points: [
        { along: 0, down: 0 },
        { along: 1, down: 0.94 },
      ],
    },
    {
      letter: 'B',
      points: [
        { along: 0, down: 0 },
        { along: 0.1, down: 0.4 },
        { along: 1, down: 0.4 },
      ],
    },
    {
      letter: 'C',
      points: Array.from({ length: 25 }, (_, i) => ({ along: i / 24, down: 0.45 * (1 - Math.exp(-i / 10)) })),
    },
  ],
  words: {
    from: 'today',
    to: 'two years',
    warning: 'Down is less than today. Only one of these lines is real.',
  },
};

const mm = (length: number) => (length * 72) / 25.4;

/** Letter paper, level plain, in color; change what a test needs. */
export function paper(change: Partial<DrawOptions> = {}): DrawOptions {
  return {
    fonts,
    medium: 'paper',
    ink: 'color',
    level: 'plain',
    language: 'en',
    direction: 'ltr',
    width: mm(183.9),
    ...change,
  };
}

export function screen(change: Partial<DrawOptions> = {}): DrawOptions {
  return { ...paper(), medium: 'screen', width: 1168, height: 468, ...change };
}

export const shares: ShareRows = {
  kind: 'share-rows',
  id: 'day',
  mode: 'shown',
  alternative,
  numbers: [],
  rows: [
    {
      name: 'Carbohydrate',
      share: 7.4,
      text: '7%',
      number: 'day.carbohydrate.share',
      range: { low: 45, high: 65, words: '45 to 65%' },
    },
    {
      name: 'Protein',
      share: 22,
      text: '22%',
      number: 'day.protein.share',
      range: { low: 10, high: 35, words: '10 to 35%' },
    },
    {
      name: 'Fat',
      share: null,
      text: 'not known',
      number: 'day.fat.share',
      range: { low: 20, high: 35, words: '20 to 35%' },
    },
  ],
  words: { brick: '1 brick is 5% of the energy', range: 'usual range for adults' },
};

const noMinutes = {
  moderate: 0,
  vigorous: 0,
  text: '',
  number: 'week.none',
  strength: false,
  balance: false,
};

export const week: WeekBricks = {
  kind: 'week-bricks',
  id: 'week',
  mode: 'shown',
  alternative,
  numbers: [],
  days: [
    { ...noMinutes, name: 'Mon', moderate: 25, text: '25', number: 'week.mon' },
    { ...noMinutes, name: 'Tue' },
    { ...noMinutes, name: 'Wed', strength: true, balance: true },
    { ...noMinutes, name: 'Thu', moderate: 10, text: '10', number: 'week.thu', balance: true },
    { ...noMinutes, name: 'Fri' },
    { ...noMinutes, name: 'Sat', moderate: 5, vigorous: 60, text: '65', number: 'week.sat', strength: true },
    { ...noMinutes, name: 'Sun' },
  ],
  sum: { moderate: 40, vigorous: 60, text: '100 minutes', number: 'week.sum' },
  goals: [
    { at: 150, words: '150' },
    { at: 300, words: '300' },
  ],
  words: {
    days: 'Minutes that count',
    sum: 'The week',
    brick: '10 minutes',
    vigorous: 'vigorous, counted twice',
    strength: 'strength work',
    balance: 'balance work',
    balanceLetter: 'B',
  },
};

export const steps: StepTiles = {
  kind: 'step-tiles',
  id: 'steps',
  mode: 'shown',
  alternative,
  numbers: [],
  tiles: [
    {
      month: 'Jan',
      action: 'Swap one sweet drink a day for water',
      effect: [
        { text: 'Each day: ' },
        { text: '37\u00a0g', number: 'steps.jan.less' },
        { text: ' less sugar' },
      ],
      current: true,
    },
    {
      month: 'Feb',
      action: 'Rinse canned beans',
      effect: [
        { text: 'In 1/2 cup, with liquid: ' },
        { text: '1,200\u00a0to\u00a01,800\u00a0mg', number: 'rinse.drop' },
        { text: ' less sodium' },
      ],
      current: false,
    },
    { month: 'Mar', action: 'Add one cup of vegetables at supper', effect: [], current: false },
    { month: 'Apr', action: 'Keep your steps going', effect: [], current: false },
    { month: 'May', action: 'Walk to the shop once a week', effect: [], current: false },
    { month: 'Jun', action: 'Keep your steps going', effect: [], current: false },
  ],
  words: { boxes: 'Check a box for each week that you kept the step.' },
};

/** The same without words of steps, as a worksheet has it. */
export const blankSteps: StepTiles = {
  ...steps,
  mode: 'blank',
  tiles: steps.tiles.map(({ month }) => ({ month, action: '', effect: [], current: false })),
};

export const rungs: CostRungs = {
  kind: 'cost-rungs',
  id: 'cost',
  mode: 'shown',
  alternative,
  numbers: [],
  worth: 25,
  whole: false,
  rungs: [
    { letter: 'A', sign: 'pot', words: 'Dried, cooked at home', value: 28, text: '28¢', number: 'cost.a' },
    { letter: 'B', sign: 'can', words: 'Canned, drained', value: 68, text: '68¢', number: 'cost.b' },
    {
      letter: 'C',
      sign: 'frozen',
      words: 'Frozen, boiled, no salt',
      value: 105,
      text: '$1.05',
      number: 'cost.c',
    },
    { letter: 'D', sign: 'leaf', words: 'Fresh', value: null, text: 'ask for this week’s price' },
  ],
  posts: [
    { at: 0, words: '0¢', number: 'cost.mark-0' },
    { at: 50, words: '50¢', number: 'cost.mark-2' },
    { at: 100, words: '$1.00', number: 'cost.mark-4' },
  ],
};

export const arabicRungs: CostRungs = {
  ...rungs,
  rungs: [
    { letter: 'أ', sign: 'pot', words: 'مجففة، مطبوخة', value: 28, text: '28¢', number: 'cost.a' },
    { letter: 'ب', sign: 'can', words: 'معلبة، مصفّاة', value: 68, text: '68¢', number: 'cost.b' },
    { letter: 'ج', sign: 'frozen', words: 'مجمدة', value: null, text: 'اسأل عن سعر هذا الأسبوع' },
  ],
};
