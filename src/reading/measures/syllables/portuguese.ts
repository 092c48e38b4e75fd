const VOWEL = /[aeiouáâãàéêíóôõúü]/u;
const STRONG = /[aeoáâãàéêóôõ]/u;
const RISING_END = /[iu][aeo]s?$/u;

/**
 * Syllables of one Portuguese word by its spelling, as words are divided in Brazil: a vowel with a following
 * i or u is one (pei-xe), also ão, ãe and õe; i or u before another vowel is two (di-a), except after q and
 * g, and at the end of a word with an accent before it (á-gua, fa-mí-lia). i and u stand alone before nh and
 * before l, m, n, r, z that close their syllable (ra-iz, a-in-da).
 */
export function portugueseSyllables(word: string): number {
  const plain = word
    .toLowerCase()
    .replace(/([qg])[uü](?=[eiéêí])/gu, '$1')
    .replace(/([qg])u(?=[aoáâãóô])/gu, '$1')
    .replace(/y/gu, 'i');
  const chars = [...plain];
  let count = 0;
  for (let i = 0; i < chars.length; i += 1) {
    if (!VOWEL.test(chars[i] ?? '')) continue;
    count += 1;
    if (joinsNext(chars, i)) i += 1;
  }
  const accentBefore = /[áâéêíóôú].*[iu][aeo]s?$/u.test(plain);
  if (accentBefore && RISING_END.test(plain) && !/[aeoáâãéêóô][iu][aeo]s?$/u.test(plain)) count -= 1;
  return Math.max(1, count);
}

/** Whether the vowel at `i` and the next one are one syllable. */
function joinsNext(chars: readonly string[], i: number): boolean {
  const [a = '', b = ''] = [chars[i], chars[i + 1]];
  if (a === 'ã' || a === 'õ') return /[oei]/u.test(b);
  if (!/[iu]/u.test(b)) return false;
  const rest = chars.slice(i + 2).join('');
  const closes = /^(?:nh|[lmnrz](?![aeiouáâãàéêíóôõúüh]))/u.test(rest);
  const weak = /[iu]/u.test(a) && a !== b;
  return (STRONG.test(a) || weak || a === 'ú') && !closes;
}
