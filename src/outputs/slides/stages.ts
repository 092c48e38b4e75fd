import type { Block, Inline, Slide } from '../../document/index.js';
import type { FrameBox, Mark } from '../../figures/index.js';
import type { Draft } from '../../layout/structure.js';
import { paintCautions } from './cautions.js';
import type { Easel } from './easel.js';
import { paintFigure } from './figure.js';
import type { SlideTools } from './lay-out.js';
import { slideProblem } from './problems.js';
import { paintQuestion } from './question.js';
import { checkFloor, type StageSpace } from './space.js';
import { STAGE_WIDTH, TYPE } from './tokens.js';

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
      paintWords(
        [{ kind: 'paragraph', inlines: [{ text: stage.audience }] }],
        space,
        section,
        easel,
        space.frame.box('audience'),
      );
      paintVessels(stage.pictures, space, easel, tools, 256);
      return;
    case 'say':
      if (stage.picture) paintVessels([stage.picture], space, easel, tools, 340);
      return;
    case 'words':
      paintWords(
        stage.blocks,
        space,
        section,
        easel,
        wide(space.frame.box('text'), stage.picture !== undefined),
      );
      if (stage.picture) paintVessels([stage.picture], space, easel, tools, 256);
      return;
    case 'do':
      paintMinutes(stage.minutes, space, section, easel);
      paintSteps(
        stage.steps,
        space,
        section,
        easel,
        wide(space.frame.box('steps'), stage.pictures.length > 0),
      );
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

/** Without a picture beside them words take the whole stage. */
function wide(box: FrameBox, beside: boolean): FrameBox {
  return beside ? box : { ...box, width: STAGE_WIDTH };
}

/** Paragraphs and lists at 40 px; four points at most. */
function paintWords(
  blocks: readonly Block[],
  space: StageSpace,
  section: Draft,
  easel: Easel,
  box: FrameBox,
): void {
  const { width } = box;
  let y = box.y;
  for (const block of blocks) {
    if (block.kind === 'list') {
      const items = block.items.map((item) => item.flatMap((b) => ('inlines' in b ? b.inlines : [])));
      y = paintList(items, block.ordered, { ...box, y }, section, easel);
    } else if ('inlines' in block) {
      const words = easel.set(block.inlines, TYPE.text, width);
      easel.words(easel.tree.add(section, 'P'), words, box.x, y, width);
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
  box: FrameBox,
  section: Draft,
  easel: Easel,
): number {
  const { x, width } = box;
  const list = easel.tree.add(section, 'L', { numbering: ordered ? 'Decimal' : 'Disc' });
  let { y } = box;
  items.forEach((item, index) => {
    const row = easel.tree.add(list, 'LI');
    const label = easel.tree.add(row, 'Lbl');
    if (ordered)
      easel.words(label, easel.set([{ text: String(index + 1), strong: true }], TYPE.strong, 48), x, y, 48);
    else
      easel.content(label, [
        easel.rect({ x: x + 4, y: y + 17, width: 16, height: 16 }, { fill: easel.colors.ink }),
      ]);
    const words = easel.set(item, TYPE.text, width - 60);
    easel.words(easel.tree.add(row, 'LBody'), words, x + 60, y, width - 60);
    y += words.height + 14;
  });
  return y;
}

function paintSteps(
  steps: readonly (readonly Inline[])[],
  space: StageSpace,
  section: Draft,
  easel: Easel,
  box: FrameBox,
): void {
  if (steps.length > 4)
    easel.report.add(
      slideProblem('slides/too-long', `${easel.name}: ${steps.length} steps; a slide holds four.`, {
        hint: 'Part the activity in two, or leave steps to the notes.',
      }),
    );
  checkFloor(paintList(steps, true, box, section, easel) - 14, space, easel);
}

/** A brick a minute, at the top end; the word stands before them. */
function paintMinutes(minutes: number, space: StageSpace, section: Draft, easel: Easel): void {
  if (minutes <= 0) return;
  const box = space.frame.box('minutes');
  const end = box.x + box.width;
  const words = easel.set([{ text: `${minutes} min`, strong: true }], TYPE.small, 200, { align: 'end' });
  easel.words(easel.tree.add(section, 'P'), words, end - 200, box.y, 200);
  const count = Math.min(minutes, 20);
  const pitch = Math.min(46, 460 / count);
  const start = end - (count * pitch - 6);
  easel.backdrop(
    Array.from({ length: count }, (_, i) =>
      easel.rect(
        { x: start + i * pitch, y: box.y + 48, width: pitch - 6, height: 44 },
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
  const box = space.frame.box('vessels');
  const end = box.x + box.width;
  const high = Math.min(size, space.floor - box.y + 40);
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
    const x = end - (index + 1) * high - index * 16;
    return [easel.drawing(drawing.marks, { x, y: space.floor - high, width: high, height: high }, scale)];
  });
  if (marks.length > 0) easel.backdrop(marks);
}

function paintSources(
  sources: readonly { readonly number: number; readonly words: string }[],
  space: StageSpace,
  section: Draft,
  easel: Easel,
): void {
  const list = easel.tree.add(section, 'L', { numbering: 'Decimal' });
  const box = space.frame.box('list');
  let { y } = box;
  for (const source of sources) {
    const row = easel.tree.add(list, 'LI');
    easel.words(
      easel.tree.add(row, 'Lbl'),
      easel.set([{ text: String(source.number), strong: true }], TYPE.source, 60),
      box.x,
      y,
      60,
    );
    const words = easel.set([{ text: source.words }], TYPE.small, box.width - 72);
    easel.words(easel.tree.add(row, 'LBody'), words, box.x + 72, y, box.width - 72);
    y += Math.max(words.height, 40) + 12;
  }
  checkFloor(y - 12, space, easel);
}
