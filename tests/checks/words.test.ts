import { describe, expect, it } from 'vitest';
import { checkBodies, checkRinseClaims } from '../../src/checks/index.js';
import { numbersOf } from '../../src/document/index.js';
import { found, number, place, problems } from './fixtures.js';

const passage = (text: string, where: 'text' | 'notes' | 'file name' | 'quiz option' = 'text') => ({
  text,
  where,
  place: { ...place(4, 3), endLine: 4, endColumn: 3 + text.length },
});

describe('S18, bodies and burning', () => {
  const check = (text: string, where?: 'text' | 'notes' | 'file name') =>
    found((r) => checkBodies({ passages: [passage(text, where)], language: 'en' }, r));

  it.each([
    'See the before and after photos of the woman.',
    'Her body before and after.',
    'A silhouette that shrinks.',
    'Walk this off in 20 minutes.',
    'You can walk that cookie off.',
    'Burn 200 calories with a dance.',
    'Count the calories burned on the bike.',
    'Burn off those calories.',
    'Burn belly fat with beans.',
    'Earn your dessert.',
    'Ten minutes of running to burn it.',
    'Step on the scale each Monday.',
    'Do you own a bathroom scale?',
    'Weigh yourself once a week.',
    'We start with a weigh-in.',
    'Put the tape measure around your waist.',
    'Measure your waist.',
    'Drop a dress size.',
    'Fit into your old jeans.',
    'How much do you weigh?',
    'What is your weight?',
    'Raise your hand if you want to lose weight.',
    'Who here is on a diet?',
    'Raise a hand if you have diabetes.',
    'How many of you get food benefits?',
  ])('"%s" is a Stop', (text) => {
    expect(check(text)).toHaveLength(1);
    expect(check(text)[0]).toMatch(/^S18 @4 "/);
  });

  it.each([
    'Use a kitchen scale to weigh the beans.',
    'Put the bowl on the scale and press zero.',
    'Weigh the dry beans, then weigh them cooked.',
    'Sodium before and after rinsing.',
    'Look at the label before and after you drain the can.',
    'Stir so that the beans do not burn.',
    'Burn the garlic and the soup turns bitter.',
    'Walk off at the second stop.',
    'Work out the cost of a cup.',
    'Salt prevents spoiling.',
    'A tape measure shows how deep the pot is.',
    'Measure your beans with a cup.',
    'Raise your hand if you rinse your beans.',
    'Who here knows the benefits of beans?',
    'How much do the beans weigh?',
    'The figure shows two rows.',
    'This recipe before and after the change.',
    'Heavy cans go at the bottom of the bag.',
  ])('"%s" is fine', (text) => {
    expect(check(text)).toEqual([]);
  });

  it('looks at notes and file names too', () => {
    expect(check('Weigh yourself now.', 'notes')).toEqual([
      'S18 @4 "Weigh yourself" in notes is about weighing people.',
    ]);
    expect(check('pictures/body-scale.svg', 'file name')).toEqual([
      'S18 @4 "body scale" in file name is about weighing people.',
    ]);
    expect(check('pictures/kitchen-scale.svg', 'file name')).toEqual([]);
  });

  it('points to the very words', () => {
    expect(
      problems((r) => checkBodies({ passages: [passage('Rest. Weigh yourself now.')], language: 'en' }, r))[0]
        ?.place,
    ).toEqual({
      file: 'lesson.md',
      line: 4,
      column: 9,
      endLine: 4,
      endColumn: 23,
    });
  });

  it('is not run on words of another language', () => {
    expect(found((r) => checkBodies({ passages: [passage('Weigh yourself.')], language: 'es' }, r))).toEqual(
      [],
    );
  });
});

describe('N18, what rinsing takes away', () => {
  const check = (text: string) =>
    found((r) => checkRinseClaims({ passages: [passage(text)], numbers: numbersOf([]) }, r));

  // Published: beans drained and rinsed lose 20 to 41% of the label value, drained alone 8 to 36%;
  // vegetables drained and rinsed 7 to 23% (see the studies in src/nutrition/rinse-studies.ts).
  it.each([
    'Rinsing takes away 60% of the sodium on the label.',
    'Rinse the beans and half the salt is gone.',
    'Rinse, and most of the salt goes down the drain.',
    'Draining removes 41% of the sodium that the label states.',
    'Rinsing green peas takes away 40 percent of the sodium on the label.',
    'Rinsing takes away at least a third of the salt.',
    'Rinsing takes away 30% of the sodium.',
    'Drain the can: all of the salt leaves.',
  ])('"%s" is a Stop', (text) => {
    expect(check(text)).toEqual([expect.stringMatching(/^N18 @4 "/)]);
  });

  it.each([
    'Rinsing takes away about 30% of the sodium on the label.',
    'Rinse the beans: at least 20% of the sodium in the can goes.',
    'Rinse the beans and a quarter of the salt goes away.',
    'Rinsing takes away up to 41% of the sodium on the label.',
    'Rinse half a can of beans to lower the salt.',
    'Drain and rinse to get less salt.',
    'The label says 20% of the Daily Value for sodium.',
    'Rinse under cold water for half a minute. The salt goes.',
    'Half of the group has rinsed beans today.',
    'Do not say that rinsing takes all the salt away.',
    'Rinsing does not remove half of the sodium.',
  ])('"%s" is fine', (text) => {
    expect(check(text)).toEqual([]);
  });

  it('says what the studies found', () => {
    expect(check('Rinse the beans and half the salt is gone.')[0]).toMatch(
      /20% to 41% of the sodium goes away/,
    );
  });

  it('holds rinse figures to a label with its liquid and to a published loss', () => {
    const rinse = (unit: string, source: string) => ({
      ...number('rinse.after', null, ''),
      inputs: [
        { name: 'label', value: 460, unit, source: 'lesson' },
        { name: 'loss_low', value: 0.2, unit: 'share of the label value', source },
        { name: 'loss_high', value: 0.41, unit: 'share of the label value', source },
      ],
    });
    const run = (unit: string, source: string) =>
      found((r) => checkRinseClaims({ passages: [], numbers: numbersOf([rinse(unit, source)]) }, r));
    expect(run('mg sodium per serving with liquid', 'duyff-2011')).toEqual([]);
    expect(run('mg sodium per serving', 'duyff-2011')).toEqual([
      expect.stringContaining('starts from a label that does not count the liquid'),
    ]);
    expect(run('mg sodium per serving with liquid', '')).toHaveLength(2);
  });
});
