export {
  BUDGET,
  boxesOf,
  boxWords,
  cautionBlock,
  MOST_BOXES,
} from './block.js';
export { cardCautions, forCards } from './card.js';
export { cautionCodes, cautionProblem } from './codes.js';
export { type Condition, parseCondition, TESTS } from './condition.js';
export { type ReviewRow, reviewRows, waiting } from './confirm.js';
export {
  type DirectiveFacts,
  type FactFood,
  type Facts,
  MIXED_ROOM,
  NO_FACTS,
  type Passage,
  type Pulled,
  type Reason,
  type Rewording,
} from './facts.js';
export {
  type FigureSentence,
  figureCautionBlocks,
  figureCautions,
  notesOf,
  pulledBy,
  type SlideCautions,
  slideCautions,
  slideFigureCautions,
  slidePointer,
} from './figure.js';
export {
  namesMedicine,
  standingBlock,
  standingLines,
  standingSentences,
  unconfirmedLine,
} from './lines.js';
export { loadRegister, type RegisterText } from './load.js';
export { type OwnContext, type ReadCaution, readCaution, type WrittenCaution } from './own.js';
export { pull } from './pull.js';
export {
  type Basis,
  type Caution,
  type CautionKind,
  HEADINGS,
  type Heading,
  type Refusal,
  type Register,
  type Severity,
  SIZES,
  type Size,
  type Wording,
} from './register.js';
export { type RoomGroup, roomIn } from './rooms.js';
export { sentencesOf, wordCount } from './sentences.js';
export { slotsOf } from './slots.js';
export { withoutWeight } from './weight-free.js';
export { OUTPUTS, type Output, type Setting, sizeFor, strongParts, wordsOf } from './wording.js';
