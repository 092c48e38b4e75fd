import { isSpoken, type Spoken } from '../../languages/index.js';

/**
 * Words that ask about what is nobody's business in a group: weight, illness and medicine, income, benefits,
 * immigration, pregnancy, age and religion. Whole words; a star stands for any ending.
 */
const WORDS: Readonly<Record<Spoken, { readonly words: string; readonly phrases: readonly string[] }>> = {
  en: {
    words: `
      weigh weighs weighed weighing weight weights overweight underweight bmi obes* waist
      ill illness* sick sickness disease* diabet* prediabet* cancer* hiv asthma* hypertension cholesterol depress*
      anxiety diagnos* medicine* medication* pill pills insulin dialysis stroke disab* allerg* symptom* surgery
      kidney kidneys thyroid
      income* salary salaries wage wages earn earns earned earning poor poverty afford debt debts unemploy* jobless
      paycheck* rent
      benefit benefits snap wic ebt welfare medicaid medicare
      immigra* emigra* migrant* citizen* visa visas undocumented refugee* asylum deport* papers
      pregnan* trimester* miscarr* breastfeed* breastfed menopaus*
      age ages elderly birthday birthdays born birthdate
      religio* church* mosque* synagogue* pray prays prayer* faith faiths christian* muslim* islam* jew jews jewish
      hindu* buddh* catholic* protestant* atheis* ramadan worship* bible quran`,
    phrases: [
      'body fat',
      'dress size',
      'lose pounds',
      'goal weight',
      'blood pressure',
      'blood sugar',
      'heart attack',
      'eating disorder',
      'health condition',
      'food stamp',
      'food stamps',
      'food bank',
      'food pantry',
      'cash assistance',
      'free meals',
      'green card',
      'breast feeding',
      'expecting a baby',
      'how old',
      'years old',
    ],
  },
};

const PATTERNS = new Map<Spoken, RegExp>();

/** The first private matter that words name, and where; languages without a list are not looked at. */
export function privateMatter(
  words: string,
  language: string,
): { readonly at: number; readonly words: string } | undefined {
  if (!isSpoken(language)) return undefined;
  const found = patternFor(language).exec(words);
  return found ? { at: found.index, words: found[0] } : undefined;
}

function patternFor(language: Spoken): RegExp {
  const known = PATTERNS.get(language);
  if (known) return known;
  const { words, phrases } = WORDS[language];
  const entries = [...words.trim().split(/\s+/), ...phrases];
  const any = entries.map((entry) => entry.replace(/[- ]/g, '[-\\s]+').replace('*', "[\\p{L}'’]*")).join('|');
  const pattern = new RegExp(`(?<![\\p{L}\\p{N}])(?:${any})(?![\\p{L}\\p{N}])`, 'iu');
  PATTERNS.set(language, pattern);
  return pattern;
}
