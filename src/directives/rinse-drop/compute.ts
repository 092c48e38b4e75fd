import { rinseRange } from '../../nutrition/index.js';
import type { ComputeContext, Computed } from '../contract.js';
import { readProblem } from '../problems.js';
import type { Values } from './schema.js';

export interface RinseResult extends Computed {
  readonly label: number;
  readonly low: number;
  readonly high: number;
  /** Milligrams that one brick stands for. */
  readonly brick: number;
  readonly studies: readonly string[];
  readonly disagree: boolean;
  readonly littleToLose: boolean;
}

/** Bricks are worth a round number of milligrams, and a row holds at most so many. House rules. */
const WORTHS = [5, 10, 20, 50, 100, 200];
const MOST_BRICKS = 25;

/** What is left of the label's sodium: label × (1 − loss), over all studies of the kind. */
export function compute(values: Values, { report }: ComputeContext): RinseResult | undefined {
  const { id, label } = values;
  const range = rinseRange({ label, basis: values.basis, kind: values.kind, treatment: values.treatment });
  if (!range.ok) {
    report.add(readProblem('N18', range, values.basisPlace));
    return undefined;
  }
  const { after, working, gone, goneWorking, findings, disagree, littleToLose } = range.value;
  const brick = WORTHS.find((worth) => label.value / worth <= MOST_BRICKS);
  if (brick === undefined) {
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
  const studies = [...new Set(findings.map((finding) => finding.study.source))];
  const where = `${values.basis.words} of ${values.food.name}`;
  return {
    numbers: [
      {
        id: `${id}.label`,
        value: label.value,
        unit: 'mg',
        formula: 'label',
        inputs: [{ name: 'label', value: label.value, unit: 'mg', source: 'lesson' }],
        sources: [],
        what: `sodium on the label, ${where}`,
      },
      {
        id: `${id}.after`,
        value: null,
        low: after.low,
        high: after.high,
        unit: 'mg',
        ...working,
        sources: studies,
        what: `sodium left when ${values.treatment}, ${where}`,
      },
      {
        id: `${id}.drop`,
        value: null,
        low: gone.low,
        high: gone.high,
        unit: 'mg',
        ...goneWorking,
        sources: studies,
        what: `sodium that goes away when ${values.treatment}, ${where}`,
      },
      {
        id: `${id}.brick`,
        value: brick,
        unit: 'mg',
        formula: 'brick',
        inputs: [
          {
            name: 'brick',
            value: brick,
            unit: 'mg',
            source: 'house',
            note: `the smallest of ${WORTHS.join(', ')} mg with at most ${MOST_BRICKS} bricks a row`,
          },
        ],
        sources: [],
        what: 'sodium that one brick stands for',
      },
    ],
    facts: { foods: [{ food: values.food, place: values.place }], nutrients: ['sodium'] },
    label: label.value,
    low: after.low,
    high: after.high,
    brick,
    studies,
    disagree,
    littleToLose,
  };
}
