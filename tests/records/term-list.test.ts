import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createReport } from '../../src/diagnostics/index.js';
import { isTerm, loadTerms } from '../../src/records/index.js';

const read = (text: string) => {
  const report = createReport();
  return { list: loadTerms(text, report, 'terms.yaml'), report };
};
const spots = ({ report }: ReturnType<typeof read>) =>
  report.problems.map(({ code, place }) => `${place?.line}:${place?.column} ${code}`);

describe('the term list', () => {
  it('of the program is whole, and no word stands for two things', () => {
    const found = read(readFileSync('assets/terms.yaml', 'utf8'));
    expect(found.report.problems).toEqual([]);
    expect(found.list.all.length).toBeGreaterThan(15);
  });

  it('finds a term by each of its forms in its language, whatever the case, and offers near ones', () => {
    const { list } = read(
      'terms:\n  - id: a\n    en: { term: added sugars, also: [added sugar], means: put in }\n',
    );
    for (const words of ['added sugars', 'Added  sugar', 'ADDED SUGARS']) {
      const found = list.find(words, 'en');
      expect(isTerm(found) && found.id).toBe('a');
    }
    expect(list.find('added sugars', 'es')).toEqual({ near: [] });
    expect(list.find('aded sugars', 'en')).toEqual({ near: ['added sugars'] });
  });

  it.each([
    ['no meaning', 'terms:\n  - id: a\n    en: { term: salt }\n', '3:9'],
    ['an unknown entry', 'terms:\n  - id: a\n    en: { term: salt, means: x, note: y }\n', '3:33'],
    ['no id', 'terms:\n  - en: { term: salt, means: x }\n', '2:5'],
    [
      'a word twice',
      'terms:\n  - id: a\n    en: { term: salt, means: x }\n  - id: b\n    en: { term: Salt, means: y }\n',
      '4:9',
    ],
    [
      'an id twice',
      'terms:\n  - id: a\n    en: { term: salt, means: x }\n  - id: a\n    en: { term: c, means: y }\n',
      '4:9',
    ],
    ['no YAML', 'terms: [', '1:9'],
  ])('reports %s at its place', (_, text, place) => {
    expect(spots(read(text))).toEqual([`${place} records/terms`]);
  });
});
