import { isMap, isNode, isPair, LineCounter, type Node, parseDocument } from 'yaml';
import type { z } from 'zod';
import { nearest, type Place, type Problem, type Report } from '../diagnostics/index.js';

/** A YAML text that was read, with the place of everything in it. */
export interface YamlText {
  readonly file: string;
  /** Plain maps, lists, strings, numbers; dates stay strings. */
  readonly value: unknown;
  /** Where the value at a path stands; the nearest place above it when the path leads nowhere. */
  place(path: readonly PropertyKey[]): Place;
  /** Where the name at the end of a path stands, for what should not be there at all. */
  keyPlace(path: readonly PropertyKey[]): Place;
}

/** Makes a problem with the caller's own code. */
export type Fault = (message: string, more: { readonly place: Place; readonly hint?: string }) => Problem;

/** Deeper than any table of ours; beyond it a text is a trap, not data. */
const DEEPEST = 60;

/** Reads a YAML text. Anything that is no YAML is reported at its place, and nothing is returned. */
export function readYaml(text: string, file: string, fault: Fault, report: Report): YamlText | undefined {
  const lines = new LineCounter();
  const start: Place = { file, line: 1, column: 1 };
  const trouble = (message: string, place: Place) =>
    report.add(
      fault(message, {
        place,
        hint: 'Look at the line before it too: a colon or a quote is often missing there.',
      }),
    );
  if (depthOf(text) > DEEPEST) {
    report.add(fault(`Lists and maps are nested more than ${DEEPEST} deep.`, { place: start }));
    return undefined;
  }
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false, uniqueKeys: true });
  if (document.errors.length > 0) {
    for (const error of document.errors.slice(0, 5)) {
      const spot = lines.linePos(error.pos[0]);
      trouble(`This is not YAML: ${firstLine(error.message)}`, {
        file,
        line: Math.max(1, spot.line),
        column: Math.max(1, spot.col),
      });
    }
    return undefined;
  }
  let value: unknown;
  try {
    value = document.toJS({ maxAliasCount: 100 });
  } catch {
    trouble('The text refers to itself too often to be data.', start);
    return undefined;
  }
  const contents = isNode(document.contents) ? document.contents : undefined;
  const walk = (path: readonly PropertyKey[], key: boolean): Place => {
    let node: Node | undefined = contents;
    for (const [i, step] of path.entries()) {
      const next = stepInto(node, step, key && i === path.length - 1);
      if (!next) break;
      node = next;
    }
    return placeOf(node, lines, file) ?? start;
  };
  const place = (path: readonly PropertyKey[]) => walk(path, false);
  const keyPlace = (path: readonly PropertyKey[]) => walk(path, true);
  return { file, value, place, keyPlace };
}

function firstLine(message: string): string {
  return (message.split('\n')[0] ?? message).trim();
}

/** Brackets and indentation only give an upper bound, and that is all that is needed here. */
function depthOf(text: string): number {
  let deepest = 0;
  let open = 0;
  for (const c of text) {
    if (c === '[' || c === '{') open++;
    else if (c === ']' || c === '}') open = Math.max(0, open - 1);
    deepest = Math.max(deepest, open);
  }
  for (const line of text.split('\n')) {
    const indent = /^[ ]*(?:- )*/.exec(line)?.[0].length ?? 0;
    deepest = Math.max(deepest, Math.ceil(indent / 2));
  }
  return deepest;
}

function stepInto(node: Node | undefined, step: PropertyKey, key: boolean): Node | undefined {
  if (!node || !('items' in node) || !Array.isArray(node.items)) return undefined;
  if (isMap(node)) {
    const pair = node.items.find((p) => isPair(p) && String(p.key) === String(step));
    const value = key ? pair?.key : (pair?.value ?? pair?.key);
    return isNode(value) ? value : undefined;
  }
  const item: unknown = node.items[Number(step)];
  return isNode(item) ? item : undefined;
}

function placeOf(node: Node | undefined, lines: LineCounter, file: string): Place | undefined {
  const range = node?.range;
  if (!range) return undefined;
  const from = lines.linePos(range[0]);
  const to = lines.linePos(range[1]);
  return { file, line: from.line, column: from.col, endLine: to.line, endColumn: to.col };
}

/**
 * Holds a text against a shape. Every difference is reported at its place, in words; the typed value
 * comes back only when there is none.
 */
export function shaped<T>(shape: z.ZodType<T>, yaml: YamlText, fault: Fault, report: Report): T | undefined {
  const result = shape.safeParse(yaml.value);
  if (result.success) return result.data;
  for (const issue of result.error.issues) {
    if (issue.code === 'unrecognized_keys') {
      for (const key of issue.keys) {
        const near = nearest(key, knownKeys(shape, issue.path))[0];
        report.add(
          fault(`\`${key}\` is not known here.`, {
            place: yaml.keyPlace([...issue.path, key]),
            hint: near
              ? `Did you mean \`${near}\`?`
              : 'Remove it, or look at the entry above for the names that are known.',
          }),
        );
      }
    } else {
      const name = issue.path.length > 0 ? `\`${issue.path.map(String).join('.')}\`` : 'This file';
      report.add(fault(`${name}: ${inWords(issue)}.`, { place: yaml.place(issue.path) }));
    }
  }
  return undefined;
}

/** Zod's own English, made to say what an author can act on. */
function inWords(issue: z.core.$ZodIssue): string {
  if (issue.code === 'invalid_type') {
    const missing = /received undefined/.test(issue.message);
    return missing ? 'is missing' : `should be ${aOrAn(issue.expected)}`;
  }
  if (issue.code === 'invalid_value')
    return `should be ${issue.values.map((v) => `\`${String(v)}\``).join(' or ')}`;
  return issue.message.replace(/\.$/, '').replace(/^[A-Z](?=[a-z])/, (c) => c.toLowerCase());
}

function aOrAn(type: string): string {
  const word = type === 'object' || type === 'record' ? 'map' : type === 'array' ? 'list' : type;
  return `${/^[aeiou]/.test(word) ? 'an' : 'a'} ${word}`;
}

/** Names that a strict map knows at a path, as far as the shape tells. */
function knownKeys(shape: unknown, path: readonly PropertyKey[]): string[] {
  let at: unknown = shape;
  for (const step of path) at = within(at, step);
  const fields = fieldOf(unwrapped(at), 'shape');
  return typeof fields === 'object' && fields !== null ? Object.keys(fields) : [];
}

function within(shape: unknown, step: PropertyKey): unknown {
  const open = unwrapped(shape);
  const fields = fieldOf(open, 'shape');
  if (typeof fields === 'object' && fields !== null && step in fields) return fieldOf(fields, step);
  return fieldOf(open, 'element') ?? fieldOf(open, 'valueType');
}

function unwrapped(shape: unknown): unknown {
  let at = shape;
  for (let i = 0; i < 5; i++) {
    const inner = fieldOf(fieldOf(at, 'def'), 'innerType');
    if (inner === undefined) return at;
    at = inner;
  }
  return at;
}

function fieldOf(value: unknown, name: PropertyKey): unknown {
  return typeof value === 'object' && value !== null
    ? (value as Record<PropertyKey, unknown>)[name]
    : undefined;
}
