import type { Place } from '../diagnostics/index.js';
import type { Condition, Test } from './condition.js';
import { type DirectiveFacts, type FactFood, type Facts, MIXED_ROOM, type Passage } from './facts.js';
import { findPhrases, type Words, wordsIn } from './phrases.js';
import type { Fact } from './register.js';
import { sentencesOf } from './sentences.js';

/** What made a test hold: where, in which directive, in which sentence. */
export interface Evidence {
  readonly says?: string;
  readonly place?: Place;
  readonly directive?: string;
  readonly sentence?: string;
}

/** What conditions are held against: a lesson, or one directive of it. */
export interface Scene {
  readonly facts: Facts;
  /** Only this directive counts for foods, nutrients, settings and words. */
  readonly only?: DirectiveFacts;
  /** Ids pulled so far. */
  readonly pulled: ReadonlySet<string>;
}

/**
 * Everything that makes a condition hold, or nothing. Tests about pages and about what is pulled as a
 * whole are decided elsewhere and do not hold here.
 */
export function evidence(condition: Condition, scene: Scene, fact?: Fact): readonly Evidence[] | undefined {
  const found: Evidence[] = [];
  let holds = false;
  for (const group of condition) {
    const each = group.map((test) => testEvidence(test, scene, fact));
    if (each.some((e) => e === undefined)) continue;
    holds = true;
    found.push(...each.flatMap((e) => e ?? []));
  }
  if (!holds) return undefined;
  return found.length > 0 ? found : [{}];
}

function testEvidence(test: Test, scene: Scene, fact: Fact | undefined): readonly Evidence[] | undefined {
  const { facts } = scene;
  const some = (list: readonly Evidence[]) => (list.length > 0 ? list : undefined);
  const directives = (scene.only ? [scene.only] : facts.directives).filter(
    (d) => test.within.length === 0 || test.within.includes(d.name),
  );
  const has = (value: string) => test.values.includes(value);
  switch (test.name) {
    case 'tag':
      return some(
        facts.topics.flatMap((t) => (has(t.name) ? [{ says: `topic ${t.name}`, ...placed(t.place) }] : [])),
      );
    case 'guidance':
      return facts.guidance !== undefined && has(facts.guidance) ? [] : undefined;
    case 'stated':
      return facts.audiences?.some(has) ? [] : undefined;
    case 'audience':
      return (facts.audiences ?? MIXED_ROOM).some(has) ? [] : undefined;
    case 'directive':
      return some(directives.flatMap((d) => (has(d.name) ? [{ says: d.name, ...here(d) }] : [])));
    case 'food':
      return some(foods(directives, (f) => f.food.flags.some(has)));
    case 'new':
      return some(foods(directives, (f) => f.side === 'new' && f.food.flags.some(has)));
    case 'contains':
      return some(foods(directives, (f) => test.values.some((v) => (f.food.contains?.[v] ?? 'no') !== 'no')));
    case 'nutrient':
      return some(
        directives.flatMap((d) =>
          d.nutrients.filter(has).map((n) => ({ says: `${n} in ${d.name}`, ...here(d) })),
        ),
      );
    case 'set':
      return some(
        directives.flatMap((d) =>
          (d.settings?.[test.key ?? ''] ?? []).some(has)
            ? [{ says: `${test.key} of ${d.name}`, ...here(d) }]
            : [],
        ),
      );
    case 'word':
      return some(words(facts, scene.only, test.within, fact));
    case 'pulled':
      return test.values.some((id) => scene.pulled.has(id)) ? [] : undefined;
    default:
      return undefined;
  }
}

function placed(place: Place | undefined): { readonly place?: Place } {
  return place ? { place } : {};
}

function here(d: DirectiveFacts): Evidence {
  return { directive: d.id, ...placed(d.place) };
}

function foods(directives: readonly DirectiveFacts[], wanted: (food: FactFood) => boolean): Evidence[] {
  return directives.flatMap((d) =>
    d.foods
      .filter(wanted)
      .map((f) => ({ says: `${f.food.name} in ${d.name}`, directive: d.id, ...placed(f.place ?? d.place) })),
  );
}

/** The register's words are English; texts in other languages are not looked at. */
function words(
  facts: Facts,
  only: DirectiveFacts | undefined,
  within: readonly string[],
  fact: Fact | undefined,
): Evidence[] {
  if (!fact || facts.language !== 'en') return [];
  const nameOf = (id: string | undefined) => facts.directives.find((d) => d.id === id)?.name;
  return facts.texts
    .filter((t) => !only || t.directive === only.id)
    .filter((t) => within.length === 0 || within.includes(nameOf(t.directive) ?? ''))
    .flatMap((t) => hits(t, fact));
}

function hits(passage: Passage, fact: Fact): Evidence[] {
  return sentencesIn(passage).flatMap(({ words, at }) =>
    findPhrases(words, fact.look, fact.but).map((hit) => ({
      says: `"${hit.words}" in ${passage.where}`,
      sentence: words.text,
      ...(passage.directive === undefined ? {} : { directive: passage.directive }),
      ...placed(passage.place && shifted(passage.place, passage.text, at + hit.at)),
    })),
  );
}

type Sentences = readonly { readonly words: Words; readonly at: number }[];
/** Each passage is cut into words once, though many triggers look at it. */
const CUT = new WeakMap<Passage, Sentences>();

function sentencesIn(passage: Passage): Sentences {
  const known = CUT.get(passage);
  if (known) return known;
  const cut = sentencesOf(passage.text).map(({ text, at }) => ({ words: wordsIn(text), at }));
  CUT.set(passage, cut);
  return cut;
}

/** The place of a hit; a passage on one line keeps its columns, a longer one its start. */
function shifted(place: Place, text: string, at: number): Place {
  const oneLine = place.endLine === place.line && place.endColumn === place.column + text.length;
  return oneLine ? { file: place.file, line: place.line, column: place.column + at } : place;
}
