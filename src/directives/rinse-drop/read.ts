import type { Attribute, DirectivePart } from '../../lesson/index.js';
import {
  type Amount,
  convert,
  type Food,
  parseAmount,
  parseBasis,
  rinseKindOf,
} from '../../nutrition/index.js';
import { type Foods, isFood } from '../../records/index.js';
import type { ReadContext } from '../contract.js';
import { foodProblem, readProblem } from '../problems.js';
import { TREATMENTS, type Values } from './schema.js';

export function read(part: DirectivePart, context: ReadContext): Values | undefined {
  const { report } = context;
  const foodWords = part.attributes.get('food');
  const sodium = part.attributes.get('label-sodium');
  const basisWords = part.attributes.get('label-basis');
  if (!part.id || !foodWords || !sodium || !basisWords) return undefined;
  const food = cannedFood(context.foods, foodWords.value);
  if (!food.ok) report.add(foodProblem(foodWords.value, food, foodWords.place));
  const label = readSodium(sodium, context);
  const basis = parseBasis(basisWords.value);
  if (!basis.ok) report.add(readProblem('N18', basis, basisWords.place));
  if (!food.ok || !label || !basis.ok) return undefined;
  return {
    id: part.id,
    name: foodWords.value.split(',')[0]?.trim() ?? '',
    food: food.food,
    kind: rinseKindOf(food.food.name),
    label,
    basis: basis.value,
    treatment: TREATMENTS.find((t) => t === part.attributes.get('treatment')?.value) ?? 'drained and rinsed',
    place: part.place,
    labelPlace: sodium.place,
    basisPlace: basisWords.place,
  };
}

/** The food's canned form: the row itself, or the first canned form of its kind. */
function cannedFood(
  foods: Foods,
  words: string,
): { ok: true; food: Food } | { ok: false; near: readonly string[] } {
  const found = foods.find(words);
  if (isFood(found)) return { ok: true, food: found };
  const canned = foods
    .forms(words.split(',')[0]?.trim() ?? '')
    .find((food) => food.state.startsWith('canned'));
  return canned ? { ok: true, food: canned } : { ok: false, near: found.near };
}

function readSodium(attribute: Attribute, { report }: ReadContext): Amount<'mg'> | undefined {
  const { value, place } = attribute;
  const read = parseAmount(value);
  const amount = read.ok ? read.value.amount : null;
  if (read.ok && (amount?.unit === 'mg' || amount?.unit === 'g') && read.value.rest === '') {
    return convert({ value: amount.count, unit: amount.unit }, 'mg');
  }
  report.add(
    readProblem(
      'directives/label',
      read.ok
        ? {
            reason: `"${value}" is no amount of sodium.`,
            hint: 'Write it as the label does, such as 460 mg.',
          }
        : read,
      place,
    ),
  );
  return undefined;
}
