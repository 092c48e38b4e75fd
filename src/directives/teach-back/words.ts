import { isSpoken, type Spoken } from '../../languages/index.js';

interface Patterns {
  /** Beginnings of a question that yes or no answers. */
  readonly closed: RegExp;
  /** The same beginning of a sentence without its question mark. */
  readonly closedStatement: RegExp;
  /** Words that put the listener to the test. */
  readonly testing: RegExp;
}

const CLOSED =
  '(?:is|are|am|was|were|do|does|did|can|could|will|would|shall|should|has|have|had|may|might|must|' +
  "isn['’]t|aren['’]t|don['’]t|doesn['’]t|didn['’]t|can['’]t|won['’]t|wouldn['’]t|shouldn['’]t)";

const PATTERNS: Readonly<Record<Spoken, Patterns>> = {
  en: {
    closed: new RegExp(`^(?:and |or |so |but |please )*${CLOSED}\\b`, 'i'),
    closedStatement: new RegExp(`^${CLOSED}\\s+(?:you|they|we|it|this|that|there|he|she|i)\\b`, 'i'),
    testing: /\b(?:understand|understood|remember|repeat|test|quiz|grade|pass|fail|prove|correct answer)\b/i,
  },
};

/** Whether yes or no answers one of a prompt's sentences. Languages without a list are not looked at. */
export function isClosed(prompt: string, language: string): boolean {
  if (!isSpoken(language)) return false;
  const { closed, closedStatement } = PATTERNS[language];
  return sentences(prompt).some(({ text, asks }) => {
    const clauses = text.split(/[,:;–—]\s*/);
    return asks ? clauses.some((clause) => closed.test(clause)) : closedStatement.test(text);
  });
}

/** The word by which a prompt tests the listener, if any. */
export function testingWord(prompt: string, language: string): string | undefined {
  return isSpoken(language) ? PATTERNS[language].testing.exec(prompt)?.[0] : undefined;
}

function sentences(prompt: string): { readonly text: string; readonly asks: boolean }[] {
  const bare = prompt.replace(/["'“”‘’«»]+(?=\s|$)|(?<=^|\s)["'“”‘’«»]+/g, '');
  return [...bare.matchAll(/[^.?!]+[.?!]*/g)]
    .map(([whole]) => ({ text: whole.trim(), asks: whole.includes('?') }))
    .filter(({ text }) => text !== '');
}

/** Words of some length, cut to their stems, so that "rinsing" meets "rinse". */
function stems(words: string): Set<string> {
  return new Set((words.toLowerCase().match(/\p{L}{4,}/gu) ?? []).map((word) => word.slice(0, 4)));
}

/**
 * Place of the objective that shares most words with a prompt, counted from 0; the first of several. The only
 * objective of a lesson needs no words in common.
 */
export function nearestObjective(words: string, objectives: readonly string[]): number | undefined {
  if (objectives.length === 1) return 0;
  const own = stems(words);
  const shared = objectives.map((objective) => [...stems(objective)].filter((stem) => own.has(stem)).length);
  const most = Math.max(0, ...shared);
  return most === 0 ? undefined : shared.indexOf(most);
}
