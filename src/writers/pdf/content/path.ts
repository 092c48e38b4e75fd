import { operand } from './number.js';

const TAKES: Readonly<Record<string, number>> = { M: 2, L: 2, C: 6, Z: 0 };
const OPERATOR: Readonly<Record<string, string>> = { M: 'm', L: 'l', C: 'c', Z: 'h' };
const TOKEN = /[MLCZ]|[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?|[^\s,]/g;

/**
 * Path operators for absolute path data of M, L, C and Z, without the operator that paints.
 * Any other command is a bug of the drawing code and throws.
 */
export function pathOperators(path: string, digits = 3): string {
  const out: string[] = [];
  let command = '';
  let values: string[] = [];
  for (const [token] of path.matchAll(TOKEN)) {
    const takes = TAKES[token];
    if (takes !== undefined) {
      if (values.length > 0) throw new Error(`A path stops inside ${command}: ${excerpt(path)}`);
      command = token;
      if (takes === 0) out.push('h');
      continue;
    }
    const needed = TAKES[command];
    if (!needed || !/\d/.test(token))
      throw new Error(`A path may hold M, L, C and Z only, and has "${token}": ${excerpt(path)}`);
    values.push(operand(Number(token), digits));
    if (values.length === needed) {
      out.push(`${values.join(' ')} ${OPERATOR[command]}`);
      values = [];
      // More pairs after M draw lines, as in SVG.
      if (command === 'M') command = 'L';
    }
  }
  if (values.length > 0) throw new Error(`A path stops inside ${command}: ${excerpt(path)}`);
  return out.length === 0 ? '' : `${out.join('\n')}\n`;
}

function excerpt(path: string): string {
  return path.length > 60 ? `${path.slice(0, 60)}…` : path;
}
