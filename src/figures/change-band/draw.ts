import type { Problem } from '../../diagnostics/index.js';
import type { Drawn, DrawOptions } from '../options.js';
import { figureProblem } from '../problems.js';
import { createSheet, finish, outside } from '../sheet.js';
import type { ChangeBand } from '../spec.js';
import { createStage } from '../stage.js';
import { CAP_HEIGHT } from '../tokens.js';
import { type BandLook, onPaper, onScreen } from './look.js';
import { createPlot, type Plot } from './plot.js';
import { putRanges } from './ranges.js';

/** A band below the line of today: what may change, never a line, never a goal. */
export function drawChangeBand(spec: ChangeBand, options: DrawOptions): Drawn {
  const look = options.medium === 'paper' ? onPaper(createSheet(options)) : onScreen(createStage(options));
  const { pen } = look;
  const problems: Problem[] = [];
  const reject = (words: string) => void problems.push(outside(spec.id, words));
  if (!drawable(spec)) {
    problems.push(
      figureProblem(
        'figures/not-drawable',
        `In figure “${spec.id}”, the band has no places to be drawn at.`,
        {
          hint: 'Months and ends are numbers from zero up, and the least is never above the most.',
        },
      ),
    );
    return finish(pen, spec.id, look.fixed ?? 0, problems);
  }
  const plot = createPlot(spec, look);
  drawGuides(spec, look, plot, reject);
  drawBand(spec, look, plot);
  drawMonths(spec, look, plot);
  drawPosts(spec, look, plot);
  putRanges(spec, look, plot, reject);
  return finish(pen, spec.id, look.fixed ?? plot.foot + keyOf(spec, look, plot, reject), problems);
}

function drawable({ points, posts, marks, months }: ChangeBand): boolean {
  const sound = (value: number) => Number.isFinite(value) && value >= 0;
  const all = [...points, ...posts];
  return (
    months > 0 &&
    points.length > 1 &&
    marks.length > 0 &&
    marks.every(({ at }) => sound(at)) &&
    all.every((p) => sound(p.month) && sound(p.least) && sound(p.most) && p.least <= p.most + 1e-9)
  );
}

/** The line of today on top, dotted guides below it with their words before the axis. */
function drawGuides(
  spec: ChangeBand,
  { pen, type, lines, gap, guide }: BandLook,
  plot: Plot,
  reject: (words: string) => void,
) {
  const { palette } = pen;
  const word = (words: string, y: number, weight: 400 | 700 | 500) => {
    if (words === '') return;
    const said = pen.set(words, { ...type.mark, weight });
    if (said.width > plot.axis - gap) reject(words);
    pen.put(said, plot.axis - gap, y + (type.mark.size * CAP_HEIGHT) / 2, 'end');
  };
  for (const { at, words } of spec.marks) {
    const y = plot.y(at);
    pen.line(plot.axis, y, plot.right, y, {
      edge: palette.hair,
      width: lines.guide,
      dash: guide,
      cap: 'round',
    });
    word(words, y, type.mark.weight as 400 | 500);
  }
  word(spec.today, plot.top, 700);
  pen.line(plot.axis, plot.top, plot.right, plot.top, { edge: palette.ink, width: lines.today });
}

function drawBand({ points, between }: ChangeBand, { pen, lines, far }: BandLook, plot: Plot): void {
  const { palette } = pen;
  const upper = points.map((p) => [plot.x(p.month), plot.y(p.least)] as const);
  const lower = points.map((p) => [plot.x(p.month), plot.y(p.most)] as const);
  const outline = [...upper, ...lower.toReversed()];
  pen.poly(outline, { fill: palette.ground }, true);
  pen.hatchInside(outline);
  for (const edge of [upper, lower]) pen.poly(edge, { edge: palette.ink, width: lines.edge });
  if (between)
    for (const at of [between.low, between.high])
      pen.line(plot.axis, plot.y(at), plot.right, plot.y(at), {
        edge: palette.ink,
        width: lines.tick,
        dash: far,
      });
}

function drawMonths(
  { ticks }: ChangeBand,
  { pen, type, lines, tick, monthsOnTop }: BandLook,
  plot: Plot,
): void {
  const y = monthsOnTop ? plot.top : plot.foot;
  if (!monthsOnTop) pen.line(plot.axis, y, plot.right, y, { width: lines.tick });
  for (const { month, words } of ticks) {
    const x = plot.x(month);
    pen.line(x, y, x, monthsOnTop ? y - tick : y + tick, { width: lines.tick });
    const said = pen.set(words, type.month);
    const baseline = monthsOnTop ? y - tick - type.month.size * 0.3 : y + tick + type.month.size * 0.95;
    const start = Math.max(plot.axis, Math.min(x - said.width / 2, plot.right - said.width));
    pen.put(said, start, baseline);
  }
}

function drawPosts({ posts, stop }: ChangeBand, look: BandLook, plot: Plot): void {
  const { pen, lines, ring, accentPosts } = look;
  const { palette } = pen;
  for (const [index, post] of posts.entries()) {
    const [x, from, to] = [plot.x(post.month), plot.y(post.least), plot.y(post.most)];
    if (stop && index === posts.length - 1) {
      const [over, cap] = [ring * 2.2, ring * 1.7];
      pen.line(x, from - over, x, to + over, { edge: palette.accent, width: lines.stop });
      for (const y of [from - over, to + over])
        pen.line(x - cap, y, x + cap, y, { edge: palette.accent, width: lines.post });
      continue;
    }
    pen.line(x, from, x, to, { edge: accentPosts ? palette.accent : palette.ink, width: lines.post });
    for (const y of [from, to])
      pen.circle(x, y, ring, { fill: palette.paper, edge: palette.ink, width: lines.tick });
  }
}

/** Below the plot: what lies between the dashed lines. Gives the height that it and the months take. */
function keyOf(
  { between }: ChangeBand,
  { pen, type, gap, tick, far, lines }: BandLook,
  plot: Plot,
  reject: (words: string) => void,
): number {
  const months = tick + type.month.size * 1.3;
  if (!between) return months;
  const size = type.note.size;
  const wide = size * 2.4;
  const said = pen.set(between.words, type.note);
  if (plot.axis + wide + gap + said.width > pen.width) reject(between.words);
  const baseline = plot.foot + months + size * 1.2;
  const middle = baseline - (size * CAP_HEIGHT) / 2;
  for (const y of [middle - size * 0.3, middle + size * 0.3])
    pen.line(plot.axis, y, plot.axis + wide, y, { width: lines.tick, dash: far });
  pen.put(said, plot.axis + wide + gap, baseline);
  return months + size * 1.5;
}
