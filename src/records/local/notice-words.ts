/** A notice is read in passing: longer words belong in the lesson. */
export const NOTICE_LIMITS = { sentences: 2, words: 30, characters: 240 } as const;

/** What is wrong with the length or shape of a notice's words. */
export function inSentences(text: string): { readonly fault: string; readonly hint: string } | undefined {
  const count = text.split(/\s+/u).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
  const hint = 'Cut it, or say the rest in the lesson.';
  if (count > NOTICE_LIMITS.words)
    return { fault: `are ${count}, and ${NOTICE_LIMITS.words} is the most`, hint };
  const sentences = text.match(/[.?!؟。](?=\s|$)/gu)?.length ?? 0;
  if (sentences > NOTICE_LIMITS.sentences)
    return { fault: `make ${sentences} sentences, and ${NOTICE_LIMITS.sentences} is the most`, hint };
  return /[.?!؟。]$/u.test(text)
    ? undefined
    : { fault: 'do not end a sentence', hint: 'End them with a period.' };
}

/** Digits that hang together: blanks, points, hyphens, slashes and parentheses may stand between them. */
const RUN = /\+?\(?\p{Nd}(?:[\p{Nd}\s().\p{Pd}/]*\p{Nd})?/gu;
/** Days such as 2027-06-01 and 1/6/2027 are no phone numbers. */
const DAY = /^(?:\d{4}-\d{2}-\d{2}|\d{1,2}[./]\d{1,2}[./]\d{4})$/;
/** A short number after one of these words rings too. */
const SHORT = /\b(?:call|dial|phone|ring|text)\s+(\p{Nd}{2,6})\b/iu;

/**
 * The first phone number that a text types: seven digits or more that hang together with three of them side by side,
 * or a short one after a word such as "call". Times such as 10.30-12.30 are none.
 */
export function typedNumber(text: string): string | undefined {
  for (const [run] of text.matchAll(RUN)) {
    const digits = run.match(/\p{Nd}/gu)?.length ?? 0;
    if (digits >= 7 && /\p{Nd}{3}/u.test(run) && !DAY.test(run)) return run.trim();
  }
  return SHORT.exec(text)?.[1];
}
