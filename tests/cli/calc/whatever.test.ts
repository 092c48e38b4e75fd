import { describe, expect, it } from 'vitest';
import { callWords } from '../../../src/cli/calc/call.js';
import { CALCULATIONS } from '../../../src/cli/calc/list.js';
import { listText } from '../../../src/cli/calc/listing.js';
import { tellAnswer, tellRefusal } from '../../../src/cli/calc/tell.js';
import { calc } from './expected.js';

const HOSTILE = [
  '',
  ' ',
  '-1',
  '-5 g',
  '0',
  '0 g',
  'unknown',
  'Infinity',
  'NaN',
  '1e400',
  '1/0',
  '9'.repeat(400),
  '0.0000000001',
  '1 furlong',
  '100000',
  '99999 kg',
  '__proto__',
  'constructor',
  ';;;',
  '2 cups of',
  '🫘'.repeat(50),
  'a'.repeat(2000),
  '\u001b[31mred',
];

/** The words of a call as a shell would give them. */
function shellWords(line: string): string[] {
  return [...line.matchAll(/(?:[^\s"]|"[^"]*")+/g)].map(([word]) => word.replaceAll('"', ''));
}

describe.each(CALCULATIONS.map((one) => [one.name, one] as const))('%s', (name, one) => {
  it('works as its example says, which the list shows', () => {
    const line = callWords(one);
    expect(listText()).toContain(line);
    const [, , ...words] = shellWords(line);
    expect(words).toEqual([name, ...one.example]);
    const { result } = calc(words);
    if (!result.ok) throw new Error(result.reason);
    const told = tellAnswer(one, result.value, []);
    expect(told).not.toMatch(/NaN|Infinity|undefined|\[object/);
    expect(told).toContain('Holds for  ');
  });

  it('gives an answer or a reason, whatever is written', () => {
    for (const input of Object.keys(one.inputs)) {
      const others = one.example.filter((word) => !word.startsWith(`${input}=`));
      for (const text of HOSTILE) {
        const { result } = calc([name, ...others, `${input}=${text}`]);
        const told = result.ok ? tellAnswer(one, result.value, []) : tellRefusal(result, one.ofPeople);
        const why = `${input}=${text}`;
        expect(told, why).toMatch(result.ok ? /^Holds for {2}/m : /^Refused: .*\w/);
        expect(told, why).not.toMatch(/(?!\n)\p{Cc}/u);
        // What was written may stand in the reason; what was made of it may not be nonsense.
        const ours = text === '' ? told : told.replaceAll(text, '');
        expect(ours, why).not.toMatch(/NaN|Infinity|undefined|\[object/);
      }
    }
  }, 60_000);
});
