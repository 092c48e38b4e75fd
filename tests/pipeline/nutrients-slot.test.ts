import { describe, expect, it } from 'vitest';
import { nutrientsSlot } from '../../src/pipeline/nutrients-slot.js';

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
