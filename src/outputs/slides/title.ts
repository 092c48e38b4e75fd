import type { Slide } from '../../document/index.js';
import { minutesWidth } from './activity.js';
import type { Easel, SetWords } from './easel.js';
import { type SlideType, STAGE_WIDTH } from './tokens.js';

/** Large words are as wide as a line that the eye finds back from. */
const LARGE_WIDTH = 800;
const BESIDE_MINUTES = 40;

/** One way to set a title. */
interface Try {
  readonly type: SlideType;
  readonly width: number;
  readonly most: number;
  readonly balance?: boolean;
}

export type Titled = Pick<Slide, 'title' | 'stage'>;

function triesOf({ stage }: Titled, { types }: Pick<Easel, 'types'>): readonly Try[] {
  const usual = (most: number, width = STAGE_WIDTH) =>
    types.title.map((type): Try => ({ type, width, most, balance: most > 1 }));
  const large = (sizes: readonly SlideType[], most: number, width = LARGE_WIDTH) =>
    sizes.map((type): Try => ({ type, width, most, balance: true }));
  switch (stage.kind) {
    case 'open':
      return [
        ...large([types.open], 2),
        ...large([types.open], 2, STAGE_WIDTH),
        ...large(types.head, 3, STAGE_WIDTH),
        ...usual(4),
      ];
    case 'say':
      return [
        ...large(types.sentence, 4, stage.picture ? LARGE_WIDTH : STAGE_WIDTH),
        ...large(types.sentence, 5, stage.picture ? LARGE_WIDTH : STAGE_WIDTH),
        ...usual(6, LARGE_WIDTH),
      ];
    case 'do': {
      const room = STAGE_WIDTH - minutesWidth(stage.minutes) - BESIDE_MINUTES;
      return [...large(types.head, 2, room), ...usual(2, room), ...usual(3, room)];
    }
    case 'words':
      return [...large(types.head, 2), ...usual(1), ...usual(2)];
    // A figure needs the height: smaller letters on one line come before a second line.
    case 'show':
      return [...usual(1), ...usual(2)];
    case 'ask':
    case 'answer':
    case 'sources':
    case 'caution':
      return usual(2);
  }
}

/**
 * The ways in which a title stands in the lines that it may have, the best first. Never empty: a title
 * that is too long at every size is set at the smallest and reported when it is painted.
 */
export function titlesOf(slide: Titled, easel: Pick<Easel, 'set' | 'types'>): readonly SetWords[] {
  const tries = triesOf(slide, easel).map(({ type, width, most, balance = false }) => ({
    most,
    words: easel.set(slide.title, type, width, { lookHere: true, balance }),
  }));
  const fitting = tries.filter(({ most, words }) => words.lines.length <= most && !words.overflow);
  const last = tries.at(-1);
  return (fitting.length > 0 || !last ? fitting : [last]).map(({ words }) => words);
}

export function setTitle(slide: Titled, easel: Pick<Easel, 'set' | 'types'>): SetWords {
  const [title] = titlesOf(slide, easel);
  if (!title) throw new Error('No size is left for a title.');
  return title;
}

/** Reports a title that is too long at every size. */
export function checkTitle(slide: Titled, title: SetWords, easel: Easel): void {
  const most = Math.max(...triesOf(slide, easel).map((one) => one.most));
  if (title.lines.length <= most) return;
  easel.problem(
    'slides/too-long',
    `the title takes ${title.lines.length} lines.`,
    `${most} at most: cut words.`,
  );
}
