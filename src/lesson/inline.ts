import type { PhrasingContent } from 'mdast';
import type { Place, Report } from '../diagnostics/index.js';
import { scanAttributes } from './attributes.js';
import { problem } from './codes.js';
import type { InlineNode } from './lesson.js';
import { closingBracket } from './opening.js';
import { readAttributes } from './read-attributes.js';
import { INLINE, INLINE_ATTRIBUTES, type InlineName } from './service.js';
import { placeAt, placeOf, pointAt, type Source } from './source.js';

/** What turning running text into nodes needs: the text as written, and the link targets of the lesson. */
export interface InlineContext {
  readonly source: Source;
  readonly report: Report;
  /** Targets of `[words][name]`, by name. */
  readonly targets: ReadonlyMap<string, { readonly url: string; readonly title?: string | null | undefined }>;
}

type Positioned = {
  readonly position?:
    | {
        readonly start: { readonly offset?: number | undefined };
        readonly end: { readonly offset?: number | undefined };
      }
    | undefined;
};

/** Offsets of a node; the parser always sets them. */
export function spanOf(node: Positioned): readonly [number, number] {
  return [node.position?.start.offset ?? 0, node.position?.end.offset ?? 0];
}

/** Running text. Whatever is refused is reported and stands as its own characters. */
export function toInlineNodes(nodes: readonly PhrasingContent[], context: InlineContext): InlineNode[] {
  return joined(nodes.flatMap((node) => toInlineNode(node, context)));
}

function toInlineNode(node: PhrasingContent, context: InlineContext): readonly InlineNode[] {
  const { source, report } = context;
  const [from, to] = spanOf(node);
  const place = placeOf(source, from, to);
  const asWritten = () => textNodes(source.text.slice(from, to), from, to, context);
  switch (node.type) {
    case 'text':
      return textNodes(node.value, from, to, context);
    case 'strong':
      return [{ kind: 'strong', children: toInlineNodes(node.children, context), place }];
    case 'emphasis':
      return [{ kind: 'emphasis', children: toInlineNodes(node.children, context), place }];
    case 'delete':
      return [{ kind: 'struck', children: toInlineNodes(node.children, context), place }];
    case 'inlineCode':
      return [{ kind: 'code', text: node.value, place }];
    case 'break':
      return [{ kind: 'break', place }];
    case 'link':
      return link(node.url, node.title, node.children, place, context);
    case 'linkReference': {
      const target = context.targets.get(node.identifier);
      return target ? link(target.url, target.title, node.children, place, context) : asWritten();
    }
    case 'image':
      return [picture(node.url, node.alt, node.title, place, report)];
    case 'imageReference': {
      const target = context.targets.get(node.identifier);
      return target ? [picture(target.url, node.alt, target.title, place, report)] : asWritten();
    }
    case 'html':
      report.add(
        problem('lesson/html', 'Raw HTML is off; this would print as it stands.', {
          place,
          hint: 'Delete it, or write it in Markdown.',
          actual: node.value.slice(0, 60),
        }),
      );
      return asWritten();
    case 'footnoteReference':
      report.add(
        problem('lesson/footnote', 'Footnotes are not used.', {
          place,
          hint: 'Write the words here, or name the source with :cite[…].',
        }),
      );
      return [];
    case 'textDirective':
      return textDirective(node.name, from, to, context) ?? asWritten();
    default:
      return asWritten();
  }
}

/** Neighboring texts of one line become one, so that what was put back does not fall to pieces. */
function joined(nodes: readonly InlineNode[]): InlineNode[] {
  const out: InlineNode[] = [];
  for (const node of nodes) {
    const last = out.at(-1);
    if (
      last?.kind === 'text' &&
      node.kind === 'text' &&
      last.place.line === node.place.line &&
      last.place.endColumn === node.place.column
    ) {
      const end = node.place.endColumn === undefined ? {} : { endColumn: node.place.endColumn };
      out[out.length - 1] = { kind: 'text', text: last.text + node.text, place: { ...last.place, ...end } };
    } else out.push(node);
  }
  return out;
}

const LOOKS_INLINE = /(?<=^|[\s([{“‘"'«])::?\s?(n|t|cite)\s?(?=[[{])/g;

/** A text for each line of the source, the blank of the line's end at its end. */
function textNodes(value: string, from: number, to: number, context: InlineContext): InlineNode[] {
  const { source } = context;
  const lines = value.split('\n');
  const start = pointAt(source, from);
  const end = pointAt(source, to);
  return lines.map((text, index): InlineNode => {
    const line = start.line + index;
    const written = source.lines[line - 1] ?? '';
    const column =
      index === 0
        ? start.column
        : columnOf(written, text, index === lines.length - 1 ? end.column : undefined);
    const stop = index === lines.length - 1 ? end.column : written.trimEnd().length + 1;
    reportLooks(text, line, column, context);
    return {
      kind: 'text',
      text: index < lines.length - 1 ? `${text} ` : text,
      place: placeAt(source, line, column, stop),
    };
  });
}

/** Column of a continued line: where its text begins after indentation and quote marks. */
function columnOf(written: string, text: string, end: number | undefined): number {
  const found = written.indexOf(text.slice(0, 12));
  if (found >= 0) return found + 1;
  return end ?? written.length - written.trimStart().length + 1;
}

const LOOKS_DIRECTIVE = /(?<![:\p{L}\p{N}])::+([a-z][a-z-]*)(?=[[{])/gu;

/** A number, term, source or directive that was meant and not read. */
function reportLooks(text: string, line: number, column: number, { source, report }: InlineContext): void {
  for (const found of text.matchAll(LOOKS_INLINE)) {
    const at = column + found.index;
    report.add(
      problem('lesson/inline', `Here :${found[1]} was most likely meant, and it was not read.`, {
        place: placeAt(source, line, at, at + found[0].length),
        hint: `Write :${found[1]}[words]${found[1] === 'n' ? '{of=id}' : ''} without blanks, with straight quotes.`,
      }),
    );
  }
  for (const found of text.matchAll(LOOKS_DIRECTIVE)) {
    const at = column + found.index;
    report.add(
      problem('lesson/middle-of-line', `${found[1]} stands in the middle of a line.`, {
        place: placeAt(source, line, at, at + found[0].length),
        hint: 'Put it on a line of its own that starts at the left edge.',
      }),
    );
  }
}

/** `:n[…]{…}`, `:t[…]` and `:cite[…]`; nothing for anything else, which is put back as it stands. */
function textDirective(
  name: string,
  from: number,
  to: number,
  context: InlineContext,
): readonly InlineNode[] | undefined {
  const { source, report } = context;
  const written = source.text.slice(from, to);
  const kind = INLINE.find((one): one is InlineName => one === name);
  const before = source.text[from - 1];
  const free = before === undefined || /[\s([{“‘"'«¿¡\u2066-\u2068]/.test(before) || /[*_~]/.test(before);
  const bracket = name.length + 1;
  if (!kind || !free || written[bracket] !== '[') return undefined;
  const close = closingBracket(written, bracket, written.length);
  if (close === undefined) return undefined;
  const place = placeOf(source, from, to);
  const label = written
    .slice(bracket + 1, close - 1)
    .replace(/\s+/g, ' ')
    .trim();
  if (label === '') {
    report.add(
      problem('lesson/inline', `:${kind} names nothing in its brackets.`, {
        place,
        hint: `Write the name between the brackets, as in :${kind}[${kind === 'cite' ? 'usda-sr28' : 'sodium'}].`,
      }),
    );
    return undefined;
  }
  const scanned =
    written[close] === '{' ? scanAttributes(written, close, written.length) : { attributes: [], faults: [] };
  const at = (a: number, b: number) => placeOf(source, from + a, from + b);
  for (const fault of scanned.faults)
    report.add(problem(fault.code, fault.message, { hint: fault.hint, place: at(fault.from, fault.to) }));
  const rules = { name: `:${kind}`, known: INLINE_ATTRIBUTES[kind], id: 'none' as const, placeOf: at, place };
  const attributes = readAttributes(scanned.attributes, rules, report);
  if (kind === 't') return [{ kind: 'term', text: label, place }];
  if (kind === 'cite') return [{ kind: 'cite', source: label, place }];
  const value = (key: string) => {
    const found = attributes.get(key)?.value;
    return found === undefined ? {} : { [key]: found };
  };
  const of = attributes.get('of')?.value;
  if (of === undefined) return undefined;
  return [{ kind: 'number', name: label, of, ...value('row'), ...value('per'), attributes, place }];
}

function link(
  url: string,
  title: string | null | undefined,
  children: readonly PhrasingContent[],
  place: Place,
  context: InlineContext,
): readonly InlineNode[] {
  const words = toInlineNodes(children, context);
  if (/^(?:https?:\/\/|mailto:)[^\s]+$/i.test(url))
    return [{ kind: 'link', href: url, ...(title ? { title } : {}), children: words, place }];
  context.report.add(
    problem('lesson/link', `A link cannot lead to “${url.slice(0, 60)}”.`, {
      place,
      hint: 'Write an address that begins with https:// or mailto:.',
      actual: url.slice(0, 60),
    }),
  );
  return words;
}

function picture(
  src: string,
  alt: string | null | undefined,
  title: string | null | undefined,
  place: Place,
  report: Report,
): InlineNode {
  if (!/^pictures\/[A-Za-z0-9][A-Za-z0-9._-]*\.(?:png|jpe?g|svg)$/i.test(src) || src.includes('..')) {
    report.add(
      problem('lesson/picture', `“${src.slice(0, 60)}” is no picture of this lesson.`, {
        place,
        hint: 'Put a PNG, JPEG or SVG file into pictures/ beside the lesson, and write pictures/name.png.',
      }),
    );
  }
  const words = (alt ?? '').replace(/\s+/g, ' ').trim();
  if (words === '')
    report.add(
      problem('lesson/picture-words', 'This picture has no words that say what it shows.', {
        place,
        hint: 'Write them between the square brackets: ![what it shows](pictures/name.png).',
      }),
    );
  return { kind: 'picture', src, alt: words, ...(title ? { title } : {}), place };
}
