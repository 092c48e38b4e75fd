import { describe, expect, it } from 'vitest';
import type { Pages } from '../../src/layout/index.js';
import { nodesOf, nodesWith, placedTexts, spoken } from '../layout/reading.js';
import { worksheet } from '../layout/sample.js';
import { layOut } from './lay-out.js';

describe('a worksheet and its key', () => {
  const blank = layOut(worksheet('worksheet')).pages;
  const key = layOut(worksheet('key')).pages;

  it('number their tasks alike', () => {
    const heads = (p: Pages) =>
      nodesWith(p, 'H2')
        .map((h) => spoken(p, h))
        .filter((t) => /^\d/.test(t));
    expect(heads(blank)).toEqual(['1 Read two cans', '2 Rinse', '3 The least sodium', '4 My plan']);
    expect(heads(key)).toEqual(heads(blank));
  });

  it('give a name to every field, and on the blank no answer', () => {
    expect(nodesWith(blank, 'Form').map((f) => f.alt)).toEqual([
      'Serving of the first can',
      'Serving of the second can',
      'Sodium of the first can',
      'Sodium of the second can',
      '☐ A',
      '☐ B',
      '☐ C',
      'I will',
    ]);
    const all = `${spoken(blank)} ${nodesOf(blank.structure)
      .map((n) => n.alt ?? '')
      .join(' ')}`;
    expect(all).not.toMatch(/345|no salt went in|☑/);
  });

  it('tick the right box and give each reason on the key', () => {
    expect(nodesWith(key, 'Form').map((f) => f.alt)).toContain('☑ C');
    expect(nodesWith(key, 'Form').map((f) => f.alt)).toContain('Sodium of the second can: 345');
    expect(spoken(key)).toContain('C 1 mg · no salt went in');
  });

  it('say KEY at the top and on every page', () => {
    expect(spoken(key)).toContain('KEY');
    key.pages.forEach((_, index) => {
      expect(
        placedTexts(key).some(
          (t) => t.page === index && t.text === `KEY · Page ${index + 1} of ${key.pages.length}`,
        ),
      ).toBe(true);
    });
    expect(placedTexts(blank).some((t) => t.text.includes('KEY'))).toBe(false);
  });
});
