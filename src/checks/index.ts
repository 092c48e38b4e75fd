export { checkOutputs, checkSource, leveledCautions, type OutputInput, type SourceInput } from './all.js';
export { type AlternativesInput, checkAlternatives } from './alternatives.js';
export { type BodiesInput, checkBodies } from './bodies.js';
export type { Built } from './built.js';
export { type CautionsKeptInput, checkCautionsKept } from './cautions-kept.js';
export { checkCodes } from './codes.js';
export { type Contradiction, contradictions } from './contradictions.js';
export { checkLevelsAgree, type Leveled, type LevelsAgreeInput } from './levels-agree.js';
export { checkNotKnown, type NotKnownInput } from './not-known.js';
export { checkRinseClaims, type RinseClaimsInput } from './rinse-claims.js';
export { checkRuleDays, RULE_DAYS, type RuleDay, webRuleFor } from './rule-days.js';
export {
  type BarredFoodsInput,
  checkBarredFoods,
  checkNeededCautions,
  checkRefusedWords,
  checkWeightAudience,
  type NeededCautionsInput,
  type RefusedWordsInput,
  type WeightAudienceInput,
} from './safety/index.js';
export { checkSameNumbers, type SameNumbersInput } from './same-numbers.js';
export { type Comparison, checkSharedBasis, type SharedBasisInput } from './shared-basis.js';
export { checkStructure, type StructureInput } from './structure.js';
export {
  checkTallies,
  suitabilityBand,
  type Tally,
  tallyPasses,
  tallyShare,
} from './tally.js';
export { checkWeightFree } from './weight-free.js';
