export { type BarredFoodsInput, checkBarredFoods } from './barred.js';
export { checkNeededCautions, type NeededCautionsInput } from './needed.js';
export { checkRefusedWords, type RefusedWordsInput } from './refused.js';
export { checkWeightAudience, type WeightAudienceInput } from './weight-audience.js';
