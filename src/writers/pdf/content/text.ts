import type { TextInk } from '../../../figures/index.js';
import type { Glyph, GlyphRun, Line } from '../../../text/index.js';
import type { PdfFont } from '../resources/fonts.js';
import type { Resources } from '../resources/resources.js';
import { hex4, utf16Hex } from '../resources/to-unicode.js';
import { type Cluster, clustersOf } from './clusters.js';
import { colorOperator } from './color.js';
import { operand, operands } from './number.js';
import { type OutlinedGlyph, outlineOperators } from './outline.js';

export interface TextPlace {
  readonly x: number;
  readonly baseline: number;
  readonly digits: number;
  /** Text that is read but not seen. */
  readonly hidden: boolean;
  /** Language of the element around; `undefined` in artifacts, which nobody reads. */
  readonly language: string | undefined;
}

/**
 * A line as text operators. Runs go out in reading order, the glyphs of a run from left to right, as
 * programs that read text out of a PDF expect it in either direction.
 */
export function textOperators(line: Line<TextInk>, place: TextPlace, resources: Resources): string {
  const runs = [...line.runs].sort((a, b) => a.start - b.start);
  let text = '';
  let shapes = '';
  for (const [index, run] of runs.entries()) {
    // A line break is not drawn; the last letter says the space that keeps the next word apart.
    const breaks = index === runs.length - 1 && /\S[\n-\r\u0085\u2028\u2029]+$/.test(line.text);
    const clusters = clustersOf(run, breaks ? ' ' : '');
    if (clusters.length === 0) continue;
    const color = place.hidden ? '' : colorOperator(run.span.data?.color ?? '#000000', 'fill');
    const outlined: OutlinedGlyph[] = [];
    const shown = `${color}${runOperators(run, clusters, place, resources, outlined)}`;
    const language = languageSpan(run, place.language);
    text += language === undefined ? shown : `/Span <</Lang (${language})>> BDC\n${shown}EMC\n`;
    const paths =
      outlined.map((glyph) => outlineOperators(glyph, place.digits)).join('') + underline(run, place);
    if (paths !== '' && !place.hidden) shapes += `${color}${paths}f\n`;
  }
  if (text === '') return '';
  return place.hidden ? `BT\n3 Tr\n${text}0 Tr\nET\n` : `BT\n${text}ET\n${shapes}`;
}

/** The line under a link: a tenth of the size below the baseline, a sixteenth thick, as on screen. */
function underline(run: GlyphRun<TextInk>, { x, baseline, digits }: TextPlace): string {
  if (!run.span.data?.underline || run.width <= 0) return '';
  const box = [x + run.x, baseline + run.size / 10, run.width, run.size / 16];
  return `${operands(box, digits)} re\n`;
}

/** The language to say, where words stand in another than the text around them. */
function languageSpan(run: GlyphRun<unknown>, around: string | undefined): string | undefined {
  if (around === undefined || run.language === around || !/\p{L}/u.test(run.text)) return undefined;
  if (!/^[A-Za-z0-9-]+$/.test(run.language)) throw new Error(`"${run.language}" is no language tag.`);
  return run.language;
}

function runOperators(
  run: GlyphRun<TextInk>,
  clusters: readonly Cluster[],
  place: TextPlace,
  resources: Resources,
  outlined: OutlinedGlyph[],
): string {
  const font = resources.font(run.font);
  const left = place.x + run.x;
  const pen = createPen(font, run, place, (glyph, along) =>
    outlined.push({
      font: run.font,
      glyph: glyph.id,
      size: run.size,
      x: left + along,
      y: place.baseline - glyph.dy,
    }),
  );
  for (const word of wordsOf(clusters)) {
    // Where glyphs alone do not tell the text, the word says it whole.
    const spell = !run.rtl && word.some((cluster) => !cluster.exact);
    if (spell) pen.raw(`/Span <</ActualText <FEFF${utf16Hex(word.map((c) => c.text).join(''))}>>> BDC\n`);
    for (const cluster of word) pen.show(cluster);
    if (spell) pen.raw('EMC\n');
  }
  const at = operands([left, place.baseline], place.digits);
  return `/${font.name} ${operand(run.size, place.digits)} Tf\n1 0 0 -1 ${at} Tm\n${pen.finish()}`;
}

/** Clusters between spaces; a space is a word of its own. */
function wordsOf(clusters: readonly Cluster[]): Cluster[][] {
  const words: Cluster[][] = [];
  let open: Cluster[] | undefined;
  for (const cluster of clusters) {
    if (/^\s/.test(cluster.text)) {
      words.push([cluster]);
      open = undefined;
    } else if (open) open.push(cluster);
    else {
      open = [cluster];
      words.push(open);
    }
  }
  return words;
}

interface Pen {
  show(cluster: Cluster): void;
  /** An operator between glyphs. */
  raw(operator: string): void;
  finish(): string;
}

/** Writes glyphs with the moves between them. Moves are in thousandths of the size, to a tenth. */
function createPen(
  font: PdfFont,
  run: GlyphRun<unknown>,
  { digits, hidden }: TextPlace,
  outline: (glyph: Glyph, along: number) => void,
): Pen {
  let out = '';
  let parts = '';
  let codes = '';
  /** Where the engine wants the pen, and where the file's widths and moves have put it. */
  let wanted = 0;
  let actual = 0;
  let rise = 0;
  const closeCodes = () => {
    if (codes !== '') parts += `<${codes}>`;
    codes = '';
  };
  const closeArray = (before = '', after = '') => {
    closeCodes();
    if (parts !== '') out += `${before}[${parts}] TJ\n${after}`;
    parts = '';
  };
  const lift = (dy: number) => {
    if (dy === rise) return;
    closeArray();
    rise = dy;
    out += `${operand(rise, digits)} Ts\n`;
  };
  const moveTo = (target: number) => {
    const move = Math.round((actual - target) * 10) / 10;
    if (Math.abs(move) < 0.5) return;
    closeCodes();
    parts += operand(move, 1);
    actual -= move;
  };
  return {
    show(cluster) {
      for (const piece of cluster.pieces) {
        const { glyph } = piece;
        const width = font.width(glyph.id);
        if (piece.kind === 'shape') {
          outline(glyph, (wanted * run.size) / 1000 + glyph.dx);
          wanted += (glyph.advance * 1000) / run.size;
        } else if (piece.kind === 'said') {
          closeArray();
          codes = hex4(font.code(glyph.id, piece.text));
          closeArray(hidden ? '' : '3 Tr\n', hidden ? '' : '0 Tr\n');
          actual += width;
        } else {
          lift(glyph.dy);
          // A space at the end of a right-to-left line has no advance; it belongs left of the pen.
          const hangs = run.rtl && glyph.advance === 0 && /^\s/.test(piece.text);
          moveTo(wanted + (glyph.dx * 1000) / run.size - (hangs ? width : 0));
          codes += hex4(font.code(glyph.id, piece.text));
          actual += width;
          wanted += (glyph.advance * 1000) / run.size;
        }
      }
    },
    raw(operator) {
      closeArray();
      out += operator;
    },
    finish() {
      closeArray();
      return rise === 0 ? out : `${out}0 Ts\n`;
    },
  };
}
