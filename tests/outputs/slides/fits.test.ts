import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { glueNumbers } from '../../../src/outputs/slides/glue.js';
import { measureSlides, type SlideFits } from '../../../src/outputs/slides/index.js';
import { caution, cautions, deck, EIGHT_CAUTIONS, slide, sources, words } from './decks.js';
import { faults, fonts, frames, layOut } from './look.js';

let fits: SlideFits;
beforeAll(async () => {
  fits = await measureSlides(fonts, frames, 'en');
});

const SHELF = words(
  'Keep taking your pills. Your care team can be your doctor, nurse or pharmacist. Ask one of them.',
);

describe('cautions', () => {
  it('stand on as few slides as hold them, evenly', () => {
    const parts = fits.cautions(EIGHT_CAUTIONS, SHELF);
    expect(parts.map((part) => part.length)).toEqual([4, 4]);
  });

  it('are at most five to a slide, however short they are', () => {
    const short = Array.from({ length: 12 }, (_, i) => caution(`c${i}`, 'Stop', 'Hot!', 'Wait.'));
    expect(fits.cautions(short, SHELF).map((part) => part.length)).toEqual([4, 4, 4]);
    expect(fits.cautions(short.slice(0, 5), SHELF).map((part) => part.length)).toEqual([5]);
  });

  it('are none where there are none', () => {
    expect(fits.cautions([], SHELF)).toEqual([]);
  });

  it('are parted in order, whole, at most five to a slide, and each part fits', async () => {
    const word = fc.constantFrom(
      'Do',
      'you',
      'take',
      'lithium',
      'water',
      'pills',
      'kidney',
      'trouble',
      'before',
    );
    const sentence = fc.array(word, { minLength: 1, maxLength: 30 }).map((all) => `${all.join(' ')}?`);
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.constantFrom('Stop', 'Ask first'), sentence), { minLength: 1, maxLength: 20 }),
        fc.constantFrom(2, 9, 40),
        async (all, length) => {
          const lines = all.map(([head, text], index) =>
            caution(`c${index}`, head, text, 'Ask your care team.'),
          );
          const shelf = words('Ask your care team. '.repeat(length / 2));
          const parts = fits.cautions(lines, shelf);
          expect(parts.flat()).toEqual(lines);
          expect(Math.max(...parts.map((part) => part.length))).toBeLessThanOrEqual(5);
          const { pages, codes } = await layOut(
            deck(parts.map((part, index) => slide(1, `Part ${index + 1}`, cautions(part), { shelf }))),
          );
          expect(codes.filter((code) => code === 'slides/too-long' && length < 40)).toEqual([]);
          if (length < 40) expect(faults(pages)).toEqual([]);
        },
      ),
      { numRuns: 40, seed: 3 },
    );
  }, 60_000);
});

describe('sources', () => {
  it('go on after five', async () => {
    const title = words('Where the numbers come from');
    const parts = await fits.sources(sources(8), title, SHELF);
    expect(parts.flat()).toEqual(sources(8));
    expect(parts.map((part) => part.length)).toEqual([5, 3]);
  });

  it('go on sooner where their names are long, and each slide holds them', async () => {
    const title = words('Where the numbers come from');
    const many = sources(
      8,
      'US Department of Agriculture, Agricultural Research Service, Nutrient Data Laboratory (2015). National Nutrient Database for Standard Reference, Release 28',
    );
    const parts = await fits.sources(many, title, SHELF);
    expect(parts.flat()).toEqual(many);
    const { pages, codes } = await layOut(
      deck(
        parts.map((part, index) =>
          slide(
            index + 1,
            `Where the numbers come from, ${index}`,
            { kind: 'sources', sources: part },
            { shelf: SHELF },
          ),
        ),
      ),
    );
    expect(codes).toEqual([]);
    expect(faults(pages)).toEqual([]);
  });
});

describe('the shelf', () => {
  it('holds four lines of words', () => {
    expect(fits.shelf(words('Brands differ. '.repeat(17)))).toBe(true);
    expect(fits.shelf(words('Brands differ. '.repeat(22)))).toBe(false);
  });
});

describe('numbers', () => {
  const glued = (...parts: readonly string[]) =>
    glueNumbers(parts.map((text) => ({ text })))
      .map(({ text }) => text.replaceAll('\u00a0', '_'))
      .join('|');

  it.each([
    ['stay with their unit', ['Pinto beans: 1 cup, ready to eat.'], 'Pinto beans: 1_cup, ready to eat.'],
    [
      'stay with their unit when they are fractions',
      ['Each option: 1/2 cup, ½ cup.'],
      'Each option: 1/2_cup, ½_cup.',
    ],
    [
      'stay with the word before them at the end of a sentence',
      ['Ask first: slide 4. Then'],
      'Ask first: slide_4. Then',
    ],
    ['do so over the ends of stretches', ['Source ', '1', '.'], 'Source_|1|.'],
    ['leave other words alone', ['Brands differ. Check your own can.'], 'Brands differ. Check your own can.'],
  ])('%s', (_, parts, expected) => {
    expect(glued(...parts)).toBe(expected);
  });

  it('lose no word and no number', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ maxLength: 20 })), (parts) => {
        const before = parts.map((text) => ({ text }));
        const after = glueNumbers(before);
        expect(after.map(({ text }) => text.replaceAll('\u00a0', ' '))).toEqual(
          parts.map((text) => text.replaceAll('\u00a0', ' ')),
        );
      }),
    );
  });
});
