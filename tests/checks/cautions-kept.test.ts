import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxesOf } from '../../src/cautions/index.js';
import { type Built, checkCautionsKept } from '../../src/checks/index.js';
import type { Deck, Sheet } from '../../src/document/index.js';
import type { Pages } from '../../src/layout/index.js';
import type { Level } from '../../src/reading/index.js';
import {
  asDeck,
  asSheet,
  deck,
  found,
  paginate,
  piecesOf,
  problems,
  pulled,
  sheet,
  standingOf,
} from './fixtures.js';

const LEVELS: readonly Level[] = ['short', 'plain', 'fuller'];
const check = (...built: Built[]) =>
  found((r) => checkCautionsKept({ pulled, built, standing: standingOf }, r));
const boxes = boxesOf(pulled).map((p) => p.caution.id);

/** Every output of the lesson, as a build would make them. */
function allOutputs(): Built[] {
  return [
    ...LEVELS.flatMap((level) =>
      (['handout', 'worksheet', 'key'] as const).map((kind) => {
        const s = sheet(kind, level);
        return asSheet(`${kind}-${level}`, s, paginate(piecesOf(s)));
      }),
    ),
    asSheet('staff', sheet('staff', 'staff')),
    asDeck(deck()),
  ];
}

describe('a build that keeps its cautions', () => {
  it('has no finding', () => {
    expect(check(...allOutputs())).toEqual([]);
  });
  it('review sheets and speaker notes list cautions in their own way', () => {
    const none = { cautions: { lines: [], whoToAsk: '' }, blocks: [] };
    expect(
      check(
        asSheet('review', sheet('review', 'staff', none)),
        asSheet('notes', sheet('notes', 'staff', none)),
      ),
    ).toEqual([]);
  });
});

describe('a caution that is lost', () => {
  const without = (s: Sheet, id: string): Sheet => ({
    ...s,
    cautions: { ...s.cautions, lines: s.cautions.lines.filter((l) => l.id !== id) },
  });

  it('from any sheet at any level is a Stop that spoils that output', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...LEVELS),
        fc.constantFrom('handout', 'worksheet', 'key'),
        fc.constantFrom(...boxes),
        (level, kind, id) => {
          const output = asSheet(`${kind}-${level}`, without(sheet(kind, level), id));
          const [problem, ...more] = problems((r) =>
            checkCautionsKept({ pulled, built: [output], standing: standingOf }, r),
          );
          expect(problem).toMatchObject({
            code: 'S17',
            severity: 'stop',
            message: `${kind}-${level}: the caution \`${id}\` is missing.`,
            spoils: { outputs: [kind], levels: [level], languages: ['en'] },
          });
          expect(more).toEqual([]);
        },
      ),
    );
  });

  it('from the staff page is found too', () => {
    expect(check(asSheet('staff', without(sheet('staff', 'staff'), 'sodium-lithium')))).toEqual([
      expect.stringContaining('staff: the caution `sodium-lithium` is missing.'),
    ]);
  });

  it('from any caution slide is found, whichever it is', () => {
    fc.assert(
      fc.property(fc.constantFrom(...boxes), (id) => {
        const d = deck();
        const slides = d.slides.map((s) =>
          s.stage.kind === 'caution'
            ? {
                ...s,
                stage: {
                  ...s.stage,
                  block: { ...s.stage.block, lines: s.stage.block.lines.filter((l) => l.id !== id) },
                },
              }
            : s,
        );
        expect(check(asDeck({ ...d, slides })).join('\n')).toContain(`the caution \`${id}\` is missing.`);
      }),
    );
  });

  it('from finished pages is found although the sheet still has it', () => {
    fc.assert(
      fc.property(fc.constantFrom(...LEVELS), fc.constantFrom(...boxes), (level, id) => {
        const s = sheet('handout', level);
        const pages = paginate(piecesOf(without(s, id)));
        expect(check(asSheet('handout', s, pages))).toEqual([
          expect.stringContaining(`\`${id}\` is not on the finished pages.`),
        ]);
      }),
    );
  });
});

describe('a caution that stands, but not as it must', () => {
  const s = sheet('handout', 'plain');
  const change = (f: (lines: Sheet['cautions']['lines']) => Sheet['cautions']['lines']) =>
    check(asSheet('handout', { ...s, cautions: { ...s.cautions, lines: f(s.cautions.lines) } }));

  it.each([
    [
      'shortened',
      (lines: Sheet['cautions']['lines']) =>
        lines.map((l, i) => (i === 3 ? { ...l, inlines: l.inlines.slice(0, 1) } : l)),
      /`sodium-lithium` does not have its wording/,
    ],
    [
      'weakened',
      (lines: Sheet['cautions']['lines']) =>
        lines.map((l, i) =>
          i === 3 ? { ...l, inlines: [{ text: 'Do you take lithium? You may want to ask.' }] } : l,
        ),
      /`sodium-lithium` does not have its wording/,
    ],
    [
      'under another word',
      (lines: Sheet['cautions']['lines']) =>
        lines.map((l, i) => (i === 0 ? { ...l, heading: 'Ask first' as const } : l)),
      /`damaged-cans` stands under Ask first; it is Stop/,
    ],
    [
      'twice',
      (lines: Sheet['cautions']['lines']) => [...lines, ...lines.slice(0, 1)],
      /`damaged-cans` stands 2 times/,
    ],
    ['out of order', (lines: Sheet['cautions']['lines']) => lines.toReversed(), /out of order at/],
    [
      'blended with another',
      (lines: Sheet['cautions']['lines']) =>
        lines.flatMap((l, i) =>
          i === 4
            ? []
            : i === 3
              ? [{ ...l, inlines: [{ text: 'Lithium, heart failure or water pills? Ask first.' }] }]
              : [l],
        ),
      /`sodium-heart-water-pills` is missing/,
    ],
  ])('%s', (_, f, expected) => {
    expect(change(f).join('\n')).toMatch(expected);
  });

  it('split over two pages', () => {
    const pieces = piecesOf(s);
    const at = pieces.findIndex((p) => p.text.startsWith('Do you take lithium?'));
    const halves = ['Do you take lithium? Ask your ', 'care team before you cut back on salt.'].map(
      (text) => ({ role: 'P' as const, text }),
    );
    const pages = paginate([...pieces.slice(0, at), ...halves, ...pieces.slice(at + 1)], at + 1);
    expect(check(asSheet('handout', s, pages))).toEqual([
      expect.stringContaining('`sodium-lithium` is split over two pages.'),
    ]);
  });

  it('printed only as an artifact, which nobody hears', () => {
    const pages = paginate(piecesOf(s));
    const silent: Pages = {
      ...pages,
      pages: pages.pages.map((p) => ({
        ...p,
        items: p.items.map((item, i) =>
          item.kind === 'content' && i === 2
            ? { kind: 'artifact' as const, of: 'layout' as const, marks: item.marks }
            : item,
        ),
      })),
    };
    expect(check(asSheet('handout', s, silent))).toEqual([
      expect.stringContaining('`damaged-cans` is not on the finished pages.'),
    ]);
  });

  it('after the figure that it guards, on a deck', () => {
    const d: Deck = deck();
    const slides = [
      ...d.slides.filter((x) => x.stage.kind !== 'caution'),
      ...d.slides.filter((x) => x.stage.kind === 'caution'),
    ];
    expect(check(asDeck({ ...d, slides })).join('\n')).toMatch(
      /`damaged-cans` does not stand before slide 3, whose figure it guards/,
    );
  });
});

describe('a stop line on its figure’s own slide', () => {
  const again = (id: string) => {
    const d = deck();
    const block = d.slides.flatMap((s) => (s.stage.kind === 'caution' ? [s.stage.block] : []));
    const line = block.flatMap((b) => b.lines).filter((l) => l.id === id);
    const step = {
      ...d.slides[1],
      stage: { kind: 'caution', block: { lines: line, whoToAsk: '' } },
    } as Deck['slides'][number];
    return check(asDeck({ ...d, slides: [...d.slides, step] }));
  };
  it('may stand again', () => {
    expect(again('damaged-cans')).toEqual([]);
  });
  it('an ask-first line may not', () => {
    expect(again('sodium-lithium')).toEqual([expect.stringContaining('stands 2 times')]);
  });
});

describe('notes and standing lines', () => {
  it('a note that is missing beside its figure', () => {
    const s = sheet('handout', 'short');
    const blocks = s.blocks.filter(
      (b) => !(b.kind === 'figure-caution' && b.cautions.includes('note-rinse-counts')),
    );
    expect(check(asSheet('handout', { ...s, blocks }))).toEqual([
      expect.stringContaining('the note `note-rinse-counts` is missing beside its figure.'),
    ]);
  });
  it('is not asked for where the figure does not stand', () => {
    const s = sheet('handout', 'short');
    const blocks = s.blocks.filter(
      (b) =>
        !(b.kind === 'figure' && b.figure.id === 'rinse') &&
        !(b.kind === 'figure-caution' && b.cautions.includes('note-rinse-counts')),
    );
    expect(check(asSheet('handout', { ...s, blocks }))).toEqual([]);
  });
  it('the emergency line that is missing', () => {
    const s = sheet('handout', 'plain');
    expect(check(asSheet('handout', { ...s, blocks: s.blocks.slice(1) })).join('\n')).toContain(
      'the line `line-emergency` is missing.',
    );
  });
  it('a note that a slide’s shelf lost', () => {
    const d = deck();
    const slides = d.slides.map((x) => (x.id === 's4' ? { ...x, shelf: [] } : x));
    expect(check(asDeck({ ...d, slides }))).toEqual([
      expect.stringContaining('the note `note-rinse-counts` is missing'),
    ]);
  });
});
