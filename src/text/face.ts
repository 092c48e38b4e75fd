import * as hb from 'harfbuzzjs';
import { type Family, postScriptName } from './catalog.js';
import { standIn } from './characters.js';
import type { FontFace, Weight } from './types.js';

/** What to shape: a stretch of one font, script, language and direction. */
export interface Stretch {
  /** Letters just before and after the stretch, which decide how Arabic letters join. */
  readonly before: string;
  readonly text: string;
  readonly after: string;
  readonly rtl: boolean;
  /** ISO 15924 code. */
  readonly script: string;
  readonly language: string;
  readonly tabular: boolean;
  /** Off where letters are tracked: a ligature would stand out. */
  readonly ligatures: boolean;
}

/** A glyph in font units; `cluster` counts from the start of the stretch. */
export interface ShapedGlyph {
  readonly id: number;
  readonly cluster: number;
  readonly advance: number;
  readonly dx: number;
  readonly dy: number;
}

export interface Face extends FontFace {
  readonly family: Family;
  /** Glyphs from left to right. */
  shape(stretch: Stretch): readonly ShapedGlyph[];
}

export type Cut = (bytes: Uint8Array, glyphs: Iterable<number>) => Uint8Array;

const TABULAR = new hb.Feature('tnum', 1);
const NO_LIGATURES = [new hb.Feature('liga', 0), new hb.Feature('clig', 0)];

/** Opens a TrueType file. Everything that HarfBuzz knows about it is asked through the face. */
export function openFace(family: Family, weight: Weight, id: string, bytes: Uint8Array, cut: Cut): Face {
  const face = new hb.Face(new hb.Blob(bytes), 0);
  const font = new hb.Font(face);
  const covered = new Set(face.collectUnicodes());
  if (covered.size === 0) throw new Error(`${id} is not a TrueType font.`);
  const extents = font.hExtents();
  const advances = new Map<number, number>();
  const paths = new Map<number, string>();
  const buffer = new hb.Buffer();

  /** Same length as the text, so that clusters still count in it. */
  function drawable(text: string): string {
    return text.replace(/[\t-\r\u0085\u2010\u2011\u2028\u2029]/g, (character) => {
      const code = character.charCodeAt(0);
      const instead = covered.has(code) && code > 0x85 ? undefined : standIn(code);
      return instead === undefined ? character : String.fromCharCode(instead);
    });
  }

  return {
    family,
    id,
    name: postScriptName(family, weight),
    weight,
    unitsPerEm: face.upem,
    ascent: extents.ascender,
    descent: -extents.descender,
    capHeight: font.getMetricPosition(hb.MetricsTag.CAP_HEIGHT) ?? 0,
    box: boxOf(face),
    bytes,
    advance: (glyph) => remembered(advances, glyph, () => font.glyphHAdvance(glyph)),
    covers: (codePoint) => covered.has(codePoint),
    path: (glyph) => remembered(paths, glyph, () => font.glyphToPath(glyph)),
    subset: (glyphs) => cut(bytes, glyphs),
    shape(stretch) {
      buffer.reset();
      const text = drawable(stretch.text);
      buffer.addText(stretch.before + text + stretch.after, stretch.before.length, text.length);
      // Each letter keeps its own number, but right-to-left marks stay with their letter, so that
      // a reader of the finished file finds them together.
      buffer.setClusterLevel(stretch.rtl ? hb.ClusterLevel.MONOTONE_GRAPHEMES : hb.ClusterLevel.CHARACTERS);
      buffer.setDirection(stretch.rtl ? hb.Direction.RTL : hb.Direction.LTR);
      buffer.setScript(stretch.script);
      buffer.setLanguage(stretch.language);
      hb.shape(font, buffer, [
        ...(stretch.tabular ? [TABULAR] : []),
        ...(stretch.ligatures ? [] : NO_LIGATURES),
      ]);
      const infos = buffer.getGlyphInfos();
      const positions = buffer.getGlyphPositions();
      return infos.map((info, i) => ({
        id: info.codepoint,
        cluster: info.cluster - stretch.before.length,
        advance: positions[i]?.xAdvance ?? 0,
        dx: positions[i]?.xOffset ?? 0,
        dy: positions[i]?.yOffset ?? 0,
      }));
    },
  };
}

function remembered<V>(known: Map<number, V>, key: number, find: () => V): V {
  let value = known.get(key);
  if (value === undefined) {
    value = find();
    known.set(key, value);
  }
  return value;
}

/** xMin, yMin, xMax, yMax of the `head` table (OpenType specification, head). */
function boxOf(face: hb.Face): [number, number, number, number] {
  const head = face.referenceTable('head');
  if (!head) throw new Error('The font has no head table.');
  const view = new DataView(head.buffer, head.byteOffset, head.byteLength);
  return [view.getInt16(36), view.getInt16(38), view.getInt16(40), view.getInt16(42)];
}
