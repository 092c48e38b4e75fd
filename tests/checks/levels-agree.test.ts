import { describe, expect, it } from 'vitest';
import { NO_FACTS, pull } from '../../src/cautions/index.js';
import { checkLevelsAgree, contradictions, leveledCautions } from '../../src/checks/index.js';
import { createReport } from '../../src/diagnostics/index.js';
import type { HolderPart, Lesson, Part } from '../../src/lesson/index.js';
import { register } from '../cautions/register-files.js';
import { found, place } from './fixtures.js';

function level(is: string, text: string, line: number): HolderPart {
  return {
    kind: 'holder',
    name: 'level',
    attributes: new Map([['is', { value: is, place: place(line) }]]),
    place: place(line),
    parts: [
      {
        kind: 'paragraph',
        place: place(line + 1),
        children: [{ kind: 'text', text, place: place(line + 1) }],
      },
    ],
  };
}
function lesson(parts: readonly Part[], language = 'en'): Lesson {
  return {
    file: 'lesson.md',
    parts,
    text: '',
    titlePlace: place(1),
    front: {
      title: 'x',
      minutes: 40,
      audience: '',
      objectives: [],
      guidance: 'us-2025',
      topics: [],
      sources: [],
      review: 'none',
      code: 'X',
      language,
      places: new Map(),
    },
  };
}
const check = (parts: readonly Part[], language?: string) =>
  found((r) => checkLevelsAgree({ lesson: lesson(parts, language), cautions: [] }, r));

describe('P12, levels that contradict each other', () => {
  it.each([
    ['a number', 'Rinse for 30 seconds.', 'Rinse the beans for 60 seconds under cold water.'],
    ['a count', 'Count to 30.', 'Rinse while you count slowly to 20.'],
    ['a portion', 'Eat half a cup.', 'Eat 1 cup of beans a day.'],
    ['yes and no', 'Rinse canned beans.', 'Do not rinse canned beans.'],
    ['no and yes', 'Never eat dry beans raw.', 'Eat dry beans raw.'],
    ['a verb', 'Add salt to the pot.', 'Cut salt in the pot.'],
    ['more and less', 'Eat more beans.', 'Eat less beans.'],
    ['before and after', 'Add salt before cooking.', 'Add salt after cooking.'],
    ['drain and keep', 'Drain the liquid.', 'Keep the liquid.'],
  ])('%s', (_, short, plain) => {
    expect(contradictions(short, plain)).toHaveLength(1);
  });

  it.each([
    ['less said', 'Drain it. Rinse it.', 'Drain it, then rinse it under cold water while you count to 30.'],
    ['a number left out', 'Rinse well.', 'Rinse for 30 seconds.'],
    ['words for the same number', 'Eat half a cup.', 'Eat 1/2 cup of beans.'],
    ['a not in another clause', 'Choose no salt added.', 'Choose no salt added, so that you need not rinse.'],
    [
      'different numbers of different things',
      'Soak for 5 hours.',
      'Soak for 5 hours, then boil for 30 minutes.',
    ],
    ['another subject', 'Rinse the beans.', 'Do not rinse the rice.'],
    ['both ways round in the fuller one', 'Add salt.', 'Add salt at the end. Do not add salt at first.'],
    ['a condition that is denied', 'Call your care team.', 'Call your care team if it does not pass.'],
    ['a more that is about something else', 'Eat more beans.', 'Eat more beans and less cheese.'],
  ])('not: %s', (_, short, plain) => {
    expect(contradictions(short, plain)).toEqual([]);
  });

  it('finds none among the wordings of the register, which say the same at every level', () => {
    const all = register.cautions.flatMap((c) => {
      const w = c.wordings.en;
      return w
        ? [
            ...contradictions(w.short, w.plain),
            ...contradictions(w.plain, w.fuller),
            ...contradictions(w.short, w.fuller),
          ].map((f) => `${c.id}: ${f.first} / ${f.second}`)
        : [];
    });
    expect(all).toEqual([]);
  });

  it('is reported at the block that differs, with both wordings', () => {
    expect(
      check([level('short', 'Rinse for 30 seconds.', 5), level('plain', 'Rinse for 60 seconds.', 9)]),
    ).toEqual([
      'P12 @5 The levels short and plain of this passage disagree in a number: 30 seconds stands beside 60 seconds.',
    ]);
  });

  it('compares each level with the next fuller one, in whatever order they stand', () => {
    expect(
      check([level('fuller', 'Rinse for 60 seconds.', 5), level('short', 'Rinse for 30 seconds.', 9)]),
    ).toHaveLength(1);
  });

  it('compares neighbors only: what stands between parts two passages', () => {
    const between: Part = {
      kind: 'paragraph',
      place: place(7),
      children: [{ kind: 'text', text: 'Now soak.', place: place(7) }],
    };
    expect(
      check([level('short', 'Soak for 5 hours.', 5), between, level('plain', 'Cook for 2 hours.', 9)]),
    ).toEqual([]);
    expect(check([level('plain', 'Soak for 5 hours.', 5), level('plain', 'Cook for 2 hours.', 9)])).toEqual(
      [],
    );
  });

  it('looks inside worksheets and slides', () => {
    const holder: HolderPart = {
      kind: 'holder',
      name: 'worksheet',
      attributes: new Map(),
      place: place(3),
      parts: [level('short', 'Add salt.', 5), level('plain', 'Cut salt.', 9)],
    };
    expect(check([holder])).toHaveLength(1);
  });

  it('is not run on words of another language', () => {
    expect(
      check([level('short', 'Rinse for 30 seconds.', 5), level('plain', 'Rinse for 60 seconds.', 9)], 'es'),
    ).toEqual([]);
  });

  it('holds a lesson’s own cautions to it', () => {
    const caution = {
      what: 'the caution `well`',
      texts: [
        { level: 'short' as const, text: 'Do not use it.' },
        { level: 'plain' as const, text: 'Use it.', place: place(3) },
      ],
    };
    expect(found((r) => checkLevelsAgree({ lesson: lesson([]), cautions: [caution] }, r))).toEqual([
      'P12 The levels short and plain of the caution `well` disagree in yes and no: one says "not" and the other does not.',
    ]);
  });

  it('takes the wordings that each level prints', () => {
    const facts = {
      ...NO_FACTS,
      called: [{ id: 'fiber-slowly' }, { id: 'cook-heat' }],
      rewordings: [
        {
          id: 'fiber-slowly',
          level: 'short' as const,
          text: 'Do not add fiber a little at a time.',
          place: place(3),
        },
      ],
    };
    const leveled = leveledCautions(pull(register, facts, createReport()), 'en');
    expect(leveled.map((l) => l.what)).toEqual(['the caution `fiber-slowly`']);
    expect(found((r) => checkLevelsAgree({ lesson: lesson([]), cautions: leveled }, r))).toEqual([
      expect.stringContaining(
        'The levels short and plain of the caution `fiber-slowly` disagree in yes and no',
      ),
    ]);
  });
});
