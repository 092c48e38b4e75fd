import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createReport } from '../../diagnostics/index.js';
import { ok, refuse } from '../../nutrition/index.js';
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

const assetsOf = (root: string) => (path: string) => readFileSync(join(root, 'assets', path), 'utf8');

/** The program's own foods, read when a calculation first asks for one. */
export function openShelf(root = PROGRAM): Shelf {
  const read = assetsOf(root);
  let loaded: Foods | undefined;
  const foods = () => {
    loaded ??= loadFoods({ read }, createReport());
    return loaded;
  };
  return {
    food: (name) => {
      const found = foods().find(name);
      return isFood(found)
        ? ok(found)
        : refuse(`No food is called "${name}".`, 'platework foods finds foods by their words.', found.near);
    },
    forms: (kind) => {
      const found = foods().forms(kind);
      return found.length > 0
        ? ok(found)
        : refuse(`No kind of food is called "${kind}".`, 'platework foods finds foods by their words.');
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
