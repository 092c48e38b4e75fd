import type { CautionLine } from '../../document/index.js';
import type { Draft } from '../../layout/structure.js';
import { type Fonts, setParagraph } from '../../text/index.js';
import type { Easel } from './easel.js';
import { slideProblem } from './problems.js';
import type { StageSpace } from './space.js';
import { CAUTION_SIZES } from './tokens.js';

const HEAD = { size: 48, leading: 52, weight: 800 } as const;
const BETWEEN_LINES = 8;
const BETWEEN_WORDS = 10;
/** Width of the lines and height for them beside the fullest shelf, as the frame of cautions has them. */
const LINES = { width: 822, height: 318 } as const;
/** More lines at once are not read. */
const MOST_LINES = 5;

interface Group {
  readonly word: string;
  readonly lines: readonly CautionLine[];
}

function groupByWord(lines: readonly CautionLine[]): Group[] {
  const groups: { word: string; lines: CautionLine[] }[] = [];
  for (const line of lines) {
    const last = groups.at(-1);
    if (last?.word === line.word) last.lines.push(line);
    else groups.push({ word: line.word, lines: [line] });
  }
  return groups;
}

/** Height of all lines, each word's own at least as high as the word. */
function heightOf(groups: readonly Group[], heightOfLine: (line: CautionLine) => number): number {
  const rows = groups.map(({ lines }) =>
    Math.max(
      HEAD.leading,
      lines.reduce((sum, line) => sum + heightOfLine(line) + BETWEEN_LINES, 0),
    ),
  );
  return rows.reduce((a, b) => a + b, 0) + (groups.length - 1) * BETWEEN_WORDS;
}

/** Parts caution lines into as many slides as they need at 24 points, in order, none split and none left out. */
export function partCautions(lines: readonly CautionLine[], language: string, fonts: Fonts): CautionLine[][] {
  const style = { language, direction: 'ltr' as const, size: 32, leading: 40, weight: 500 as const };
  const high = (line: CautionLine) => {
    const spans = line.inlines.map(({ text, strong }) => ({
      text,
      ...(strong ? { weight: 800 as const } : {}),
    }));
    return setParagraph(fonts, spans, style, { width: LINES.width }).height;
  };
  const parts: CautionLine[][] = [];
  for (const line of lines) {
    const last = parts.at(-1);
    const more = last ? [...last, line] : [line];
    const fits = more.length <= MOST_LINES && heightOf(groupByWord(more), high) <= LINES.height;
    if (last && fits) last.push(line);
    else parts.push([line]);
  }
  return parts;
}

/** White box with a start bar; each line whole, all of one size: the largest that fits. */
export function paintCautions(
  lines: readonly CautionLine[],
  { frame }: StageSpace,
  section: Draft,
  easel: Easel,
): void {
  const { white, ink } = easel.colors;
  const groups = groupByWord(lines);
  const heads = frame.box('heads');
  const words = frame.box('lines');
  const set = (line: CautionLine, size: number, leading: number) =>
    easel.set(line.inlines, { size, leading, weight: 500 }, words.width);
  const fitting = CAUTION_SIZES.find(
    ([size, leading]) => heightOf(groups, (line) => set(line, size, leading).height) <= words.height,
  );
  const [size, leading] = fitting ?? [32, 40];
  if (!fitting)
    easel.report.add(
      slideProblem('slides/too-long', `${easel.name}: the cautions do not fit.`, {
        hint: 'A caution of the lesson’s own is too long: give it a shorter `short` wording.',
      }),
    );
  easel.backdrop([
    easel.rect(frame.box('caution'), { fill: white, line: 5 }),
    easel.rect(frame.box('bar'), { fill: ink }),
  ]);
  let y = words.y;
  for (const group of groups) {
    const part = easel.tree.add(section, 'Sect', { title: group.word });
    easel.words(
      easel.tree.add(part, 'P'),
      easel.set([{ text: group.word }], HEAD, heads.width),
      heads.x,
      y,
      heads.width,
    );
    const top = y;
    for (const line of group.lines) {
      const paragraph = set(line, size, leading);
      easel.words(easel.tree.add(part, 'P'), paragraph, words.x, y, words.width);
      y += paragraph.height + BETWEEN_LINES;
    }
    y = Math.max(y, top + HEAD.leading) + BETWEEN_WORDS;
  }
}
