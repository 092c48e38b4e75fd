/**
 * A name as it is looked up: lower case, without accents, one space between words, none before a comma.
 * `Piña`, `pina` and ` PIÑA ` are the same name.
 */
export function nameKey(name: string): string {
  // Nearly every name of the table is already as it is looked up, and loading must not be felt.
  if (/^[a-z0-9%'()-]+(?:,? [a-z0-9%'()-]+)*$/.test(name)) return name;
  return name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[‘’]/g, "'")
    .replace(/[‐‑]/g, '-')
    .replace(/\s*,\s*/g, ', ')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/,$/, '');
}

/** A food's id: its name in lower case without accents, words joined by hyphens. */
export function idOf(name: string): string {
  return nameKey(name)
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}

/** The part before the first comma and the part after it, both as they are looked up. */
export function splitName(key: string): { readonly head: string; readonly tail: string } {
  const comma = key.indexOf(', ');
  return comma < 0 ? { head: key, tail: '' } : { head: key.slice(0, comma), tail: key.slice(comma + 2) };
}

/**
 * The key itself, then the same name with the last word before the comma in the singular or plural:
 * `onions` also as `onion`, `cherry, raw` also as `cherries, raw`. Only names that stand in the table
 * count, so a form that no language has does no harm.
 */
export function numberForms(key: string): readonly string[] {
  const { head, tail } = splitName(key);
  const rest = tail === '' ? '' : `, ${tail}`;
  const heads = [`${head}s`, `${head}es`, head.replace(/y$/, 'ies')];
  if (head.endsWith('ies')) heads.push(`${head.slice(0, -3)}y`);
  if (head.endsWith('es')) heads.push(head.slice(0, -2));
  if (head.endsWith('s')) heads.push(head.slice(0, -1));
  return [key, ...heads.filter((other) => other !== head).map((other) => other + rest)];
}

/**
 * Other words that lessons use for the forms of a kind, with the forms they may mean. Words count only
 * when the kind has exactly one of those forms.
 */
const FORM_WORDS: Readonly<Record<string, readonly string[]>> = {
  dry: ['dry'],
  dried: ['dry', 'dried'],
  uncooked: ['dry'],
  'dry, uncooked': ['dry'],
  'dried, uncooked': ['dry'],
  cooked: [
    'cooked',
    'cooked, no salt',
    'dried, cooked at home',
    'fresh, boiled, no salt',
    'baked, no salt',
    'baked',
  ],
  'cooked at home': ['dried, cooked at home'],
  'dried, cooked': ['dried, cooked at home'],
  'dried, boiled': ['dried, cooked at home'],
  'dried, boiled, no salt': ['dried, cooked at home'],
  'dried, cooked, no salt': ['dried, cooked at home'],
  'dried, cooked without salt': ['dried, cooked at home'],
  'dried, cooked at home, no salt': ['dried, cooked at home'],
  'dried, cooked at home without salt': ['dried, cooked at home'],
  'cooked without salt': ['dried, cooked at home', 'fresh, boiled, no salt', 'cooked, no salt'],
  'cooked, no salt': ['dried, cooked at home', 'fresh, boiled, no salt'],
  boiled: ['fresh, boiled, no salt', 'boiled without skin, no salt'],
  'boiled, no salt': ['fresh, boiled, no salt', 'dried, cooked at home'],
  fresh: ['raw'],
  'fresh, raw': ['raw'],
  'fresh, boiled': ['fresh, boiled, no salt'],
  'fresh, cooked': ['fresh, boiled, no salt'],
  'fresh, cooked, no salt': ['fresh, boiled, no salt'],
  frozen: ['frozen, boiled, no salt', 'frozen, cooked', 'frozen, unsweetened'],
  'frozen, boiled': ['frozen, boiled, no salt', 'frozen, cooked'],
  'frozen, boiled, no salt': ['frozen, cooked'],
  'frozen, cooked': ['frozen, boiled, no salt'],
  'frozen, cooked, no salt': ['frozen, boiled, no salt', 'frozen, cooked'],
  canned: ['canned, with the liquid'],
  'canned, with liquid': ['canned, with the liquid'],
  'canned, with its liquid': ['canned, with the liquid'],
  'canned, with the can liquid': ['canned, with the liquid'],
  'canned, not drained': ['canned, with the liquid'],
  'canned, rinsed': ['canned, drained and rinsed'],
  'canned, drained, rinsed': ['canned, drained and rinsed'],
  'canned, rinsed and drained': ['canned, drained and rinsed'],
  'canned, low sodium': ['canned, low sodium, with the liquid'],
  'canned, low sodium, with liquid': ['canned, low sodium, with the liquid'],
  'canned, no salt added, with liquid': ['canned, no salt added, with the liquid'],
  'canned, no salt added': ['canned, no salt added, drained', 'canned, no salt added, with the liquid'],
  'canned, drained, no salt added': ['canned, no salt added, drained'],
  'no salt added, canned, drained': ['canned, no salt added, drained'],
};

/** The forms that an author's words may mean, both as they are looked up; the words themselves come first. */
export function formsMeant(key: string): readonly string[] {
  return Object.hasOwn(FORM_WORDS, key) ? (FORM_WORDS[key] ?? []) : [];
}
