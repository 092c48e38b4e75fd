import { beforeAll, describe, expect, it } from 'vitest';
import type { Deck } from '../../../src/document/index.js';
import type { Mark } from '../../../src/figures/index.js';
import { arabicBricks, arabicLanes } from '../../figures/samples.js';
import {
  asking,
  caution,
  cautions,
  deck,
  EVERY_KIND,
  list,
  show,
  slide,
  withNumber,
  words,
} from './decks.js';
import { faults, type Laid, layOut, marksOf, outlineOf, shapesOn, shelfOf, wordsOn } from './look.js';

// The sentences are samples for the layout and need a translator before anybody is shown them.
const [ask, answer] = asking(
  'نصف كوب من الفاصوليا. أيها أقل صوديوم؟',
  [
    { words: 'فاصوليا معلبة، مصفّاة', value: '200 ملغ' },
    { words: 'فاصوليا معلبة، مصفّاة ومشطوفة', value: '180 ملغ' },
    { words: 'فاصوليا مجففة، مطبوخة في البيت', value: '1 ملغ', right: true },
  ],
  'أبج',
);
const shelf = {
  shelf: words('تختلف العلامات التجارية: اقرأ علبتك. كوب واحد من الفاصوليا، جاهزة للأكل. المصدر 1.'),
};

const SLIDES = [
  slide(
    1,
    'الفاصوليا والبازلاء بثلاث طرق',
    {
      kind: 'open',
      audience: 'حديث للكبار الذين يتسوقون ويطبخون',
      pictures: ['jar', 'can', 'bag'],
    },
    shelf,
  ),
  slide(2, 'من يشطف؟', {
    kind: 'words',
    blocks: [list(true, 'أفرغ العلبة في مصفاة.', 'اشطفها وأنت تعد حتى 30.', 'هزّ المصفاة.')],
    picture: 'sieve',
  }),
  slide(3, 'كوب من الفاصوليا يعطيك |15 غرامًا| من الألياف.', {
    kind: 'say',
    sentence: withNumber('كوب من الفاصوليا يعطيك |15 غرامًا| من الألياف.'),
    picture: 'cup',
  }),
  slide(
    4,
    'قبل أن نبدأ',
    cautions([
      caution('cans', 'توقف', 'هل العلبة منتفخة أو مثقوبة؟ لا تفتحها.', 'ارمها.'),
      caution('lithium', 'اسأل أولًا', 'هل تتناول الليثيوم؟', 'اسأل فريق رعايتك قبل أن تقلل الملح.'),
      caution(
        'heart',
        'اسأل أولًا',
        'قصور في القلب أو حبوب لإدرار البول؟',
        'اسأل فريق رعايتك قبل أن تغيّر كمية الملح.',
      ),
    ]),
    shelf,
  ),
  slide(5, 'بعد الشطف يبقى |360 ملغ| من الصوديوم', show(arabicLanes), { ...shelf, notes: 1 }),
  slide(6, 'اشطف العلبة: |90 إلى 190 ملغ| تذهب مع الماء', show(arabicBricks), { ...shelf, notes: 1 }),
  slide(7, 'اقرأ علبتين', {
    kind: 'do',
    minutes: 8,
    said: '8 دقائق',
    steps: ['خذ علبتين من الطاولة.', 'ابحث عن سطر الصوديوم.', 'قل لجارك أيهما تشتري ولماذا.'].map(words),
    pictures: ['can', 'can'],
  }),
  slide(8, 'نصف كوب من الفاصوليا. أيها أقل صوديوم؟', ask, shelf),
  slide(8, 'الجواب: |ج|. لم يُضَف ملح.', answer, shelf),
  slide(9, 'من أين جاءت الأرقام', {
    kind: 'sources',
    sources: [{ id: 'a', number: 1, words: 'جدول تركيب الأغذية، الإصدار 28', state: '4 يناير 2027' }],
  }),
];
const arabic = (slides = SLIDES, more: Partial<Deck> = {}) =>
  deck(slides, { language: 'ar', direction: 'rtl', ...more });

let laid: Laid;
let english: Laid;
beforeAll(async () => {
  laid = await layOut(arabic());
  english = await layOut(deck(EVERY_KIND));
}, 60_000);
const page = (number: number) => laid.pages.pages[number - 1];

describe('a deck from right to left', () => {
  it('has no problem, no word under 24 points, none outside its place and none on another', () => {
    expect(laid.codes).toEqual([]);
    expect(faults(laid.pages)).toEqual([]);
    expect(laid.pages.direction).toBe('rtl');
  });

  it('begins its titles at the right edge of the stage', () => {
    for (const [index, one] of laid.pages.pages.entries()) {
      if (SLIDES[index]?.stage.kind === 'caution') continue;
      const title = wordsOn(one)[0];
      expect(title?.right, title?.text).toBeGreaterThan(1224 - 8);
    }
  });

  it('has its numbers at the left, its bar at the right and its minutes at the left', () => {
    const number = wordsOn(page(2)).findLast(({ text }) => text === '2');
    expect(number?.left).toBeLessThan(62);
    const bar = shapesOn(marksOf(page(4))).find(({ left, right }) => Math.abs(right - left - 44) < 0.1);
    expect([bar?.left, bar?.right]).toEqual([1180, 1224]);
    const bricks = shapesOn(marksOf(page(7))).filter(
      ({ left, right, top, bottom }) =>
        Math.abs(right - left - 40) < 0.1 && Math.abs(bottom - top - 44) < 0.1,
    );
    expect(bricks).toHaveLength(8);
    expect(Math.min(...bricks.map(({ left }) => left))).toBeCloseTo(56);
  });

  it('has question columns from right to left, and the answer open to the shelf', () => {
    const edges = (one: (typeof laid.pages.pages)[number] | undefined) =>
      shapesOn(marksOf(one))
        .filter(({ stroke, left, right }) => stroke && right - left > 350 && right - left < 380)
        .map(({ left, bottom, stroke }) => ({ left, bottom, width: stroke?.width }));
    const [first, , third] = edges(page(9));
    expect(first?.left).toBeGreaterThan(third?.left ?? Number.POSITIVE_INFINITY);
    expect(third).toMatchObject({ width: expect.closeTo(9), bottom: expect.closeTo(shelfOf(page(9))) });
  });

  it('mirrors the boxes of the English deck', () => {
    const columns = (one: Laid, number: number) =>
      shapesOn(marksOf(one.pages.pages[number]))
        .filter(({ stroke, left, right }) => stroke && right - left > 350 && right - left < 380)
        .map(({ left, right }) => [left, right]);
    const mirrored = columns(english, 9).map(([left = 0, right = 0]) => [
      expect.closeTo(1280 - right),
      expect.closeTo(1280 - left),
    ]);
    expect(mirrored).toHaveLength(3);
    expect(columns(laid, 7)).toEqual(mirrored);
  });

  it('never mirrors a picture', () => {
    const mirrors = (marks: readonly Mark[]): number =>
      marks.reduce((count, mark) => {
        if (mark.kind !== 'group') return count;
        const [a, b, c, d] = mark.at ?? [1, 0, 0, 1, 0, 0];
        return count + (a * d - b * c < 0 ? 1 : 0) + mirrors(mark.marks);
      }, 0);
    expect(laid.pages.pages.map((one) => mirrors(marksOf(one)))).toEqual(SLIDES.map(() => 0));
  });

  it('keeps digits in their order', () => {
    const title = marksOf(page(6))
      .flatMap((mark) => (mark.kind === 'group' ? mark.marks : []))
      .find((mark) => mark.kind === 'text');
    const runs = title?.kind === 'text' ? title.line.runs : [];
    const [low, high] = [
      runs.find((run) => run.text.trim() === '90'),
      runs.find((run) => run.text.includes('190')),
    ];
    // From right to left the lower end comes first, and each number still runs from left to right.
    expect(low?.x).toBeGreaterThan(high?.x ?? Number.POSITIVE_INFINITY);
    expect([low?.rtl, high?.rtl]).toEqual([false, false]);
  });

  it('keeps a version code together', async () => {
    const { pages } = await layOut(
      arabic([
        slide(1, 'المصادر', { kind: 'sources', sources: [] }, { shelf: words('لم تُراجَع بعد. 2027-02-01') }),
      ]),
    );
    const text = marksOf(pages.pages[0]).flatMap((mark) => (mark.kind === 'group' ? mark.marks : []));
    const runs = text
      .flatMap((mark) => (mark.kind === 'text' ? mark.line.runs : []))
      .filter((run) => /\d/.test(run.text) && run.text !== '1');
    expect(runs.map((run) => run.text.replace(/\p{Cf}/gu, '')).join('')).toContain('2027-02-01');
    expect(runs.every((run) => !run.rtl)).toBe(true);
  });

  it('reads in the same order as the English one', () => {
    const roles = (one: Laid, index: number) =>
      outlineOf(one.pages, index).map((line) => line.trim().split(' ')[0]);
    expect(roles(laid, 6)).toEqual(roles(english, 7));
    expect(roles(laid, 8)).toEqual([
      'H2',
      'P',
      'L',
      ...Array.from({ length: 3 }, () => ['LI', 'Lbl', 'LBody']).flat(),
      'P',
    ]);
  });
});
