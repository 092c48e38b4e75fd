import { nearest, type Report } from '../diagnostics/index.js';
import { problem } from './codes.js';
import type { KnownDirective } from './known.js';
import { type Opening, readOpening } from './opening.js';
import type { Names } from './service.js';
import { placeAt, type Source } from './source.js';

/** A line that opens a container, is a leaf, or closes a container. `line` counts from 1. */
export type Fence =
  | {
      readonly kind: 'open' | 'leaf';
      readonly line: number;
      readonly opening: Opening;
      /** What the name means, or what it was most likely meant to be. */
      readonly known: KnownDirective | undefined;
    }
  | { readonly kind: 'close'; readonly line: number; readonly colons: number; readonly at: number };

export interface Fences {
  readonly fences: readonly Fence[];
  /**
   * The text for the Markdown parser, of the same length: each fence stands as a leaf `::f` at the left
   * edge, so that the parser ends lists and paragraphs there and sees no containers at all; matching
   * them is ours, since the parser closes the wrong one in silence. What is not Markdown is blank.
   */
  readonly masked: string;
  /** Lines whose colons have been reported, so that nobody reports them again. */
  readonly reported: ReadonlySet<number>;
}

const FENCE = /^([ \t]*)(::+)(?!:)/;
const INSIDE = /^(?:[ \t]*(?:>|(?:[-*+]|\d{1,9}[.)])(?=[ \t])))+[ \t]*(?=:{2,}[ \t]*[\p{L}{])/u;
const CODE = /^((?:[ \t]|>|[-*+][ \t]|\d{1,9}[.)][ \t])*)(`{3,}(?=[^`]*$)|~{3,})/;

/** Finds the fences of the body, which begins on line `from`, and says what is wrong with each of them. */
export function findFences(source: Source, from: number, names: Names, report: Report): Fences {
  const fences: Fence[] = [];
  const reported = new Set<number>();
  const masked = source.lines.map((line, index) => (index + 1 < from ? ' '.repeat(line.length) : line));
  for (let index = from - 1; index < source.lines.length; index++) {
    const line = source.lines[index] ?? '';
    const code = CODE.exec(line);
    if (code) {
      const end = codeEnd(source.lines, index, code[1] ?? '', code[2] ?? '');
      if (end !== undefined) index = end;
      else {
        masked[index] = ' '.repeat(line.length);
        const column = (code[1] ?? '').length + 1;
        report.add(
          problem('lesson/code-unclosed', 'The block of code that opens here is not closed.', {
            hint: `Put a line with ${code[2]} after the code, or delete this line.`,
            place: placeAt(source, index + 1, column, column + (code[2] ?? '').length),
          }),
        );
      }
      continue;
    }
    const found = FENCE.exec(line);
    if (found) {
      const fence = readFence(source, index + 1, (found[1] ?? '').length, names, report);
      fences.push(fence);
      masked[index] = mask(line, fence);
      reported.add(index + 1);
      continue;
    }
    const inside = INSIDE.exec(line);
    if (inside && reportInside(source, index + 1, inside[0].length, names, report)) reported.add(index + 1);
  }
  return { fences, masked: masked.join('\n'), reported };
}

/** Index of the line that closes a block of code, if it is closed before its list or quote ends. */
function codeEnd(lines: readonly string[], from: number, prefix: string, mark: string): number | undefined {
  const closes = new RegExp(`^[ \\t>]*${mark[0]}{${mark.length},}[ \\t]*$`);
  const quoted = prefix.includes('>');
  const listed = /[-*+.)]/.test(prefix);
  for (let index = from + 1; index < lines.length; index++) {
    const line = lines[index] ?? '';
    if (quoted && !/^[ \t]*>/.test(line)) return undefined;
    if (listed && /^[^\s>]/.test(line)) return undefined;
    if (closes.test(line)) return index;
  }
  return undefined;
}

function readFence(source: Source, line: number, indent: number, names: Names, report: Report): Fence {
  const text = source.lines[line - 1] ?? '';
  const opening = readOpening(text, indent);
  if (text.slice(indent + opening.colons).trim() === '')
    return { kind: 'close', line, colons: opening.colons, at: indent };
  const place = placeAt(source, line, indent + 1, text.trimEnd().length + 1);
  if (/^(?:\t| {4})/.test(text))
    report.add(
      problem('lesson/opening', `This directive starts in column ${indent + 1}.`, {
        hint: 'Let the colons start at the left edge, also inside other containers.',
        place,
      }),
    );
  for (const f of opening.faults)
    report.add(
      problem(f.code, f.message, { hint: f.hint, place: placeAt(source, line, f.from + 1, f.to + 1) }),
    );
  const known = opening.name === '' ? undefined : recognize(source, line, opening, names, report);
  const kind = formOf(source, line, opening, known, report);
  return { kind, line, opening, known };
}

function recognize(source: Source, line: number, opening: Opening, names: Names, report: Report) {
  const known = names.get(opening.name);
  if (known) return known;
  const near = nearest(opening.name, names.all);
  report.add(
    problem('lesson/unknown-directive', `There is no directive named ${opening.name}.`, {
      hint: near[0] ? `Did you mean ${near[0]}?` : 'Check the name in the list of directives.',
      place: placeAt(source, line, opening.nameAt + 1, opening.nameAt + opening.name.length + 1),
      actual: opening.name,
      ...(near.length > 0 && { expected: near }),
    }),
  );
  return near[0] === undefined ? undefined : names.get(near[0]);
}

/** Container or leaf by its colons, unless the directive has only the other form. */
function formOf(
  source: Source,
  line: number,
  opening: Opening,
  known: KnownDirective | undefined,
  report: Report,
): 'open' | 'leaf' {
  const written = opening.colons > 2 ? 'container' : 'leaf';
  const form = known && !known.forms.includes(written) ? (known.forms[0] ?? written) : written;
  if (known && form !== written)
    report.add(
      problem(
        'lesson/form',
        form === 'leaf' ? `${known.name} is one line and takes two colons.` : `${known.name} has a body.`,
        {
          hint:
            form === 'leaf'
              ? `Write ::${known.name} with two colons and no closing line.`
              : `Write :::${known.name} with three colons or more, and close it with a line of as many colons.`,
          place: placeAt(source, line, opening.at + 1, opening.nameAt + opening.name.length + 1),
        },
      ),
    );
  return form === 'container' ? 'open' : 'leaf';
}

/** A directive inside a list or a quote; true when it was one. */
function reportInside(source: Source, line: number, at: number, names: Names, report: Report): boolean {
  const text = source.lines[line - 1] ?? '';
  const opening = readOpening(text, at);
  const sure = opening.colons > 2 || names.get(opening.name) !== undefined || /[[{]/.test(text.slice(at));
  if (!sure) return false;
  report.add(
    problem('lesson/middle-of-line', `${opening.name || 'A directive'} stands inside a list or a quote.`, {
      hint: 'Put it on a line of its own that starts at the left edge.',
      place: placeAt(source, line, at + 1, at + 1 + opening.colons + opening.name.length),
    }),
  );
  return true;
}

function mask(line: string, fence: Fence): string {
  const label = fence.kind === 'close' || !fence.known?.label ? undefined : fence.opening.label;
  if (!label) return (line.length < 3 ? '' : '::f').padEnd(line.length);
  const head = `::${'f'.repeat(label.from - 2)}`;
  return (head + line.slice(label.from, label.to)).padEnd(line.length);
}
