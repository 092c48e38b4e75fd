import { type CodeTable, type Place, type Problem, problemsOf } from '../diagnostics/index.js';
import type { MissingCharacter } from './types.js';

export const textCodes = {
  'text/no-glyph': {
    severity: 'stop',
    rule: 'Every character must have a drawing in one of the fonts.',
    about:
      'A character that no font has would print as an empty box, and a reader could not tell what is lost: a letter, a sign or a unit. Write it in words or with a character of the language. Emoji and rare signs have no drawing on purpose; use a picture.',
  },
} as const satisfies CodeTable;

const problem = problemsOf(textCodes);

/** One problem that names every character without a drawing; nothing when none is missing. */
export function noGlyph(missing: readonly MissingCharacter[], place?: Place): Problem | undefined {
  if (missing.length === 0) return undefined;
  const names = missing.map(nameOf);
  const one = names.length === 1;
  return problem('text/no-glyph', `No font has a drawing for ${names.join(', ')}.`, {
    hint: `Write ${one ? 'it' : 'them'} in words or with other characters.`,
    actual: missing.map((m) => m.character).join(' '),
    ...(place ? { place } : {}),
  });
}

/** The character with its number; a mark or a control character would not show, so it has only the number. */
function nameOf({ character, codePoint }: MissingCharacter): string {
  const number = `U+${codePoint.toString(16).toUpperCase().padStart(4, '0')}`;
  return /[\p{C}\p{M}\p{Z}]/u.test(character) ? number : `“${character}” (${number})`;
}
