/** Two letters that are one vowel. They are taken from left to right: "Bauer" is au and e. */
const PAIRS = /^(?:aa|ee|oo|ei|ai|au|eu|äu|ie|ey|ay|oi|oy)/u;
const VOWEL = /^[aeiouyäöüàáéèê]/u;

/**
 * Syllables of one German word by its spelling, as words are divided: Ka-lo-rie, Por-ti-on, Di-a-be-tes.
 * Where a prefix or the ending -eum brings two vowels together, they stay apart.
 */
export function germanSyllables(word: string): number {
  let rest = word
    .toLowerCase()
    .replace(/^(be|ge)(?=inhalt|irr|urteil|urlaub|ehr|impf)/u, '$1-')
    .replace(/(?<=l)äum(?=s?$)/u, 'ä-um')
    .replace(/eum(?=s?$)/u, 'e-um')
    .replace(/qu/gu, 'q')
    .replace(/(^|[^\p{L}])y(?=[aeiou])/gu, '$1j');
  let count = 0;
  while (rest !== '') {
    const pair = PAIRS.exec(rest)?.[0];
    if (pair ?? VOWEL.test(rest)) count += 1;
    rest = rest.slice(pair?.length ?? 1);
  }
  return Math.max(1, count);
}
