import { describe, expect, it } from 'vitest';
import { type DirectiveFacts, type Facts, NO_FACTS, pull } from '../../src/cautions/index.js';
import { createReport } from '../../src/diagnostics/index.js';
import { BEANS, register } from './register-files.js';

function pulled(facts: Partial<Facts>) {
  const report = createReport();
  const found = pull(register, { ...NO_FACTS, ...facts }, report);
  return { ids: found.map((p) => p.caution.id), found, problems: report.problems };
}
const idsOf = (facts: Partial<Facts>) => pulled(facts).ids;
const text = (words: string, where: Facts['texts'][number]['where'] = 'text') => ({
  texts: [
    {
      text: words,
      where,
      place: { file: 'l.md', line: 3, column: 5, endLine: 3, endColumn: 5 + words.length },
    },
  ],
});
const use = (name: string, over: Partial<DirectiveFacts> = {}): Partial<Facts> => ({
  directives: [
    { name, id: 'x', foods: [], nutrients: [], place: { file: 'l.md', line: 9, column: 1 }, ...over },
  ],
});

describe('the lesson on beans and peas', () => {
  const { ids, found, problems } = pulled(BEANS);
  // The eight boxes that the register's authors counted by hand for this lesson.
  const BOXES = [
    'potassium-salt',
    'sodium-lithium',
    'sodium-heart-water-pills',
    'sodium-need-more',
    'fluids-limit',
    'fiber-slowly',
    'damaged-cans',
    'kidney-bean-boil',
  ];

  it('pulls its eight boxes and the notes of its three directives', () => {
    expect(problems).toEqual([]);
    expect(ids).toEqual([
      ...BOXES,
      'note-brand-varies',
      'note-rinse-counts',
      'note-fresh-not-only',
      'note-estimate',
      'note-staff-quiz',
    ]);
  });

  it('says for each what pulled it, with its place and its figure', () => {
    const cans = found.find((p) => p.caution.id === 'damaged-cans');
    expect(
      cans?.reasons.map((r) =>
        `${r.by} ${r.trigger}: ${r.says} @${r.place?.line} ${r.directive ?? ''}`.trim(),
      ),
    ).toEqual([
      'topic cans: topic cans @8',
      'flag canned: pinto beans, canned, drained in form-compare @20 pinto',
      'flag canned: black beans, canned in rinse-drop @30 rinse',
      'flag canned: pinto beans, canned, drained in quiz @40 q1',
      'directive form-compare: pinto beans, canned, drained in form-compare @20 pinto',
      'directive rinse-drop: topic cans @8 rinse',
      'fact damaged-cans#1: pinto beans, canned, drained in form-compare @20 pinto',
    ]);
  });

  it('is not swayed by everyday words that a list could mistake', () => {
    // garlic powder, herbs, a fast supper, tomato puree, mash, drop, walk round the room, work out, vitamins leave
    const byWord = found.flatMap((p) =>
      p.reasons.filter((r) => r.sentence).map((r) => `${p.caution.id}: ${r.says}`),
    );
    expect(byWord).toEqual(['kidney-bean-boil: "dry beans" in text']);
  });
});

describe('topics', () => {
  // Topic → boxes and notes, from the register's own index of topics.
  it.each([
    ['carbohydrate down', ['carb-low-sugar', 'carb-sglt2', 'low-carb-not-for', 'diet-gaps']],
    ['fasting', ['carb-low-sugar', 'carb-sglt2', 'fasting-not-for', 'weight-help']],
    ['sodium down', ['potassium-salt', 'sodium-lithium', 'sodium-heart-water-pills', 'sodium-need-more']],
    ['greens steady', ['warfarin-greens']],
    [
      'calcium timing',
      ['thyroid-tablet', 'antibiotic-minerals', 'bone-tablet', 'calcium-tablets', 'oxalate-stones'],
    ],
    ['iron timing', ['thyroid-tablet', 'antibiotic-minerals', 'caffeine-limit', 'iron-tablets']],
    ['protein up', ['protein-kidney']],
    ['fiber up', ['fluids-limit', 'fiber-slowly']],
    ['fluids', ['sodium-lithium', 'sodium-heart-water-pills', 'fluids-limit']],
    ['grapefruit', ['grapefruit-medicine']],
    ['vegan', ['vegan-b12', 'diet-gaps', 'allergen-label', 'allergen-swap', 'milk-infant']],
    ['honey', ['honey-infant']],
    ['textures', ['choking-child', 'swallowing-texture']],
    [
      'weight',
      [
        'carb-low-sugar',
        'glp1-low-intake',
        'weight-opt-out',
        'weight-not-for',
        'weight-ask-first',
        'weight-pace',
        'weight-help',
        'bariatric-plan',
        'child-portions',
      ],
    ],
    ['activity', ['activity-stop', 'activity-low-sugar']],
    ['added sugar', ['treat-low-first']],
    ['cans', ['damaged-cans']],
    ['dried beans', ['kidney-bean-boil']],
    ['prices', []],
  ] as const)('%s', (topic, expected) => {
    expect(idsOf({ topics: [{ name: topic }] })).toEqual(expected);
  });

  it('that nobody knows are a Stop with the nearest one, since a slip would lose a caution', () => {
    const { problems } = pulled({
      topics: [{ name: 'sodum down', place: { file: 'l.md', line: 8, column: 10 } }],
    });
    expect(problems).toMatchObject([
      {
        code: 'cautions/unknown-topic',
        severity: 'stop',
        place: { line: 8, column: 10 },
        hint: 'Did you mean `sodium down`?',
      },
    ]);
  });
});

describe('foods', () => {
  const food = (name: string, flags: string[], over = {}) =>
    use('quiz', { foods: [{ food: { name, flags, ...over } }] });

  it('pull by their flags wherever they stand, quiz options too', () => {
    expect(idsOf(food('star fruit', ['star-fruit']))).toContain('star-fruit-kidney');
    expect(idsOf(food('kidney beans, dry', ['kidney-bean-dry']))).toContain('kidney-bean-boil');
    expect(idsOf(food('honey', ['honey']))).toContain('honey-infant');
  });

  it('pull nothing without a flag', () => {
    expect(idsOf(food('apple', []))).toEqual(['note-estimate', 'note-staff-quiz']);
  });

  it('whose contents nobody knows count as if they held it', () => {
    const contains = { fish: 'unknown' } as const;
    expect(idsOf(food('a sauce', [], { contains }))).toContain('fish-mercury');
    expect(idsOf(food('a sauce', [], { contains: { fish: 'no' } }))).not.toContain('fish-mercury');
  });

  it('carry only flags that the register knows', () => {
    expect(pulled(food('beans', ['caned'])).problems).toMatchObject([
      { code: 'cautions/unknown-flag', actual: 'caned' },
    ]);
  });

  it('on the new side of a swap pull what the old side does not', () => {
    const swap = (side: 'old' | 'new') =>
      idsOf(
        use('swap-board', {
          foods: [{ food: { name: 'salt substitute', flags: ['potassium-chloride'] }, side }],
        }),
      );
    expect(swap('new')).toContain('potassium-salt');
    expect(swap('old')).toContain('potassium-salt'); // any side of a swap
    const soy = (side: 'old' | 'new') =>
      pulled(use('swap-board', { foods: [{ food: { name: 'tofu', flags: ['soy'] }, side }] }))
        .found.find((p) => p.caution.id === 'allergen-swap')
        ?.reasons.map((r) => r.trigger);
    expect(soy('new')).toContain('allergen-swap#2');
    expect(soy('old')).not.toContain('allergen-swap#2');
  });
});

describe('directives', () => {
  it('pull what they always pull', () => {
    expect(idsOf(use('rinse-drop'))).toEqual([
      'sodium-lithium',
      'sodium-heart-water-pills',
      'sodium-need-more',
      'note-brand-varies',
      'note-rinse-counts',
    ]);
  });

  it('pull under their own conditions only', () => {
    const compare = (nutrients: string[], topics: string[]) =>
      idsOf({ ...use('form-compare', { nutrients }), topics: topics.map((name) => ({ name })) });
    expect(compare(['fiber'], ['prices'])).not.toContain('fiber-slowly');
    expect(compare(['fiber'], ['fiber up'])).toContain('fiber-slowly');
    expect(idsOf(use('nutrient-rank', { nutrients: ['fiber'] }))).toEqual(
      expect.arrayContaining(['fiber-slowly', 'fluids-limit']),
    );
  });

  it('look at the edition where a caution hangs on it', () => {
    const rank = (guidance: string) =>
      idsOf({ ...use('form-compare', { nutrients: ['protein'] }), guidance });
    expect(rank('us-2025')).toContain('protein-kidney');
    expect(rank('us-2020')).not.toContain('protein-kidney');
  });
});

describe('who is in the room', () => {
  const milk = use('quiz', { foods: [{ food: { name: 'milk', flags: ['rice-drink'] } }] });
  it('is a mixed room when nobody says', () => {
    expect(
      pulled(milk)
        .found.find((p) => p.caution.id === 'milk-infant')
        ?.reasons.map((r) => r.trigger),
    ).toEqual(['rice-drink', 'milk-infant#3']);
  });
  it('is what the lesson says', () => {
    expect(
      pulled({ ...milk, audiences: ['adults'] })
        .found.find((p) => p.caution.id === 'milk-infant')
        ?.reasons.map((r) => r.trigger),
    ).toEqual(['rice-drink']);
  });
});

describe('words', () => {
  it.each([
    ['Try a salt substitute.', 'potassium-salt'],
    ['Cut back on the salt you add.', 'sodium-lithium'],
    ['Drink more water each day.', 'fluids-limit'],
    ['Cut out all the bread.', 'carb-low-sugar'],
    ['Skip breakfast to save time.', 'fasting-not-for'],
    ['Many people keep Lent.', 'fasting-not-for'],
    ['Lose a little weight.', 'weight-not-for'],
    ['Her BMI is high.', 'weight-ask-first'],
    ['Take a vitamin with lunch.', 'supplement-ask'],
    ['A bite of pâté is fine.', 'liver-vitamin-a'],
    ['Put it in a lunch box.', 'choking-child'],
    ['Use the slow cooker.', 'kidney-bean-boil'],
    ['Bring Salt Substitutes!', 'potassium-salt'],
    ['This dish is nut-free.', 'allergen-cross-contact'],
  ])('"%s" pulls %s', (words, id) => {
    expect(idsOf(text(words))).toContain(id);
  });

  it.each([
    'Use herbs and chili powder.',
    'Cut the onion, then add salt.',
    'A fast lunch for two.',
    'The sodium drops by half.',
    'The lens lent by a friend; lentils too.',
    'Use a kitchen scale, a cup or a spoon.',
    'Baby carrots and baby lima beans.',
    'Add cider vinegar or red wine vinegar.',
    'Brussels sprouts and mashed beans.',
    'Roll up your sleeves.',
    'Work out the cost of a cup.',
    'The strength of this can is its price.',
    'A diet of many foods.',
  ])('"%s" pulls nothing', (words) => {
    expect(idsOf(text(words))).toEqual([]);
  });

  it('are found in notes, alternative text, options and file names, each with its sentence and place', () => {
    for (const where of ['notes', 'alternative text', 'quiz option', 'file name'] as const) {
      const { found } = pulled(text('All good. Drink more water now.', where));
      expect(found[0]?.reasons).toEqual([
        {
          by: 'fact',
          trigger: 'fluids-limit#1',
          says: `"Drink more water" in ${where}`,
          sentence: 'Drink more water now.',
          place: { file: 'l.md', line: 3, column: 15 },
        },
      ]);
    }
  });

  it('of another language are not looked at, and that is said', () => {
    const { ids, problems } = pulled({ ...text('Drink more water.'), language: 'es' });
    expect(ids).toEqual([]);
    expect(problems).toMatchObject([
      { code: 'cautions/words-not-checked', severity: 'hint', spoils: { languages: ['es'] } },
    ]);
  });
});

describe('cautions that pull others', () => {
  it('fiber-slowly brings the fluid limit, weight words bring help and the way out', () => {
    expect(idsOf(text('Eat more fiber.'))).toEqual(['fluids-limit', 'fiber-slowly']);
    expect(idsOf(text('Weight loss is slow.'))).toEqual(
      expect.arrayContaining(['weight-opt-out', 'weight-help']),
    );
  });
});

describe('calls', () => {
  it('bring in an entry of the register', () => {
    expect(idsOf({ called: [{ id: 'cook-heat' }] })).toEqual(['cook-heat']);
  });
  it('to what does not exist are a Stop with the nearest id', () => {
    expect(
      pulled({ called: [{ id: 'cook-heet', place: { file: 'l.md', line: 2, column: 1 } }] }).problems,
    ).toMatchObject([
      {
        code: 'cautions/unknown-id',
        severity: 'stop',
        hint: 'Did you mean `cook-heat`?',
        place: { line: 2 },
      },
    ]);
  });
});
