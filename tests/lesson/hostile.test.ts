import { describe, expect, it } from 'vitest';
import { parse, parseBody } from './known.js';

const codes = (text: string | Uint8Array) => parse(text).problems.map((p) => p.code);

describe('a file that is no lesson', () => {
  it.each([
    ['UTF-16 with its mark', new Uint8Array([0xff, 0xfe, 0x2d, 0x00, 0x2d, 0x00]), 'lesson/not-text'],
    ['UTF-16 without', new Uint8Array([0x2d, 0x00, 0x2d, 0x00, 0x2d, 0x00]), 'lesson/not-text'],
    ['a picture', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0x00]), 'lesson/not-text'],
    ['bytes that are no UTF-8', new Uint8Array([0x61, 0x0a, 0x62, 0xe9, 0x63]), 'lesson/not-text'],
    ['nothing', '', 'lesson/front-matter-missing'],
    ['text without front matter', '# Title\n', 'lesson/front-matter-missing'],
    ['front matter left open', '---\ntitle: A\n', 'lesson/front-matter-unclosed'],
    ['half a megabyte', 'a\n'.repeat(300_000), 'lesson/too-large'],
  ])('%s: a clear problem', (_, input, code) => {
    expect(codes(input)).toContain(code);
  });

  it('says on which line the bad byte stands', () => {
    expect(parse(new Uint8Array([0x61, 0x0a, 0x62, 0xe9, 0x63])).found).toEqual(['2:2 lesson/not-text']);
  });
});

describe('text that would keep a parser busy', () => {
  it.each([
    [
      'a thousand containers',
      Array.from({ length: 1000 }, (_, i) => `${':'.repeat(1003 - i)}level{is=plain}`).join('\n'),
    ],
    ['a thousand quotes', `${'> '.repeat(1000)}a`],
    [
      'a thousand lists in lists',
      Array.from({ length: 1000 }, (_, i) => `${'  '.repeat(Math.min(i, 60))}- a`).join('\n'),
    ],
    ['a thousand brackets', `${'['.repeat(1000)}a${']'.repeat(1000)}`],
    ['a thousand stars', `${'*a '.repeat(1000)}`],
    ['a wall of backticks', '`'.repeat(5000)],
    ['links in links', `${'[a]('.repeat(500)}`],
    ['attributes without end', `::write{${'a=b '.repeat(5000)}`],
  ])('%s: read or refused, and never thrown', (_, body) => {
    const { problems } = parseBody(body);
    for (const problem of problems) expect(problem.message).not.toBe('');
  });
});

describe('names that mean something to programs', () => {
  it.each(['__proto__', 'constructor', 'prototype', 'onclick', 'onload', 'toString'])(
    '%s as an attribute',
    (name) => {
      expect(parseBody(`::write{label="A" ${name}="x"}`).found).toEqual(['1:19 lesson/refused-name']);
    },
  );
  it.each(['__proto__', 'constructor', 'onclick'])('%s as a key', (name) => {
    expect(codes(`---\ntitle: A\n${name}: x\n---\n`)).toContain('lesson/refused-name');
  });
  it('never reach the prototype of anything', () => {
    parse('---\n__proto__:\n  polluted: yes\ntitle: A\n---\n');
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});

describe('YAML that does more than say things', () => {
  it.each([
    ['an anchor and its alias', 'title: &a A\naudience: *a', 'lesson/yaml-feature'],
    ['a tag', 'title: !!js/function x', 'lesson/yaml-feature'],
    ['a key twice', 'title: A\ntitle: B', 'lesson/front-key'],
    ['a tab', 'objectives:\n\t- a', 'lesson/yaml'],
    ['a colon in a value', 'title: Beans: three ways', 'lesson/yaml'],
    ['a list that is open', 'topics: [cans', 'lesson/yaml'],
  ])('%s', (_, yaml, code) => {
    expect(codes(`---\n${yaml}\n---\n# A\n`)).toContain(code);
  });
});
