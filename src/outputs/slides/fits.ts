import { createReport } from '../../diagnostics/index.js';
import type { CautionLine, Inline, SourceLine } from '../../document/index.js';
import type { FrameMaker } from '../../figures/index.js';
import { direction } from '../../languages/index.js';
import { createTree } from '../../layout/structure.js';
import type { Fonts } from '../../text/index.js';
import { cautionsHeight, MOST_LINES } from './cautions.js';
import { createEasel } from './easel.js';
import { setShelf, shelfLines } from './shelf.js';
import { MOST_SOURCES, sourcesHeight } from './sources.js';
import { CLEAR } from './space.js';
import { setTitle } from './title.js';
import { SHELF } from './tokens.js';

/** How much stands on one slide, known before the deck is put together. */
export interface SlideFits {
  /** Whether words stand on the shelf in as many lines as it may have. */
  readonly shelf: (words: readonly Inline[]) => boolean;
  /**
   * Caution lines in as many parts as they need at 24 points over this shelf, in order, none split and
   * none left out. Of all ways to part them that need so few slides, the one with the evenest slides.
   */
  readonly cautions: (
    lines: readonly CautionLine[],
    shelf: readonly Inline[],
  ) => readonly (readonly CautionLine[])[];
  /** Sources in as many parts as they need below this title and over this shelf. */
  readonly sources: (
    sources: readonly SourceLine[],
    title: readonly Inline[],
    shelf: readonly Inline[],
  ) => Promise<readonly (readonly SourceLine[])[]>;
}

export async function measureSlides(fonts: Fonts, frames: FrameMaker, language: string): Promise<SlideFits> {
  const easel = createEasel({
    fonts,
    language,
    direction: direction(language),
    ink: 'color',
    tree: createTree(),
    report: createReport(),
    name: '',
  });
  const ask = (master: 'caution' | 'sources', shelf: 2 | 3 | 4, titleHeight: number) =>
    frames({ master, format: '16:9', shelfLines: shelf, titleHeight });
  const cautionFrames = new Map(
    await Promise.all(([2, 3, 4] as const).map(async (n) => [n, await ask('caution', n, 0)] as const)),
  );
  const any = await ask('caution', SHELF.least, 0);
  const set = (shelf: readonly Inline[]) => setShelf(shelf, 0, any, easel);
  return {
    shelf: (words) => set(words).lines.length <= SHELF.most,
    cautions(lines, shelf) {
      const frame = cautionFrames.get(shelfLines(set(shelf)));
      if (!frame) throw new Error('A frame of cautions is missing.');
      const height = (some: readonly CautionLine[]) => cautionsHeight(some, frame, easel);
      return partEvenly(lines, MOST_LINES, frame.box('lines').height, height);
    },
    async sources(sources, title, shelf) {
      const head = setTitle({ title, stage: { kind: 'sources', sources: [] } }, easel);
      const frame = await ask('sources', shelfLines(set(shelf)), head.height);
      const { width, height } = frame.box('list');
      return part(sources, MOST_SOURCES, height - CLEAR, (some) => sourcesHeight(some, width, easel));
    },
  };
}

/** Fills one part after the other; what is too high alone stands alone. */
function part<T>(
  all: readonly T[],
  most: number,
  room: number,
  height: (some: readonly T[]) => number,
): T[][] {
  const parts: T[][] = [];
  for (const one of all) {
    const last = parts.at(-1);
    if (last && last.length < most && height([...last, one]) <= room) last.push(one);
    else parts.push([one]);
  }
  return parts;
}

/** As few parts as `part` makes, the highest of them as low as it can be. */
function partEvenly<T>(
  all: readonly T[],
  most: number,
  room: number,
  height: (some: readonly T[]) => number,
): T[][] {
  const fewest = part(all, most, room, height);
  const heights = all.flatMap((_, from) =>
    all.slice(from, from + most).map((__, n) => height(all.slice(from, from + n + 1))),
  );
  for (const cap of heights.filter((h) => h < room).sort((a, b) => a - b)) {
    const parts = part(all, most, cap, height);
    if (parts.length === fewest.length) return parts;
  }
  return fewest;
}
