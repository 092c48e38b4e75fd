import type { CautionHeading, CautionLine, Inline } from '../../document/index.js';
import { BREAK, type Desk, type PaperBox } from '../desk.js';
import { addArtifact, type PageDraft } from '../pen.js';
import { paintText, type SetText } from '../rows.js';
import { createTree } from '../structure.js';
import { mm, SPACE } from '../tokens.js';

/** Width of the ink bar at the start: the graver, the wider. */
const BARS: Readonly<Record<CautionHeading, number>> = {
  'Ask first': mm(3.2),
  'Every time': mm(4.3),
  Stop: mm(5.4),
};
const ORDER: readonly CautionHeading[] = ['Stop', 'Every time', 'Ask first'];

const PAD_TOP = mm(2.2);
const PAD_BOTTOM = mm(2.6);
const PAD_END = mm(4);
const TAB = { top: mm(0.9), bottom: mm(1), start: mm(2), end: mm(3) } as const;
const WHO_SPACE = mm(1.6);
/** Paper that shows below the tab of a panel with one short line. */
const BELOW_TAB = mm(1.4);
/** Between the block and the lines for everybody. */
const FOOT_SPACE = mm(2.2);

/**
 * The caution block: a box for each word, stacked without a gap, each a section of its own with the
 * word as its heading. It is one box of the flow, so no page break can part it, and nothing about it
 * depends on how much room is left.
 */
export function cautionBoxes(desk: Desk, before: number): PaperBox[] {
  const groups = ORDER.map((heading) =>
    desk.sheet.cautions.lines.filter((line) => line.heading === heading),
  ).filter((lines) => lines.length > 0);
  // The leader's page prints the fullest wordings: no page holds them all, so lines stand one by one.
  if (desk.sheet.kind === 'staff')
    return [
      ...groups.flatMap((lines, i) => lineBoxes(desk, lines, i === 0 ? before : PAD_BOTTOM)),
      ...footBoxes(desk),
    ];
  const panels = groups.map((lines) => layPanel(desk, lines));
  const foot = footBoxes(desk);
  if (panels.length === 0) return foot;
  const overlap = desk.pen.strokes.line;
  const height = panels.reduce((sum, panel) => sum + panel.height, 0) - (panels.length - 1) * overlap;
  return [
    {
      height,
      before,
      keep: foot.length > 0 ? 'wish' : false,
      cost: BREAK.section,
      railFrom: 0,
      paint(page, top) {
        let y = top;
        for (const panel of panels) {
          panel.paint(page, y);
          // Stacked boxes share their line.
          y += panel.height - overlap;
        }
      },
    },
    ...foot,
  ];
}

function layPanel(desk: Desk, lines: readonly CautionLine[]) {
  const { tree, set, type, pen, grid, sheet } = desk;
  const { colors, strokes } = pen;
  const first = lines[0];
  const heading = first?.heading ?? 'Ask first';
  const bar = BARS[heading];
  const section = tree.add(tree.root, 'Sect', { title: first?.word ?? heading });
  const word = set.words(tree.add(section, 'H2'), first?.word ?? heading, {
    width: grid.rail - bar - TAB.start - TAB.end,
    role: type.cautionWord,
    color: colors.paper,
  });
  const who =
    heading === 'Ask first' && sheet.cautions.whoToAsk !== ''
      ? set.words(tree.add(section, 'P'), sheet.cautions.whoToAsk, {
          width: grid.rail - bar - TAB.start,
          role: type.whoToAsk,
        })
      : undefined;
  const list = tree.add(section, 'L', { numbering: 'None' });
  const texts = lines.map((line): SetText => {
    const body = tree.add(tree.add(list, 'LI'), 'LBody');
    return set.inlines(body, line.inlines, { width: grid.column - PAD_END, role: type.caution });
  });
  const tab = TAB.top + word.height + TAB.bottom;
  const words =
    texts.reduce((sum, text) => sum + text.height, 0) + (texts.length - 1) * SPACE.betweenCautions;
  const rail = tab + (who ? WHO_SPACE + who.height : BELOW_TAB);
  const height = Math.max(PAD_TOP + words, rail) + PAD_BOTTOM;

  return {
    height,
    paint(page: PageDraft, top: number) {
      const half = strokes.line / 2;
      const frame = pen.rect(
        grid.side + half,
        top + half,
        grid.measure - strokes.line,
        height - strokes.line,
        {
          fill: colors.paper,
          stroke: { color: colors.ink, width: strokes.line },
        },
      );
      const solid = { fill: colors.ink };
      addArtifact(page, 'background', [
        frame,
        pen.rect(grid.side, top, bar, height, solid),
        // Bar and tab are one corner: they overlap, so that no seam shows between them.
        pen.rect(grid.side, top, bar + TAB.start + word.width + TAB.end, tab, solid),
      ]);
      const x = grid.side + bar + TAB.start;
      paintText(page, pen, word, x, top + TAB.top);
      if (who) paintText(page, pen, who, x, top + tab + WHO_SPACE);
      let y = top + PAD_TOP;
      for (const text of texts) y = paintText(page, pen, text, grid.axis, y) + SPACE.betweenCautions;
    },
  };
}

/** Lines of one word, each whole on its page: the bar runs beside them, the word stands at the first. */
function lineBoxes(desk: Desk, lines: readonly CautionLine[], before: number): PaperBox[] {
  const { tree, set, type, pen, grid } = desk;
  const first = lines[0];
  const heading = first?.heading ?? 'Ask first';
  const bar = BARS[heading];
  const section = tree.add(tree.root, 'Sect', { title: first?.word ?? heading });
  const solid = { fill: pen.colors.ink };
  const word = set.words(tree.add(section, 'H2'), first?.word ?? heading, {
    width: grid.rail - bar - TAB.start - TAB.end,
    role: type.cautionWord,
    color: pen.colors.paper,
  });
  const list = tree.add(section, 'L', { numbering: 'None' });
  return lines.map((line, index): PaperBox => {
    const body = tree.add(tree.add(list, 'LI'), 'LBody');
    const text = set.inlines(body, line.inlines, { width: grid.column, role: type.caution });
    const tab = TAB.top + word.height + TAB.bottom;
    const height = Math.max(text.height, index === 0 ? tab : 0) + SPACE.betweenCautions;
    return {
      height,
      before: index === 0 ? before : 0,
      keep: index === 0 && lines.length > 1 ? 'must' : false,
      cost: BREAK.item,
      railFrom: 0,
      paint(page, top) {
        const marks = [pen.rect(grid.side, top, bar, height, solid)];
        if (index === 0)
          marks.push(pen.rect(grid.side, top, bar + TAB.start + word.width + TAB.end, tab, solid));
        addArtifact(page, 'background', marks);
        if (index === 0) paintText(page, pen, word, grid.side + bar + TAB.start, top + TAB.top);
        paintText(page, pen, text, grid.axis, top);
      },
    };
  });
}

/** More lines than these stand in two runs, so that a page that has room for some of them takes those. */
const MOST_FOOT_LINES = 8;

/** The lines for everybody run on. Each sentence stays whole on its page. */
function footBoxes(desk: Desk): PaperBox[] {
  const inlines = desk.sheet.cautions.standing?.inlines ?? [];
  if (inlines.length === 0) return [];
  const { set, type, grid } = desk;
  // Set once on a tree of its own, only to count the lines.
  const probe = createTree();
  const whole = set.inlines(probe.add(probe.root, 'P'), inlines, { width: grid.measure, role: type.caution });
  if (whole.rows.length <= MOST_FOOT_LINES) return [footBox(desk, inlines, FOOT_SPACE)];
  const [first, second] = halves(inlines);
  return [footBox(desk, first, FOOT_SPACE), footBox(desk, second, 0)];
}

/** Sentences in two runs of about the same length; a blank stands between any two of them. */
function halves(inlines: readonly Inline[]): readonly [readonly Inline[], readonly Inline[]] {
  const total = inlines.reduce((sum, { text }) => sum + text.length, 0);
  let so = 0;
  const at = inlines.findIndex(({ text }) => {
    so += text.length;
    return text === ' ' && so >= total / 2;
  });
  return at < 0 ? [inlines, []] : [inlines.slice(0, at), inlines.slice(at + 1)];
}

/** The lines for everybody, under the block and over the whole measure, in the same type. */
function footBox(desk: Desk, inlines: readonly Inline[], before: number): PaperBox {
  const { tree, set, type, pen, grid } = desk;
  const text = set.inlines(tree.add(tree.root, 'P'), inlines, { width: grid.measure, role: type.caution });
  return {
    height: text.height,
    before,
    keep: false,
    cost: BREAK.section,
    railFrom: 0,
    paint(page, top) {
      paintText(page, pen, text, grid.side, top);
    },
  };
}
