import type { SourceLine } from '../../document/index.js';
import type { Easel, SetWords } from './easel.js';
import { checkFloor, type StageSpace } from './space.js';

/** More on one slide are not read. */
export const MOST_SOURCES = 5;
const BETWEEN = 18;
const NUMBER = 60;

interface SetSource {
  readonly number: SetWords;
  readonly name: SetWords;
  readonly state?: SetWords;
  readonly height: number;
}

type Setter = Pick<Easel, 'set' | 'types' | 'palette'>;

function setSource(source: SourceLine, width: number, { set, types, palette }: Setter): SetSource {
  // A name in a list ends without a stop.
  const name = set([{ text: source.words.replace(/\.$/u, '') }], types.source, width - NUMBER);
  const state = source.state
    ? set([{ text: source.state }], types.sourceState, width - NUMBER, { color: palette.slate })
    : undefined;
  return {
    number: set([{ text: String(source.number) }], types.sourceNumber, NUMBER),
    name,
    ...(state ? { state } : {}),
    height: name.height + (state?.height ?? 0),
  };
}

/** Height of sources below each other. */
export function sourcesHeight(sources: readonly SourceLine[], width: number, setter: Setter): number {
  const heights = sources.map((source) => setSource(source, width, setter).height);
  return heights.reduce((a, b) => a + b, Math.max(0, heights.length - 1) * BETWEEN);
}

/** Name and state of each source with its number. */
export function paintSources(sources: readonly SourceLine[], space: StageSpace, easel: Easel): void {
  const box = space.frame.box('list');
  const list = easel.tree.add(space.section, 'L', { numbering: 'Decimal' });
  let { y } = box;
  for (const source of sources) {
    const { number, name, state, height } = setSource(source, box.width, easel);
    const row = easel.tree.add(list, 'LI');
    easel.words(easel.tree.add(row, 'Lbl'), number, box.x, y);
    const body = easel.tree.add(row, 'LBody');
    easel.words(body, name, box.x + NUMBER, y);
    if (state) easel.words(body, state, box.x + NUMBER, y + name.height);
    y += height + BETWEEN;
  }
  checkFloor(y - BETWEEN, space, easel);
}
