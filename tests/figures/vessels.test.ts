import { describe, expect, it } from 'vitest';
import {
  isOneInk,
  paletteFor,
  type SignName,
  shelfMarks,
  signMarks,
  VESSELS,
  vessel,
} from '../../src/figures/index.js';
import { marksBox } from '../../src/figures/marks-box.js';

const SIGNS: readonly SignName[] = [
  'bag',
  'can',
  'strainer',
  'frozen',
  'leaf',
  'jar',
  'scissors',
  'pencil',
  'pot',
  'cup',
];

describe('signs', () => {
  it.each(SIGNS)('%s keeps to its box with a line of one width at any size', (name) => {
    for (const size of [20, 34]) {
      const marks = signMarks(name, paletteFor('paper', 'color'), { size });
      const box = marksBox(marks);
      const half = size / 2 + 1;
      for (const edge of [box?.left, box?.top]) expect(edge).toBeGreaterThanOrEqual(-half);
      for (const edge of [box?.right, box?.bottom]) expect(edge).toBeLessThanOrEqual(half);
      const [group] = marks;
      const inner = group?.kind === 'group' ? group.marks : [];
      for (const mark of inner)
        if (mark.kind === 'shape') expect((mark.stroke?.width ?? 0) * (size / 24)).toBeCloseTo(1.25, 9);
    }
    expect(isOneInk(signMarks(name, paletteFor('paper', 'one'), { size: 24 }))).toBe(true);
  });

  it.each(SIGNS)('%s has something to stand on the shelf', (name) => {
    const box = marksBox(shelfMarks(name, 124, 'one'));
    expect(isOneInk(shelfMarks(name, 124, 'one'))).toBe(true);
    expect(box?.left).toBeGreaterThanOrEqual(-1);
    expect(box?.right).toBeLessThanOrEqual(125);
    expect(box?.bottom).toBeLessThanOrEqual(1);
  });
});

describe('vessels', () => {
  it.each(VESSELS)('%s fills a box of 200 and stands on its foot', (name) => {
    for (const ink of ['color', 'one'] as const) {
      const drawing = vessel(name, ink);
      if (!drawing) throw new Error(`${name} is missing.`);
      const box = marksBox(drawing.marks);
      expect(box?.bottom).toBeGreaterThan(198);
      expect(box?.bottom).toBeLessThan(206);
      expect(box?.left).toBeGreaterThanOrEqual(-2);
      expect(box?.right).toBeLessThanOrEqual(202);
      if (ink === 'one') expect(isOneInk(drawing.marks)).toBe(true);
    }
  });

  it('are not found under other names', () => {
    expect(vessel('carrot', 'color')).toBeUndefined();
    expect(vessel('constructor', 'color')).toBeUndefined();
  });
});
