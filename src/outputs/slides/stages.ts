import type { Block, Slide, Stage } from '../../document/index.js';
import type { Frame, FrameBox } from '../../figures/index.js';
import { paintMinutes } from './activity.js';
import { checkBlocks, checkCount, paintBlocks, type SetBlocks, setBlocks } from './blocks.js';
import { paintCautions } from './cautions.js';
import type { Easel } from './easel.js';
import { paintFigure } from './figure.js';
import { paintQuestion } from './question.js';
import { paintSources } from './sources.js';
import { CLEAR, checkFloor, type StageSpace } from './space.js';
import { STAGE_WIDTH } from './tokens.js';
import type { SlideTools } from './tools.js';
import { paintVessels } from './vessels.js';

/** Largest size of pictures on the shelf, by what else stands on the stage. */
const VESSEL = { open: 256, say: 340, words: 300, list: 256, do: 172 } as const;

/** Paints what stands on the stage. A new kind of stage does not compile until it stands here. */
export function paintStage(slide: Slide, space: StageSpace, easel: Easel, tools: SlideTools): void {
  const { stage } = slide;
  switch (stage.kind) {
    case 'open':
    case 'say':
    case 'words':
    case 'do':
      paintWords(stage, space, easel, tools);
      return;
    case 'show':
      paintFigure(stage.block.figure, space, easel, tools);
      return;
    case 'ask':
    case 'answer':
      paintQuestion(stage.question, stage.kind === 'answer', space, easel, tools);
      return;
    case 'caution':
      paintCautions(stage.block.lines, space, easel);
      return;
    case 'sources':
      paintSources(stage.sources, space, easel);
      return;
  }
}

type WordsStage = Extract<Stage, { readonly kind: 'open' | 'say' | 'words' | 'do' }>;

/** What stands beside the pictures of a stage. */
interface Content {
  readonly blocks: readonly Block[];
  readonly place: 'audience' | 'sentence' | 'text' | 'steps';
  readonly pictures: readonly string[];
  /** Largest size of a picture. */
  readonly size: number;
  readonly balance: boolean;
}

function contentOf(stage: WordsStage): Content {
  switch (stage.kind) {
    case 'open': {
      const blocks: readonly Block[] = [{ kind: 'paragraph', inlines: [{ text: stage.audience }] }];
      return { blocks, place: 'audience', pictures: stage.pictures, size: VESSEL.open, balance: true };
    }
    case 'say': {
      const pictures = stage.picture ? [stage.picture] : [];
      return { blocks: [], place: 'sentence', pictures, size: VESSEL.say, balance: false };
    }
    case 'words': {
      const { blocks } = stage;
      const pictures = stage.picture ? [stage.picture] : [];
      const size = blocks.some(({ kind }) => kind === 'list') ? VESSEL.list : VESSEL.words;
      return { blocks, place: 'text', pictures, size, balance: true };
    }
    case 'do': {
      const items = stage.steps.map((inlines): Block[] => [{ kind: 'paragraph', inlines }]);
      const blocks: readonly Block[] = items.length > 0 ? [{ kind: 'list', ordered: true, items }] : [];
      return { blocks, place: 'steps', pictures: stage.pictures, size: VESSEL.do, balance: false };
    }
  }
}

/** Without pictures beside them words take the whole stage. */
function placeOf({ place, pictures }: Content, frame: Frame): FrameBox {
  const box = frame.box(place);
  return pictures.length > 0 ? box : { ...box, width: STAGE_WIDTH };
}

/** The words in the largest type in which they end above the shelf, or else in the smallest. */
function setContent(stage: WordsStage, content: Content, frame: Frame, easel: Easel): SetBlocks | undefined {
  const box = placeOf(content, frame);
  const types = stage.kind === 'do' ? easel.types.step : easel.types.text;
  const sizes = types.map((type) => setBlocks(content.blocks, type, box.width, easel, content.balance));
  return sizes.find(({ height }) => box.y + height + CLEAR <= frame.box('shelf').y) ?? sizes.at(-1);
}

/** Whether words stand on the stage in the largest type, below a title of the height that the frame has. */
export function stageFits({ stage }: Pick<Slide, 'stage'>, frame: Frame, easel: Easel): boolean {
  if (stage.kind !== 'open' && stage.kind !== 'say' && stage.kind !== 'words' && stage.kind !== 'do')
    return true;
  const content = contentOf(stage);
  const set = setContent(stage, content, frame, easel);
  const [largest] = stage.kind === 'do' ? easel.types.step : easel.types.text;
  const bottom = placeOf(content, frame).y + (set?.height ?? 0) + CLEAR;
  return set?.type === largest && bottom <= frame.box('shelf').y;
}

function paintWords(stage: WordsStage, space: StageSpace, easel: Easel, tools: SlideTools): void {
  const content = contentOf(stage);
  if (stage.kind === 'words') checkBlocks(content.blocks, easel);
  if (stage.kind === 'do') {
    checkCount(stage.steps.length, easel);
    paintMinutes(stage.minutes, stage.said ?? '', space, easel);
  }
  const set = setContent(stage, content, space.frame, easel);
  const { x, y } = placeOf(content, space.frame);
  if (set && set.blocks.length > 0) checkFloor(paintBlocks(set, x, y, space.section, easel), space, easel);
  paintVessels(content.pictures, content.size, space, easel, tools);
}
