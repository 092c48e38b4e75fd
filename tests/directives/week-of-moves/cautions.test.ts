import { expect, it } from 'vitest';
import { pull } from '../../../src/cautions/index.js';
import { createReport } from '../../../src/diagnostics/index.js';
import { factsOf } from '../../../src/pipeline/facts.js';
import { register } from '../../cautions/register-files.js';
import { readSnippet } from '../desk.js';

function pulledBy(row: string): string[] {
  const { computed } = readSnippet(`:::week-of-moves{id=x}\n- ${row}\n:::\n`);
  if (!computed) throw new Error('The lesson was not read.');
  return pull(register, { ...factsOf(computed), topics: [] }, createReport()).map(
    ({ caution }) => caution.id,
  );
}

it('any week pulls when to stop, and moving with diabetes medicine', () => {
  const ids = pulledBy('Mon: slow steps = 10 min light');
  expect(ids).toEqual(expect.arrayContaining(['activity-stop', 'activity-low-sugar']));
  expect(ids).not.toContain('fluids-limit');
});

it('heat pulls salt and fluids as well', () => {
  expect(pulledBy('Mon: hot yoga = 30 min moderate')).toEqual(
    expect.arrayContaining(['activity-stop', 'sodium-lithium', 'fluids-limit']),
  );
});
