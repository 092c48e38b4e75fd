import { expect } from 'vitest';
import type { Refusal, Result } from '../../src/nutrition/index.js';

/** The value of a result that has to be there. */
export function valueIn<T>(result: Result<T>): T {
  if (!result.ok) expect.fail(`refused: ${result.reason}`);
  return result.value;
}

/** The refusal of a result that has to be refused. */
export function refusalOf(result: Result<unknown>): Refusal {
  if (result.ok) expect.fail(`not refused: ${JSON.stringify(result.value)}`);
  return result;
}
