import type { SignName } from '../figures/index.js';
import type { Food } from '../nutrition/index.js';

/** The drawing that stands for a food's form: can, strainer, bag … */
export function signOf(food: Food): SignName {
  if (food.state === 'canned, drained and rinsed') return 'strainer';
  if (food.state.startsWith('canned') || /\bcanned\b/.test(food.form)) return 'can';
  if (food.state.startsWith('frozen')) return 'frozen';
  if (food.state === 'dry' || /\b(dried|dry)\b/.test(food.form)) return 'bag';
  return food.state === 'raw' ? 'leaf' : 'pot';
}
