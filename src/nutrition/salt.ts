import { known, notKnown } from './arithmetic.js';
import type { MassUnit, Quantity } from './quantity.js';
import { unitRatio } from './units.js';
import { FROM_LESSON, input, substitute, type Worked, type Working } from './working.js';

/** Salt for one of sodium by weight, as labels of the EU count it. Salt is 39.3 percent sodium, so 2.54 exactly. */
export const SALT_PER_SODIUM = 2.5;
/** The rule behind the factor. */
export const SALT_RULE = 'Regulation (EU) 1169/2011, Annex I';

/**
 * Sodium as salt: sodium × 2.5, in g. All the sodium counts, whether it comes from salt or not. `working` is how the
 * amount was got. Source: Regulation (EU) 1169/2011, Annex I. Not known stays not known.
 */
export function saltFromSodium(sodium: Quantity<MassUnit>, working?: Working): Worked<'g'> {
  return converted(sodium, 'sodium', 'sodium * ratio * salt_per_sodium', SALT_PER_SODIUM, 'g', working);
}

/** Salt as sodium: salt ÷ 2.5, in mg. The same factor the other way round. */
export function sodiumFromSalt(salt: Quantity<MassUnit>, working?: Working): Worked<'mg'> {
  return converted(salt, 'salt', 'salt * ratio / salt_per_sodium', 1 / SALT_PER_SODIUM, 'mg', working);
}

function converted<U extends 'g' | 'mg'>(
  from: Quantity<MassUnit>,
  name: 'sodium' | 'salt',
  formula: string,
  factor: number,
  to: U,
  working: Working | undefined,
): Worked<U> {
  const ratio = unitRatio(from.unit, to);
  const outer: Working = {
    formula,
    inputs: [
      input(name, from.value, from.unit, FROM_LESSON),
      input('ratio', ratio, `${to} per ${from.unit}`, 'definition of the units'),
      input('salt_per_sodium', SALT_PER_SODIUM, 'times', SALT_RULE),
    ],
  };
  const value = from.value === null ? null : from.value * ratio * factor;
  return {
    quantity: value === null ? notKnown(to) : { ...known(value, to), atLeast: from.atLeast },
    working: working === undefined ? outer : substitute(outer, name, working),
    estimated: false,
  };
}
