import type { Block } from '../../document/index.js';
import type { ViewContext } from '../contract.js';
import { capital } from '../words.js';
import type { Values } from './schema.js';
import type { Sureness } from './terms.js';

const SURE: readonly Sureness[] = ['not-yet', 'maybe', 'likely', 'sure'];
/** The word that is ringed on a sample: the least that needs no smaller step. */
const SAMPLE: Sureness = 'likely';

/** A card for the first step with four words of sureness; on the key it is filled with the plan's first step. */
export function sureCard({ id, steps }: Values, { say, where }: ViewContext): Block {
  const filled = where === 'key';
  const [first] = steps;
  return {
    kind: 'card',
    id,
    copies: 2,
    cautions: [],
    pictures: false,
    card: {
      title: say('card-title'),
      fields: [{ label: say('my-step'), ...(filled && first ? { answer: capital(first.action) } : {}) }],
      sure: {
        label: say('how-sure'),
        words: SURE.map((word) => ({ text: say(word), picked: filled && word === SAMPLE })),
        hint: say('smaller'),
      },
    },
  };
}
