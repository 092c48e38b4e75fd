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
  return { word: capital ? bare : folded(bare), open, capital };
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

export interface Hit {
  /** What stands in the text. */
  readonly words: string;
  readonly at: number;
  readonly end: number;
}

/** Every place where a phrase stands in a text, unless one of `but` covers it. */
export function findPhrases(text: string, look: readonly Phrase[], but: readonly Phrase[] = []): Hit[] {
  const tokens = tokensOf(text);
  const all = (phrases: readonly Phrase[]) =>
    phrases.flatMap((phrase) => tokens.flatMap((_, i) => matchAt(tokens, i, phrase, text) ?? []));
  const not = all(but);
  return all(look).filter((hit) => !not.some((n) => n.at <= hit.at && n.end >= hit.end));
}

function matchAt(tokens: readonly Token[], from: number, phrase: Phrase, text: string): Hit | undefined {
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
  if (want.capital) return [want.word, `${want.word}s`, want.word.toUpperCase()].includes(token.raw);
  if (want.open) return token.word.startsWith(want.word);
  return [want.word, `${want.word}s`, `${want.word}es`, `${want.word}'s`].includes(token.word);
}
