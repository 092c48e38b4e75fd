export {
  displayStep,
  formatDate,
  formatDigits,
  formatEnd,
  formatList,
  formatQuantity,
  outward,
  roundToStep,
  type Unrounded,
} from './format.js';
export { POLICIES, type Policy } from './policy.js';
export { direction, isSpoken, LANGUAGES, type Language, SPOKEN, type Spoken } from './tags.js';
export { fillSlots, type Say, type Slots, sayFrom, type Term, type TermTable } from './terms.js';
