import type { Counts } from '../counts.js';
import type { Formula } from '../formula.js';
import type { MeasuredLanguage } from '../spoken-in.js';
import { lix, rix } from './any-language.js';
import { automated, colemanLiau, flesch, fleschKincaid, gunningFog, smog } from './english.js';
import { amstad, wiener1, wiener2, wiener3, wiener4 } from './german.js';
import { fernandezHuerta, gulpease, kandelMoles, martins, szigrisztPazos } from './romance.js';
import { daleChall, spache } from './word-lists.js';

/** The formulas made for each language, the one that editors look at first in front. */
export const FORMULAS: Readonly<Record<MeasuredLanguage, readonly Formula<keyof Counts>[]>> = {
  en: [fleschKincaid, flesch, smog, gunningFog, colemanLiau, automated, daleChall, spache, lix, rix],
  es: [szigrisztPazos, fernandezHuerta, lix, rix],
  fr: [kandelMoles, lix, rix],
  pt: [martins, lix, rix],
  de: [wiener1, wiener2, wiener3, wiener4, amstad, lix, rix],
  it: [gulpease, lix, rix],
};
