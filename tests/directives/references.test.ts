import { afterEach, describe, expect, it, vi } from 'vitest';
import { createReport } from '../../src/diagnostics/index.js';
import { refusing } from '../../src/pipeline/refusing.js';
import { register } from '../cautions/register-files.js';

/** Two kinds made for this test: one tells of a food, one doubles what another published. */
const kinds = vi.hoisted(() => {
  const place = { file: 'lessons/test/lesson.md', line: 1, column: 1 };
  const schema = (name: string, attributes: object) => ({
    name,
    forms: ['leaf'],
    id: 'required',
    attributes: {
      food: { kind: { is: 'text' }, help: 'a food' },
      of: { kind: { is: 'text' }, help: 'an id' },
      ...attributes,
    },
  });
  const computed: string[] = [];
  const facts = { foods: [], nutrients: [] };
  const source = {
    schema: schema('made', {}),
    terms: { en: {} },
    read: (part: { id: string }) => ({ id: part.id }),
    compute: ({ id }: { id: string }) => {
      computed.push(id);
      return { numbers: [], facts, publishes: { kind: 'dish', foods: [], serves: 4 } };
    },
    view: () => ({ blocks: [] }),
  };
  const user = {
    schema: schema('uses', {}),
    terms: { en: {} },
    read: (part: { id: string; attributes: Map<string, { value: string; place: object }> }) => ({
      id: part.id,
      of: part.attributes.get('of'),
    }),
    refersTo: ({ of }: { of: { value: string; place: object } }) => [
      { id: of.value, place: of.place, wants: 'dish' },
    ],
    compute: (
      { id, of }: { id: string; of: { value: string } },
      { published }: { published: (id: string) => { serves: number } | undefined },
    ) => {
      computed.push(id);
      const serves = published(of.value)?.serves ?? 0;
      const number = {
        id: `${id}.serves`,
        value: serves * 2,
        unit: 'g',
        formula: 'serves * 2',
        inputs: [],
        sources: [],
        what: 'x',
      };
      return { numbers: [number], facts };
    },
    view: () => ({ blocks: [] }),
  };
  const unsafe = {
    schema: schema('unsafe', {}),
    terms: { en: {} },
    read: (_: object, { refuse }: { refuse: (id: string, at: object, slots?: object) => void }) =>
      refuse('R29', place, { food: 'star fruit', audience: 'kidney' }),
    compute: () => undefined,
    view: () => ({ blocks: [] }),
  };
  return { list: [source, user, unsafe], computed };
});
vi.mock('../../src/directives/list.js', async (original) => ({
  ...(await original<object>()),
  DIRECTIVES: kinds.list,
}));

const { readSnippet, spots, viewOf } = await import('./desk.js');
afterEach(() => {
  kinds.computed.length = 0;
});

describe('one directive works with what another publishes', () => {
  it('computes the other first, wherever it stands in the text', () => {
    const { computed, problems } = readSnippet('::uses{id=b of=a}\n\n::made{id=a}\n');
    expect(spots(problems)).toEqual([]);
    expect(kinds.computed).toEqual(['a', 'b']);
    expect(computed?.numbers.get('b.serves')?.value).toBe(8);
  });

  it('reports an id that is not there, with those that serve', () => {
    const { problems } = readSnippet('::uses{id=b of=aa}\n\n::made{id=a}\n');
    expect(spots(problems)).toEqual(['1:16 pipeline/reference']);
    expect(problems[0]?.hint).toContain('a');
  });

  it('reports one that computes something else, and names those that serve', () => {
    const { problems } = readSnippet('::made{id=a}\n\n::uses{id=b of=a}\n\n::uses{id=c of=b}\n');
    expect(spots(problems)).toEqual(['5:16 pipeline/reference']);
    expect(problems[0]?.message).toBe('"b" does not compute a dish.');
    expect(problems[0]?.hint).toContain('a');
  });

  it.each([
    ['itself', '::uses{id=a of=a}\n', ['1:16 pipeline/reference']],
    ['two', '::uses{id=a of=b}\n\n::uses{id=b of=a}\n', ['3:16 pipeline/reference']],
    ['three', '::uses{id=a of=b}\n\n::uses{id=b of=c}\n\n::uses{id=c of=a}\n', ['5:16 pipeline/reference']],
  ])('reports a circle of %s once, where it closes', (_, text, expected) => {
    const { computed, problems } = readSnippet(text);
    expect(spots(problems)).toEqual(expected);
    expect(computed?.numbers.all).toEqual([]);
  });
});

describe('what is refused', () => {
  it('is a Stop that says why and what to do, and its words stand in its place on the draft', () => {
    const { computed, problems } = readSnippet('::unsafe{id=a}\n');
    expect(problems.map((p) => [p.code, p.severity, p.message, p.hint])).toEqual([
      [
        'cautions/refused',
        'stop',
        'star fruit is barred for kidney. (R29, S06)',
        'Pick another food of the same kind.',
      ],
    ]);
    const part = computed?.entries[0]?.part;
    const blocks = computed && part ? viewOf(computed, part, 'handout', 'plain')?.blocks : undefined;
    expect(blocks).toEqual([
      { kind: 'paragraph', inlines: [{ text: 'star fruit is barred for kidney.', strong: true }] },
    ]);
  });

  it('is withheld, not unmade, where the register says error', () => {
    const report = createReport();
    const said: string[] = [];
    refusing(register, said, report)('R06', { file: 'a.md', line: 1, column: 1 });
    expect(said).toEqual([]);
    expect(report.problems.map((p) => [p.code, p.severity])).toEqual([['cautions/withheld', 'stop']]);
  });

  it('takes temperatures from the register and fails loudly for a slot that nothing fills', () => {
    const said: string[] = [];
    const report = createReport();
    const refuse = refusing(register, said, report);
    const at = { file: 'a.md', line: 1, column: 1 };
    refuse('R22', at);
    expect(report.problems[0]?.hint).toContain('165 °F (74 °C), 160 °F (72 °C)');
    expect(() => refuse('R29', at)).toThrow('{food}');
    expect(() => refuse('R99', at)).toThrow('R99');
  });
});
