const V = 'aeiouyàâäéèêëîïôöùûüœæ';

/** Verbs in the third person plural, whose -ment is not heard. */
const SILENT_MENT =
  /^(?:aiment|forment|dorment|nomment|consomment|ferment|affirment|confirment|transforment|estiment|expriment|suppriment|consument|résument|allument|fument)$/u;
/** Words in -ent that is heard; so is any -ment, -ient, -dent and -cent. */
const HEARD_WORDS =
  /^(?:dent|cent|vent|lent|gent|souvent|argent|agent|urgent|parent|talent|excellent|équivalent|récent|absent|présent|content|accent|différent|fréquent|conséquent|évident|accident|prudent|turbulent|violent|intelligent|auvent|serpent|torrent)$/u;

/**
 * Syllables of one French word as it is spoken with care: the e at the end is silent, also in -es and in the
 * -ent of verbs; an e inside a word is counted. "l'eau" is one, since l' has no vowel of its own.
 */
export function frenchSyllables(word: string): number {
  const parts = word.toLowerCase().split(/['’]/u);
  return Math.max(
    1,
    parts.map((part, i) => inPart(part, i < parts.length - 1)).reduce((a, b) => a + b, 0),
  );
}

function inPart(part: string, elided: boolean): number {
  let plain = part
    .replace(/^pay(?=s)/u, 'pa-i')
    .replace(/ao(?=û?t$|n$|ns$)/u, 'o')
    .replace(/qu(?=[aeiouyéèêâàîô])/gu, 'q')
    .replace(/qu$/u, 'q')
    .replace(/gu(?=[eiyéèê])/gu, 'g')
    .replace(/ge(?=[aoâô])/gu, 'g');
  if (elided && !new RegExp(`[${V}]`, 'u').test(plain)) return 0;
  plain = withoutSilentEnd(plain)
    // y between vowels is a consonant with an i before it: cra-yon.
    .replace(new RegExp(`(?<=[${V}])y(?=[${V}])`, 'gu'), 'j')
    // Two consonants and r or l part i and u from the next vowel: cli-ent, cru-el.
    .replace(/([bcdfgptv][rl])(i|u|ou)(?=[aeoéèêâô])/gu, '$1$2-')
    .replace(/[ïëü]/gu, '-i')
    .replace(/é(?=[aeiouéèêâô])/gu, 'é-')
    .replace(/([ao])(?=[éèê])/gu, '$1-')
    .replace(/a(?=o)/gu, 'a-')
    .replace(/o(?=o[^l])/gu, 'o-')
    .replace(/([aiou])e(?=ment)/gu, '$1');
  return Math.max(elided ? 0 : 1, plain.match(new RegExp(`[${V}]+`, 'gu'))?.length ?? 0);
}

/** Takes away a last e, es or ent that is not heard, when another vowel stands before it. */
function withoutSilentEnd(part: string): string {
  const before = new RegExp(`[${V}]`, 'u');
  const ent = /^(.+)ent$/u.exec(part)?.[1];
  if (ent !== undefined && before.test(ent)) {
    const heard =
      (HEARD_WORDS.test(part) || /(?:ment|ient|dent|cent)$/u.test(part)) && !SILENT_MENT.test(part);
    return heard ? part : ent;
  }
  const e = /^(.+?)es?$/u.exec(part)?.[1];
  return e !== undefined && before.test(e) ? e : part;
}
