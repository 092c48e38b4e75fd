import { describe, expect, it } from 'vitest';
import { cautionBlock, type Facts, NO_FACTS, pull } from '../../src/cautions/index.js';
import { createReport } from '../../src/diagnostics/index.js';
import { nutrientsSlot } from '../../src/pipeline/nutrients-slot.js';
import { register, setting } from '../cautions/register-files.js';

const slot = (topics: readonly string[], needs: readonly string[] = []) =>
  nutrientsSlot(
    topics.map((name) => ({ name })),
    needs.length > 0 ? [{ settings: { need: needs } }] : [],
    'en',
  );

describe('nutrients that the ways of eating of a lesson may leave short', () => {
  it.each([
    [['gluten-free'], [], 'fiber, iron, and folate'],
    [['vegan', 'gluten-free'], [], 'vitamin B12, vitamin D, calcium, fiber, iron, and folate'],
    [[], ['dairy-free'], 'calcium, vitamin D, and iodine'],
    [['vegan'], ['vegan'], 'vitamin B12, vitamin D, and calcium'],
    [['carbohydrate down'], [], 'fiber, thiamin, and folate'],
  ])('%j and needs %j: %s', (topics, needs, expected) => {
    expect(slot(topics, needs)).toBe(expected);
  });

  it('are none where no way of eating is named', () => {
    expect(slot(['cans', 'sodium down'], ['nut-free'])).toBeUndefined();
  });
});

describe('the caution on gaps', () => {
  it('names them whatever else stands in the lesson', () => {
    const report = createReport();
    const facts: Facts = {
      ...NO_FACTS,
      topics: [{ name: 'gluten-free' }],
      directives: [{ name: 'write', id: '', foods: [], nutrients: [] }],
      slots: { nutrients: 'fiber, iron, and folate' },
    };
    const block = cautionBlock(pull(register, facts, report), setting(), report);
    const words = block.lines.find(({ id }) => id === 'diet-gaps')?.inlines.map(({ text }) => text);
    expect(words?.join('')).toContain('may run low in fiber, iron, and folate.');
    expect(report.problems).toEqual([]);
  });
});
