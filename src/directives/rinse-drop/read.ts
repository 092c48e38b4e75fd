import type { Attribute, DirectivePart } from '../../lesson/index.js';
import {
  type Amount,
  convert,
  type Food,
  LITTLE_TO_LOSE,
  parseAmount,
  type RinseKind,
  rinseKindOf,
} from '../../nutrition/index.js';
import { isFood } from '../../records/index.js';
import { readBasis } from '../basis.js';
import type { ReadContext } from '../contract.js';
import { foodProblem, quoted, readProblem } from '../problems.js';
import { written } from '../written.js';
import { TREATMENTS, type Values } from './schema.js';

/** Reads the can and its label. Whatever cannot be read is reported at its place, and then nothing is shown. */
export function read(part: DirectivePart, context: ReadContext): Values | undefined {
  const { report } = context;
  const foodWords = written(part, 'food');
  const sodium = written(part, 'label-sodium');
  const basisWords = written(part, 'label-basis');
  if (!part.id || !foodWords || !sodium || !basisWords) return undefined;
  const can = readCan(foodWords, context);
  const label = readSodium(sodium, context);
  const basis = readBasis(basisWords, 'N18', report);
  if (!can || !label || !basis) return undefined;
  const noSaltAdded =
    part.attributes.get('no-salt-added')?.value === 'yes' || /\bno salt added\b/.test(can.food.form);
  if (noSaltAdded && label.value > LITTLE_TO_LOSE.value) {
    report.add(
      readProblem(
        'directives/label',
        {
          reason: `A can with no salt added does not hold ${label.value} mg of sodium in a serving.`,
          hint: 'Look at the label again, or leave no-salt-added out.',
        },
        sodium.place,
      ),
    );
    return undefined;
  }
  return {
    id: part.id,
    ...can,
    label,
    basis,
    treatment: TREATMENTS.find((t) => t === part.attributes.get('treatment')?.value) ?? 'drained and rinsed',
    noSaltAdded,
    place: part.place,
    foodPlace: foodWords.place,
    labelPlace: sodium.place,
    basisPlace: basisWords.place,
  };
}

/**
 * The can, of a kind that somebody measured. A kind alone (`black beans`) stands for its first canned
 * form; a food that is not canned is refused, and so is a can that no study looked at.
 */
function readCan(
  { value, place }: Attribute,
  { foods, report }: ReadContext,
): { readonly food: Food; readonly name: string; readonly kind: RinseKind } | undefined {
  const name = value
    .split(',')[0]
    ?.trim()
    .replace(/\s+/g, ' ')
    .replace(/^canned /i, '');
  const refuse = (reason: string, hint: string): undefined => {
    report.add(readProblem('N18', { reason, hint }, place));
  };
  const found = foods.find(value);
  const canned = (food: Food) => food.state.startsWith('canned');
  const named = value.includes(',') ? /,\s*canned$/i.test(value.trim()) : true;
  const food = isFood(found) ? found : named ? foods.forms(name ?? '').find(canned) : undefined;
  if (!food) {
    report.add(foodProblem(value, isFood(found) ? { near: [] } : found, place));
    return undefined;
  }
  const kind = rinseKindOf(food.name);
  if (!canned(food) && kind !== null)
    return refuse(
      `${food.name} does not come with a liquid that can be drained away.`,
      'Name a canned food, such as black beans, canned.',
    );
  if (kind === null)
    return refuse(
      `Nobody has published what draining and rinsing takes from ${food.name}.`,
      'Studies: beans; green beans, corn and peas. Leave the figure out.',
    );
  return { food, name: name ?? '', kind };
}

function readSodium({ value, place }: Attribute, { report }: ReadContext): Amount<'mg'> | undefined {
  const read = parseAmount(value);
  const amount = read.ok ? read.value.amount : null;
  if (read.ok && (amount?.unit === 'mg' || amount?.unit === 'g') && !amount.size && read.value.rest === '')
    return convert({ value: amount.count, unit: amount.unit }, 'mg');
  report.add(
    readProblem(
      'directives/label',
      read.ok
        ? {
            reason: `${quoted(value)} is no amount of sodium.`,
            hint: 'Write it as the label does, such as 460 mg.',
          }
        : read,
      place,
    ),
  );
  return undefined;
}
