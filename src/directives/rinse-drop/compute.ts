import { type RinseRange, rinseRange } from '../../nutrition/index.js';
import type { ComputeContext, Computed, ComputedNumber } from '../contract.js';
import { readProblem } from '../problems.js';
import type { Values } from './schema.js';

/** The range and the bricks that show it. All in milligrams. */
export interface Bricks {
  readonly low: number;
  readonly high: number;
  /** What one brick stands for. */
  readonly worth: number;
  /** Whether a whole number of bricks lies inside what goes away, so that the key can count them. */
  readonly countable: boolean;
  readonly studies: readonly string[];
  readonly disagree: boolean;
}

export interface RinseResult extends Computed {
  readonly label: number;
  readonly littleToLose: boolean;
  /** Missing for a can with no salt added: no study measured such cans. */
  readonly bricks?: Bricks;
}

/** Bricks are worth a round number of milligrams, and a row holds at most so many. House rules. */
const WORTHS = [5, 10, 20, 50, 100, 200];
const MOST_BRICKS = 25;

/**
 * What is left of the label's sodium: label × (1 − loss), over all studies of the kind. A can with no salt
 * added has a label and no range: the studies are about cans with salt.
 */
export function compute(values: Values, { report }: ComputeContext): RinseResult | undefined {
  const { label } = values;
  const { treatment, kind, basis, noSaltAdded } = values;
  const range = rinseRange({ label, basis, kind, treatment, noSaltAdded });
  if (!range.ok) {
    // Reading saw to the sodium; what is left are the basis and a food whose study cannot be used.
    const about = basis.state === 'with liquid' ? values.foodPlace : values.basisPlace;
    report.add(readProblem('N18', range, about));
    return undefined;
  }
  const facts = {
    foods: [{ food: values.food, place: values.place }],
    nutrients: ['sodium'],
    basis: basis.words,
  };
  const { littleToLose } = range.value;
  if (noSaltAdded) return { numbers: [labelNumber(values)], facts, label: label.value, littleToLose };
  const worth = WORTHS.find((each) => label.value / each <= MOST_BRICKS);
  if (worth === undefined) {
    report.add(
      readProblem(
        'directives/label',
        {
          reason: `${label.value} mg of sodium in one serving is more than a label states.`,
          hint: 'Look at the label again.',
        },
        values.labelPlace,
      ),
    );
    return undefined;
  }
  const crossed = crossedOut(range.value, worth);
  const studies = [...new Set(range.value.findings.map((finding) => finding.study.source))];
  return {
    numbers: [
      labelNumber(values),
      ...rangeNumbers(values, range.value, studies),
      brickNumber(values, worth),
      ...(crossed ? [crossedNumber(values, crossed, studies)] : []),
    ],
    facts,
    publishes: {
      kind: 'less',
      food: values.food,
      nutrient: 'sodium',
      low: range.value.gone.low,
      high: range.value.gone.high,
      basis: basis.words,
      numbers: [`${values.id}.drop`],
    },
    label: label.value,
    littleToLose,
    bricks: {
      low: range.value.after.low,
      high: range.value.after.high,
      worth,
      countable: crossed !== undefined,
      studies,
      disagree: range.value.disagree,
    },
  };
}

function labelNumber({ id, label, basis, food }: Values): ComputedNumber {
  return {
    id: `${id}.label`,
    value: label.value,
    unit: 'mg',
    formula: 'label',
    inputs: [{ name: 'label', value: label.value, unit: 'mg', source: 'lesson' }],
    sources: [],
    what: `sodium on the label, ${basis.words} of ${food.name}`,
  };
}

function rangeNumbers(
  { id, basis, food, treatment }: Values,
  { after, working, gone, goneWorking, losses }: RinseRange,
  sources: readonly string[],
): ComputedNumber[] {
  const where = `${basis.words} of ${food.name}`;
  const { formula: _, ...share } = goneWorking;
  return [
    {
      id: `${id}.after`,
      value: null,
      low: after.low,
      high: after.high,
      unit: 'mg',
      ...working,
      sources,
      what: `sodium left when ${treatment}, ${where}`,
    },
    {
      id: `${id}.drop`,
      value: null,
      low: gone.low,
      high: gone.high,
      unit: 'mg',
      ...goneWorking,
      sources,
      what: `sodium that goes away when ${treatment}, ${where}`,
    },
    {
      id: `${id}.share`,
      value: null,
      low: losses.low * 100,
      high: losses.high * 100,
      unit: '%',
      formula: 'low = loss_low * 100; high = loss_high * 100',
      inputs: share.inputs.filter((input) => input.name !== 'label'),
      sources,
      what: `share of the sodium that goes away when ${treatment}, ${where}`,
    },
  ];
}

function brickNumber({ id }: Values, worth: number): ComputedNumber {
  const note = `the smallest of ${WORTHS.join(', ')} mg with at most ${MOST_BRICKS} bricks a row`;
  return {
    id: `${id}.brick`,
    value: worth,
    unit: 'mg',
    formula: 'brick',
    inputs: [{ name: 'brick', value: worth, unit: 'mg', source: 'house', note }],
    sources: [],
    what: 'sodium that one brick stands for',
  };
}

/** The whole bricks that lie inside what goes away; nothing when the range holds no whole number. */
function crossedOut({ gone }: RinseRange, worth: number): { fewest: number; most: number } | undefined {
  const fewest = Math.max(1, Math.ceil(gone.low / worth - NOISE));
  const most = Math.floor(gone.high / worth + NOISE);
  return fewest <= most ? { fewest, most } : undefined;
}
const NOISE = 1e-9;

function crossedNumber(
  { id }: Values,
  { fewest, most }: { readonly fewest: number; readonly most: number },
  sources: readonly string[],
): ComputedNumber {
  const input = (name: string, value: number, note: string) => ({
    name,
    value,
    unit: 'bricks',
    source: 'house',
    note,
  });
  return {
    id: `${id}.bricks`,
    value: null,
    low: fewest,
    high: most,
    unit: '',
    formula: 'low = fewest; high = most',
    inputs: [
      input('fewest', fewest, 'the least that goes away, divided by the brick, up to the next whole brick'),
      input('most', most, 'the most that goes away, divided by the brick, down to the last whole brick'),
    ],
    sources,
    what: 'whole bricks that a right answer crosses out',
  };
}
