import LineBreaker from 'linebreak';

export interface Break {
  /** A line may end before this UTF-16 unit. */
  readonly position: number;
  /** It must. */
  readonly required: boolean;
}

/**
 * Where lines may end (UAX #14), the end of the text included. Two places are taken out, as rule
 * tailoring allows: after a soft hyphen, since we print no hyphens, and inside a range or date of
 * digits (`270–370`, `2/3`), which would read as another number. One is put in that the library,
 * which is of Unicode 13, misses: before a wide opening bracket after a letter or digit (LB30).
 */
export function breaksOf(text: string): Break[] {
  const breaks = libraryBreaks(text);
  const wide = [...text.matchAll(BEFORE_WIDE_BRACKET)].map((match) => match.index + match[0].length);
  const known = new Set(breaks.map((b) => b.position));
  const added = wide.filter((position) => !known.has(position));
  if (added.length === 0) return breaks;
  const all = [...breaks, ...added.map((position) => ({ position, required: false }))];
  return all.sort((a, b) => a.position - b.position);
}

const BEFORE_WIDE_BRACKET = /[\p{L}\p{N}]\p{M}*(?=[（［｛｟「『【〔〖〘〚〈《])/gu;

function libraryBreaks(text: string): Break[] {
  const breaks: Break[] = [];
  const breaker = new LineBreaker(text);
  for (let next = breaker.nextBreak(); next; next = breaker.nextBreak()) {
    if (!next.required && (afterSoftHyphen(text, next.position) || insideNumber(text, next.position)))
      continue;
    breaks.push({ position: next.position, required: next.required });
  }
  return breaks;
}

function afterSoftHyphen(text: string, position: number): boolean {
  return position < text.length && text[position - 1] === '\u00ad';
}

/** Isolates around a number do not keep it apart from the sign beside it. */
const ENDS_IN_DIGIT_AND_SIGN = /\p{Nd}[\u2066-\u2069]*[-‐‑‒–—−/⁄~][\u2066-\u2069]*$/u;
const STARTS_WITH_DIGIT = /^[\u2066-\u2069]*\p{Nd}/u;

function insideNumber(text: string, position: number): boolean {
  return (
    STARTS_WITH_DIGIT.test(text.slice(position, position + 4)) &&
    ENDS_IN_DIGIT_AND_SIGN.test(text.slice(Math.max(0, position - 6), position))
  );
}
