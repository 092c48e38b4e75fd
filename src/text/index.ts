export { type Fonts, glyphPath, loadFonts, subsetFont } from './fonts.js';
export { measure, setLine, setParagraph } from './paragraph.js';
export { noGlyph, textCodes } from './problems.js';
export { SUBSET_ENGINE } from './subset.js';
export type {
  FontFace,
  Glyph,
  GlyphRun,
  Line,
  MissingCharacter,
  Paragraph,
  ParagraphOptions,
  SetLine,
  Span,
  TextStyle,
  Weight,
} from './types.js';
