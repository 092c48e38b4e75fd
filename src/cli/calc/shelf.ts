import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createReport, nearest } from '../../diagnostics/index.js';
import { ok, refuse } from '../../nutrition/index.js';
import { nearWords } from '../../nutrition/spelling.js';
import {
  type Foods,
  isFood,
  isSource,
  loadFoods,
  loadSources,
  SOURCES_FILE,
  sourceWords,
} from '../../records/index.js';
import { PROGRAM } from '../disk.js';
import type { Shelf } from './contract.js';

const NEAR = 5;
/** No name of a food is longer; comparing more would take long. */
const LONGEST = 80;
const FIND = 'platework foods finds foods by their words.';
const assetsOf = (root: string) => (path: string) => readFileSync(join(root, 'assets', path), 'utf8');

/** The program's own foods, read when a calculation first asks for one. */
export function openShelf(root = PROGRAM): Shelf {
  const read = assetsOf(root);
  let loaded: Foods | undefined;
  const foods = () => {
    loaded ??= loadFoods({ read }, createReport());
    return loaded;
  };
  const near = (name: string, first: readonly string[], all: readonly string[]) =>
    [
      ...new Set([
        ...first,
        ...nearest(name.slice(0, LONGEST), all, NEAR),
        ...nearWords(name.slice(0, LONGEST), all, NEAR),
      ]),
    ].slice(0, NEAR);
  return {
    food: (name) => {
      const found = foods().find(name);
      if (isFood(found)) return ok(found);
      const hits = foods().search(name.slice(0, LONGEST), NEAR);
      const first = [...found.near, ...hits.flatMap(({ name: hit }) => (hit === undefined ? [] : [hit]))];
      return refuse(`No food is called "${name}".`, FIND, near(name, first, foods().names));
    },
    forms: (kind) => {
      const found = foods().forms(kind);
      return found.length > 0
        ? ok(found)
        : refuse(`No kind of food is called "${kind}".`, FIND, near(kind, [], foods().kinds));
    },
  };
}

/** Sources in words: of ids that the list of sources knows, else as they stand. A record's number stays with its id. */
export function sourcesInWords(sources: readonly string[]): string[] {
  const list = loadSources(assetsOf(PROGRAM)(SOURCES_FILE), createReport());
  const said = sources.map((source) => {
    const [id = ''] = source.split(/[ ,]/);
    const found = list.find(id);
    return isSource(found) ? `${id}: ${sourceWords(found)}` : source;
  });
  return [...new Set(said)];
}
