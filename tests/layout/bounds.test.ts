import { describe, expect, it } from 'vitest';
import type { Mark } from '../../src/figures/index.js';
import { topWithin } from '../../src/layout/bounds.js';
import { boundsOf } from '../../src/layout/index.js';

const square: Mark = { kind: 'shape', path: 'M0 0L10 0L10 10L0 10Z', fill: '#000000' };

describe('bounds of marks', () => {
  it('count half the stroke', () => {
    const stroked: Mark = { kind: 'shape', path: 'M5 5L15 5', stroke: { color: '#000000', width: 4 } };
    expect(boundsOf([stroked])).toEqual([{ left: 3, top: 3, right: 17, bottom: 7 }]);
  });

  it('follow groups through their matrices', () => {
    const turned: Mark = { kind: 'group', at: [0, 1, -1, 0, 100, 20], marks: [square] };
    expect(boundsOf([turned])).toEqual([{ left: 90, top: 20, right: 100, bottom: 30 }]);
    const nested: Mark = {
      kind: 'group',
      at: [2, 0, 0, 2, 1, 1],
      marks: [{ kind: 'group', at: [1, 0, 0, 1, 5, 5], marks: [square] }],
    };
    expect(boundsOf([nested])).toEqual([{ left: 11, top: 11, right: 31, bottom: 31 }]);
  });

  it('end where the clip ends', () => {
    const clipped: Mark = { kind: 'group', clip: 'M0 0L4 0L4 20L0 20Z', marks: [square] };
    expect(boundsOf([clipped])).toEqual([{ left: 0, top: 0, right: 4, bottom: 10 }]);
    const gone: Mark = { kind: 'group', clip: 'M50 0L60 0L60 20L50 20Z', marks: [square] };
    expect(boundsOf([gone])).toEqual([]);
  });

  it('tell from where down a drawing uses the rail', () => {
    const legend: Mark = { kind: 'shape', path: 'M50 0L90 0L90 8L50 8Z', fill: '#000000' };
    const name: Mark = { kind: 'shape', path: 'M0 20L30 20L30 28L0 28Z', fill: '#000000' };
    expect(topWithin([legend, name], [0, 40])).toBe(20);
    expect(topWithin([legend], [0, 40])).toBeUndefined();
  });
});
