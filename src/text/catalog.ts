import type { Weight } from './types.js';

/** The families under `assets/fonts`, each with its start of file names, PostScript name and weights. */
export const FAMILIES = {
  atkinson: {
    file: 'atkinson-hyperlegible-next',
    name: 'AtkinsonHyperlegibleNext',
    weights: [400, 500, 600, 700, 800],
  },
  noto: { file: 'noto-sans', name: 'NotoSans', weights: [400, 500, 600, 700, 800] },
  vazirmatn: { file: 'vazirmatn', name: 'Vazirmatn', weights: [400, 500, 600, 700, 800] },
  chinese: { file: 'noto-sans-sc', name: 'NotoSansSC', weights: [400, 700] },
  math: { file: 'noto-sans-math', name: 'NotoSansMath', weights: [400] },
  symbols: { file: 'noto-sans-symbols-2', name: 'NotoSansSymbols2', weights: [400] },
} as const satisfies Readonly<
  Record<string, { readonly file: string; readonly name: string; readonly weights: readonly Weight[] }>
>;
export type Family = keyof typeof FAMILIES;

const STYLE_NAMES: Readonly<Record<Weight, string>> = {
  400: 'Regular',
  500: 'Medium',
  600: 'SemiBold',
  700: 'Bold',
  800: 'ExtraBold',
};

/** File name below `assets/fonts`. */
export function fileOf(family: Family, weight: Weight): string {
  return `${FAMILIES[family].file}-${weight}.ttf`;
}

export function postScriptName(family: Family, weight: Weight): string {
  return `${FAMILIES[family].name}-${STYLE_NAMES[weight]}`;
}

/**
 * The weight that stands in for one that a family lacks, as in CSS Fonts 4, section 5.2: up to 500
 * the next lighter, then heavier; above 500 the next heavier, then lighter.
 */
export function nearestWeight(family: Family, weight: Weight): Weight {
  const has: readonly Weight[] = FAMILIES[family].weights;
  const lighter = has.filter((w) => w <= weight).at(-1);
  const heavier = has.find((w) => w >= weight);
  return (weight <= 500 ? (lighter ?? heavier) : (heavier ?? lighter)) ?? 400;
}

/** What a word is written in, as far as the choice of a family goes. */
export type Writing = 'latin' | 'arabic' | 'chinese' | 'signs';

const LAST: readonly Family[] = ['atkinson', 'noto', 'math', 'symbols', 'vazirmatn', 'chinese'];

function ranked(...first: Family[]): readonly Family[] {
  return [...first, ...LAST.filter((family) => !first.includes(family))];
}

const LATIN = ranked('atkinson', 'noto');
const VIETNAMESE = ranked('noto', 'atkinson');
const ARABIC = ranked('vazirmatn');
const CHINESE = ranked('chinese');

const ARABIC_LANGUAGES: ReadonlySet<string> = new Set(['ar', 'fa', 'ps', 'ur']);

/**
 * Families to try, best first. Words in Latin letters have the same family in every language but
 * Vietnamese, whose letters Atkinson Hyperlegible Next lacks. `signs` are digits and marks that
 * belong to no word: they follow the language.
 */
export function familiesFor(language: string, writing: Writing): readonly Family[] {
  const first = language.split('-')[0] ?? '';
  const latin = first === 'vi' ? VIETNAMESE : LATIN;
  if (writing === 'latin') return latin;
  if (writing === 'arabic') return ARABIC;
  if (writing === 'chinese') return CHINESE;
  if (ARABIC_LANGUAGES.has(first)) return ARABIC;
  return first === 'zh' ? CHINESE : latin;
}
