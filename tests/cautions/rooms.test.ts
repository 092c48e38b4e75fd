import { describe, expect, it } from 'vitest';
import { type RoomGroup, roomIn } from '../../src/cautions/index.js';

const GROUPS: readonly RoomGroup[] = [
  'infants',
  'small children',
  'children',
  'pregnancy',
  'kidney',
  'frail',
  'no potassium salt',
  'no weight',
  'g6pd',
];
const groupsOf = (audience: string) => GROUPS.filter((group) => roomIn(audience, group) !== undefined);

describe('who is in the room, by the words of the audience', () => {
  it.each([
    ['adults who shop and cook', []],
    [
      'babysitters without children of their own and childless adults',
      ['children', 'no potassium salt', 'no weight'],
    ],
    [
      'parents of babies',
      ['infants', 'small children', 'children', 'frail', 'no potassium salt', 'no weight'],
    ],
    ['families with toddlers', ['small children', 'children', 'no potassium salt', 'no weight']],
    ['children under 12', ['children', 'no potassium salt', 'no weight']],
    [
      'families of children under 12 months',
      ['infants', 'small children', 'children', 'frail', 'no potassium salt', 'no weight'],
    ],
    ['people with kidney disease', ['kidney', 'no potassium salt']],
    ['people on dialysis', ['kidney', 'no potassium salt']],
    ['people who are pregnant', ['pregnancy', 'frail', 'no potassium salt', 'no weight']],
    ['breastfeeding mothers', ['no potassium salt', 'no weight']],
    ['teens after school', ['no potassium salt', 'no weight']],
    ['seniors', ['frail']],
    ['people after chemotherapy', ['frail']],
    ['families with G6PD deficiency', ['children', 'no potassium salt', 'no weight', 'g6pd']],
  ] as const)('%s', (audience, groups) => {
    expect(groupsOf(audience)).toEqual(groups);
  });

  it('says the words that it found', () => {
    expect(roomIn('Talk for a School class', 'no weight')).toBe('School');
  });
});
