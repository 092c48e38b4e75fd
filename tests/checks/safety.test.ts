import { describe, expect, it } from 'vitest';
import { type Facts, NO_FACTS, pull } from '../../src/cautions/index.js';
import { checkBarredFoods, checkNeededCautions, checkRefusedWords } from '../../src/checks/index.js';
import { createReport } from '../../src/diagnostics/index.js';
import { register } from '../cautions/register-files.js';
import { found, place } from './fixtures.js';

// The sentences are made up for these tests; the rules behind them stand in the register with their sources.
const passage = (text: string) => ({
  text,
  where: 'text' as const,
  place: { ...place(4, 3), endLine: 4, endColumn: 3 + text.length },
});

describe('what is refused whoever writes it', () => {
  const check = (text: string, audience = 'adults who shop and cook') =>
    found((r) => checkRefusedWords({ passages: [passage(text)], language: 'en', audience, register }, r));

  it.each([
    ['R24', 'E03', 'Eat oats and stop taking your statin pills.'],
    ['R24', 'E03', 'Skip your insulin when you skip lunch.'],
    ['R24', 'E03', 'Beans can cut your blood pressure medicine.'],
    ['R24', 'E03', 'With beans you can come off your metformin.'],
    ['R24', 'E03', 'Take one unit of insulin for every 10 g of carbohydrate.'],
    ['R24', 'E03', 'Beans reverse diabetes.'],
    ['R24', 'E03', 'Kale boosts your immune system.'],
    ['R24', 'E03', 'This soup will detox your body.'],
    ['R27', 'S02', 'Stay under 30 grams of carbs a day.'],
    ['R27', 'S02', 'Only 5% of your energy from carbohydrate.'],
    ['R20', 'S09', 'Wheat-free means gluten-free.'],
    ['R20', 'S09', 'Oats are naturally gluten-free.'],
    ['R03', 'S10', 'Stir honey into the cereal for the baby.'],
    ['R03', 'S10', 'Babies love a little honey.'],
    ['R04', 'S10', 'Make your own formula from oat drink.'],
    ['R04', 'S10', 'Give your baby cow’s milk instead.'],
    ['R08', 'S11', 'Cut 3,500 calories and lose a pound.'],
    ['R08', 'S11', 'Lose 10 pounds in 5 weeks.'],
    ['R08', 'S11', 'You will lose 2 kg every month.'],
    ['R09', 'S11', 'You should eat 1,500 calories.'],
    ['R09', 'S11', 'Think of your goal weight.'],
    ['R09', 'S11', 'Cut 500 calories a day.'],
    ['R08', 'S11', 'Lose two pounds a month.'],
    ['R12', 'S12', 'Replace all meals with shakes.'],
    ['R13', 'S13', 'Eat one meal a day.'],
    ['R13', 'S13', 'Stop eating at 7 pm.'],
    ['R13', 'S13', 'Eat within 8 hours a day.'],
    ['R09', 'S11', 'Write down your height.'],
    ['R09', 'S11', 'Work out your BMI.'],
    ['R12', 'S12', 'Stay below 1,000 calories a day.'],
    ['R12', 'S12', 'A very-low-calorie diet works fast.'],
    ['R12', 'S12', 'Try an 800-calorie diet.'],
    ['R13', 'S13', 'Fast for 16 hours.'],
    ['R13', 'S13', 'Try the 16:8 method.'],
    ['R13', 'S13', 'A juice cleanse for three days.'],
    ['R13', 'S13', 'Eat only between 12 and 8 pm.'],
    ['R17', 'S14', 'Take a supplement of 50 mcg.'],
    ['R17', 'S14', 'Vitamin D, 2,000 IU in drops, helps.'],
    ['R22', 'S15', 'Cook chicken to 165 °F.'],
    ['R22', 'S15', 'Keep the fridge at 40 degrees.'],
    ['R23', 'S15', 'Can your own beans at harvest.'],
    ['R23', 'S15', 'Cover garlic in oil and keep it on the shelf.'],
    ['R23', 'S15', 'Put dry kidney beans into the slow cooker.'],
  ])('%s, %s: %s', (refusal, code, text) => {
    const [first, ...rest] = check(text);
    expect(first).toMatch(new RegExp(`^${code} @4 .*\\(${refusal}\\)$`));
    expect(rest).toEqual([]);
  });

  it.each([
    'Never stop taking your pills because of a sheet.',
    'Do not skip your insulin.',
    'Ask your care team before you change your medicine.',
    'No honey for a baby under one year.',
    'Beans do not cure diabetes.',
    'That food heals cancer is a myth.',
    'You cannot lose 10 pounds in 5 days.',
    'A pound of beans costs less.',
    'Wheat-free is not gluten-free.',
    'Look for oats that are labeled gluten-free.',
    'Bake at 350 °F in the oven.',
    'One cup has 400 mg of sodium.',
    'Ask before you take a supplement.',
    'Walk fast for ten minutes.',
    'Fast food has more salt.',
    'The recipe makes 12 cups.',
    'Eat breakfast between 7 and 8 am.',
    'A can of 15 oz holds 1 1/2 cups.',
    'Soak the beans 8 hours, then boil them.',
    'Canned beans are cooked.',
    'Cut your onions small.',
    'Drop the pasta in 3 quarts of water.',
  ])('%s is fine', (text) => {
    expect(check(text)).toEqual([]);
  });

  it('looks at the wrong options of a quiz too, so that no unsafe act stands there as a choice', () => {
    const option = {
      ...passage('Stop taking your insulin when you feel well.'),
      where: 'quiz option' as const,
    };
    expect(
      found((r) =>
        checkRefusedWords({ passages: [option], language: 'en', audience: 'adults', register }, r),
      ),
    ).toEqual([expect.stringMatching(/^E03 @4 .* in quiz option changes a medicine/)]);
  });

  it('looks at raw food only where people must not have it', () => {
    const text = 'Try sushi and raw milk.';
    expect(check(text)).toEqual([]);
    expect(check(text, 'people who are pregnant')[0]).toMatch(/^S15 .*\(R28\)$/);
  });

  it('names a refusal of the register in every rule', () => {
    const ids = new Set(register.refusals.map(({ id }) => id));
    for (const id of [
      'R03',
      'R04',
      'R08',
      'R09',
      'R12',
      'R13',
      'R17',
      'R20',
      'R22',
      'R23',
      'R24',
      'R27',
      'R28',
    ])
      expect(ids).toContain(id);
  });
});

const use = (flag: string): Partial<Facts> => ({
  directives: [
    {
      name: 'quiz',
      id: 'q',
      nutrients: [],
      foods: [{ food: { name: 'x', flags: [flag] }, place: place(9) }],
    },
  ],
});
const tag = (name: string): Partial<Facts> => ({ topics: [{ name, place: place(8) }] });
const text = (words: string): Partial<Facts> => ({ texts: [passage(words)] });

describe('content that may not go out without its cautions', () => {
  const CASES: readonly [string, Partial<Facts>, string][] = [
    ['S01', text('Use a salt substitute.'), 'potassium-salt'],
    ['S01', use('potassium-chloride'), 'potassium-salt'],
    ['S01', tag('potassium-rich foods'), 'potassium-foods'],
    ['S02', text('Cut carbs at night.'), 'carb-low-sugar'],
    ['S02', text('Skip lunch on busy days.'), 'carb-sglt2'],
    ['S02', tag('fasting'), 'carb-low-sugar'],
    ['S03', text('Cut down on the salt.'), 'sodium-lithium'],
    ['S03', tag('sodium down'), 'sodium-heart-water-pills'],
    ['S04', tag('calcium timing'), 'thyroid-tablet'],
    ['S05', tag('greens steady'), 'warfarin-greens'],
    ['S05', text('Eat more greens.'), 'warfarin-greens'],
    ['S06', use('grapefruit-kind'), 'grapefruit-medicine'],
    ['S06', use('aged-fermented'), 'maoi-aged-food'],
    ['S06', use('liver'), 'liver-vitamin-a'],
    ['S06', use('star-fruit'), 'star-fruit-kidney'],
    ['S08', text('A nut-free lunch.'), 'allergen-label'],
    ['S08', tag('allergy'), 'allergen-cross-contact'],
    ['S09', tag('gluten-free'), 'celiac-test-first'],
    ['S10', use('honey'), 'honey-infant'],
    ['S10', use('choke-shape'), 'choking-child'],
    ['S10', use('plant-drink'), 'milk-infant'],
    ['S13', tag('fasting'), 'fasting-not-for'],
    ['S13', tag('vegan'), 'diet-gaps'],
    ['S14', tag('vegan'), 'vegan-b12'],
    ['S14', text('Take a multivitamin.'), 'supplement-ask'],
    ['S16', text('Drink plenty of water.'), 'fluids-limit'],
    ['S16', tag('fiber up'), 'fiber-slowly'],
    ['S16', tag('protein up'), 'protein-kidney'],
  ];
  const run = (facts: Facts, lost?: string) => {
    const pulled = pull(register, facts, createReport()).filter(({ caution }) => caution.id !== lost);
    return found((r) => checkNeededCautions({ ...facts, passages: facts.texts, pulled, language: 'en' }, r));
  };

  it.each(CASES)('%s: the register pulls it by itself', (_, facts) => {
    expect(run({ ...NO_FACTS, ...facts })).toEqual([]);
  });

  it.each(CASES)('%s: its loss is a Stop at the place of the content', (code, facts, lost) => {
    const all = run({ ...NO_FACTS, ...facts }, lost);
    expect(all.some((one) => one.startsWith(`${code} @`) && one.includes(`\`${lost}\``))).toBe(true);
  });
});

describe('food that an audience is not offered', () => {
  const check = (flag: string, audience: string, side?: 'old' | 'new') =>
    found((r) =>
      checkBarredFoods(
        {
          directives: [
            {
              name: 'plate-map',
              id: 'p',
              nutrients: [],
              foods: [{ food: { name: 'x', flags: [flag] }, place: place(9), ...(side ? { side } : {}) }],
            },
          ],
          audience,
          register,
        },
        r,
      ),
    );
  it.each([
    ['potassium-chloride', 'adults with kidney disease', 'S01', 'R01'],
    ['potassium-chloride', 'families', 'S01', 'R01'],
    ['honey', 'parents of infants', 'S10', 'R03'],
    ['plant-drink', 'parents of babies', 'S10', 'R04'],
    ['choke-shape', 'parents of toddlers', 'S10', 'R05'],
    ['unpasteurized', 'people who are pregnant', 'S15', 'R28'],
    ['sprouts', 'older adults', 'S15', 'R28'],
    ['star-fruit', 'kidney clinic', 'S06', 'R29'],
    ['liver', 'pregnancy class', 'S06', 'R29'],
    ['high-mercury', 'families with children', 'S06', 'R29'],
  ])('%s for %s', (flag, audience, code, refusal) => {
    expect(check(flag, audience)[0]).toMatch(new RegExp(`^${code} @9 .*\\(${refusal}\\)$`));
    expect(check(flag, audience, 'old')).toEqual([]);
    expect(check(flag, 'adults who shop and cook')).toEqual([]);
  });
});
