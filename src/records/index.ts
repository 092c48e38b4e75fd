export { recordCodes } from './codes.js';
export { DESCRIPTIONS_FILE, EVERYDAY_FILE, RELEASE_FILE } from './columns.js';
export { type Foods, isFood, loadFoods, type NearFoods, type RecordFiles } from './foods.js';
export * from './local/index.js';
export type { ReleaseRow, ReleaseWeight } from './release.js';
export type { FoodHit } from './search.js';
export {
  isSource,
  isTaken,
  loadSources,
  type NearSources,
  type Seen,
  SOURCES_FILE,
  type Source,
  type Sources,
  sourceBrief,
  sourceWords,
  withSources,
} from './sources.js';
export { isTerm, loadTerms, TERMS_FILE, type Term, type TermForm, type TermList } from './term-list.js';
export { readYaml, shaped, type YamlText } from './yaml.js';
