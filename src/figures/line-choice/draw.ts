import type { Problem } from '../../diagnostics/index.js';
import { letterDot } from '../disc.js';
import { mm, type Point } from '../geometry.js';
import type { Drawn, DrawOptions } from '../options.js';
import type { Pen } from '../pen.js';
import { figureProblem } from '../problems.js';
import { createSheet, finish, outside } from '../sheet.js';
import type { LineChoice } from '../spec.js';
import { createStage } from '../stage.js';
import { paperLines, type Role, screenLines, screenType } from '../tokens.js';

interface Look {
  readonly pen: Pen;
  readonly axis: number;
  readonly high: number;
  readonly fixed?: number;
  readonly between: number;
  readonly radius: number;
  readonly letter: number;
  readonly words: Role;
  readonly verdict: Role;
  readonly lines: { readonly today: number; readonly line: number; readonly guide: number };
  readonly dots: readonly number[];
  readonly dash: readonly number[];
  /** No words under the lines: the slide's shelf says what they are. */
  readonly bare: boolean;
}

/** Lines side by side below the line of today, lettered, without any number. */
export function drawLineChoice(spec: LineChoice, options: DrawOptions): Drawn {
  const look = options.medium === 'paper' ? lookOnPaper(options) : lookOnScreen(options);
  const { pen, words } = look;
  const problems: Problem[] = [];
  const inside = (share: number) => share >= -1e-9 && share <= 1 + 1e-9;
  if (
    spec.lines.some(
      ({ points }) => points.length < 2 || !points.every((p) => inside(p.along) && inside(p.down)),
    )
  ) {
    problems.push(
      figureProblem('figures/not-drawable', `In figure “${spec.id}”, a line leaves its place.`, {
        hint: 'Its points are shares from 0 to 1.',
      }),
    );
    return finish(pen, spec.id, look.fixed ?? 0, problems);
  }
  const each =
    (pen.width - look.axis - look.between * (spec.lines.length - 1)) / Math.max(1, spec.lines.length);
  const top = 2 * look.radius + look.words.size * 0.8;
  let foot = top + look.high;
  for (const [index, line] of spec.lines.entries()) {
    const x = look.axis + index * (each + look.between);
    const end = drawLine(line, spec.words, { x, top, each }, look, (said) =>
      problems.push(outside(spec.id, said)),
    );
    foot = Math.max(foot, end);
  }
  if (look.bare) return finish(pen, spec.id, look.fixed ?? foot, problems);
  const said = pen.paragraph(spec.words.warning, { ...words, weight: 600 }, pen.width - look.axis);
  if (said.overflow) problems.push(outside(spec.id, spec.words.warning));
  pen.putParagraph(said, look.axis, pen.width - look.axis, foot + words.size * 1.6, words.size * 1.3);
  return finish(pen, spec.id, foot + words.size * (0.7 + 1.3 * said.lines.length), problems);
}

function drawLine(
  { letter, points, verdict }: LineChoice['lines'][number],
  { from, to }: LineChoice['words'],
  { x, top, each }: { readonly x: number; readonly top: number; readonly each: number },
  look: Look,
  reject: (words: string) => void,
): number {
  const { pen, lines, radius, words } = look;
  const { palette } = pen;
  const real = verdict?.real === true;
  letterDot(pen, {
    x: x + radius,
    y: radius + 1,
    radius,
    letter,
    size: look.letter,
    fill: real ? palette.accent : palette.paper,
    edge: { edge: real ? palette.accent : palette.ink, width: lines.today },
  });
  if (verdict) {
    const said = pen.set(verdict.words, { ...look.verdict, color: real ? palette.accent : palette.ink });
    if (2 * radius + look.verdict.size * 0.5 + said.width > each) reject(verdict.words);
    pen.put(said, x + 2 * radius + look.verdict.size * 0.5, radius + 1 + look.verdict.size * 0.34);
  }
  pen.line(x, top, x + each, top, { edge: palette.ink, width: lines.today });
  const foot = top + look.high;
  pen.line(x, foot, x + each, foot, {
    edge: palette.hair,
    width: lines.guide,
    dash: look.dots,
    cap: 'round',
  });
  const inset = lines.line;
  const placed = points.map(
    (p): Point => [x + inset + p.along * (each - 2 * inset), top + p.down * look.high],
  );
  const untrue = verdict !== undefined && !real;
  pen.poly(placed, {
    edge: real ? palette.accent : palette.ink,
    width: untrue ? lines.line * 0.6 : lines.line,
    cap: 'round',
    ...(untrue ? { dash: look.dash } : {}),
  });
  const baseline = foot + words.size * 1.15;
  const [start, end] = [pen.set(from, words), pen.set(to, words)];
  if (start.width + end.width + words.size > each) reject(`${from} ${to}`);
  pen.put(start, x, baseline);
  pen.put(end, x + each, baseline, 'end');
  return baseline + words.size * 0.3;
}

function lookOnPaper(options: DrawOptions): Look {
  const sheet = createSheet(options);
  const { pen, type, big, slack } = sheet;
  return {
    pen,
    axis: sheet.rail ? sheet.axis : 0,
    high: big ? slack(30, 36) : slack(24, 30),
    between: mm(big ? 7 : 9),
    radius: mm(big ? 3.9 : 3.1),
    letter: big ? 15 : 12,
    words: { ...type.note, size: Math.max(type.note.size, 9.5) },
    verdict: { ...type.label, weight: 700 },
    lines: { today: paperLines.firm, line: 2.6, guide: paperLines.hair },
    dots: [mm(0.3), mm(1.5)],
    dash: [mm(2.4), mm(1.4)],
    bare: false,
  };
}

function lookOnScreen(options: DrawOptions): Look {
  const { pen, height } = createStage(options);
  const words = screenType.note;
  const radius = 32;
  return {
    pen,
    axis: 0,
    fixed: height,
    high: height - 2 * radius - words.size * 0.8 - words.size * 1.7,
    between: 50,
    radius,
    letter: 42,
    words,
    verdict: { size: 40, weight: 800 },
    lines: { today: screenLines.disc, line: screenLines.frame, guide: screenLines.track },
    dots: [2, 10],
    dash: [14, 12],
    bare: true,
  };
}
