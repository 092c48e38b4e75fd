import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { AREAS, CALCULATIONS } from '../../../src/cli/calc/list.js';
import { FOR_THE_TOOL } from '../../../src/nutrition/index.js';
import { ROOT } from '../../house/source.js';
import { platework } from '../command.js';

const MAN = ['sex=male', 'age=45', 'height=178cm', 'weight=90kg'];
const WOMAN = ['sex=female', 'age=40', 'height=165cm', 'weight=80kg', 'activity=1.5'];

describe('platework calc', () => {
  it('prints a value with its formula, inputs, domain, cautions and source', () => {
    const { code, out, err } = platework(['calc', 'resting-energy', ...MAN]);
    expect(err).toBe('');
    expect(code).toBe(0);
    for (const words of [
      'resting energy: 1792.5 kcal a day',
      '= constant + per_kg * weight + per_cm * height + per_year * age',
      'per_kg    10 kcal per kg    mifflin-1990',
      'weight    90 kg             given',
      'healthy adults of 19 to 78 years',
      'Within about 10 percent',
      'mifflin-1990: Mifflin MD',
      FOR_THE_TOOL,
    ])
      expect(out).toContain(words);
  });

  it('gives machines every digit and the same story', () => {
    const { code, out } = platework(['calc', 'bmi', 'height=65in', 'weight=180 lb', 'age=40', '--json']);
    expect(code).toBe(0);
    const read = JSON.parse(out);
    expect(read).toMatchObject({
      calculation: 'body-mass-index',
      given: { height: '65in', weight: '180 lb', age: '40' },
      use: FOR_THE_TOOL,
      results: [
        { name: 'body mass index', unit: 'kg/m²' },
        { name: 'class', value: 'overweight' },
      ],
    });
    expect(read.results[0].value).toBeCloseTo((180 * 0.45359237) / 1.651 ** 2, 12);
    expect(read.results[0].inputs[0]).toMatchObject({
      name: 'weight',
      value: 180,
      unit: 'lb',
      source: 'given',
    });
  });

  it('prints what the README shows', () => {
    const readme = readFileSync(join(ROOT, 'README.md'), 'utf8');
    const { out } = platework(['calc', 'alcohol', 'volume=12 fl oz', 'strength=5%']);
    expect(readme).toContain(`\n\`\`\`\n${out}\`\`\`\n`);
  });

  it('lists every calculation with its inputs, for people and for machines', () => {
    const text = platework(['calc', '--list']);
    const json = JSON.parse(platework(['calc', '--list', '--json']).out) as {
      name: string;
      inputs: unknown[];
    }[];
    expect(text.code).toBe(0);
    expect(json.map(({ name }) => name)).toEqual(CALCULATIONS.map(({ name }) => name));
    for (const { name, inputs } of CALCULATIONS) {
      expect(text.out).toMatch(new RegExp(`^ {2}${name}[:( ]`, 'm'));
      for (const input of Object.keys(inputs)) expect(text.out).toMatch(new RegExp(`^ {4}${input} `, 'm'));
    }
    expect(platework(['calc', '--help']).out).toContain('weight-course');
  });

  it('says of every energy and weight of people that it is for no person', () => {
    const people = AREAS.filter(({ heading }) => /person|body weight/i.test(heading));
    expect(people).toHaveLength(2);
    const entries = people.flatMap((area) => area.entries);
    expect(entries.filter(({ ofPeople }) => !ofPeople).map(({ name }) => name)).toEqual([]);
    const { out } = platework(['calc', 'weight-course', ...WOMAN, 'change=-250kcal', 'day=28']);
    expect(out).toContain(`Use        ${FOR_THE_TOOL}`);
  });

  it('shows one, with a call that works as it stands', () => {
    const { code, out } = platework(['calc', 'energy-need', '--help']);
    expect(code).toBe(0);
    for (const words of [
      'inactive | low active | active | very active',
      '100 to 250 cm',
      'needed',
      'Example',
    ])
      expect(out).toContain(words);
    expect(JSON.parse(platework(['calc', 'eer', '--help', '--json']).out)).toMatchObject({
      name: 'energy-need',
    });
  });
});

describe('what a calculation refuses', () => {
  it.each([
    [
      'an age under the equation',
      ['energy-need', 'sex=female', 'age=17', 'height=165cm', 'weight=65kg', 'activity=active'],
      'ages 19 and over; this example is 17',
    ],
    [
      'an age over it',
      ['resting-energy', 'sex=male', 'age=79', 'height=178cm', 'weight=90kg'],
      'ages 19 to 78',
    ],
    [
      'pregnancy',
      ['resting-energy', 'sex=female', 'age=30', 'height=165cm', 'weight=65kg', 'circumstances=pregnant'],
      'who is pregnant',
    ],
    [
      'an eating disorder',
      ['weight-course', ...WOMAN, 'change=-200kcal', 'day=28', 'circumstances=eating-disorder'],
      'eating disorder, now or before',
    ],
    [
      'a low body mass index',
      ['weight-baseline', 'sex=female', 'age=40', 'height=165cm', 'weight=45kg', 'activity=1.5'],
      'below 18.5',
    ],
    ['a goal below it', ['constant-change', ...WOMAN, 'goal=45kg', 'days=365'], 'at the goal'],
    [
      'a pace that is too fast',
      ['constant-change', ...WOMAN, 'goal=72kg', 'days=60'],
      'too fast|less than 1200',
    ],
    [
      'an unknown age for a forecast',
      [
        'weight-course',
        'sex=female',
        'age=unknown',
        'height=165cm',
        'weight=80kg',
        'activity=1.5',
        'change=-200kcal',
        'day=28',
      ],
      'the age is not known',
    ],
    ['a weight that no adult has', ['bmi', 'height=165cm', 'weight=800kg'], 'outside 20 to 400 kg'],
  ] as const)('%s, with the reason and exit code 1', (_, call, reason) => {
    const text = platework(['calc', ...call]);
    expect(text).toMatchObject({ code: 1, err: '' });
    expect(text.out).toMatch(/^Refused: /);
    expect(text.out).toMatch(new RegExp(reason));
    expect(text.out).toContain(FOR_THE_TOOL);
    const json = platework(['calc', ...call, '--json']);
    expect(json.code).toBe(1);
    expect(JSON.parse(json.out).refused.reason).toMatch(new RegExp(reason));
  });
});

describe('a call that cannot be read', () => {
  it.each([
    ['an unknown one', ['resting-enrgy'], 'Near it: resting-energy'],
    ['a short unknown one', ['bim'], 'bmi'],
    ['one by what it is about', ['basal'], 'oxford-energy'],
    ['a missing input', ['bmi', 'height=165cm'], 'weight is missing'],
    ['an unknown input', ['bmi', 'hieght=165cm', 'weight=80kg'], 'Did you mean height'],
    ['a word without a name', ['bmi', 'height=165', 'cm', 'weight=80kg'], '"cm" has no name'],
    ['the same input twice', ['bmi', 'height=165cm', 'height=1.7m', 'weight=80kg'], 'height stands twice'],
    ['a missing unit', ['bmi', 'height=165cm', 'weight=80'], 'kg or lb'],
    ['a unit that does not fit', ['bmi', 'height=165kg', 'weight=80kg'], 'unit kg does not fit'],
    ['a word that is no unit', ['bmi', 'height=165cm', 'weight=80stone'], '"stone" is no unit'],
    ['an amount below zero', ['bmi', 'height=165cm', 'weight=-80kg'], 'less than zero'],
    ['a comma', ['bmi', 'height=1,65m', 'weight=80kg'], '1.65'],
    ['no number', ['bmi', 'height=tall', 'weight=80kg'], '"tall" is no number'],
    ['nothing after the sign', ['bmi', 'height=', 'weight=80kg'], 'height'],
    ['a power of ten', ['bmi', 'height=1e400cm', 'weight=80kg'], 'Powers of ten are not read'],
    ['a number that no machine holds', ['dv', 'nutrient=sodium', `amount=${'9'.repeat(400)}mg`], 'too large'],
    ['an unknown nutrient', ['dv', 'nutrient=sodim', 'amount=1mg'], 'Did you mean sodium'],
    [
      'a food that is not there',
      ['grams', 'food=pinto beens', 'amount=1 cup'],
      'pinto beans, canned, drained',
    ],
    ['an age that no life stage has', ['rda', 'nutrient=calcium', 'age=-1', 'sex=female'], 'less than zero'],
    ['infinity', ['bmi', 'height=Infinity', 'weight=80kg'], 'no number'],
    ['a wrong choice', ['resting-energy', ...MAN.slice(1), 'sex=mael'], 'Did you mean male'],
    ['a unit where none fits', ['activity-level', 'level=1.6kg'], 'does not fit'],
    ['names of our own making', ['constructor'], 'no calculation'],
    [
      'inputs of our own making',
      ['bmi', 'height=165cm', 'weight=80kg', '__proto__=1', 'toString=2'],
      'no input',
    ],
  ] as const)('%s is told plainly, with exit code 1', (_, call, words) => {
    const { code, out, err } = platework(['calc', ...call]);
    expect({ code, err }).toEqual({ code: 1, err: '' });
    expect(out).toMatch(/^Refused: /);
    expect(out).toContain(words);
    expect(out).not.toMatch(/\bat .*\.js:|mistake in platework/);
  });

  it('tells all that is wrong at once', () => {
    const { out } = platework(['calc', 'resting-energy', 'sex=mael', 'age=-3', 'weight=80', 'foo=1']);
    for (const words of ['sex="mael"', 'age="-3"', 'weight="80"', '"foo"', 'height is missing'])
      expect(out).toContain(words);
  });

  it('asks what is to be worked out, with exit code 2', () => {
    const { code, out, err } = platework(['calc']);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain('calc --list');
  });

  it('has the same shape for machines', () => {
    const { code, out } = platework(['calc', 'bmi', 'height=165kg', '--json']);
    expect(code).toBe(1);
    expect(JSON.parse(out)).toMatchObject({
      calculation: 'body-mass-index',
      given: { height: '165kg' },
      refused: { reason: expect.stringContaining('unit kg does not fit'), near: [] },
    });
    expect(JSON.parse(platework(['calc', 'bim', '--json']).out)).toEqual({
      calculation: 'bim',
      refused: {
        reason: 'There is no calculation "bim".',
        hint: 'platework calc --list shows them all.',
        near: ['bmi'],
      },
    });
  });
});
