/** Languages with at least one published formula made for them. */
export const MEASURED = ['en', 'es', 'fr', 'pt', 'de', 'it'] as const;
export type MeasuredLanguage = (typeof MEASURED)[number];

/** Names of languages in English, for what the program tells people who write. */
const NAMES: Readonly<Record<string, string>> = {
  ar: 'Arabic',
  fa: 'Farsi',
  hi: 'Hindi',
  hmn: 'Hmong',
  ht: 'Haitian Creole',
  ja: 'Japanese',
  km: 'Khmer',
  ko: 'Korean',
  my: 'Burmese',
  ne: 'Nepali',
  ps: 'Pashto',
  ru: 'Russian',
  so: 'Somali',
  sw: 'Swahili',
  th: 'Thai',
  tl: 'Tagalog',
  uk: 'Ukrainian',
  ur: 'Urdu',
  vi: 'Vietnamese',
  yue: 'Cantonese',
  zh: 'Chinese',
};

const base = (tag: string) => tag.trim().toLowerCase().split(/[-_]/)[0] ?? '';

/** The measured language of a tag, by its first part: `es-MX` is `es`. Nothing for any other tag. */
export function measuredLanguage(tag: string): MeasuredLanguage | undefined {
  return MEASURED.find((language) => language === base(tag));
}

/** Why no grade is given in a language without a measure, as a sentence for editors. */
export function noMeasure(tag: string): string {
  const name = NAMES[base(tag)] ?? (tag.trim() === '' ? 'a text without a language tag' : `"${tag.trim()}"`);
  const ask = 'Ask readers of that language to read it, and have them say it back.';
  if (base(tag) === 'ar')
    return `No grade is given for Arabic: the one published formula needs the short vowels written out on every word, and a count of words of high style that no program makes surely. ${ask}`;
  return `No grade is given for ${name}: we know no trustworthy measure made for it. ${ask}`;
}
