import type { MeasuredLanguage } from './spoken-in.js';

/**
 * Short forms whose full stop ends no sentence, without the last stop and in small letters.
 * `never`: a name or an example follows. `numbers`: only when a numeral follows, since "No." is a sentence
 * too. `units`: may end a sentence before a capital letter, but not before a numeral.
 */
interface Abbreviations {
  readonly never: ReadonlySet<string>;
  readonly numbers: ReadonlySet<string>;
  readonly units: ReadonlySet<string>;
}

function listed(never: string, numbers: string, units: string): Abbreviations {
  const set = (words: string) => new Set(words.split(' '));
  return { never: set(never), numbers: set(numbers), units: set(units) };
}

const UNITS = 'g kg mg ml l kcal cal min max';

export const ABBREVIATIONS: Readonly<Record<MeasuredLanguage, Abbreviations>> = {
  en: listed(
    'dr mr mrs ms prof st vs e.g i.e approx cf incl',
    'no nos fig p pp vol ch',
    `${UNITS} oz lb lbs tsp tbsp fl pt qt gal hr hrs a.m p.m etc u.s`,
  ),
  es: listed(
    'sr sra srta dr dra prof ud uds vd p.ej ej aprox incl',
    'n núm no pág p cap fig art',
    `${UNITS} cda cdas cdta cdtas etc a.m p.m`,
  ),
  fr: listed(
    'm mm mme mlle dr pr st ste p.ex ex env incl',
    'n no p fig art chap',
    `${UNITS} etc c.à.s c.à.c`,
  ),
  pt: listed('sr sra srta dr dra prof p.ex ex aprox incl', 'n núm no pág p cap fig art', `${UNITS} etc`),
  de: listed(
    'dr hr fr prof st z.b d.h u.a o.ä z d u i o s bzw ca evtl inkl exkl ggf sog vgl max min',
    'nr s abb kap',
    `${UNITS} el tl usw etc std`,
  ),
  it: listed('sig sig.ra dott dott.ssa prof p.es es ca incl', 'n num pag p cap fig art', `${UNITS} ecc`),
};

/** The last word of a text before its full stop, in small letters; empty when no stop follows a word. */
export function lastBeforeStop(text: string): string {
  const found = /([\p{L}\p{M}\p{N}.]{1,20})\.$/u.exec(text.trimEnd());
  return (found?.[1] ?? '').toLowerCase();
}

/** Whether the full stop at the end of `text` ends no sentence, given what follows. */
export function staysOpen(text: string, next: string, language: MeasuredLanguage): boolean {
  const word = lastBeforeStop(text);
  if (word === '') return false;
  const { never, numbers, units } = ABBREVIATIONS[language];
  const numeral = /^\p{N}/u.test(next);
  if (never.has(word)) return true;
  if (numeral && (numbers.has(word) || units.has(word))) return true;
  // A list number inside a line, "1. Wash 2. Dry": it belongs to what follows.
  if (/^\p{N}{1,2}$/u.test(word) && text.trim() === `${word}.`) return true;
  return language === 'de' && staysOpenInGerman(text, next, word);
}

const MONTHS = /^(jan|feb|mär|apr|mai|jun|jul|aug|sep|okt|nov|dez)/iu;

/** "am 3. Mai" and "z. B. Bohnen". */
function staysOpenInGerman(text: string, next: string, word: string): boolean {
  if (/^\p{N}{1,2}$/u.test(word))
    return (
      MONTHS.test(next) ||
      /\b(am|vom|zum|bis|beim|der|die|das|den|dem|im)\s+\p{N}{1,2}\.$/iu.test(text.trimEnd())
    );
  return /(^|\s)[zudo]\.\s?\p{L}\.$/iu.test(text.trimEnd());
}
