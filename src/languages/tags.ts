/** Languages that lessons may be in, by their tags everywhere. */
export const LANGUAGES = ['en', 'es', 'ar', 'ht', 'vi', 'zh-Hans'] as const;
export type Language = (typeof LANGUAGES)[number];

/**
 * Languages in which the program itself can print: each has a policy for numbers and dates and all
 * printed terms. A lesson in another language is refused until its own policy stands here; nothing
 * falls back to English in silence.
 */
export const SPOKEN = ['en'] as const;
export type Spoken = (typeof SPOKEN)[number];

export function isSpoken(language: string): language is Spoken {
  return (SPOKEN as readonly string[]).includes(language);
}

const RIGHT_TO_LEFT: ReadonlySet<string> = new Set(['ar', 'fa', 'he', 'ps', 'ur']);

/** Reading direction by the tag's first part: `ar` and `ar-EG` run from right to left. */
export function direction(language: string): 'ltr' | 'rtl' {
  return RIGHT_TO_LEFT.has(language.split('-')[0] ?? '') ? 'rtl' : 'ltr';
}
