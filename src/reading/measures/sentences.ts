import { staysOpen } from './abbreviations.js';
import type { MeasuredLanguage } from './spoken-in.js';

const segmenters = new Map<MeasuredLanguage, Intl.Segmenter>();

function segmenter(language: MeasuredLanguage): Intl.Segmenter {
  const found = segmenters.get(language) ?? new Intl.Segmenter(language, { granularity: 'sentence' });
  segmenters.set(language, found);
  return found;
}

/** One line, composed letters, plain blanks, and none of the marks that nobody sees. */
export function oneLine(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[\u00AD\u200B\u2060\uFEFF]/gu, '')
    .replace(/\s+/gu, ' ')
    .trim();
}

/**
 * Sentences of one piece of text, by the rules of UAX #29 and four of our own: the stop of a short form ends
 * none; what goes on in small letters goes on; a stop before a numeral ends one ("Drain it. 2 cups are
 * left."), where UAX #29 reads on; a list number alone is none. Decimals stay whole. A colon and a semicolon
 * end no sentence. Stretches without a letter or a numeral are left out.
 */
export function sentencesOf(text: string, language: MeasuredLanguage): string[] {
  const found: string[] = [];
  const parts = [...segmenter(language).segment(oneLine(text))].flatMap((s) =>
    beforeNumerals(s.segment, language),
  );
  for (const part of parts) {
    const before = found.at(-1);
    if (before !== undefined && (/^["'“‘«(¿¡]*\p{Ll}/u.test(part) || staysOpen(before, part, language)))
      found[found.length - 1] = `${before.trimEnd()} ${part}`;
    else found.push(part);
  }
  return found.map((s) => s.trim()).filter((s) => /[\p{L}\p{N}]/u.test(s));
}

/** Cuts after a full stop that a numeral follows, unless the stop belongs to a short form. */
function beforeNumerals(sentence: string, language: MeasuredLanguage): string[] {
  const cut: string[] = [];
  let from = 0;
  for (const m of sentence.matchAll(/\.["'”’»)\]]?\s(?=\p{N})/gu)) {
    const end = m.index + m[0].length;
    const before = sentence.slice(from, m.index + 1);
    const ordinal = language === 'de' && /\p{N}\.$/u.test(before);
    if (ordinal || staysOpen(before, sentence.slice(end), language)) continue;
    cut.push(sentence.slice(from, end));
    from = end;
  }
  return [...cut, sentence.slice(from)];
}
