import type { Block, CautionLine, Inline, Slide } from '../../document/index.js';
import type { Mark } from '../../figures/index.js';
import type { Draft } from '../../layout/structure.js';
import type { Easel } from './easel.js';
import { paintFigure } from './figure.js';
import type { SlideTools } from './lay-out.js';
import { slideProblem } from './problems.js';
import { paintQuestion } from './question.js';
import { checkFloor, type StageSpace } from './space.js';
import { CAUTION_SIZES, SLIDE, STAGE_WIDTH, TYPE } from './tokens.js';

/** Paints what stands on the stage. A new kind of stage does not compile until it stands here. */
export function paintStage(
  slide: Slide,
  space: StageSpace,
  section: Draft,
  easel: Easel,
  tools: SlideTools,
): void {
  const { stage } = slide;
  switch (stage.kind) {
    case 'open':
      paintWords([{ kind: 'paragraph', inlines: [{ text: stage.audience }] }], space, section, easel, 620);
      paintVessels(stage.pictures, space, easel, tools, 256);
      return;
    case 'say':
      if (stage.picture) paintVessels([stage.picture], space, easel, tools, 340);
      return;
    case 'words':
      paintWords(stage.blocks, space, section, easel, stage.picture ? 780 : STAGE_WIDTH);
      if (stage.picture) paintVessels([stage.picture], space, easel, tools, 256);
      return;
    case 'do':
      paintMinutes(stage.minutes, section, easel);
      paintSteps(stage.steps, space, section, easel, stage.pictures.length > 0 ? 700 : STAGE_WIDTH - 120);
      paintVessels(stage.pictures, space, easel, tools, 172);
      return;
    case 'show':
      paintFigure(stage.block.figure, space, section, easel, tools);
      return;
    case 'ask':
    case 'answer':
      paintQuestion(stage.question, stage.kind === 'answer', space, section, easel, tools);
      return;
    case 'caution':
      paintCautions(stage.block.lines, space, section, easel);
      return;
    case 'sources':
      paintSources(stage.sources, space, section, easel);
      return;
  }
}

/** Paragraphs and lists at 40 px; four points at most. */
function paintWords(
  blocks: readonly Block[],
  space: StageSpace,
  section: Draft,
  easel: Easel,
  width: number,
): void {
  let y = space.y + 12;
  for (const block of blocks) {
    if (block.kind === 'list') {
      const items = block.items.map((item) => item.flatMap((b) => ('inlines' in b ? b.inlines : [])));
      y = paintList(items, block.ordered, y, section, easel, width);
    } else if ('inlines' in block) {
      const words = easel.set(block.inlines, TYPE.text, width);
      easel.words(easel.tree.add(section, 'P'), words, SLIDE.side, y, width);
      y += words.height + 16;
    } else {
      easel.report.add(
        slideProblem('slides/too-long', `${easel.name}: a ${block.kind} does not stand on a slide.`, {
          hint: 'Use ::show for a figure, or leave it to the sheet.',
        }),
      );
    }
  }
  checkFloor(y - 16, space, easel);
}

function paintList(
  items: readonly (readonly Inline[])[],
  ordered: boolean,
  top: number,
  section: Draft,
  easel: Easel,
  width: number,
): number {
  const list = easel.tree.add(section, 'L', { numbering: ordered ? 'Decimal' : 'Disc' });
  let y = top;
  items.forEach((item, index) => {
    const row = easel.tree.add(list, 'LI');
    const label = easel.tree.add(row, 'Lbl');
    if (ordered)
      easel.words(
        label,
        easel.set([{ text: String(index + 1), strong: true }], TYPE.strong, 48),
        SLIDE.side,
        y,
        48,
      );
    else
      easel.content(label, [
        easel.rect({ x: SLIDE.side + 4, y: y + 17, width: 16, height: 16 }, { fill: easel.colors.ink }),
      ]);
    const words = easel.set(item, TYPE.text, width - 60);
    easel.words(easel.tree.add(row, 'LBody'), words, SLIDE.side + 60, y, width - 60);
    y += words.height + 14;
  });
  return y;
}

function paintSteps(
  steps: readonly (readonly Inline[])[],
  space: StageSpace,
  section: Draft,
  easel: Easel,
  width: number,
): void {
  if (steps.length > 4)
    easel.report.add(
      slideProblem('slides/too-long', `${easel.name}: ${steps.length} steps; a slide holds four.`, {
        hint: 'Part the activity in two, or leave steps to the notes.',
      }),
    );
  checkFloor(paintList(steps, true, space.y, section, easel, width) - 14, space, easel);
}

/** A brick a minute, at the top end; the word stands before them. */
function paintMinutes(minutes: number, section: Draft, easel: Easel): void {
  if (minutes <= 0) return;
  const words = easel.set([{ text: `${minutes} min`, strong: true }], TYPE.small, 200, { align: 'end' });
  easel.words(easel.tree.add(section, 'P'), words, SLIDE.side + STAGE_WIDTH - 200, SLIDE.top, 200);
  const count = Math.min(minutes, 20);
  const pitch = Math.min(46, 460 / count);
  const start = SLIDE.side + STAGE_WIDTH - (count * pitch - 6);
  easel.backdrop(
    Array.from({ length: count }, (_, i) =>
      easel.rect(
        { x: start + i * pitch, y: SLIDE.top + 48, width: pitch - 6, height: 44 },
        { fill: easel.colors.ink },
      ),
    ),
  );
}

/** Pictures stand in a row on the shelf at the reading end. */
function paintVessels(
  names: readonly string[],
  space: StageSpace,
  easel: Easel,
  tools: SlideTools,
  size: number,
): void {
  const high = Math.min(size, space.floor - space.y + 40);
  const marks = [...names].reverse().flatMap((name, index): Mark[] => {
    const drawing = tools.picture(name);
    if (!drawing) {
      easel.report.add(
        slideProblem('slides/no-picture', `${easel.name}: there is no picture "${name}".`, {
          hint: 'Use can, jar, bag, sieve, pot, cup or the name of a food picture.',
        }),
      );
      return [];
    }
    const scale = high / drawing.height;
    const x = SLIDE.side + STAGE_WIDTH - (index + 1) * high - index * 16;
    return [easel.drawing(drawing.marks, { x, y: space.floor - high, width: high, height: high }, scale)];
  });
  if (marks.length > 0) easel.backdrop(marks);
}

/** White box with a start bar; each line whole, all of one size: the largest that fits. */
function paintCautions(lines: readonly CautionLine[], space: StageSpace, section: Draft, easel: Easel): void {
  const box = { x: SLIDE.side, y: space.y, width: STAGE_WIDTH, height: space.floor - 24 - space.y };
  const bar = 44;
  const headX = box.x + bar + 24;
  const wordsX = headX + 250;
  const width = box.x + box.width - 28 - wordsX;
  const groups = groupByWord(lines);
  const heightAt = (size: number, leading: number) => {
    const rows = groups.map((group) =>
      Math.max(
        52,
        group.lines.reduce(
          (sum, line) => sum + easel.set(line.inlines, { size, leading, weight: 500 }, width).height + 8,
          0,
        ),
      ),
    );
    return rows.reduce((a, b) => a + b, 0) + (groups.length - 1) * 10;
  };
  const room = box.height - 40;
  const fitting = CAUTION_SIZES.find(([size, leading]) => heightAt(size, leading) <= room);
  const [size, leading] = fitting ?? [32, 40];
  if (!fitting)
    easel.report.add(
      slideProblem('slides/too-long', `${easel.name}: the cautions do not fit.`, {
        hint: 'The program parts cautions over more slides; report this lesson.',
      }),
    );
  easel.backdrop([
    easel.rect(box, { fill: easel.colors.white, line: 5 }),
    easel.rect({ ...box, width: bar }, { fill: easel.colors.ink }),
  ]);
  let y = box.y + 20;
  for (const group of groups) {
    const note = easel.tree.add(section, 'Sect', { title: group.word });
    const head = easel.set([{ text: group.word }], { size: 48, leading: 52, weight: 800 }, 240);
    easel.words(easel.tree.add(note, 'P'), head, headX, y, 240);
    const top = y;
    for (const line of group.lines) {
      const words = easel.set(line.inlines, { size, leading, weight: 500 }, width);
      easel.words(easel.tree.add(note, 'P'), words, wordsX, y, width);
      y += words.height + 8;
    }
    y = Math.max(y, top + 52) + 10;
  }
}

function groupByWord(
  lines: readonly CautionLine[],
): { readonly word: string; readonly lines: CautionLine[] }[] {
  const groups: { word: string; lines: CautionLine[] }[] = [];
  for (const line of lines) {
    const last = groups.at(-1);
    if (last?.word === line.word) last.lines.push(line);
    else groups.push({ word: line.word, lines: [line] });
  }
  return groups;
}

function paintSources(
  sources: readonly { readonly number: number; readonly words: string }[],
  space: StageSpace,
  section: Draft,
  easel: Easel,
): void {
  const list = easel.tree.add(section, 'L', { numbering: 'Decimal' });
  let y = space.y + 8;
  for (const source of sources) {
    const row = easel.tree.add(list, 'LI');
    easel.words(
      easel.tree.add(row, 'Lbl'),
      easel.set([{ text: String(source.number), strong: true }], TYPE.source, 60),
      SLIDE.side,
      y,
      60,
    );
    const words = easel.set([{ text: source.words }], TYPE.small, STAGE_WIDTH - 72);
    easel.words(easel.tree.add(row, 'LBody'), words, SLIDE.side + 72, y, STAGE_WIDTH - 72);
    y += Math.max(words.height, 40) + 12;
  }
  checkFloor(y - 12, space, easel);
}
