import type { CautionLine } from '../../document/index.js';
import type { Frame, FrameBox, Mark } from '../../figures/index.js';
import type { Easel, SetWords } from './easel.js';
import type { StageSpace } from './space.js';
import { LINES, type SlideType } from './tokens.js';

/** More lines at once are not read. */
export const MOST_LINES = 5;
/** Room with a rule in it: between two lines of one heading, and between two headings. */
const BETWEEN = { lines: 22, headings: 28 } as const;
/** What is left over goes between the lines, so much at most. */
const MOST_SLACK = 16;

type Setter = Pick<Easel, 'set' | 'types'>;

interface Group {
  readonly head: SetWords;
  readonly word: string;
  readonly lines: readonly SetWords[];
  readonly height: number;
}

interface SetCautions {
  readonly groups: readonly Group[];
  readonly height: number;
}

/** All lines of one size under their words; each word's own lines are at least as high as the word. */
function setCautions(
  lines: readonly CautionLine[],
  type: SlideType,
  frame: Frame,
  { set, types }: Setter,
): SetCautions {
  const words: { word: string; lines: CautionLine[] }[] = [];
  for (const line of lines) {
    const last = words.at(-1);
    if (last?.word === line.word) last.lines.push(line);
    else words.push({ word: line.word, lines: [line] });
  }
  const { width } = frame.box('lines');
  const groups = words.map(({ word, lines: own }): Group => {
    const head = set([{ text: word }], types.cautionHead, frame.box('heads').width);
    const setLines = own.map((line) => set(line.inlines, type, width));
    const high = setLines.reduce((sum, { height }) => sum + height, (own.length - 1) * BETWEEN.lines);
    return { head, word, lines: setLines, height: Math.max(head.height, high) };
  });
  const between = Math.max(0, groups.length - 1) * BETWEEN.headings;
  return { groups, height: groups.reduce((sum, { height }) => sum + height, between) };
}

/** How high lines stand at the smallest size, and the room that there is. */
export function cautionsHeight(lines: readonly CautionLine[], frame: Frame, setter: Setter): number {
  const smallest = setter.types.caution.at(-1) ?? setter.types.small;
  return setCautions(lines, smallest, frame, setter).height;
}

/** White box with a start bar; each line whole, all of one size: the largest that fits. */
export function paintCautions(lines: readonly CautionLine[], space: StageSpace, easel: Easel): void {
  const { frame, section } = space;
  const { paper, ink } = easel.palette;
  const room = frame.box('lines');
  const sizes = easel.types.caution.map((type) => setCautions(lines, type, frame, easel));
  const fitting = sizes.find(({ height }) => height <= room.height);
  const cautions = fitting ?? sizes.at(-1);
  if (!cautions) return;
  if (!fitting)
    easel.problem(
      'slides/too-long',
      `the cautions are ${Math.ceil(cautions.height - room.height)} pixels too high.`,
      'A caution of the lesson’s own is too long: give it a shorter `short` wording.',
    );
  const placed = place(cautions, room);
  easel.backdrop([
    easel.rect(frame.box('caution'), { fill: paper, line: LINES.box }),
    easel.rect(frame.box('bar'), { fill: ink }),
    ...rules(placed, frame, easel),
  ]);
  const heads = frame.box('heads');
  for (const { group, lines: own } of placed.groups) {
    const part = easel.tree.add(section, 'Sect', { title: group.word });
    const [first] = own;
    if (!first) continue;
    // The word stands on the baseline of its first line.
    const up = (group.head.lines[0]?.baseline ?? 0) - (first.line.lines[0]?.baseline ?? 0);
    easel.words(easel.tree.add(part, 'P'), group.head, heads.x, first.y - up);
    for (const { line, y } of own) easel.words(easel.tree.add(part, 'P'), line, room.x, y);
  }
}

interface Placed {
  readonly between: { readonly lines: number; readonly headings: number };
  readonly groups: readonly {
    readonly group: Group;
    readonly lines: readonly { readonly line: SetWords; readonly y: number }[];
  }[];
}

/** Lines down the box: what room is left goes between them first, then above and below alike. */
function place({ groups, height }: SetCautions, room: FrameBox): Placed {
  const slack = Math.max(0, room.height - height);
  const gaps = groups.reduce((sum, { lines }) => sum + lines.length, 0) - 1;
  const each = gaps > 0 ? Math.min(MOST_SLACK, slack / gaps) : 0;
  const between = { lines: BETWEEN.lines + each, headings: BETWEEN.headings + each };
  let y = room.y + (slack - gaps * each) / 2;
  return {
    between,
    groups: groups.map((group) => {
      let top = y;
      const lines = group.lines.map((line) => {
        const at = { line, y: top };
        top += line.height + between.lines;
        return at;
      });
      y = Math.max(top - between.lines, y + group.head.height) + between.headings;
      return { group, lines };
    }),
  };
}

/** A thin rule between two lines, a heavy one between two headings. */
function rules({ groups, between }: Placed, frame: Frame, easel: Easel): Mark[] {
  const [heads, room] = [frame.box('heads'), frame.box('lines')];
  const fill = easel.palette.ink;
  const whole = room.x + room.width - heads.x;
  return groups.flatMap(({ lines }, index) =>
    lines.flatMap(({ y }, line): Mark[] => {
      if (line > 0) {
        const at = y - (between.lines + LINES.thin) / 2;
        return [easel.rect({ x: room.x, y: at, width: room.width, height: LINES.thin }, { fill })];
      }
      if (index === 0) return [];
      const at = y - (between.headings + LINES.rule) / 2;
      return [easel.rect({ x: heads.x, y: at, width: whole, height: LINES.rule }, { fill })];
    }),
  );
}
