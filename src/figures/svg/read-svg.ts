import { createReport, type Problem } from '../../diagnostics/index.js';
import type { Mark, Matrix } from '../drawing.js';
import { marksBox } from '../marks-box.js';
import { figureProblem } from '../problems.js';
import { rectPath } from '../shapes.js';
import { createReader, placed, TooMuch, type ViewBox, viewBoxOf } from './reader.js';
import { readTree } from './tree.js';

/** A picture as marks in a box whose upper left corner is at 0, 0. */
export interface VectorPicture {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}

export interface ReadSvg {
  /** Missing when the picture is refused. */
  readonly picture: VectorPicture | undefined;
  readonly problems: readonly Problem[];
}

/**
 * Reads the text of an SVG file into marks: shapes, groups, transforms, colors, opacity, gradients,
 * clips and `use`. Nothing from outside the file is read. What a picture must not hold (scripts,
 * links, text, filters …) is refused with a problem at its place in `file`; nothing is thrown. The
 * size is that of the view box, or of `width` and `height` where there is none.
 */
export function readSvg(text: string, file?: string): ReadSvg {
  const tree = readTree(text, file);
  if (!tree.root) return { picture: undefined, problems: tree.problems };
  const report = createReport();
  const root = tree.root;
  const refused = (message: string, hint: string) => {
    report.add(figureProblem('figures/svg-broken', message, { hint, ...placed(root) }));
    return { picture: undefined, problems: report.problems };
  };
  const box = viewBoxOf(root);
  if (!box) return refused('The picture does not say how large it is.', 'Give it a `viewBox`.');
  try {
    const marks = createReader(root, report.add)(box);
    if (marks.length === 0)
      return refused('The picture holds nothing to draw.', 'Look whether all is hidden.');
    const broken = report.problems.some((p) => p.severity === 'stop');
    return {
      picture: broken ? undefined : { width: box.width, height: box.height, marks: inBox(marks, box) },
      problems: report.problems,
    };
  } catch (error) {
    if (!(error instanceof TooMuch)) throw error;
    report.add(
      figureProblem('figures/svg-too-large', error.message, {
        hint: 'Simplify the picture in a drawing program.',
        ...placed(root),
      }),
    );
    return { picture: undefined, problems: report.problems };
  }
}

/** Moves the view box to 0, 0 and cuts off what sticks out of it, as a viewer does. */
function inBox(marks: readonly Mark[], box: ViewBox): readonly Mark[] {
  const all = marksBox(marks);
  const { x, y, width, height } = box;
  const inside =
    !all || (all.left >= x && all.top >= y && all.right <= x + width && all.bottom <= y + height);
  if (inside && x === 0 && y === 0) return marks;
  const move: { at?: Matrix } = x === 0 && y === 0 ? {} : { at: [1, 0, 0, 1, -x, -y] };
  return [{ kind: 'group', ...move, ...(inside ? {} : { clip: rectPath(x, y, width, height) }), marks }];
}
