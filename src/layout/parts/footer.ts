import type { MixedLine, Stamp } from '../../document/index.js';
import { direction } from '../../languages/index.js';
import type { Desk } from '../desk.js';
import { addArtifact, type PageDraft } from '../pen.js';
import { paintRow, type Row } from '../rows.js';
import type { Draft } from '../structure.js';
import { mm } from '../tokens.js';
import type { TypeRole } from '../type.js';

const LINES_TO_RULE = mm(1.2);
const RULE_TO_STAMP = mm(1.2);
const LEAST_GAP = mm(2.4);
const STAMP_GAP = mm(4);

/** The foot of every page: interpreter line, rule, stamp. Its height is the same on all pages. */
export interface Footer {
  readonly height: number;
  /** `spoken` marks the one page whose foot is read aloud; on the others it repeats and is passed over. */
  paint(page: PageDraft, number: number, count: number, spoken: boolean): void;
}

export function layFooter(desk: Desk, parent: Draft): Footer {
  const { pen, grid, sheet } = desk;
  const tongues = sheet.interpreter ? layTongues(desk, sheet.interpreter, parent) : undefined;
  const stamp = layStamp(desk, sheet.stamp, parent);
  const rule = pen.strokes.hair;
  const above = tongues ? tongues.height + LINES_TO_RULE : 0;
  const height = above + rule + RULE_TO_STAMP + stamp.height;
  return {
    height,
    paint(page, number, count, spoken) {
      const top = grid.height - grid.safe - height;
      const from = page.items.length;
      tongues?.paint(page, top);
      stamp.paint(page, top + above + rule + RULE_TO_STAMP);
      if (!spoken) silence(page, from);
      addArtifact(page, 'pagination', [
        pen.rect(grid.side, top + above, grid.measure, rule, { fill: pen.colors.ink }),
      ]);
      const silent = page.items.length;
      stamp.paintNumber(page, top + above + rule + RULE_TO_STAMP, number, count);
      silence(page, silent);
    },
  };
}

/** Turns what was painted since `from` into artifacts. */
function silence(page: PageDraft, from: number): void {
  for (let i = from; i < page.items.length; i += 1) {
    const item = page.items[i];
    if (item?.kind === 'content') page.items[i] = { kind: 'artifact', of: 'pagination', marks: item.marks };
  }
}

/** Words in several languages, spread over the measure, each in its own font and direction. */
function layTongues(desk: Desk, line: MixedLine, parent: Draft) {
  const { tree, set, grid, pen, type, sheet } = desk;
  const node = tree.add(parent, 'P');
  const lay = (size: number) =>
    line.parts.map((part) => {
      const own = part.language === sheet.language;
      // Arabic dots vanish first on a copy, so Arabic stands larger among Latin letters.
      const taller = direction(part.language) === 'rtl' && sheet.direction === 'ltr' ? 1.5 : 0;
      return {
        own,
        part,
        role: {
          ...type.interpreter,
          size: size + taller,
          weight: part.strong ? 600 : 400,
        } satisfies TypeRole,
      };
    });
  const widthOf = (parts: ReturnType<typeof lay>) =>
    parts.map(({ part, role }) => set.measure([{ text: part.text, language: part.language }], role));
  const full = lay(type.interpreter.size);
  const room = (widths: readonly number[]) =>
    widths.reduce((a, b) => a + b, 0) + LEAST_GAP * (widths.length - 1) <= grid.measure;
  const parts = room(widthOf(full)) ? full : lay(type.interpreter.size - 0.5);
  const set1 = parts.map(({ part, role, own }) => {
    const span = tree.add(node, 'Span', own ? {} : { language: part.language });
    return set.words(span, part.text, {
      width: 1e6,
      role,
      language: part.language,
      direction: direction(part.language),
    }).rows[0];
  });
  const rows = lines(
    set1.filter((row) => row !== undefined),
    grid.measure,
  );
  const { leading } = type.interpreter;
  return {
    height: rows.length * leading,
    paint(page: PageDraft, top: number) {
      rows.forEach((row, index) => {
        const words = row.reduce((sum, r) => sum + r.width, 0);
        const spread =
          rows.length === 1 && row.length > 1 ? (grid.measure - words) / (row.length - 1) : LEAST_GAP;
        let x = grid.side;
        for (const piece of row) {
          // All languages of the line stand on one baseline.
          const baseline = top + index * leading + 0.75 * leading;
          paintRow(page, pen, piece, x, baseline - piece.baseline);
          x += piece.width + spread;
        }
      });
    },
  };
}

function lines(pieces: readonly Row[], width: number): Row[][] {
  const rows: Row[][] = [];
  let filled = 0;
  for (const piece of pieces) {
    const row = rows.at(-1);
    if (row && filled + LEAST_GAP + piece.width <= width) {
      row.push(piece);
      filled += LEAST_GAP + piece.width;
    } else {
      rows.push([piece]);
      filled = piece.width;
    }
  }
  return rows;
}

/** Version at the start, data date and review in the middle, page at the end. A date is never broken. */
function layStamp(desk: Desk, stamp: Stamp, parent: Draft) {
  const { tree, set, grid, pen, type } = desk;
  const { colors } = pen;
  const strong = { ...type.stamp, weight: 600 } as const;
  const version = set.words(tree.add(parent, 'P'), stamp.version, { width: 1e6, role: strong });
  const pageNode = tree.add(parent, 'P');
  const pageText = (number: number, count: number) =>
    stamp.page.replaceAll('{page}', String(number)).replaceAll('{pages}', String(count));
  const pageWidth = set.measure([{ text: pageText(88, 88) }], strong);
  const room = grid.measure - version.width - pageWidth - 2 * STAMP_GAP;
  const middle = tree.add(parent, 'P');
  const texts = middleLines(desk, stamp, room).map((text) =>
    set.words(middle, text, {
      width: room,
      role: type.stamp,
      color: stamp.expired ? colors.paper : colors.ink,
    }),
  );
  // The page's number is an artifact: its element stays out of the tree.
  parent.children.splice(parent.children.indexOf(pageNode), 1);
  const height = Math.max(
    type.stamp.leading,
    texts.reduce((sum, text) => sum + text.height, 0),
  );
  return {
    height,
    paint(page: PageDraft, top: number) {
      for (const row of version.rows) paintRow(page, pen, row, grid.side, top);
      const rows = texts.flatMap((text) => text.rows);
      const only = rows.length === 1 ? rows[0] : undefined;
      const start = grid.side + version.width + STAMP_GAP + (only ? (room - only.width) / 2 : 0);
      rows.forEach((row, index) => {
        const y = top + index * type.stamp.leading;
        if (stamp.expired) {
          const ground = pen.rect(start - mm(1), y, row.width + mm(2), row.height, { fill: colors.ink });
          addArtifact(page, 'background', [ground]);
        }
        paintRow(page, pen, row, start, y);
      });
    },
    paintNumber(page: PageDraft, top: number, number: number, count: number) {
      const [row] = set.words(pageNode, pageText(number, count), { width: 1e6, role: strong }).rows;
      if (row) paintRow(page, pen, row, grid.side + grid.measure, top, 'end');
    },
  };
}

/** One line where it fits, else a line for each sentence or two: a line never ends inside a date. */
function middleLines(desk: Desk, stamp: Stamp, room: number): string[] {
  const { set, type } = desk;
  const fits = (text: string) => set.measure([{ text }], type.stamp) <= room;
  const whole = [stamp.dataDate, stamp.review].filter((t) => t !== '').join(' · ');
  if (fits(whole)) return [whole];
  const sentences = [stamp.dataDate, ...stamp.review.split(/(?<=[.。؟!?])\s+/u)].filter((t) => t !== '');
  const done: string[] = [];
  for (const sentence of sentences) {
    const last = done.at(-1);
    const joined =
      last === undefined
        ? sentence
        : `${last}${done.length === 1 && last === stamp.dataDate ? ' ·' : ''} ${sentence}`;
    if (last !== undefined && fits(joined)) done[done.length - 1] = joined;
    else done.push(sentence);
  }
  return done;
}
