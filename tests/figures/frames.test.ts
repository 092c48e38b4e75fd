import { describe, expect, it } from 'vitest';
import { createFrames, type FrameRequest, type Master } from '../../src/figures/index.js';

const frames = createFrames();
const request = (change: Partial<FrameRequest> = {}): FrameRequest => ({
  master: 'show',
  format: '16:9',
  shelfLines: 2,
  titleHeight: 62,
  ...change,
});

describe('slide frames', () => {
  it('stand on the grid of the drawn design', async () => {
    const frame = await frames(request());
    expect(frame.box('slide')).toEqual({ x: 0, y: 0, width: 1280, height: 720 });
    expect(frame.box('title')).toEqual({ x: 56, y: 44, width: 1168, height: 62 });
    expect(frame.box('shelf')).toEqual({ x: 0, y: 596, width: 1280, height: 124 });
    expect(frame.box('figure')).toEqual({ x: 56, y: 128, width: 1168, height: 468 });
  });

  it.each([
    ['16:9', 2, 596],
    ['16:9', 3, 556],
    ['4:3', 2, 596],
    ['4:3', 3, 556],
    ['4:3', 4, 516],
  ] as const)('%s with a shelf of %d lines has its edge at %d', async (format, shelfLines, y) => {
    const frame = await frames(request({ format, shelfLines }));
    expect(frame.box('shelf').y).toBe(y);
    expect(frame.box('stage').width).toBe(format === '16:9' ? 1280 : 960);
    expect(frame.box('figure').width).toBe(format === '16:9' ? 1168 : 848);
    expect(frame.box('figure').y + frame.box('figure').height).toBe(y);
  });

  it('give questions three columns of 368, 400 apart', async () => {
    const frame = await frames(request({ master: 'ask' }));
    expect(['column-1', 'column-2', 'column-3'].map((n) => frame.box(n as 'column-1').x)).toEqual([
      56, 456, 856,
    ]);
    expect(frame.box('column-2').width).toBe(368);
    expect(() => frame.box('column-4')).toThrow('no place for column-4');
  });

  it('keep all parts inside, apart and off the shelf', async () => {
    const masters: readonly Master[] = [
      'open',
      'say',
      'words',
      'show',
      'ask',
      'answer',
      'do',
      'caution',
      'sources',
    ];
    for (const master of masters)
      for (const format of ['16:9', '4:3'] as const) {
        const frame = await frames(request({ master, format }));
        const shelf = frame.box('shelf');
        for (const name of [
          'audience',
          'vessels',
          'sentence',
          'text',
          'figure',
          'column-1',
          'steps',
          'lines',
          'list',
        ] as const) {
          let box: ReturnType<typeof frame.box>;
          try {
            box = frame.box(name);
          } catch {
            continue;
          }
          expect(box.x).toBeGreaterThanOrEqual(56);
          expect(box.x + box.width).toBeLessThanOrEqual(frame.width - 56);
          expect(box.y + box.height).toBeLessThanOrEqual(shelf.y);
          expect(box.width).toBeGreaterThan(0);
        }
      }
  });

  it('are laid out once for each kind', () => {
    expect(frames(request())).toBe(frames(request()));
    expect(frames(request())).not.toBe(frames(request({ titleHeight: 124 })));
  });
});
