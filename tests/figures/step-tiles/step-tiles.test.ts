import { describe, expect, it } from 'vitest';
import { draw, isOneInk, type StepTiles, textBoxes } from '../../../src/figures/index.js';
import { blankSteps, paper, screen, steps } from '../samples.js';

const LEVELS = ['short', 'plain', 'fuller', 'large'] as const;
const words = (spec: StepTiles, options = paper()) =>
  textBoxes(draw(spec, options).drawing.marks).map((box) => box.words);
const some = (spec: StepTiles, count: number): StepTiles => ({ ...spec, tiles: spec.tiles.slice(0, count) });
const codes = (spec: StepTiles, options = paper()) => draw(spec, options).problems.map(({ code }) => code);

describe('a strip of steps', () => {
  for (const [name, spec] of [
    ['shown', steps],
    ['blank', blankSteps],
  ] as const)
    for (const ink of ['color', 'one'] as const)
      for (const direction of ['ltr', 'rtl'] as const)
        it.each([...LEVELS, 'screen'] as const)(
          `draws without a problem: ${name}, ${ink}, ${direction}, %s`,
          (at) => {
            const onScreen = at === 'screen';
            const options = onScreen ? screen({ ink, direction }) : paper({ level: at, ink, direction });
            const { drawing, problems } = draw(onScreen ? some(spec, 3) : spec, options);
            expect(problems).toEqual([]);
            if (ink === 'one') expect(isOneInk(drawing.marks)).toBe(true);
          },
        );

  it('prints month, action and effect of every step', () => {
    for (const options of [paper(), screen()]) {
      const said = words(some(steps, 3), options).join(' ').replaceAll('\u00a0', ' ');
      for (const part of ['Jan', 'Swap one', '37 g', 'Rinse canned', '1,200 to', '1,800 mg', 'Mar'])
        expect(said).toContain(part);
    }
  });

  it('has lines and no words of steps on a blank', () => {
    expect(words(blankSteps).join(' ')).not.toMatch(/\d|Swap|Rinse/);
  });

  it('holds one step and twelve, and refuses a fourth on a slide', () => {
    const twelve = { ...steps, tiles: [...steps.tiles, ...steps.tiles] };
    expect(codes(some(steps, 1))).toEqual([]);
    expect(codes(twelve)).toEqual([]);
    expect(codes(some(steps, 4), screen())).toContain('figures/too-many');
  });

  it('says when a word is wider than its tile', () => {
    const long = { ...steps, tiles: steps.tiles.map((tile) => ({ ...tile, action: 'A'.repeat(60) })) };
    const found = draw(long, paper());
    expect(found.problems.length === 0 || found.problems[0]?.code === 'figures/does-not-fit').toBe(true);
  });
});
