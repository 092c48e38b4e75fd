/** An operand of a content stream. Strings keep their bytes; names stand without the slash. */
export type Operand =
  | number
  | boolean
  | null
  | { readonly name: string }
  | { readonly bytes: Uint8Array }
  | readonly Operand[]
  | ReadonlyMap<string, Operand>;

/** One operator with what stands before it. */
export interface Operation {
  readonly operator: string;
  readonly operands: readonly Operand[];
}

const SPACE = new Set([0, 9, 10, 12, 13, 32]);
const DELIMITER = new Set([...'()<>[]{}/%'].map((c) => c.charCodeAt(0)));

/** Reads a content stream (ISO 32000-1, 7.8.2). Something that is none throws. */
export function* operationsOf(bytes: Uint8Array): Generator<Operation> {
  const reader = createReader(bytes);
  let operands: Operand[] = [];
  for (;;) {
    const token = reader.next();
    if (token === undefined) return;
    if (typeof token === 'object' && token !== null && 'keyword' in token) {
      yield { operator: token.keyword, operands };
      operands = [];
    } else operands.push(token);
  }
}

interface Keyword {
  readonly keyword: string;
}

function createReader(bytes: Uint8Array) {
  let at = 0;

  function skipSpace(): void {
    for (; at < bytes.length; at++) {
      const byte = bytes[at] ?? 0;
      // A comment runs to the end of its line.
      if (byte === 0x25) while (at < bytes.length && bytes[at] !== 10 && bytes[at] !== 13) at++;
      else if (!SPACE.has(byte)) return;
    }
  }

  function word(): string {
    const start = at;
    while (at < bytes.length && !SPACE.has(bytes[at] ?? 0) && !DELIMITER.has(bytes[at] ?? 0)) at++;
    return String.fromCharCode(...bytes.subarray(start, at));
  }

  function until(close: string): Operand[] {
    const out: Operand[] = [];
    for (;;) {
      skipSpace();
      if (at >= bytes.length) throw new Error(`A "${close}" is missing.`);
      if (closes(close)) {
        at += close.length;
        return out;
      }
      const token = next();
      if (token === undefined) throw new Error(`A "${close}" is missing.`);
      if (typeof token === 'object' && token !== null && 'keyword' in token)
        throw new Error(`"${token.keyword}" stands before a "${close}".`);
      out.push(token);
    }
  }

  function closes(close: string): boolean {
    return [...close].every((c, i) => bytes[at + i] === c.charCodeAt(0));
  }

  function literal(): Uint8Array {
    const out: number[] = [];
    let depth = 1;
    for (at++; at < bytes.length; at++) {
      const byte = bytes[at] ?? 0;
      if (byte === 0x5c) out.push(...escaped());
      else {
        if (byte === 0x28) depth++;
        if (byte === 0x29 && --depth === 0) {
          at++;
          return new Uint8Array(out);
        }
        out.push(byte);
      }
    }
    throw new Error('A string does not end.');
  }

  function escaped(): number[] {
    const byte = bytes[++at] ?? 0;
    const named = 'nrtbf'.indexOf(String.fromCharCode(byte));
    if (named >= 0) return [[10, 13, 9, 8, 12][named] ?? 0];
    if (byte === 10 || byte === 13) return [];
    let octal = '';
    while (octal.length < 3 && (bytes[at] ?? 0) >= 0x30 && (bytes[at] ?? 0) <= 0x37)
      octal += String.fromCharCode(bytes[at++] ?? 0);
    if (octal === '') return [byte];
    at--;
    return [parseInt(octal, 8) & 255];
  }

  function hex(): Uint8Array {
    const close = bytes.indexOf(0x3e, at);
    if (close < 0) throw new Error('A string does not end.');
    const digits = String.fromCharCode(...bytes.subarray(at + 1, close)).replace(/\s/g, '');
    if (/[^0-9a-f]/i.test(digits)) throw new Error('A hexadecimal string holds something else.');
    at = close + 1;
    return new Uint8Array(Buffer.from(digits.length % 2 ? `${digits}0` : digits, 'hex'));
  }

  function dictionary(): Map<string, Operand> {
    const entries = until('>>');
    const out = new Map<string, Operand>();
    for (let i = 0; i + 1 < entries.length; i += 2) {
      const key = entries[i];
      if (typeof key === 'object' && key !== null && 'name' in key) out.set(key.name, entries[i + 1] ?? null);
    }
    return out;
  }

  function next(): Operand | Keyword | undefined {
    skipSpace();
    if (at >= bytes.length) return undefined;
    const character = String.fromCharCode(bytes[at] ?? 0);
    if (character === '(') return { bytes: literal() };
    if (character === '<' && bytes[at + 1] === 0x3c) {
      at += 2;
      return dictionary();
    }
    if (character === '<') return { bytes: hex() };
    if (character === '[') {
      at++;
      return until(']');
    }
    if (character === '/') {
      at++;
      return {
        name: word().replace(/#([0-9a-f]{2})/gi, (_, code) => String.fromCharCode(parseInt(code, 16))),
      };
    }
    const text = word();
    if (text === '') throw new Error(`"${character}" stands where nothing like it may.`);
    if (/^[+-]?(\d+\.?\d*|\.\d+)$/.test(text)) return Number(text);
    if (text === 'true' || text === 'false') return text === 'true';
    return text === 'null' ? null : { keyword: text };
  }

  return { next };
}
