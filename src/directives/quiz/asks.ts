import { isSpoken, type Spoken } from '../../languages/index.js';
import type { Question } from './schema.js';

/** Words by which a question asks for the least or the most. */
const ASKS: Readonly<Record<Spoken, Readonly<Record<Question['find'], RegExp>>>> = {
  en: {
    min: /\b(?:least|lowest|fewest|smallest)\b/i,
    max: /\b(?:most|highest|largest|greatest|biggest)\b/i,
  },
};

/** What a prompt asks for, when its words say so plainly and only once. */
export function asksFor(prompt: string, language: string): Question['find'] | undefined {
  if (!isSpoken(language)) return undefined;
  const { min, max } = ASKS[language];
  if (min.test(prompt) === max.test(prompt)) return undefined;
  return min.test(prompt) ? 'min' : 'max';
}
