import { type Operand, operationsOf } from './tokens.js';

/** Texts by code of a ToUnicode CMap (ISO 32000-1, 9.10.3). A map that cannot be read is empty. */
export function readToUnicode(bytes: Uint8Array): ReadonlyMap<number, string> {
  const texts = new Map<number, string>();
  try {
    for (const { operator, operands } of operationsOf(bytes)) {
      if (operator === 'endbfchar')
        for (let i = 0; i + 1 < operands.length; i += 2)
          texts.set(codeOf(operands[i]), textOf(operands[i + 1]));
      if (operator === 'endbfrange')
        for (let i = 0; i + 2 < operands.length; i += 3)
          addRange(texts, codeOf(operands[i]), codeOf(operands[i + 1]), operands[i + 2]);
    }
  } catch {
    return new Map();
  }
  return texts;
}

function addRange(
  texts: Map<number, string>,
  first: number,
  last: number,
  target: Operand | undefined,
): void {
  for (let code = first; code <= Math.min(last, 0xffff); code++) {
    const offset = code - first;
    if (Array.isArray(target)) texts.set(code, textOf(target[offset]));
    else {
      const text = textOf(target);
      const end = text.charCodeAt(text.length - 1);
      texts.set(code, text.slice(0, -1) + String.fromCharCode(end + offset));
    }
  }
}

function bytesIn(operand: Operand | undefined): Uint8Array {
  return typeof operand === 'object' && operand !== null && 'bytes' in operand
    ? operand.bytes
    : new Uint8Array();
}

function codeOf(operand: Operand | undefined): number {
  return bytesIn(operand).reduce((code, byte) => code * 256 + byte, 0);
}

function textOf(operand: Operand | undefined): string {
  const bytes = bytesIn(operand);
  let text = '';
  for (let i = 0; i + 1 < bytes.length; i += 2)
    text += String.fromCharCode(((bytes[i] ?? 0) << 8) | (bytes[i + 1] ?? 0));
  return text;
}
