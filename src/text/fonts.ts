import { FAMILIES, type Family, fileOf, nearestWeight } from './catalog.js';
import { type CharacterFacts, factsOf } from './characters.js';
import { type Face, openFace, type ShapedGlyph, type Stretch } from './face.js';
import { SUBSET_ENGINE, startSubsetEngine } from './subset.js';
import type { FontFace, Weight } from './types.js';

/** All fonts of the program, and what was learned about text while it was set with them. */
export interface Fonts {
  /** The face of a family in the weight, or in the nearest that the family has. Read when first asked for. */
  face(family: Family, weight: Weight): Face;
  /** Glyphs of a stretch, from left to right. Remembered, for the same words come again and again. */
  shape(face: Face, stretch: Stretch): readonly ShapedGlyph[];
  facts(codePoint: number): CharacterFacts;
}

/** So many stretches are remembered, each a few kilobytes at most; then the oldest go. */
const REMEMBERED = 8_000;

/**
 * Fonts that are read when first needed. `read` gets a file name below `assets/fonts` and returns its
 * bytes. `readEngine` returns the bytes of the module `SUBSET_ENGINE`; it is asked for once, when a
 * font is first cut, and without it `subsetFont` throws.
 */
export function loadFonts(read: (path: string) => Uint8Array, readEngine?: () => Uint8Array): Fonts {
  const faces = new Map<string, Face>();
  const shaped = new Map<string, readonly ShapedGlyph[]>();
  const facts = new Map<number, CharacterFacts>();
  let engine: ReturnType<typeof startSubsetEngine> | undefined;

  function cut(font: Uint8Array, glyphs: Iterable<number>): Uint8Array {
    if (!engine) {
      if (!readEngine)
        throw new Error(`To cut fonts, give loadFonts a second argument that reads ${SUBSET_ENGINE}.`);
      engine = startSubsetEngine(readEngine());
    }
    return engine(font, glyphs);
  }

  return {
    face(family, wanted) {
      const weight = nearestWeight(family, wanted);
      const id = `${FAMILIES[family].file}-${weight}`;
      let face = faces.get(id);
      if (!face) {
        face = openFace(family, weight, id, read(fileOf(family, weight)), cut);
        faces.set(id, face);
      }
      return face;
    },
    shape(face, s) {
      const how = `${s.rtl ? 1 : 0}${s.tabular ? 1 : 0}${s.ligatures ? 1 : 0}`;
      const key = [face.id, how, s.script, s.language, s.before, s.after, s.text].join('\n');
      let glyphs = shaped.get(key);
      if (!glyphs) {
        glyphs = face.shape(s);
        if (shaped.size >= REMEMBERED) {
          const oldest = shaped.keys().next();
          if (!oldest.done) shaped.delete(oldest.value);
        }
        shaped.set(key, glyphs);
      }
      return glyphs;
    },
    facts(codePoint) {
      let known = facts.get(codePoint);
      if (!known) {
        known = factsOf(codePoint);
        facts.set(codePoint, known);
      }
      return known;
    },
  };
}

/** Outline of a glyph as SVG path data with M, L, Q, C and Z, in font units, y up; empty for spaces. */
export function glyphPath(font: FontFace, glyph: number): string {
  return font.path(glyph);
}

/**
 * The font with only these glyphs and glyph 0, for embedding. Glyph numbers stay as they were; hints,
 * names and layout tables are gone. The same glyphs, in any order, give the same bytes.
 */
export function subsetFont(font: FontFace, glyphs: Iterable<number>): Uint8Array {
  return font.subset(glyphs);
}
