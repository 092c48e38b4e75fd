import type { Block, CautionBlock, CautionLine, Inline, Sheet } from '../../src/document/index.js';
import type { BrickRows, DotLanes } from '../../src/figures/index.js';

/** A realistic sheet to lay out. Its numbers are placeholders for looking at pages, not facts to hand out. */

type HandoutLevel = 'short' | 'plain' | 'fuller';

const t = (text: string): Inline => ({ text });
const b = (text: string): Inline => ({ text, strong: true });
const p = (...inlines: Inline[]): Block => ({ kind: 'paragraph', inlines });
const h = (text: string, level: 2 | 3 | 4 = 2): Block => ({ kind: 'heading', level, inlines: [t(text)] });

const WORDINGS: readonly (readonly [
  id: string,
  heading: CautionLine['heading'],
  short: Inline[],
  fuller: Inline[],
])[] = [
  [
    'damaged-cans',
    'Stop',
    [b('Is the can swollen, leaking or badly dented?'), t(' Do not open it. Throw it out.')],
    [
      b('Throw out cans that are swollen, leaking, rusted through, or badly dented on a seam.'),
      t(
        ' Do not open or taste them. A small smooth dent is fine. If food spurts or smells off, throw it out.',
      ),
    ],
  ],
  [
    'kidney-bean-boil',
    'Stop',
    [b('Soak dry kidney beans.'), t(' Then boil them hard for 30 minutes. Slow cookers are not hot enough.')],
    [
      b('Dry red kidney beans hold a toxin until they boil.'),
      t(
        ' Soak them 5 hours and pour off the water. Boil them in fresh water for 30 minutes before they go in a slow cooker. Canned beans are ready to eat.',
      ),
    ],
  ],
  [
    'fiber-slowly',
    'Ask first',
    [b('Gut trouble or surgery?'), t(' Ask your care team first. Add fiber slowly and drink water.')],
    [
      b('A narrow bowel, a bowel flare, a slow stomach or belly surgery?'),
      t(' Ask your care team first. Everyone: add fiber a little at a time, and drink enough water.'),
    ],
  ],
  [
    'fluids-limit',
    'Ask first',
    [
      b('Told to limit fluids, or heart, liver or kidney trouble?'),
      t(' Ask your care team before you drink more.'),
    ],
    [
      b('Heart failure, liver disease, kidney failure or low blood sodium?'),
      t(' You may have a fluid limit. Ask your care team before you drink more.'),
    ],
  ],
  [
    'sodium-lithium',
    'Ask first',
    [b('Do you take lithium?'), t(' Ask your care team before you cut back on salt.')],
    [
      b('Do you take lithium?'),
      t(
        ' Keep your salt and your fluids steady. A big change in salt can make the lithium in your blood go too high or too low. Ask your care team before you cut back on salt.',
      ),
    ],
  ],
  [
    'sodium-heart-water-pills',
    'Ask first',
    [b('Heart failure or water pills?'), t(' Ask your care team before you change your salt.')],
    [
      b('Water pills or heart failure?'),
      t(' You may already have a salt limit. Ask your care team before you change your salt.'),
    ],
  ],
];

export function cautions(level: HandoutLevel | 'staff'): CautionBlock {
  return {
    lines: WORDINGS.map(([id, heading, short, fuller]) => ({
      id,
      heading,
      word: heading,
      inlines: level === 'short' || (level === 'plain' && heading === 'Ask first') ? short : fuller,
    })),
    whoToAsk: 'your doctor, nurse or pharmacist',
    standing: {
      inlines: [
        t('This sheet is for learning. It does not take the place of your own care. '),
        t('Trouble breathing, or a swollen face? Call 911.'),
      ],
      cautions: ['for-learning', 'emergency'],
    },
  };
}

export const lanes: DotLanes = {
  kind: 'dot-lanes',
  id: 'pinto',
  mode: 'shown',
  numbers: ['pinto.dried.sodium', 'pinto.canned.sodium', 'pinto.rinsed.sodium'],
  alternative: {
    label: 'Pinto beans in three forms, compared on sodium and fiber.',
    reading:
      'Half a cup. Sodium: dried, cooked at home 1 mg; canned, drained 200 mg; canned, drained and rinsed 180 mg. Fiber: 8 g, 6 g, 5 g.',
    table: {
      caption: 'Pinto beans, half a cup',
      head: ['Form', 'Sodium', 'Fiber'],
      rows: [
        ['A dried, cooked at home', '1 mg', '8 g'],
        ['B canned, drained', '200 mg', '6 g'],
        ['C canned, drained and rinsed', '180 mg', '5 g'],
      ],
    },
  },
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
        { letter: 'A', value: 1, text: '1 mg', number: 'pinto.dried.sodium' },
        { letter: 'B', value: 300, text: '300 mg', number: 'pinto.canned.sodium' },
        { letter: 'C', value: 180, text: '180 mg', number: 'pinto.rinsed.sodium' },
      ],
      look: { from: 'B', to: 'C', word: 'rinsing' },
    },
    {
      name: 'Fiber',
      dots: [
        { letter: 'A', value: 7.7, text: '8 g', number: 'pinto.dried.fiber' },
        { letter: 'B', value: 5.5, text: '6 g', number: 'pinto.canned.fiber' },
        { letter: 'C', value: 5, text: '5 g', number: 'pinto.rinsed.fiber' },
      ],
    },
  ],
};

export const bricks: BrickRows = {
  kind: 'brick-rows',
  id: 'rinse',
  mode: 'shown',
  numbers: ['rinse.left'],
  alternative: {
    label: 'What draining and rinsing takes away from canned black beans, in bricks of 20 mg of sodium.',
    reading: 'On the label: 460 mg of sodium. After rinsing: 270 to 370 mg is left.',
    table: {
      caption: 'Sodium in half a cup of canned black beans',
      head: ['', 'Sodium'],
      rows: [
        ['On the label', '460 mg'],
        ['After rinsing', '270 to 370 mg'],
      ],
    },
  },
  worth: 20,
  rows: [
    { name: 'On the label', note: '460 mg of sodium', sign: 'can', total: 460, sure: 460, possible: 460 },
    {
      name: 'After rinsing',
      note: '270 to 370 mg left',
      sign: 'strainer',
      total: 460,
      sure: 270,
      possible: 370,
      ends: { low: '270', high: '370', words: '270 to 370 mg left' },
      look: 'somewhere in here',
    },
  ],
  words: { sure: 'still there', unsure: 'may be there', gone: 'gone' },
};

const FORMS: Block[] = [
  h('One cup, three ways'),
  p(t('Half a cup of pinto beans, ready to eat. Each dot is one way to buy them.')),
  { kind: 'figure', figure: lanes },
  {
    kind: 'choose',
    items: [
      { letter: 'A', inlines: [t('when you have time to soak and cook.')] },
      { letter: 'B', inlines: [t('for soup, if the can says no salt added.')] },
      { letter: 'C', inlines: [t('when supper is in ten minutes.')] },
    ],
  },
  {
    kind: 'basis',
    inlines: [
      t('1/2 cup, ready to eat. Amounts vary by brand: check the can. Sources '),
      { text: '1', cite: 'usda-sr28' },
      t(', '),
      { text: '2', cite: 'duyff-2011' },
      t('.'),
    ],
  },
];

const RINSING: Block[] = [
  h('What rinsing takes away'),
  p(
    t('The can says 460 mg of sodium in half a cup. Drain and rinse, and somewhere from '),
    { text: '270 to 370 mg', number: 'rinse.left' },
    t(' is left.'),
  ),
  { kind: 'figure', figure: bricks },
  {
    kind: 'basis',
    inlines: [
      t(
        '1/2 cup canned black beans, label with liquid; 1 brick = 20 mg of sodium. Studies disagree, so we show a range. Source 2.',
      ),
    ],
  },
  {
    kind: 'figure-caution',
    inlines: [t('What is left still counts toward your day.')],
    cautions: ['rinse-still-counts'],
  },
];

const STEPS: Block[] = [
  h('Rinse in one minute'),
  {
    kind: 'list',
    ordered: true,
    items: [
      [p(b('Open the can.'), t(' Tip the beans into a strainer and let the liquid run off.'))],
      [p(b('Rinse under cold water.'), t(' Move the beans with your hand. Count slowly to 30.'))],
      [p(b('Eat them today, or chill them.'), t(' Covered, at 40 °F or colder, for 3 to 4 days.'))],
    ],
  },
  h('Other ways to use less salt', 3),
  {
    kind: 'list',
    ordered: false,
    items: [
      [p(t('Buy cans that say '), b('no salt added'), t('.'))],
      [p(t('Use half the spice packet, then add lime, garlic or onion.'))],
      [p(t('Cook a bag of dried beans on a quiet day and freeze them in cups.'))],
    ],
  },
];

const LABELS: Block[] = [
  h('Three cans, side by side'),
  {
    kind: 'table',
    rowHeads: true,
    head: ['On the front (made up)', 'In 1/2 cup', 'Of a day', 'After rinsing'].map((text, index) => ({
      inlines: [t(text)],
      align: index === 0 ? 'start' : 'end',
    })),
    rows: [
      ['plain', '460 mg', '20%', '270 to 370 mg'],
      ['25% less sodium', '345 mg', '15%', '200 to 280 mg'],
      ['no salt added', '15 mg', '1%', 'little change'],
    ].map((row) => row.map((text, index) => ({ inlines: [t(text)], align: index === 0 ? 'start' : 'end' }))),
  },
];

const GOAL: Block[] = [h('One thing I will do'), { kind: 'write', label: 'I will', lines: 2 }];

export const SOURCES: Sheet['sources'] = [
  {
    id: 'usda-sr28',
    number: 1,
    words: 'USDA National Nutrient Database for Standard Reference, release 28, 2015.',
  },
  {
    id: 'duyff-2011',
    number: 2,
    words: 'Duyff and others: Reducing the sodium content of canned vegetables, 2011.',
  },
];

const MESSAGES: Readonly<Record<HandoutLevel, Inline[]>> = {
  short: [t('Beans from a can?'), { text: 'Drain them. Rinse them.', breakBefore: true }],
  plain: [
    t('Every kind of bean fills you up for little money. If it comes in a can, drain it and rinse it.'),
  ],
  fuller: [
    t('Every kind of bean fills you up for little money. If it comes in a can, drain it and rinse it.'),
  ],
};

const CODE: Readonly<Record<HandoutLevel, string>> = {
  short: 'BEANS3 · S-EN · 9B21',
  plain: 'BEANS3 · P-EN · 4F7C',
  fuller: 'BEANS3 · F-EN · 2D80',
};

export const INTERPRETER: Sheet['interpreter'] = {
  parts: [
    { text: 'Free interpreter: 555-0142', language: 'en', strong: true },
    { text: 'Intérprete gratis', language: 'es' },
    { text: 'مترجم مجانًا', language: 'ar' },
    { text: 'Entèprèt gratis', language: 'ht' },
    { text: 'Thông dịch miễn phí', language: 'vi' },
    { text: '免费口译', language: 'zh-Hans' },
  ],
};

const BASE = {
  language: 'en',
  direction: 'ltr',
  title: 'Beans and peas, three ways',
  strip: { start: 'Pinewater Family Clinic', end: 'Take-home sheet · February talk, Lantern Street Hall' },
  emblem: 'bean-bowl',
  sources: SOURCES,
  words: { sources: 'Sources', key: 'KEY' },
} as const;

const STAMP = {
  dataDate: 'Food data: 28 September 2015',
  review: 'Not yet reviewed.',
  page: 'Page {page} of {pages}',
  expired: false,
} as const;

export function handout(level: HandoutLevel): Sheet {
  const blocks: Readonly<Record<HandoutLevel, readonly Block[]>> = {
    short: [...FORMS.filter((x) => x.kind !== 'choose'), ...RINSING, ...GOAL],
    plain: [...FORMS, ...RINSING, ...STEPS, ...GOAL],
    fuller: [...FORMS, ...LABELS, ...RINSING, ...STEPS, ...GOAL],
  };
  return {
    ...BASE,
    kind: 'handout',
    level,
    message: MESSAGES[level],
    cautions: cautions(level),
    blocks: blocks[level],
    interpreter: INTERPRETER ?? { parts: [] },
    stamp: { ...STAMP, version: CODE[level] },
  };
}

/** The worksheet and, with answers, its key. */
export function worksheet(kind: 'worksheet' | 'key'): Sheet {
  const key = kind === 'key';
  const field = (label: string, unit: string, answer: string) => ({
    inlines: [],
    field: { label, unit, ...(key ? { answer } : {}) },
  });
  const why = (text: string): Block[] => (key ? [{ kind: 'why', inlines: [b('Why:'), t(` ${text}`)] }] : []);
  const choice = (letter: string, text: string, right: boolean, value: string, reason: string) => ({
    letter,
    inlines: [t(text)],
    ...(key ? { key: { right, value, why: reason } } : {}),
  });
  const blank: BrickRows = { ...bricks, mode: key ? 'key' : 'blank' };
  return {
    ...BASE,
    kind,
    level: 'plain',
    message: [],
    strip: {
      start: 'Pinewater Family Clinic',
      end: `${key ? 'For the leader' : 'Worksheet'} · February talk, Lantern Street Hall`,
    },
    cautions: cautions('plain'),
    blocks: [
      h('Read two cans'),
      {
        kind: 'table',
        rowHeads: true,
        head: ['On the label', 'First can', 'Second can'].map((text) => ({ inlines: [t(text)] })),
        rows: [
          [
            { inlines: [t('One serving')] },
            field('Serving of the first can', 'cup', '1/2'),
            field('Serving of the second can', 'cup', '1/2'),
          ],
          [
            { inlines: [t('Sodium in one serving')] },
            field('Sodium of the first can', 'mg', '460'),
            field('Sodium of the second can', 'mg', '345'),
          ],
        ],
      },
      ...why('any label that the group reads is right; check the serving.'),
      h('Rinse'),
      p(t('Each brick is 20 mg of sodium. Cross out what rinsing takes away.')),
      { kind: 'figure', figure: blank },
      ...why('rinsing takes 20 to 41%. Any answer from 5 to 9 is right. Source 2.'),
      h('The least sodium'),
      {
        kind: 'question',
        id: 'q1',
        prompt: [t('Half a cup of pinto beans. Which has the least sodium? Check one box.')],
        choices: [
          choice('A', 'canned, drained', false, '300 mg', 'some salt stays'),
          choice('B', 'canned, drained and rinsed', false, '180 mg', 'rinsing takes part of it'),
          choice('C', 'dried, cooked with no salt', true, '1 mg', 'no salt went in'),
        ],
      },
      h('My plan'),
      { kind: 'write', label: 'I will', lines: 2 },
    ],
    stamp: { ...STAMP, version: `BEANS3 · W${key ? 'K' : ''}-EN · 7A0${key ? 4 : 3}` },
  };
}

const ar = (...inlines: Inline[]): Block => ({ kind: 'paragraph', inlines });

/** The same kind of sheet in a right-to-left language. */
export function arabic(): Sheet {
  return {
    ...handout('plain'),
    language: 'ar',
    direction: 'rtl',
    title: 'الفاصوليا والبازلاء بثلاث طرق',
    strip: { start: 'عيادة باينووتر لطب الأسرة', end: 'ورقة للمنزل · لقاء فبراير، قاعة شارع الفانوس' },
    message: [t('كل أنواع الفاصوليا تُشبعك بمبلغ قليل. وإذا كانت في علبة، فصفِّها ثم اشطفها.')],
    cautions: {
      whoToAsk: 'طبيبك أو الممرضة أو الصيدلي',
      lines: [
        {
          id: 'damaged-cans',
          heading: 'Stop',
          word: 'توقف',
          inlines: [b('علبة منتفخة أو مثقوبة؟'), t(' لا تفتحها ولا تذقها. ارمها.')],
        },
        {
          id: 'sodium-lithium',
          heading: 'Ask first',
          word: 'اسأل أولًا',
          inlines: [b('هل تتناول الليثيوم؟'), t(' اسأل قبل أن تغيّر كمية الملح في طعامك.')],
        },
      ],
    },
    blocks: [
      h('كوب واحد، ثلاث طرق'),
      ar(t('كوب واحد من فاصوليا البينتو جاهزة للأكل. كل نقطة طريقة.')),
      { kind: 'figure', figure: lanes },
      {
        kind: 'basis',
        inlines: [t('كوب واحد جاهز للأكل. تختلف الكميات من علبة إلى أخرى: اقرأ العلبة. المصدران 1 و2.')],
      },
      h('ماذا يزيل الشطف'),
      ar(t('على العلبة 460 ملغ من الصوديوم في نصف كوب. بعد التصفية والشطف يبقى ما بين 270 و370 ملغ.')),
      { kind: 'figure', figure: bricks },
      {
        kind: 'list',
        ordered: true,
        items: [[ar(t('افتح العلبة.'))], [ar(t('اشطف الفاصوليا بالماء البارد.'))]],
      },
    ],
    words: { sources: 'المصادر', key: 'الحل' },
    interpreter: {
      parts: [
        { text: 'مترجم مجانًا: 555-0142', language: 'ar', strong: true },
        { text: 'Free interpreter', language: 'en' },
        { text: 'Intérprete gratis', language: 'es' },
        { text: 'Thông dịch miễn phí', language: 'vi' },
        { text: '免费口译', language: 'zh-Hans' },
      ],
    },
    stamp: {
      version: 'BEANS3 · P-AR · 61E3',
      dataDate: 'بيانات الأغذية: 28 سبتمبر 2015',
      review: 'لم تُراجع بعد.',
      page: 'صفحة {page} من {pages}',
      expired: false,
    },
  };
}

/** One of each block, some within others, for looking at what a handout of beans does not have. */
export function everything(kind: 'handout' | 'worksheet' | 'key' = 'handout'): Sheet {
  const choice = (letter: string, text: string, right: boolean) => ({
    letter,
    inlines: [t(text)],
    ...(kind === 'key' ? { key: { right, value: '', why: 'it says so on the label' } } : {}),
  });
  const words = 'Beans keep for a year in a dry jar, and a pot of them feeds the house for days. ';
  return {
    ...handout('plain'),
    kind,
    message: kind === 'handout' ? [t('One line.')] : [],
    cautions: {
      lines: [
        {
          id: 'e',
          heading: 'Every time',
          word: 'Every time',
          inlines: [b('Read the label.'), t(' Recipes change.')],
        },
        {
          id: 'a',
          heading: 'Ask first',
          word: 'Ask first',
          inlines: [b('On water pills?'), t(' Ask before you change your salt.')],
        },
      ],
      whoToAsk: 'your doctor, nurse or pharmacist',
    },
    blocks: [
      p(t('Words before the first head. '), t('They stand at the axis.')),
      h('A rather long head for a rail'),
      p(
        t('Plain, '),
        b('strong'),
        t(', '),
        { text: 'emphasis', emphasis: true },
        t(', '),
        { text: 'struck', struck: true },
        t(' and '),
        { text: 'code', code: true },
        t(', a link to the '),
        { text: 'food table, where each row has a number', href: 'https://fdc.nal.usda.gov/' },
        t(', and '),
        { text: 'frijoles', language: 'es' },
        t(' in Spanish. '),
        t(words),
        { text: 'A new line.', breakBefore: true },
      ),
      h('A head of the third level', 3),
      p(t(words.repeat(3))),
      h('A head of the fourth level', 4),
      {
        kind: 'list',
        ordered: false,
        items: [
          [
            p(t('An item with a list')),
            {
              kind: 'list',
              ordered: true,
              start: 9,
              items: [[p(t('nine'))], [p(t('ten')), p(t('and more on ten'))]],
            },
          ],
          [p(t(words))],
        ],
      },
      {
        kind: 'quote',
        blocks: [p(t('“My grandmother soaked them overnight.”')), p(t('Said at a February talk.'))],
      },
      h('Pictures'),
      {
        kind: 'picture',
        alt: 'A square',
        picture: {
          kind: 'vector',
          width: 60,
          height: 20,
          marks: [{ kind: 'shape', path: 'M0 0L60 0L60 20L0 20Z', fill: '#e4eef1' }],
        },
      },
      h('Tables'),
      {
        kind: 'table',
        caption: 'A caption above its table',
        rowHeads: false,
        head: [{ inlines: [t('Long words')] }, { inlines: [t('Number')], align: 'end' }],
        rows: [
          [{ inlines: [t(words.repeat(2))] }, { inlines: [t('1,240 mg')], align: 'end' }],
          [{ inlines: [t('short')] }, { inlines: [t('90 mg')], align: 'end' }],
        ],
      },
      h('Two questions'),
      {
        kind: 'question',
        id: 'q1',
        prompt: [t('Which word stands on the can?')],
        choices: [choice('A', 'sodium', true), choice('B', 'salt', false)],
        ...(kind === 'key' ? { answer: [t('A. Labels say sodium.')] } : {}),
      },
      {
        kind: 'question',
        id: 'q2',
        prompt: [t('Which of these long answers is the one that fits a bean from a can that was drained?')],
        choices: [
          choice('A', 'The liquid holds part of the salt, so pouring it off takes that part away.', true),
          choice('B', 'The salt stays in the beans whatever you do.', false),
        ],
      },
      h('Write'),
      {
        kind: 'write',
        label: 'What I will say to my family when I bring home the first bag of dried beans',
        lines: 2,
      },
    ],
  };
}
