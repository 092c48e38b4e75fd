import { createReport, type Problem } from '../diagnostics/index.js';
import { noGlyph } from '../text/index.js';
import { mm, overlap } from './geometry.js';
import type { Drawn, DrawOptions } from './options.js';
import { createPen, type Pen } from './pen.js';
import { figureProblem } from './problems.js';
import { textBoxes } from './text-boxes.js';
import { AXIS, type FigureType, paperType } from './tokens.js';

/** What drawing a figure on paper starts from. */
export interface Sheet {
  readonly pen: Pen;
  readonly type: FigureType;
  readonly axis: number;
  /** Row names stand in the rail at the start edge; without one they stand above their rows. */
  readonly rail: boolean;
  /** `short` and large print: bigger dots, more room. */
  readonly big: boolean;
  /** Black only. */
  readonly one: boolean;
  /** A length between its tight and its airy value. */
  readonly slack: (tight: number, airy: number) => number;
}

export function createSheet(options: DrawOptions): Sheet {
  const axis = options.axis ?? (options.level === 'large' ? 0 : AXIS);
  const share = Math.min(1, Math.max(0, options.slack ?? 1));
  return {
    pen: createPen(options),
    type: paperType[options.level],
    axis,
    rail: axis > 0,
    big: options.level === 'short' || options.level === 'large',
    one: options.ink === 'one',
    slack: (tight, airy) => mm(tight + (airy - tight) * share),
  };
}

const quote = (words: string) => `“${words}”`;
/** Letters may touch by so much before it counts; a tenth of a millimeter, or half a pixel. */
const SLIGHT = 0.3;

/**
 * The finished drawing with what is wrong in it: words on words, words on dots or bricks, words
 * outside, letters without a drawing. `id` names the figure to the author.
 */
export function finish(pen: Pen, id: string, least: number, found: readonly Problem[]): Drawn {
  const report = createReport();
  found.forEach(report.add);
  // What was already found too high lies on each other as a matter of course.
  const crowded = found.some((p) => p.code === 'figures/too-high');
  const boxes = textBoxes(pen.marks);
  // On paper a figure is as high as it must be: letters with deep tails make it higher.
  const height = pen.fixed ? least : boxes.reduce((y, { box }) => Math.max(y, box.bottom + 0.5), least);
  for (const [i, { box, words }] of crowded ? [] : boxes.entries()) {
    if (box.left < -1 || box.right > pen.width + 1 || box.top < -1 || box.bottom > height + 1)
      report.add(outside(id, words));
    for (const other of boxes.slice(i + 1))
      if (overlap(box, other.box) > SLIGHT)
        report.add(
          collide(id, `${quote(words)} and ${quote(other.words)} lie on each other`, [words, other.words]),
        );
    for (const { box: place, what } of pen.taken) {
      const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
      // The letter in a dot is inside of it.
      const within = x > place.left && x < place.right && y > place.top && y < place.bottom;
      const own = within && what === words;
      if (!own && overlap(box, place) > SLIGHT)
        report.add(collide(id, `${quote(words)} lies on ${what.length > 2 ? what : `dot ${what}`}`, [words]));
    }
  }
  const lost = noGlyph(
    pen.missing.filter((m, i) => pen.missing.findIndex((o) => o.codePoint === m.codePoint) === i),
  );
  if (lost) report.add(lost);
  return { drawing: { width: pen.width, height, marks: [...pen.marks] }, problems: report.problems };
}

export function outside(id: string, words: string): Problem {
  return figureProblem('figures/does-not-fit', `In figure “${id}”, ${quote(words)} does not fit.`, {
    hint: 'Shorten these words, or show fewer rows or measures.',
    actual: words,
  });
}

export function collide(id: string, what: string, words: readonly string[]): Problem {
  return figureProblem('figures/labels-collide', `In figure “${id}”, ${what}.`, {
    hint: 'Shorten these words, or show fewer rows or measures.',
    actual: words.join(' | '),
  });
}
