import type { SourceLine } from '../../document/index.js';
import { BREAK, type Desk, type PaperBox } from '../desk.js';
import { paintText } from '../rows.js';
import { mm, SPACE } from '../tokens.js';
import { paintRule, RULE_AND_SPACE } from './section.js';

const LABEL_GAP = mm(1.2);
/** More would make a box taller than a page can leave free; long lists go on in further boxes. */
const AT_ONCE = 12;

/** The numbered sources, in two columns of about the same height, read down one and then the other. */
export function sourcesBoxes(desk: Desk, before: number): PaperBox[] {
  const { tree, set, type, pen, grid, sheet } = desk;
  if (sheet.sources.length === 0) return [];
  const section = tree.add(tree.root, 'Sect');
  const head = set.words(tree.add(section, 'H2'), sheet.words.sources, {
    width: grid.rail,
    role: type.sourcesHead,
    balance: true,
  });
  const list = tree.add(section, 'L', { numbering: 'Decimal' });
  const width = (grid.column - SPACE.columnGap) / 2;
  const indent =
    Math.max(...sheet.sources.map((s) => set.measure([{ text: `${s.number}.` }], type.sources))) + LABEL_GAP;
  const lay = (source: SourceLine) => {
    const item = tree.add(list, 'LI');
    const label = set.words(tree.add(item, 'Lbl'), `${source.number}.`, {
      width: indent,
      role: type.sources,
    });
    const body = tree.add(item, 'LBody');
    // A source keeps its own language and, isolated, its own direction.
    const text = pen.direction === 'rtl' ? `\u2068${source.words}\u2069` : source.words;
    const inline = { text, ...(source.href ? { href: source.href } : {}) };
    return { label, text: set.inlines(body, [inline], { width: width - indent, role: type.sources }) };
  };
  const boxes: PaperBox[] = [];
  for (let from = 0; from < sheet.sources.length; from += AT_ONCE) {
    const entries = sheet.sources.slice(from, from + AT_ONCE).map(lay);
    const split = evenSplit(entries.map((e) => e.text.height));
    const columns = [entries.slice(0, split), entries.slice(split)];
    const height = Math.max(...columns.map((c) => c.reduce((sum, e) => sum + e.text.height, 0)));
    const opens = from === 0;
    const lead = opens ? RULE_AND_SPACE : 0;
    boxes.push({
      height: lead + (opens ? Math.max(height, head.height) : height),
      before: opens ? before : 0,
      keep: false,
      cost: opens ? BREAK.section : BREAK.item,
      railFrom: 0,
      ...(opens ? { opens } : {}),
      paint(page, top) {
        if (opens) {
          paintRule(desk, page, top);
          // Head and first line stand on one baseline.
          const drop = (entries[0]?.text.rows[0]?.baseline ?? 0) - (head.rows[0]?.baseline ?? 0);
          paintText(page, pen, head, grid.side, top + lead + Math.max(0, drop));
        }
        columns.forEach((column, index) => {
          const x = grid.axis + index * (width + SPACE.columnGap);
          let y = top + lead;
          for (const entry of column) {
            paintText(page, pen, entry.label, x, y);
            y = paintText(page, pen, entry.text, x + indent, y);
          }
        });
      },
    });
  }
  return boxes;
}

/** After how many of the heights the first column ends, so that the higher column is as low as can be; the first has more. */
export function evenSplit(heights: readonly number[]): number {
  let best = heights.length;
  let least = Number.POSITIVE_INFINITY;
  for (let split = 1; split <= heights.length; split += 1) {
    const first = heights.slice(0, split).reduce((a, b) => a + b, 0);
    const second = heights.slice(split).reduce((a, b) => a + b, 0);
    if (Math.max(first, second) <= least + 0.01) {
      least = Math.max(first, second);
      best = split;
    }
  }
  return best;
}
