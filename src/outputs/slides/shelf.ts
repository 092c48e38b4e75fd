import type { Inline, Slide } from '../../document/index.js';
import type { Frame, Mark } from '../../figures/index.js';
import { rowOf } from '../../layout/rows.js';
import type { Draft } from '../../layout/structure.js';
import type { Easel, SetWords } from './easel.js';
import { SHELF } from './tokens.js';

type Setter = Pick<Easel, 'set' | 'types'>;

/** Notes and pointers are read before the figure, basis and sources after it: so many stretches are first. */
export function setShelf(
  shelf: readonly Inline[],
  first: number,
  frame: Frame,
  { set, types }: Setter,
): SetWords {
  return set(shelf, types.small, frame.box('words').width, { first });
}

/** How many lines the shelf's front is made for. */
export function shelfLines({ lines }: SetWords): 2 | 3 | 4 {
  return lines.length >= 4 ? 4 : lines.length === 3 ? 3 : 2;
}

/** The wall and the shelf's front: the background, the same on every slide. */
export function paintWall(frame: Frame, easel: Easel): void {
  const { palette } = easel;
  const shelf = frame.box('shelf');
  easel.backdrop([
    easel.rect({ x: 0, y: 0, width: frame.width, height: shelf.y }, { fill: palette.ground }),
    easel.rect(shelf, { fill: palette.tint }),
    easel.rect({ ...shelf, height: SHELF.line }, { fill: palette.ink }),
  ]);
}

/** The shelf's words are content, never an artifact. */
export interface ShelfPainter {
  readonly notes: () => void;
  readonly basis: () => void;
}

/** Words on the shelf's front edge, which are painted in two turns of the reading order. */
export function shelfPainter(
  slide: Slide,
  shelf: SetWords,
  section: Draft,
  frame: Frame,
  easel: Easel,
): ShelfPainter {
  const over = shelf.lines.slice(SHELF.most);
  if (over.length > 0) {
    const characters = over.reduce((sum, line) => sum + line.text.trim().length, 0);
    easel.problem(
      'slides/too-long',
      `the shelf has ${characters} characters too many.`,
      'Shorten the notes or the basis, or show fewer things on the slide.',
    );
  }
  easel.check(shelf);
  const box = frame.box('words');
  const lines = Math.min(SHELF.most, shelf.lines.length);
  const top = box.y + (box.height - lines * easel.types.small.leading) / 2;
  const left = easel.left(box.x, shelf.measure);
  const paint = (part: 0 | 1) => {
    // An element is made when it is painted, so that the tree has the order in which it is read.
    const node = easel.tree.add(section, 'P');
    const targets = [0, 1].map((of) => ({ node: of === part ? node : section }));
    let y = top;
    for (const line of shelf.lines) {
      const row = rowOf(line, targets);
      for (const piece of row.pieces) {
        if (piece.node !== node) continue;
        const mark: Mark = {
          kind: 'text',
          x: left + line.x + piece.dx,
          baseline: y + row.baseline,
          line: piece.line,
        };
        easel.content(node, [mark]);
      }
      y += line.height;
    }
  };
  const first = Math.min(slide.notes ?? 0, slide.shelf.length);
  return {
    notes: () => first > 0 && paint(0),
    basis: () => first < slide.shelf.length && paint(1),
  };
}

/** The slide's number at the end of the shelf. */
export function paintNumber(slide: Slide, frame: Frame, easel: Easel): void {
  const box = frame.box('number');
  const inlines = [{ text: String(slide.number), strong: true }];
  const words = easel.set(inlines, easel.types.small, box.width, { align: 'end' });
  const x = easel.left(box.x, box.width);
  const y = box.y + (box.height - words.height) / 2;
  easel.backdrop(words.lines.map((line): Mark => ({ kind: 'text', x, baseline: y + line.baseline, line })));
}

/** While a Stop stands, every slide says so, above its title at the stage's end. */
export function paintDraft(draft: string, frame: Frame, easel: Easel): void {
  const { draft: type } = easel.types;
  const stage = frame.box('title');
  const look = { color: easel.palette.paper, align: 'center' } as const;
  const { width } = easel.set([{ text: draft }], type, stage.width);
  const box = {
    x: stage.x + stage.width - width - 2 * TAB,
    y: 0,
    width: width + 2 * TAB,
    height: type.leading,
  };
  const words = easel.set([{ text: draft }], type, box.width, look);
  const x = easel.left(box.x, box.width);
  easel.backdrop([
    easel.rect(box, { fill: easel.palette.ink }),
    ...words.lines.map((line): Mark => ({ kind: 'text', x, baseline: line.baseline, line })),
  ]);
}

/** Room at both sides of the words in the tab. */
const TAB = 16;
