import type { Report } from '../diagnostics/index.js';
import type { CardCaution } from '../document/index.js';
import { sayFrom } from '../languages/index.js';
import { boxesOf } from './block.js';
import type { Facts, Pulled } from './facts.js';
import { standingLines } from './lines.js';
import { cautionTerms, headingKey } from './terms.js';
import { type Setting, wordsOf } from './wording.js';

/** What a goal card must carry: every pulled box that stands on cards, then the standard lines for cards. */
export function forCards(pulled: readonly Pulled[], facts: Facts, setting: Setting): readonly Pulled[] {
  const lines = standingLines(pulled, facts, { ...setting, output: 'cards' });
  return [...boxesOf(pulled), ...lines].filter(({ caution }) => caution.place.includes('card'));
}

/** The same in words, each whole and with the word of its heading. */
export function cardCautions(
  pulled: readonly Pulled[],
  facts: Facts,
  setting: Setting,
  report: Report,
): readonly CardCaution[] {
  const say = sayFrom(cautionTerms, setting.language);
  return forCards(pulled, facts, setting).map((p): CardCaution => {
    const { heading, id } = p.caution;
    return {
      id,
      ...(heading ? { word: say(headingKey(heading)) } : {}),
      inlines: wordsOf(p, setting, report),
    };
  });
}
