import { describe, expect, it } from 'vitest';
import { type Facts, NO_FACTS, pull } from '../../src/cautions/index.js';
import { createReport } from '../../src/diagnostics/index.js';
import { register } from './register-files.js';

const place = { file: 'l.md', line: 9, column: 5 };
const off = (caution: string) => ({
  caution,
  reason: 'the scale of a map',
  role: 'dietitian',
  date: '2026-11-02',
  place,
});
function found(facts: Partial<Facts>) {
  const report = createReport();
  const ids = pull(register, { ...NO_FACTS, ...facts }, report).map((p) => p.caution.id);
  return { ids, problems: report.problems.map((p) => [p.code, p.severity, p.place?.line]) };
}
const map = {
  texts: [{ text: 'Look at the scale to see how far to lose weight is.', where: 'text' as const }],
};

describe('a caution that topics or words pulled by mistake', () => {
  it('is taken off, and the reviewer is asked about it', () => {
    expect(found(map).ids).toContain('weight-not-for');
    const { ids, problems } = found({ ...map, unpulled: [off('weight-not-for')] });
    expect(ids).not.toContain('weight-not-for');
    expect(ids).toContain('weight-ask-first');
    expect(problems).toEqual([['cautions/unpulled', 'ask', 9]]);
  });

  it('may have come from a topic', () => {
    const topics = [{ name: 'cans' }];
    expect(found({ topics }).ids).toContain('damaged-cans');
    const { ids, problems } = found({ topics, unpulled: [off('damaged-cans')] });
    expect(ids).not.toContain('damaged-cans');
    expect(problems).toEqual([['cautions/unpulled', 'ask', 9]]);
  });

  it.each([
    [
      'a food',
      {
        directives: [
          {
            name: 'quiz',
            id: 'q',
            nutrients: [],
            foods: [{ food: { name: 'star fruit', flags: ['star-fruit'] } }],
          },
        ],
      },
      'star-fruit-kidney',
    ],
    ['a call', { called: [{ id: 'honey-infant' }] }, 'honey-infant'],
    [
      'a directive',
      { directives: [{ name: 'week-of-moves', id: 'w', nutrients: [], foods: [] }] },
      'activity-stop',
    ],
  ] satisfies [string, Partial<Facts>, string][])(
    'stays when %s pulls it, and that is said',
    (_, facts, id) => {
      expect(found(facts).ids).toContain(id);
      const { ids, problems } = found({ ...facts, unpulled: [off(id)] });
      expect(ids).toContain(id);
      expect(problems).toEqual([['cautions/unpull-in-vain', 'ask', 9]]);
    },
  );

  it('is not named when nothing pulls it', () => {
    expect(found({ unpulled: [off('honey-infant')] })).toEqual({
      ids: [],
      problems: [['cautions/unpull-in-vain', 'ask', 9]],
    });
  });
});
