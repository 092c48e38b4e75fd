/**
 * The module that cuts fonts, as a specifier for `require.resolve`. Whoever may touch the disk reads
 * it and hands its bytes to `loadFonts`; HarfBuzz ships no other way to load it.
 */
export const SUBSET_ENGINE = 'harfbuzzjs/dist/harfbuzz-subset.wasm';

/** The functions of hb-subset that are used (HarfBuzz, hb-subset.h and hb-blob.h); pointers are numbers. */
interface Engine {
  readonly memory: WebAssembly.Memory;
  _initialize(): void;
  malloc(size: number): number;
  free(pointer: number): void;
  hb_blob_create(data: number, length: number, mode: number, user: number, destroy: number): number;
  hb_blob_destroy(blob: number): void;
  hb_blob_get_data(blob: number, length: number): number;
  hb_blob_get_length(blob: number): number;
  hb_face_create(blob: number, index: number): number;
  hb_face_destroy(face: number): void;
  hb_face_reference_blob(face: number): number;
  hb_set_add(set: number, value: number): void;
  hb_subset_input_create_or_fail(): number;
  hb_subset_input_destroy(input: number): void;
  hb_subset_input_glyph_set(input: number): number;
  hb_subset_input_set(input: number, which: number): number;
  hb_subset_input_set_flags(input: number, flags: number): void;
  hb_subset_or_fail(face: number, input: number): number;
}

const WRITABLE = 2;
const DROP_TABLES = 3;
const NO_HINTING = 0x1;
const RETAIN_GIDS = 0x2;
const NOTDEF_OUTLINE = 0x40;
const NO_LAYOUT_CLOSURE = 0x200;

/** Text in a PDF is drawn by glyph numbers: shaping, names and lookup by character are not needed there. */
const DROPPED = [
  ...['GSUB', 'GPOS', 'GDEF', 'BASE', 'MATH', 'kern', 'cmap', 'name', 'post'],
  ...['OS/2', 'STAT', 'DSIG', 'gasp', 'vhea', 'vmtx'],
];

/**
 * Starts the engine and returns a function that keeps only some glyphs of a font. Glyph numbers stay
 * as they were, hints and layout tables are dropped, and glyph 0, the box, is always kept. Throws when the
 * bytes are not the module named by `SUBSET_ENGINE`, or the font is damaged.
 */
export function startSubsetEngine(
  module: Uint8Array,
): (font: Uint8Array, glyphs: Iterable<number>) => Uint8Array {
  const engine = new WebAssembly.Instance(new WebAssembly.Module(module)).exports as Engine;
  engine._initialize();

  return (font, glyphs) => {
    const data = engine.malloc(font.length);
    // The memory may have moved: a view is made at each use.
    new Uint8Array(engine.memory.buffer).set(font, data);
    const blob = engine.hb_blob_create(data, font.length, WRITABLE, 0, 0);
    const face = engine.hb_face_create(blob, 0);
    engine.hb_blob_destroy(blob);
    const input = engine.hb_subset_input_create_or_fail();
    engine.hb_subset_input_set_flags(input, NO_HINTING | RETAIN_GIDS | NOTDEF_OUTLINE | NO_LAYOUT_CLOSURE);
    const dropped = engine.hb_subset_input_set(input, DROP_TABLES);
    for (const table of DROPPED) engine.hb_set_add(dropped, tag(table));
    const kept = engine.hb_subset_input_glyph_set(input);
    engine.hb_set_add(kept, 0);
    for (const glyph of glyphs) engine.hb_set_add(kept, glyph);
    const cut = engine.hb_subset_or_fail(face, input);
    engine.hb_subset_input_destroy(input);
    engine.hb_face_destroy(face);
    if (cut === 0) {
      engine.free(data);
      throw new Error('HarfBuzz could not cut the font.');
    }
    const result = engine.hb_face_reference_blob(cut);
    const start = engine.hb_blob_get_data(result, 0);
    const out = new Uint8Array(engine.memory.buffer, start, engine.hb_blob_get_length(result)).slice();
    engine.hb_blob_destroy(result);
    engine.hb_face_destroy(cut);
    engine.free(data);
    return out;
  };
}

function tag(name: string): number {
  return [...name].reduce((sum, letter) => (sum << 8) | letter.charCodeAt(0), 0);
}
