import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { NO_FACTS, pull } from '../../src/cautions/index.js';
import { createReport } from '../../src/diagnostics/index.js';
import { isFood, loadFoods } from '../../src/records/index.js';
import { register } from './register-files.js';

describe('the food tables and the register', () => {
  const foods = loadFoods({ read: (path) => readFileSync(`assets/${path}`, 'utf8') }, createReport());
  const all = foods.names.flatMap((name) => {
    const food = foods.find(name);
    return isFood(food) ? [food] : [];
  });

  it('speak of the same flags', () => {
    const known = new Set(register.flags.map((f) => f.flag));
    const unknown = all.flatMap((food) =>
      food.flags.filter((f) => !known.has(f)).map((f) => `${food.name}: ${f}`),
    );
    expect(all.length).toBeGreaterThan(100);
    expect(unknown).toEqual([]);
  });

  it('every can pulls the line on damaged cans, every dry kidney bean the line on boiling', () => {
    for (const food of all) {
      const directive = { name: 'quiz', id: 'q', nutrients: [], foods: [{ food }] };
      const ids = pull(register, { ...NO_FACTS, directives: [directive] }, createReport()).map(
        (p) => p.caution.id,
      );
      if (food.state.startsWith('canned')) expect(ids, food.name).toContain('damaged-cans');
      if (food.state === 'dry' && /kidney|cannellini/.test(food.name))
        expect(ids, food.name).toContain('kidney-bean-boil');
    }
  });
});
