import { describe, expect, it } from 'vitest';
import { NO_FACTS, pull, withoutWeight } from '../../src/cautions/index.js';
import { checkWeightAudience, checkWeightFree } from '../../src/checks/index.js';
import { createReport } from '../../src/diagnostics/index.js';
import type { Block } from '../../src/document/index.js';
import { register } from '../cautions/register-files.js';
import { band } from '../figures/samples.js';
import { found, place, problems, sheet } from './fixtures.js';

describe('who is not given content on weight (R14)', () => {
  const check = (audience: string, title = 'Slow is normal', weight = [place(7)]) =>
    problems((r) => checkWeightAudience({ weight, audience, title, register }, r));

  it.each([
    'teens and their parents',
    'pregnant adults',
    'adults who are breastfeeding',
    'grade 9 students',
    'families at the school fair',
    'children from 8',
    'young people under 18',
  ])('%s', (audience) => {
    const [one, ...more] = check(audience);
    expect(one?.message).toContain('(R14)');
    expect(one?.severity).toBe('stop');
    expect(one?.place?.line).toBe(7);
    // The sheet without weight is what such a room gets.
    expect(one?.spoils?.outputs).toContain('handout');
    expect(one?.spoils?.outputs).not.toContain('weightfree');
    expect(more).toEqual([]);
  });

  it('names a session by its title too', () => expect(check('adults', 'School supper')).toHaveLength(1));
  it('lets adults have it, and lessons that are not about weight be for anybody', () => {
    expect(check('adults who shop and cook')).toEqual([]);
    expect(check('families', 'Beans', [])).toEqual([]);
  });
});

describe('the sheet without weight', () => {
  const paragraph = (text: string): Block => ({ kind: 'paragraph', inlines: [{ text }], place: place(9) });
  const check = (...blocks: Block[]) =>
    found((r) => {
      const made = sheet('handout', 'plain', { blocks, weightFree: true });
      checkWeightFree(
        { built: [{ kind: 'sheet', name: 'handout-plain-weightfree-letter.pdf', sheet: made }] },
        r,
      );
    });

  it.each([
    'You may be 5 lb lighter.',
    'After a year 4 kg less.',
    'Ten pounds off by spring.',
    'A healthy weight is slow.',
    'You need not lose weight.',
    'Do not weigh yourself.',
    'Know your BMI.',
    'Eat 250 calories less.',
    'About 100 kcal a day.',
    'She is dieting.',
    'People who go on a diet again.',
    'Drop two sizes.',
    'A plateau is normal.',
  ])('refuses: %s', (text) => {
    const [one, ...more] = check(paragraph(text));
    expect(one).toMatch(/^weight-free\/word @9 handout-plain-weightfree-letter\.pdf says "/);
    expect(more).toEqual([]);
  });

  it.each([
    'Do you wake up rested?',
    'Take 2 pounds of carrots and a can of beans.',
    'Slow is normal, and waiting helps.',
    'A diet rich in beans is not dull.',
    'Scale the recipe up.',
  ])('leaves alone: %s', (text) => expect(check(paragraph(text))).toEqual([]));

  it('looks into figures, their alternatives, tables, lists and questions', () => {
    const cell = (text: string) => ({ inlines: [{ text }] });
    const blocks: Block[] = [
      { kind: 'figure', figure: band },
      { kind: 'table', head: [cell('Month')], rows: [[cell('5 lb')]], rowHeads: true },
      { kind: 'list', ordered: false, items: [[paragraph('Calories count.')]] },
      { kind: 'write', label: 'My weight', lines: 1 },
    ];
    for (const block of blocks) expect(check(block).length, block.kind).toBeGreaterThan(0);
    expect(check({ kind: 'paragraph', inlines: [{ text: 'It is 5 ' }, { text: 'lb' }] })).toHaveLength(1);
  });

  it('asks when it says nothing', () => expect(check()[0]).toMatch(/^S19 /));

  it('drops only the lines about the page with weight on it, never what asks people to see their care team', () => {
    const topics = [{ name: 'weight' }];
    const all = pull(register, { ...NO_FACTS, topics }, createReport());
    const kept = withoutWeight(all).map(({ caution }) => caution.id);
    const gone = all.map(({ caution }) => caution.id).filter((id) => !kept.includes(id));
    expect(gone).toEqual(['weight-opt-out', 'weight-not-for', 'weight-pace']);
    expect(kept).toEqual(
      expect.arrayContaining([
        'weight-ask-first',
        'weight-help',
        'glp1-low-intake',
        'carb-low-sugar',
        'bariatric-plan',
      ]),
    );
  });

  it('keeps a line that the lesson calls by name', () => {
    const called = [{ id: 'weight-pace', place: place(3) }];
    const all = pull(register, { ...NO_FACTS, called }, createReport());
    expect(withoutWeight(all).map(({ caution }) => caution.id)).toContain('weight-pace');
  });
});
