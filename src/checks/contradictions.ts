import { sentencesOf } from '../cautions/index.js';

/** Why two texts that should say the same do not. */
export interface Contradiction {
  readonly kind: 'number' | 'verb' | 'yes and no';
  /** The words of the first and of the second text. */
  readonly first: string;
  readonly second: string;
  readonly why: string;
}

/** Words that say the opposite of each other; a clause with one is held against a clause with the other. */
const OPPOSITES: readonly (readonly [string, string])[] = [
  ['more', 'less'],
  ['more', 'fewer'],
  ['most', 'least'],
  ['add', 'cut'],
  ['add', 'remove'],
  ['raise', 'lower'],
  ['increase', 'decrease'],
  ['increase', 'reduce'],
  ['start', 'stop'],
  ['always', 'never'],
  ['before', 'after'],
  ['hot', 'cold'],
  ['above', 'below'],
  ['over', 'under'],
  ['high', 'low'],
  ['higher', 'lower'],
  ['with', 'without'],
  ['keep', 'throw'],
  ['open', 'close'],
  ['choose', 'avoid'],
  ['eat', 'skip'],
  ['drain', 'keep'],
  ['safe', 'unsafe'],
  ['fast', 'slow'],
  ['up', 'down'],
];

const NEGATIVE = /^(?:not|no|never|cannot|without|nor|neither|none|nothing)$|n['’]t$/;
const STOP_WORDS =
  'a an the is are was were be been to of in on at it its them they we our us this that these those and or for as so by from do does did have has had can may might will would should if when then than there here also too very just some any all each every one now about'.split(
    ' ',
  );
const MEASURES =
  /^(?:cups?|tbsp|tablespoons?|tsp|teaspoons?|oz|ounces?|cans?|minutes?|hours?|seconds?|days?|weeks?|months?|years?|times|percent|%|mg|g|grams?|kg|lb|pounds?|calories?|degrees?|°[cf]|inch(?:es)?|servings?|portions?|parts?|pieces?|dollars?|cents?)$/i;
const NUMBER_WORDS: Readonly<Record<string, string>> = {
  two: '2',
  three: '3',
  four: '4',
  five: '5',
  six: '6',
  seven: '7',
  eight: '8',
  nine: '9',
  ten: '10',
  twelve: '12',
  twenty: '20',
  thirty: '30',
  forty: '40',
  sixty: '60',
  half: '1/2',
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
};

/**
 * Where a shorter text contradicts a fuller one that should say the same: another number of the same
 * measure, a verb or word turned to its opposite, or a "not" on one side only. English; clauses are
 * compared only when most of their words are the same, so that saying less is never a contradiction.
 */
export function contradictions(shorter: string, fuller: string): readonly Contradiction[] {
  return [...numbersChanged(shorter, fuller), ...sensesChanged(shorter, fuller)];
}

function numbersChanged(shorter: string, fuller: string): Contradiction[] {
  const a = measured(shorter);
  const b = measured(fuller);
  return [...a].flatMap(([measure, values]) => {
    const others = b.get(measure);
    if (!others) return [];
    return [...values].flatMap(([value, words]) =>
      others.has(value)
        ? []
        : [
            {
              kind: 'number' as const,
              first: words,
              second: [...others.values()].join(', '),
              why: `${words} stands beside ${[...others.values()].join(', ')}`,
            },
          ],
    );
  });
}

/** Numbers by what they count: `30 seconds` → seconds, `count to 30` → count to. */
function measured(text: string): Map<string, Map<string, string>> {
  const found = new Map<string, Map<string, string>>();
  const add = (measure: string, value: string, words: string) => {
    const values = found.get(measure) ?? new Map<string, string>();
    if (!values.has(value)) values.set(value, words);
    found.set(measure, values);
  };
  const tokens =
    text.match(/\d+ \d\/\d|\d+\/\d+|\d[\d,]*(?:\.\d+)?|[½¼¾]|°[CF]|%|[\p{L}'’]+|[.,;:?!]/gu) ?? [];
  tokens.forEach((token, i) => {
    const value = /^[\d½¼¾]/.test(token)
      ? (NUMBER_WORDS[token] ?? token.replaceAll(',', ''))
      : NUMBER_WORDS[token.toLowerCase()];
    if (value === undefined) return;
    const next = tokens[i + 1] ?? '';
    const unit = MEASURES.test(next)
      ? next
      : next.toLowerCase() === 'a' && MEASURES.test(tokens[i + 2] ?? '')
        ? (tokens[i + 2] ?? '')
        : undefined;
    if (unit !== undefined) add(singular(unit.toLowerCase()), value, `${token} ${unit}`);
    else if (
      tokens[i - 1]?.toLowerCase() === 'to' &&
      tokens.slice(Math.max(0, i - 4), i - 1).some((t) => /^count/i.test(t))
    )
      add('count to', value, `count to ${token}`);
  });
  return found;
}

function singular(word: string): string {
  return word.replace(/(?<=inch)es$|(?<!s)s$/, '');
}

type Polarity = 'yes' | 'no' | 'unclear';

interface Clause {
  readonly text: string;
  /** Stems of the words that carry meaning, in order. */
  readonly words: readonly string[];
  readonly all: ReadonlySet<string>;
  readonly polarity: Polarity;
}

function sensesChanged(shorter: string, fuller: string): Contradiction[] {
  const theirs = indexed(clausesOf(fuller));
  return clausesOf(shorter).flatMap((own): Contradiction[] => {
    const opposite = oppositeTo(own, theirs);
    if (opposite) return [opposite];
    const same = theirs.startingWith(own.words[0]).filter((their) => alike(own.words, their.words));
    // The fuller text may say it both ways round; one clause that agrees is enough.
    if (same.some((their) => their.polarity === own.polarity || their.polarity === 'unclear')) return [];
    const their = same[0];
    if (!their || own.polarity === 'unclear') return [];
    return [
      {
        kind: 'yes and no',
        first: own.text,
        second: their.text,
        why: 'one says "not" and the other does not',
      },
    ];
  });
}

/** Clauses by their first word and by every word, so that long texts are compared quickly. */
interface Indexed {
  startingWith(word: string | undefined): readonly Clause[];
  holding(word: string): readonly Clause[];
}

function indexed(clauses: readonly Clause[]): Indexed {
  const first = new Map<string, Clause[]>();
  const any = new Map<string, Clause[]>();
  const put = (map: Map<string, Clause[]>, key: string, clause: Clause) => {
    const list = map.get(key);
    if (list) list.push(clause);
    else map.set(key, [clause]);
  };
  for (const clause of clauses) {
    if (clause.words[0] !== undefined) put(first, clause.words[0], clause);
    for (const word of clause.all) put(any, word, clause);
  }
  return {
    startingWith: (word) => (word === undefined ? [] : (first.get(word) ?? [])),
    holding: (word) => any.get(word) ?? [],
  };
}

function oppositeTo(own: Clause, theirs: Indexed): Contradiction | undefined {
  for (const [x, y] of BOTH_WAYS) {
    const [mine, other] = [stem(x), stem(y)];
    if (!own.all.has(mine) || own.all.has(other)) continue;
    const rest = (words: readonly string[]) => words.filter((w) => w !== mine && w !== other);
    const their = theirs
      .holding(other)
      .find((t) => !t.all.has(mine) && t.polarity === own.polarity && alike(rest(own.words), rest(t.words)));
    if (their)
      return { kind: 'verb', first: own.text, second: their.text, why: `"${x}" stands beside "${y}"` };
  }
  return undefined;
}

/** They begin with the same word, nearly all of the smaller stands in the larger, and little else does. */
function alike(a: readonly string[], b: readonly string[]): boolean {
  if (a.length === 0 || b.length === 0 || a[0] !== b[0]) return false;
  const [x, y] = [new Set(a), new Set(b)];
  const common = [...x].filter((w) => y.has(w)).length;
  const [small, large] = x.size <= y.size ? [x.size, y.size] : [y.size, x.size];
  if (small === 1) return large <= 2;
  return common / small >= 0.8 && common / large >= 0.6;
}

/** Clauses end at stops, commas and words that turn the sense or set a condition. */
const CLAUSE_END =
  /([,;:—–()]|\b(?:because|since|but|so that|so|although|unless|while|which|if|when|until)\b)/i;

function clausesOf(text: string): Clause[] {
  const all = sentencesOf(text).flatMap(({ text: sentence }) => {
    let before: Polarity = 'yes';
    return sentence.split(CLAUSE_END).flatMap((part): Clause[] => {
      const words = part.trim().replace(/[.?!]+$/, '');
      if (!/\p{L}/u.test(words) || CLAUSE_END.test(words)) return [];
      const clause = clauseOf(words);
      // In "do not boil, fry or bake" the "not" reaches over the comma; whether it does is unclear here.
      const polarity = clause.polarity === 'yes' && before !== 'yes' ? 'unclear' : clause.polarity;
      before = polarity;
      return [{ ...clause, polarity }];
    });
  });
  // What is said again is compared once.
  return [...new Map(all.map((c) => [`${c.polarity} ${c.words.join(' ')}`, c])).values()];
}

/** A "not" counts for the clause only near its beginning and before any "and"; a later one belongs to a part. */
const NEAR_BEGINNING = 5;

function clauseOf(text: string): Clause {
  const tokens = wordsOf(text);
  const and = tokens.indexOf('and');
  const negatives = tokens.flatMap((t, i) => (NEGATIVE.test(t) ? [i] : []));
  const stems = tokens.filter((t) => !NEGATIVE.test(t)).map(stem);
  const first = negatives[0];
  const clear = negatives.length === 1 && first !== undefined && first < NEAR_BEGINNING;
  const polarity = first === undefined ? 'yes' : clear && (and < 0 || and > first) ? 'no' : 'unclear';
  return { text, words: stems.filter((w) => !STOP_STEMS.has(w)), all: new Set(stems), polarity };
}

function wordsOf(text: string): readonly string[] {
  const lower = text.toLowerCase().replaceAll('’', "'");
  return lower.match(/[\p{L}\p{N}']+/gu) ?? [];
}

/** A rough stem: enough to find "rinses", "rinsed" and "rinsing" alike. */
function stem(word: string): string {
  if (word.length <= 3) return word;
  return word.replace(/(?:ing|ed|es|s|e)$/, '').replace(/([^aeiou])\1$/, '$1') || word;
}

const STOP_STEMS: ReadonlySet<string> = new Set(STOP_WORDS.map(stem));
const BOTH_WAYS = OPPOSITES.flatMap(([x, y]) => [[x, y] as const, [y, x] as const]);
