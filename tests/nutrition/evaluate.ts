/**
 * Works out a written formula from its inputs. It shares nothing with the core: the tests hold every
 * working against it. Returns one number, or the named parts of `low = …; high = …`.
 */
export interface Given {
  readonly formula: string;
  readonly inputs: readonly { readonly name: string; readonly value: number | null }[];
}

export function evaluate(given: Given): number {
  return part(given.formula, given);
}

export function evaluateParts(given: Given): Record<string, number> {
  return Object.fromEntries(
    given.formula.split(';').map((text) => {
      const [name = '', formula = ''] = text.split('=');
      return [name.trim(), part(formula, given)];
    }),
  );
}

type Token = string;
const RANK: Readonly<Record<string, number>> = { '+': 1, '-': 1, '*': 2, '/': 2 };

function part(formula: string, given: Given): number {
  const tokens = formula.match(/[a-z][a-z0-9_]*|\d+(?:\.\d+)?|[-+*/(),]/g) ?? [];
  if (tokens.join('') !== formula.replace(/\s+/g, '')) throw new Error(`Not a plain formula: ${formula}`);
  const values = new Map(given.inputs.map((input) => [input.name, input.value]));
  if (values.size !== given.inputs.length) throw new Error(`Two inputs share a name: ${formula}`);
  const stack: Token[] = [];
  const numbers: number[] = [];
  const counts: number[] = [];
  const apply = (token: Token) => {
    const b = numbers.pop() ?? Number.NaN;
    const a = numbers.pop() ?? Number.NaN;
    numbers.push(token === '+' ? a + b : token === '-' ? a - b : token === '*' ? a * b : a / b);
  };
  const unwind = () => {
    while (stack.length > 0 && stack.at(-1) !== '(') apply(stack.pop() ?? '');
  };
  tokens.forEach((token, index) => {
    if (token === 'min' || token === 'max') stack.push(token);
    else if (token === '(') {
      counts.push(1);
      stack.push(token);
    } else if (token === ',') {
      unwind();
      counts.push((counts.pop() ?? 0) + 1);
    } else if (token === ')') {
      unwind();
      stack.pop();
      const many = counts.pop() ?? 1;
      const call = stack.at(-1);
      if (call === 'min' || call === 'max') {
        stack.pop();
        const args = numbers.splice(-many, many);
        numbers.push(call === 'min' ? Math.min(...args) : Math.max(...args));
      }
    } else if (token in RANK) {
      while (stack.length > 0 && (RANK[stack.at(-1) ?? ''] ?? 0) >= (RANK[token] ?? 0))
        apply(stack.pop() ?? '');
      stack.push(token);
    } else if (/^\d/.test(token)) numbers.push(Number(token));
    else {
      const value = values.get(token);
      if (value === undefined) throw new Error(`No input ${token} (at ${index}) in ${formula}`);
      numbers.push(value ?? Number.NaN);
    }
  });
  unwind();
  const [result, ...more] = numbers;
  if (result === undefined || more.length > 0) throw new Error(`Not a formula: ${formula}`);
  return result;
}
