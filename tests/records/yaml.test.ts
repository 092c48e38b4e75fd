import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { createReport, type Problem } from '../../src/diagnostics/index.js';
import { readYaml, shaped } from '../../src/records/yaml.js';

const fault = (message: string, more: object): Problem => ({
  code: 'x/y',
  severity: 'stop',
  message,
  ...more,
});
const shape = z.strictObject({
  name: z.string(),
  kind: z.enum(['can', 'bag']),
  list: z.array(z.strictObject({ grams: z.number() })),
});

function read(text: string) {
  const report = createReport();
  const yaml = readYaml(text, 'x.yaml', fault, report);
  const value = yaml && shaped(shape, yaml, fault, report);
  return {
    value,
    problems: report.problems.map(
      (p) => `${p.place?.line}:${p.place?.column} ${p.message}${p.hint ? ` ${p.hint}` : ''}`,
    ),
  };
}

describe('a YAML text', () => {
  it('comes back typed, without problems', () => {
    expect(read('name: beans\nkind: can\nlist:\n  - grams: 12\n')).toEqual({
      value: { name: 'beans', kind: 'can', list: [{ grams: 12 }] },
      problems: [],
    });
  });

  it.each([
    ['a missing entry', 'kind: can\nlist: []\n', '1:1 `name`: is missing.'],
    ['a wrong word', 'name: a\nkind: tin\nlist: []\n', '2:7 `kind`: should be `can` or `bag`.'],
    [
      'a wrong type deep inside',
      'name: a\nkind: can\nlist:\n  - grams: many\n',
      '4:12 `list.0.grams`: should be a number.',
    ],
    [
      'a misspelt key',
      'name: a\nkind: can\nlist: []\nnam: b\n',
      '4:1 `nam` is not known here. Did you mean `name`?',
    ],
    [
      'a misspelt key inside',
      'name: a\nkind: can\nlist:\n  - grams: 1\n    gram: 1\n',
      '5:5 `gram` is not known here. Did you mean `grams`?',
    ],
    ['a text that is no map', '- 1\n- 2\n', '1:1 This file: should be a map.'],
  ])('with %s is reported at its place', (_, text, problem) => {
    expect(read(text)).toEqual({ value: undefined, problems: [problem] });
  });

  it.each([
    ['no YAML', 'name: "beans\nkind: [can', /This is not YAML/],
    ['a key that stands twice', 'name: a\nname: b\nkind: can\nlist: []', /Map keys must be unique/],
    [
      'references that multiply',
      `a: &a [x,x,x,x,x,x,x,x,x]\n${'bcdefghi'
        .split('')
        .map((c, i) => `${c}: &${c} [${Array(9).fill(`*${'abcdefghi'[i]}`).join(',')}]`)
        .join('\n')}`,
      /refers to itself too often/,
    ],
    ['brackets without end', '['.repeat(5000), /nested more than 60 deep/],
  ])('with %s gives one clear problem and no value', (_, text, message) => {
    const { value, problems } = read(text);
    expect(value).toBeUndefined();
    expect(problems.some((p) => message.test(p))).toBe(true);
  });

  it('cannot reach into the platform through a key', () => {
    const { value, problems } = read('name: a\nkind: can\nlist: []\n__proto__: {polluted: yes}\n');
    expect(value).toBeUndefined();
    expect(problems).toHaveLength(1);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});
