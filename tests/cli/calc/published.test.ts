import { describe, expect, it } from 'vitest';
import { CALCULATIONS } from '../../../src/cli/calc/list.js';
import { calc } from './expected.js';
import { FOOD } from './food.js';
import { holdsAll } from './holds.js';
import { INTAKES } from './intakes.js';
import { LABELED } from './labels.js';
import { PEOPLE } from './people.js';
import { TOGETHER } from './together.js';

const ALL = [...PEOPLE, ...LABELED, ...INTAKES, ...FOOD, ...TOGETHER];

describe('energy and weight of people, from the command line', () => holdsAll(PEOPLE));
describe('labels and claims, from the command line', () => holdsAll(LABELED));
describe('intakes, guidance and activity, from the command line', () => holdsAll(INTAKES));
describe('food, from the command line', () => holdsAll(FOOD));
describe('foods together, from the command line', () => holdsAll(TOGETHER));

it('holds every calculation to a published or worked value', () => {
  const held = new Set(ALL.map(({ call }) => calc(call).calculation.name));
  expect(CALCULATIONS.map(({ name }) => name).filter((name) => !held.has(name))).toEqual([]);
});
