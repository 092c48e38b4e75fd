/** Vowels and `y` as a vowel; `h` between vowels does not part them. */
const GROUP = /[aeiouáéíóúü]+(?:h[aeiouáéíóúü]+)*/gu;

/**
 * Syllables of one Spanish word by its spelling: each strong vowel (a, e, o) is one; i and u join a strong
 * neighbor unless an accent stands on them; two weak vowels are one. `u` in que, qui, gue, gui is silent.
 */
export function spanishSyllables(word: string): number {
  const plain = word
    .toLowerCase()
    .replace(/([qg])u(?=[eiéí])/gu, '$1')
    // At the end and before a consonant, y is a vowel; between vowels it is a consonant.
    .replace(/y(?![aeiouáéíóú])/gu, 'i');
  const groups = plain.match(GROUP) ?? [];
  return Math.max(
    1,
    groups.map(inGroup).reduce((a, b) => a + b, 0),
  );
}

function inGroup(group: string): number {
  const vowels = group.replace(/h/gu, '');
  const strong = vowels.match(/[aeoáéó]/gu)?.length ?? 0;
  // An accent on i or u beside a strong vowel makes a syllable of its own: día, frío, aún.
  const parted = vowels.match(/[íú](?=[aeoáéó])|(?<=[aeoáéó])[íú]/gu)?.length ?? 0;
  return Math.max(1, strong + parted);
}
