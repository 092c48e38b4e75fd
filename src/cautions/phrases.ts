/**
 * Words that the register looks for. A phrase is words in a row:
 *
 * - `water pill` also finds "water pills" and "water-pill's";
 * - `cut/cuts/cutting` is any one of these;
 * - `carb*` is any word that begins so;
 * - `...` stands for up to four other words, but never for a comma or the end of a sentence;
 * - a word written with a capital (`Lent`, `BMI`) is found only with that capital.
 */
export interface Phrase {
  readonly text: string;
  readonly steps: readonly Step[];
}

type Step = 'gap' | readonly Word[];
interface Word {
  readonly word: string;
  readonly open: boolean;
  readonly capital: boolean;
  /** All that it finds: itself, its plural, what belongs to it. */
  readonly forms: readonly string[];
}

interface Token {
  readonly word: string;
  readonly raw: string;
  readonly at: number;
  readonly end: number;
  /** No gap may reach over what stands before this word. */
  readonly wall: boolean;
}

const LONGEST_GAP = 4;

export function parsePhrase(text: string): Phrase {
  const steps = text
    .trim()
    .split(/\s+/)
    .map((part): Step => (part === '...' ? 'gap' : part.split('/').map(wordOf)));
  return { text, steps };
}

function wordOf(part: string): Word {
  const open = part.endsWith('*');
  const bare = open ? part.slice(0, -1) : part;
  const capital = bare !== bare.toLowerCase();
  const word = capital ? bare : folded(bare);
  const forms = capital
    ? [word, `${word}s`, word.toUpperCase()]
    : [word, `${word}s`, `${word}es`, `${word}'s`];
  return { word, open, capital, forms };
}

/** Lower case without marks: pâté and pate are one word, and a curly apostrophe is a straight one. */
function folded(text: string): string {
  return text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase().replaceAll('’', "'");
}

function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  let last = 0;
  for (const m of text.matchAll(/[\p{L}\p{N}\p{M}]+(?:['’][\p{L}]+)?/gu)) {
    const between = text.slice(last, m.index);
    tokens.push({
      word: folded(m[0]),
      raw: m[0],
      at: m.index,
      end: m.index + m[0].length,
      wall: /[.,;:?!()]/.test(between),
    });
    last = m.index + m[0].length;
  }
  return tokens;
}

/** A text cut into words once, for all the phrases that are looked for in it. */
export interface Words {
  readonly text: string;
  readonly tokens: readonly Token[];
  /** Every word as it is written and as it is compared. */
  readonly present: ReadonlySet<string>;
}

export function wordsIn(text: string): Words {
  const tokens = tokensOf(text);
  return { text, tokens, present: new Set(tokens.flatMap((t) => [t.word, t.raw])) };
}

export interface Hit {
  /** What stands in the text. */
  readonly words: string;
  readonly at: number;
  readonly end: number;
}

/** Every place where a phrase stands in a text, unless one of `but` covers it. */
export function findPhrases(words: Words, look: readonly Phrase[], but: readonly Phrase[] = []): Hit[] {
  const all = (phrases: readonly Phrase[]) =>
    phrases
      .filter((phrase) => mayStand(phrase, words))
      .flatMap((phrase) => words.tokens.flatMap((_, i) => matchAt(words, i, phrase) ?? []));
  const hits = all(look);
  if (hits.length === 0) return hits;
  const not = all(but);
  return hits.filter((hit) => !not.some((n) => n.at <= hit.at && n.end >= hit.end));
}

/** A quick no for nearly every phrase: its first word does not stand in the text at all. */
function mayStand({ steps }: Phrase, { present }: Words): boolean {
  const first = steps[0];
  if (first === undefined || first === 'gap') return true;
  return first.some((w) => w.open || w.forms.some((form) => present.has(form)));
}

function matchAt({ tokens, text }: Words, from: number, phrase: Phrase): Hit | undefined {
  const end = reach(tokens, from, phrase.steps, 0, true);
  const first = tokens[from];
  const last = end === undefined ? undefined : tokens[end];
  return first && last ? { words: text.slice(first.at, last.end), at: first.at, end: last.end } : undefined;
}

/** Index of the last word of a match that begins at `i`, if there is one. */
function reach(
  tokens: readonly Token[],
  i: number,
  steps: readonly Step[],
  step: number,
  start: boolean,
): number | undefined {
  const want = steps[step];
  const token = tokens[i];
  if (want === undefined || token === undefined || (!start && token.wall)) return undefined;
  if (want === 'gap') {
    for (let skip = 0; skip <= LONGEST_GAP; skip++) {
      if (tokens.slice(i, i + skip).some((t, k) => t.wall && (k > 0 || !start))) return undefined;
      const end = reach(tokens, i + skip, steps, step + 1, false);
      if (end !== undefined) return end;
    }
    return undefined;
  }
  if (!want.some((w) => isWord(w, token))) return undefined;
  return step === steps.length - 1 ? i : reach(tokens, i + 1, steps, step + 1, false);
}

function isWord(want: Word, token: Token): boolean {
  if (want.open) return token.word.startsWith(want.word);
  return want.forms.includes(want.capital ? token.raw : token.word);
}
