import { describe, expect, it } from 'vitest';
import { CALCULATIONS } from '../../../src/cli/calc/list.js';
import { calc } from './expected.js';
import { holdsAll } from './holds.js';
import { PEOPLE } from './people.js';

const ALL = [...PEOPLE];

describe('energy and weight of people, from the command line', () => holdsAll(PEOPLE));

it('holds every calculation to a published or worked value', () => {
  const held = new Set(ALL.map(({ call }) => calc(call).calculation.name));
  expect(CALCULATIONS.map(({ name }) => name).filter((name) => !held.has(name))).toEqual([]);
});
