import { isSpoken, type Spoken } from '../../languages/index.js';

/** Words that say who somebody is or what was measured on them. Whole words; a star stands for any ending. */
const PERSONAL: Readonly<Record<Spoken, RegExp>> = {
  en: new RegExp(
    '(?<![\\p{L}\\p{N}])(?:' +
      'name|names|surname|signature|initials|birthdays?|birth date|date of birth|birthdate|age|sex|gender|' +
      'phone|telephone|e-?mail|address|zip|record number|patient|' +
      'weigh\\p{L}*|weight\\p{L}*|height|bmi|body mass\\p{L}*|waist|body fat|pounds? to lose|lose|goal weight|' +
      'blood sugars?|glucose|a1c|blood pressure|cholesterol|diagnos\\p{L}*|medicines?|medications?|insulin|pills?|' +
      'calori\\p{L}*|kcal|energy target|kidney\\p{L}*|thyroid' +
      ')(?![\\p{L}\\p{N}])',
    'iu',
  ),
};

/** The first personal matter that words name; languages without a list are not looked at. Hyphens count as blanks. */
export function personalMatter(words: string, language: string): string | undefined {
  return isSpoken(language) ? PERSONAL[language].exec(words.replace(/[-_]+/g, ' '))?.[0] : undefined;
}
