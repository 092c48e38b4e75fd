/** What an embedded TrueType font says of its glyphs. */
export interface FontProgram {
  /** How many glyphs there are. */
  readonly glyphs: number;
  /** Width in thousandths of an em. */
  width(glyph: number): number;
}

/** Reads the tables head, maxp, hhea and hmtx (OpenType specification); `undefined` when one is missing. */
export function readFontProgram(bytes: Uint8Array): FontProgram | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const table = (wanted: string, least: number): DataView | undefined => {
    for (let i = 0; i < view.getUint16(4); i++) {
      const at = 12 + i * 16;
      const tag = String.fromCharCode(...bytes.subarray(at, at + 4));
      const start = view.getUint32(at + 8);
      const length = view.getUint32(at + 12);
      if (tag === wanted && length >= least && start + length <= bytes.length)
        return new DataView(bytes.buffer, bytes.byteOffset + start, length);
    }
    return undefined;
  };
  try {
    const head = table('head', 54);
    const maxp = table('maxp', 6);
    const hhea = table('hhea', 36);
    const hmtx = table('hmtx', 4);
    if (!head || !maxp || !hhea || !hmtx) return undefined;
    const em = head.getUint16(18);
    const measured = hhea.getUint16(34);
    return {
      glyphs: maxp.getUint16(4),
      // Glyphs beyond the last measured one are as wide as it.
      width: (glyph) => (hmtx.getUint16(Math.min(glyph, measured - 1) * 4) * 1000) / em,
    };
  } catch {
    return undefined;
  }
}
