import { describe, expect, it } from 'vitest';
import { createReport } from '../../src/diagnostics/index.js';
import type { View } from '../../src/directives/contract.js';
import { numbersIn } from '../../src/document/index.js';
import type { Level } from '../../src/reading/index.js';
import { AUDIENCES, computeParts, viewOf } from './desk.js';
import { part } from './parts.js';
import { blocksOf, figuresOf, numbersAnywhere, outline, stringsIn } from './strings.js';

const SIX = 'sodium; fiber; protein; potassium; iron; folate';
const PARTS = {
  'three forms': part(
    'form-compare',
    { id: 'f', food: 'pinto beans', basis: '1 cup, ready to eat', show: SIX },
    [
      'dried, cooked at home ; choose = when you have time',
      'canned, drained ; choose = when the can says no salt added',
      'canned, drained and rinsed ; from = canned, drained ; word = rinsing',
    ],
  ),
  'one measure': part('form-compare', { id: 'f', food: 'green peas', basis: '100 g', show: 'vitamin C' }, [
    'frozen, boiled, no salt',
    'canned, with liquid',
  ]),
  'a package': part('form-compare', { id: 'f', food: 'pinto beans', basis: '1 can', show: 'sodium; fiber' }, [
    'canned, with liquid',
    'canned, drained',
    'canned, drained and rinsed',
  ]),
  'before cooking': part('form-compare', { id: 'f', food: 'pinto beans', basis: '1 cup', show: 'fiber' }, [
    'dry',
    'dried, cooked at home',
  ]),
  beans: part('rinse-drop', {
    id: 'f',
    food: 'black beans, canned',
    'label-sodium': '460 mg',
    'label-basis': '1/2 cup, with liquid',
  }),
  'drained corn': part('rinse-drop', {
    id: 'f',
    food: 'corn, canned',
    'label-sodium': '120 mg',
    'label-basis': '125 g, with liquid',
    treatment: 'drained',
  }),
  'no salt added': part('rinse-drop', {
    id: 'f',
    food: 'black beans, canned',
    'label-sodium': '15 mg',
    'label-basis': '1/2 cup, with liquid',
    'no-salt-added': 'yes',
  }),
  'what a cup costs': part('cup-cost', { id: 'f', foods: 'chickpeas, dry; chickpeas, canned' }),
  'what cups of several foods cost': part('cup-cost', {
    id: 'f',
    foods: 'brown rice, dry; carrots, raw; navy beans, dry; potatoes, raw',
    sort: 'written',
  }),
  'a band': part('pace-chart', {
    id: 'f',
    show: 'band',
    change: '250 kcal a day',
    example: 'woman, 45, 165 cm, 82 kg, mostly sitting',
  }),
  'a band that grows by steps': part('pace-chart', {
    id: 'f',
    show: 'band',
    months: '24',
    seed: '4',
    change: '100 kcal a day; 200 kcal a day from month 4',
    example: 'man, 50, 5 ft 9 in, 230 lb',
  }),
  'a band that stops': part('pace-chart', {
    id: 'f',
    show: 'band',
    months: '24',
    change: '300 kcal a day',
    example: 'woman, 30, 165 cm, 58 kg',
  }),
  'a pace that eases': part('pace-chart', {
    id: 'f',
    show: 'pace',
    'to-lose': '60 lb',
    example: 'adult, 230 lb, 5 ft 7 in',
  }),
  questions: part('quiz', { id: 'f', basis: '1/2 cup, ready to eat', seed: '7' }, [
    [
      'Q: Which has the least sodium?',
      [
        'pinto beans, canned, drained ; why = salt stays',
        'pinto beans, canned, drained and rinsed ; why = rinsing takes a part',
        'pinto beans, dried, cooked at home ; why = no salt went in',
        'answer = min(sodium)',
      ],
    ],
    [
      'Q: Which has the most protein?',
      [
        'corn, canned, drained ; why = it is starch',
        'pinto beans, dried, cooked at home ; why = beans are rich in it',
        'answer = max(protein)',
      ],
    ],
  ]),
  'amounts to pour': part('portion-guide', {
    id: 'f',
    foods: 'brown rice, cooked; canola oil; peanut butter',
    measures: 'cup; spoon; gram; hand',
  }),
  'a safe kitchen': part('safe-food', { id: 'f', topics: 'cans,leftovers,poultry,produce' }),
  'a day of energy': part('energy-split', { id: 'f' }, [
    'breakfast: 1 1/2 cups oats, cooked ; 1 cup whole milk',
    'supper: 2 cups brown rice, cooked ; 6 oz salmon, baked ; 2 tbsp olive oil ; 1 cup whole milk',
  ]),
  'a meal with a drink': part('energy-split', { id: 'f', of: 'meal', beside: 'nothing' }, [
    'supper: 2 cups brown rice, cooked ; 6 oz salmon, baked ; 5 fl oz red wine ; alcohol = 15 g',
  ]),
  'a plan of steps': part('step-plan', { id: 'f', start: '2027-01', months: '6' }, [
    'Jan: swap one sweet drink a day for water ; less = 12 fl oz cola',
    'Mar: add vegetables at supper ; more = 1 1/2 cups green beans, boiled, no salt ; times = 5 a week',
    'Mar: eat a handful of nuts',
    'May: leave the bacon out ; less = 3 slices bacon, pan-fried ; tells = sodium',
  ]),
  'one food for another': part('swap-board', { id: 'f', need: 'vegan,nut-free', basis: '1 cup' }, [
    'milk, cow -> soy drink, calcium added ; job = calcium, protein',
    '3 oz salmon, baked -> 1/2 cup tofu, firm, calcium-set ; use = rice bowls',
  ]),
  'one food for another, for no need': part('swap-board', { id: 'f', basis: '1 cup' }, [
    'whole milk -> almond drink, unsweetened ; job = pouring',
  ]),
  'a week of moves': part('week-of-moves', { id: 'f', for: 'older-adult' }, [
    'Mon: walk = 22 min moderate ; heel-to-toe walk = 9 min balance',
    'Wed: chair bands = 15 min strength',
    'Mon: easy dance = 13 min moderate',
    'Sat: dance = 31 min vigorous',
    'Sun: stairs = 8 min vigorous',
  ]),
} as const;

/**
 * Numbers that a blank gives on purpose: what the label says, what a brick is worth, what a can weighs; the price and
 * the cups of a package, and the line that is worked about no food.
 */
const GIVEN =
  /\.(cups?|tablespoons?|teaspoons?|label-[a-z-]+|line|found-[a-z-]+|[a-z-]+-metric|label|brick|weight|given|grams|factor|range|minutes|twice|step|goal[a-z-]*|price|cups|example-[a-z]+)$/;

/** A value counts as told when it stands there as a whole: "1 mg" is not told by "21 mg". */
function tells(text: string, value: string): boolean {
  const pattern = value.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return new RegExp(`(?<![\\d.,])${pattern}(?![\\p{L}\\d])`, 'u').test(text.replaceAll('\u00a0', ' '));
}

describe.each(Object.entries(PARTS))('%s', (_, written) => {
  const report = createReport();
  const computed = computeParts([written], report);
  const at = (where: View['shows'] & string, level: Level) =>
    viewOf(computed, written, where as (typeof AUDIENCES)[number]['where'], level);

  it('computes without a problem', () => expect(report.problems).toEqual([]));

  it.each(AUDIENCES.map(({ where, level }) => [`${where} ${level}`, where, level] as const))(
    'is well formed on %s',
    (_name, where, level) => {
      const view = at(where, level);
      expect(view).toBeDefined();
      if (!view) return;
      if (where === 'slide') expect(view.blocks).toEqual([]);
      else expect(view.stages).toBeUndefined();
      const blocks = blocksOf(view);
      expect(blocks.length).toBeGreaterThan(0);
      for (const id of numbersIn(blocks)) expect(computed.numbers.get(id), id).toBeDefined();
      for (const { path, text } of stringsIn(blocks)) {
        expect(text, path).not.toMatch(/undefined|NaN|\[object|\{[a-z-]+\}|\p{Cc}| {2}|\.\.| \.|,,/u);
      }
      for (const { alternative, id, numbers, mode } of figuresOf(view)) {
        expect(id).toBe('f');
        expect(mode).toBe(where === 'worksheet' ? 'blank' : where === 'key' ? 'key' : 'shown');
        expect(alternative.label.length).toBeLessThanOrEqual(120);
        const sentences = alternative.reading.match(/[.!?](?= |$)/g) ?? [];
        expect(sentences.length, alternative.reading).toBeGreaterThanOrEqual(2);
        expect(sentences.length, alternative.reading).toBeLessThanOrEqual(5);
        for (const row of alternative.table.rows) expect(row).toHaveLength(alternative.table.head.length);
        const told = [alternative.reading, ...alternative.table.rows.flat()].join(' ');
        // All values of the figure at this level are told in words too.
        for (const number of numbers)
          if (!/\.(brick|mark-\d+(\.(lb|kg))?)$/.test(number))
            expect(told).toContain(computed.numbers.get(number)?.text);
      }
    },
  );

  it.each(['short', 'plain', 'fuller', 'staff'] as const)(
    'gives nothing away on the worksheet, %s',
    (level) => {
      const view = at('worksheet', level);
      if (!view || computed.numbers.all.length === 1) return;
      const strings = stringsIn(view);
      for (const number of computed.numbers.all.filter((n) => !GIVEN.test(n.id))) {
        const words = number.text.replaceAll('\u00a0', ' ');
        for (const { path, text } of strings) {
          expect(tells(text, words), `${path}: ${text} tells ${words}`).toBe(false);
          expect(text, path).not.toBe(number.id);
        }
        for (const end of [number.value, number.low, number.high])
          if (typeof end === 'number' && !Number.isInteger(end))
            expect(numbersAnywhere(view)).not.toContain(end);
      }
      expect(strings.filter(({ path }) => path.includes('.key'))).toEqual([]);
      expect(
        strings.filter(({ text }) => /salt stays|takes a part|went in|rich in|is starch/.test(text)),
      ).toEqual([]);
    },
  );

  it.each(['short', 'plain', 'fuller'] as const)('says on the key what the handout says, %s', (level) => {
    const [shown, key] = [at('handout', level), at('key', level)];
    if (!shown || !key) return;
    const [a] = figuresOf(shown);
    const [b] = figuresOf(key);
    // Where the worksheet asks about another figure, the key answers that one.
    if (!a || !b || a.kind !== b.kind) return;
    expect(b.alternative.label).toBe(a.alternative.label);
    expect(b.alternative.table).toEqual(a.alternative.table);
    // The key may say more, as how many bricks to cross out, and nothing else.
    expect(b.alternative.reading.startsWith(a.alternative.reading)).toBe(true);
    if (a.kind === 'dot-lanes' && b.kind === 'dot-lanes') expect(b.lanes).toEqual(a.lanes);
  });

  it.each(['short', 'plain', 'fuller'] as const)(
    'prints the same basis line on worksheet and key, %s',
    (level) => {
      const basis = (view: View | undefined) =>
        (view?.blocks ?? []).flatMap((block) => (block.kind === 'basis' ? [block.inlines[0]?.text] : []));
      expect(basis(at('worksheet', level))).toEqual(basis(at('key', level)));
    },
  );
});

/** Directives whose basis is in their name. */
const CUP: Readonly<Record<string, string>> = {
  'pace-chart': 'made-up',
  'energy-split': 'An example',
  'step-plan': 'counted in food',
  'week-of-moves': 'An example',
  'cup-cost': '1 cup',
  'portion-guide': 'Level',
  'safe-food': 'Heat is rounded up',
};

describe('levels', () => {
  const counts = (name: keyof typeof PARTS) => {
    const written = PARTS[name];
    const computed = computeParts([written], createReport());
    return (where: 'handout' | 'slide' | 'worksheet', level: Level) => {
      const view = viewOf(computed, written, where, level);
      const [figure] = view ? figuresOf(view) : [];
      const [question] = view ? blocksOf(view).filter((block) => block.kind === 'question') : [];
      return figure?.kind === 'dot-lanes' ? figure.lanes.length : question?.choices.length;
    };
  };

  it('drop measures, most important first', () => {
    const lanes = counts('three forms');
    expect([lanes('handout', 'short'), lanes('handout', 'plain'), lanes('handout', 'fuller')]).toEqual([
      1, 3, 6,
    ]);
    expect(lanes('slide', 'fuller')).toBe(3);
  });

  it('drop options of a question down to two, never the right one', () => {
    const choices = counts('questions');
    expect([choices('worksheet', 'short'), choices('worksheet', 'plain'), choices('slide', 'short')]).toEqual(
      [2, 3, 3],
    );
    const computed = computeParts([PARTS.questions], createReport());
    const view = viewOf(computed, PARTS.questions, 'key', 'short');
    const rights = (view ? blocksOf(view) : []).flatMap((block) =>
      block.kind === 'question' ? [block.choices.filter((choice) => choice.key?.right).length] : [],
    );
    expect(rights).toEqual([1, 1]);
  });

  it('leave the basis and the portion on every level', () => {
    for (const written of Object.values(PARTS)) {
      const computed = computeParts([written], createReport());
      for (const { where, level } of AUDIENCES) {
        const view = viewOf(computed, written, where, level);
        const words = view
          ? stringsIn(view)
              .map(({ text }) => text)
              .join(' ')
          : '';
        const basis = written.attributes.get('basis') ?? written.attributes.get('label-basis');
        expect(words, `${where} ${level}`).toContain(basis?.value ?? CUP[written.name] ?? 'no basis');
      }
    }
  });
});

describe('an outline', () => {
  it('holds what stands in tables and lists', () => {
    const cell = (text: string) => ({ inlines: [{ text }] });
    const blocks: View['blocks'] = [
      {
        kind: 'table',
        caption: 'Portions',
        head: [cell('Food'), cell('Portion')],
        rows: [[cell('oats'), cell('1/2 cup')]],
        rowHeads: true,
      },
      { kind: 'list', ordered: false, items: [[{ kind: 'paragraph', inlines: [{ text: 'rinse' }] }]] },
    ];
    expect(outline({ blocks })).toEqual([
      'caption: Portions',
      '| Food | Portion |',
      '| oats | 1/2 cup |',
      '- paragraph: rinse',
    ]);
  });
});
