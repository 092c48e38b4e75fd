import { nearest, type Report } from '../diagnostics/index.js';
import type { Food } from '../nutrition/food.js';
import { problem } from './codes.js';
import { EVERYDAY_FILE, RELEASE_FILE } from './columns.js';
import { type EverydayRow, readEveryday } from './everyday.js';
import { agreesWithRelease, makeFood } from './food-record.js';
import type { LocalFood } from './local/foods.js';
import { formsMeant, idOf, nameKey, numberForms, splitName } from './names.js';
import { openRelease, type Release, type ReleaseRow } from './release.js';
import { type FoodHit, type SearchEntry, searchFoods } from './search.js';
import type { Cell } from './table.js';

/** The files under `assets/`, by their paths with `/`; `undefined` for one that is not there. */
export interface RecordFiles {
  read(path: string): string | undefined;
}

/** No food of that name, with the names of up to five foods that come near it. */
export interface NearFoods {
  readonly near: readonly string[];
}

/** The foods that lessons may name. */
export interface Foods {
  /** Names of all everyday foods, in the order of the table. */
  readonly names: readonly string[];
  /** Names of all kinds, in the order of the table. */
  readonly kinds: readonly string[];
  /**
   * A food by its name, an alias, or a kind (or another name of the kind) and a form:
   * `black beans, canned, drained`, `frijoles negros, dry`. Case, accents, spaces and the plural do not
   * matter. A kind of one form is found by the kind alone; a kind of several forms is not guessed.
   */
  find(name: string): Food | NearFoods;
  /** All forms of a kind, by the kind's name or another name of it; empty if there is no such kind. */
  forms(kind: string): readonly Food[];
  /** One form of a kind, by the form's words or other words that only one form of the kind answers to. */
  form(kind: string, words: string): Food | NearFoods;
  /** Foods whose name, other names or description hold all the words, as `searchFoods` ranks them. */
  search(words: string, most?: number): readonly FoodHit[];
  /**
   * These foods with a site's own after them. A local food whose name, other name or form of a kind stands
   * for another food already is reported and left out.
   */
  with(local: readonly LocalFood[], report: Report): Foods;
  /** A food of the release by its number. */
  record(number: string): ReleaseRow | undefined;
}

/** Whether a lookup found a food. */
export function isFood(found: Food | NearFoods): found is Food {
  return !('near' in found);
}

const NEAR = 5;
/** Longer than any name of a food; nothing is near to it, and comparing would take long. */
const LONGEST = 200;

/**
 * Loads the everyday foods with their records. Nutrients of a food are read when it is first asked for.
 * Reports tables that are missing or malformed, names that stand twice, and rows that disagree with the
 * release; rows without a record are left out. What could be read can be used.
 */
export function loadFoods(files: RecordFiles, report: Report): Foods {
  const text = (path: string): string => {
    const found = files.read(path);
    if (found !== undefined) return found;
    report.add(
      problem('records/missing-table', `The table assets/${path} is missing.`, {
        hint: 'Install the program again: the table belongs to it.',
      }),
    );
    return '';
  };
  const releaseText = text(RELEASE_FILE);
  const everydayText = text(EVERYDAY_FILE);
  const release = openRelease(releaseText, `assets/${RELEASE_FILE}`, report);
  const rows = everydayText === '' ? [] : readEveryday(everydayText, `assets/${EVERYDAY_FILE}`, report);
  return foodsOf(
    rows
      .filter((row) => agreesWithRelease(row, release, report))
      .map((row) => ({ ...row, make: () => makeFood(row, release) })),
    release,
    report,
  );
}

/** A row of the table, or a site's own food, as names find it. */
type Entry = Pick<
  EverydayRow,
  'name' | 'aliases' | 'kind' | 'kindAliases' | 'form' | 'number' | 'description'
> & {
  readonly make: () => Food;
};

function foodsOf(
  rows: readonly Entry[],
  release: Release,
  report: Report,
  local: readonly LocalFood[] = [],
): Foods {
  const byName = new Map<string, Entry>();
  const byId = new Map<string, Entry>();
  const byKind = new Map<string, Map<string, Entry>>();
  const kindNames = new Map<string, string>();
  const claim = <T>(map: Map<string, T>, key: string, value: T, cell: Cell, what: string) => {
    const before = map.get(key);
    if (before === undefined) map.set(key, value);
    else if (before !== value) report.add(twice(cell, what));
  };
  const enter = (row: Entry) => {
    const kind = nameKey(row.kind.text);
    claim(byId, idOf(row.name.text), row, row.name, `The name "${row.name.text}"`);
    for (const cell of [row.name, ...row.aliases])
      claim(byName, nameKey(cell.text), row, cell, `The name "${cell.text}"`);
    for (const cell of [row.kind, ...row.kindAliases])
      claim(kindNames, nameKey(cell.text), kind, cell, `The kind "${cell.text}"`);
    const forms = byKind.get(kind) ?? new Map<string, Entry>();
    byKind.set(kind, forms);
    claim(forms, nameKey(row.form), row, row.name, `The form "${row.form}" of ${row.kind.text}`);
  };
  rows.forEach(enter);
  const all = [...rows];
  for (const one of local) {
    const { food, names } = one;
    const taken = names.find((cell) => byName.has(nameKey(cell.text)) || byId.has(idOf(cell.text)));
    const kind = kindNames.get(nameKey(food.kind)) ?? nameKey(food.kind);
    const form = byKind.get(kind)?.has(nameKey(food.form)) ? names[0] : undefined;
    if (taken) report.add(twice(taken, `The name "${taken.text}"`));
    else if (form) report.add(twice(form, `The form "${food.form}" of ${food.kind}`));
    else {
      const row = entryOf(one, byKind.get(kind)?.values().next().value);
      enter(row);
      all.push(row);
    }
  }

  const made = new Map<Entry, Food>();
  const food = (row: Entry): Food => {
    const found = made.get(row) ?? row.make();
    made.set(row, found);
    return found;
  };
  const kindOf = (name: string): Map<string, Entry> | undefined => {
    const key = numberForms(nameKey(name)).find((form) => kindNames.has(form));
    return key === undefined ? undefined : byKind.get(kindNames.get(key) ?? '');
  };
  const formOf = (forms: ReadonlyMap<string, Entry>, words: string): Entry | undefined => {
    const exact = forms.get(words);
    if (exact !== undefined) return exact;
    const meant = formsMeant(words).flatMap((form) => forms.get(form) ?? []);
    return meant.length === 1 ? meant[0] : undefined;
  };
  const entries = lazily(() => searchEntries(all));
  const search = (words: string, most: number) =>
    searchFoods(entries(), () => release.descriptions(), words, most);
  const namesOf = (forms: ReadonlyMap<string, Entry> | undefined) =>
    [...(forms?.values() ?? [])].map((row) => row.name.text);
  const near = (written: string, forms?: ReadonlyMap<string, Entry>): NearFoods => {
    if (written.length > LONGEST) return { near: [] };
    const key = nameKey(written);
    const { head, tail } = splitName(key);
    if (forms !== undefined)
      return { near: tail === '' ? namesOf(forms).slice(0, NEAR) : rank(written, namesOf(forms)) };
    const found = nearest(head, kindNames.keys(), 2).flatMap((kind) => {
      const names = namesOf(kindOf(kind));
      return tail === '' ? names : rank(`${kind}, ${tail}`, names).slice(0, 3);
    });
    for (const name of nearest(key, byName.keys(), NEAR)) found.push(byName.get(name)?.name.text ?? name);
    if (found.length === 0) found.push(...search(written, NEAR).flatMap((hit) => hit.name ?? []));
    return { near: [...new Set(found)].slice(0, NEAR) };
  };

  const foods: Foods = {
    names: all.map((row) => row.name.text),
    kinds: [...new Set(all.map((row) => row.kind.text))],
    find(name) {
      const key = nameKey(name);
      const exact = numberForms(key).find((form) => byName.has(form));
      const row = exact === undefined ? undefined : byName.get(exact);
      if (row !== undefined) return food(row);
      const whole = kindOf(key);
      const [only] = whole?.size === 1 ? whole.values() : [];
      if (only !== undefined) return food(only);
      const { head, tail } = splitName(key);
      const forms = whole ?? kindOf(head);
      const form = forms && tail !== '' ? formOf(forms, tail) : undefined;
      return form ? food(form) : near(name, forms);
    },
    forms: (kind) => [...(kindOf(kind)?.values() ?? [])].map(food),
    form(kind, words) {
      const forms = kindOf(kind);
      const key = nameKey(words);
      const row =
        forms && (formOf(forms, key) ?? [...forms.values()].find((f) => nameKey(f.name.text) === key));
      return row ? food(row) : near(forms ? `${kind}, ${words}` : kind, forms);
    },
    search: (words, most = 20) => search(words, most),
    with: (more, to) => (more.length === 0 ? foods : foodsOf(rows, release, to, [...local, ...more])),
    record: (number) => release.row(number),
  };
  return foods;
}

function lazily<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

/** The rows as a search sees them. Other names of a kind stand on its first row and answer for all its rows. */
function searchEntries(rows: readonly Entry[]): readonly SearchEntry[] {
  const ofKind = new Map<string, readonly string[]>();
  return rows.map((row) => {
    const others = ofKind.get(row.kind.text) ?? row.kindAliases.map((cell) => cell.text);
    ofKind.set(row.kind.text, others);
    return {
      name: row.name.text,
      kind: row.kind.text,
      others: [...row.aliases.map((cell) => cell.text), ...others],
      number: row.number.text,
      description: row.description.text,
    };
  });
}

/** A site's own food as names find it; `kin` is a food of its kind that was there before. */
function entryOf({ food, names }: LocalFood, kin: Entry | undefined): Entry {
  const [name, ...aliases] = names;
  if (name === undefined) throw new Error(`${food.name} was read without its name.`);
  const cell = (text: string): Cell => ({ text, place: name.place });
  return {
    name,
    aliases,
    kind: cell(kin?.kind.text ?? food.kind),
    kindAliases: [],
    form: food.form,
    number: cell(food.record.number),
    description: cell(food.record.description),
    make: () => (kin === undefined ? food : { ...food, kind: kin.kind.text }),
  };
}

/** The names that come nearest first, then the others in their own order, up to five. */
function rank(written: string, names: readonly string[]): readonly string[] {
  return [...new Set([...nearest(written, names, NEAR), ...names])].slice(0, NEAR);
}

function twice(cell: Cell, what: string) {
  return problem('records/twice', `${what} already stands for another food.`, {
    place: cell.place,
    hint: 'Give one of the two another name.',
    actual: cell.text,
  });
}
