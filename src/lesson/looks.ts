import { nearest } from '../diagnostics/index.js';
import { problem } from './codes.js';
import type { InlineContext } from './inline-context.js';
import { mayPrecede } from './markdown.js';
import { closingBracket } from './opening.js';
import { INLINE } from './service.js';
import { placeOf } from './source.js';

/** `:n`, `::show` and the like, with what stands before the bracket, the brace or the blank after them. */
const LOOKS = /(?<![\\:])(:+)([ \t]?)(\p{L}[\p{L}\p{N}_-]*)([ \t]?)(?=([[{])|\s|$)/gu;
const COMMENT = /(?<!\\)<!--/g;
const FOOTNOTE = /(?<!\\)\[\^[^\]\s]+\]/g;

/**
 * Reports what stands in text although something else was meant: a number, a term, a source or a
 * directive that was not read as one, a comment, a footnote. `from` and `to` are offsets of the text.
 */
export function reportLooks(from: number, to: number, context: InlineContext): void {
  const { source, report } = context;
  const text = source.text.slice(from, to);
  for (const found of text.matchAll(COMMENT))
    report.add(
      problem('lesson/html', 'HTML comments are off; this would print as it stands.', {
        hint: 'Delete the comment. Words for the leader go into a staff container.',
        place: placeOf(source, from + found.index, from + found.index + 4),
      }),
    );
  for (const found of text.matchAll(FOOTNOTE))
    report.add(
      problem('lesson/footnote', 'Footnotes are not used.', {
        hint: 'Write the words here, or name the source with :cite[…].',
        place: placeOf(source, from + found.index, from + found.index + found[0].length),
      }),
    );
  // One character more on each side, so that what stands around the text counts.
  const lead = from > 0 ? 1 : 0;
  for (const found of source.text.slice(from - lead, to + 1).matchAll(LOOKS)) {
    const at = from - lead + found.index;
    if (at < from || at >= to) continue;
    const [whole, colons = '', blank = '', name = '', gap = '', mark] = found;
    const why =
      colons.length === 1
        ? inlineTrouble(at, whole.length, { blank, name, gap, mark }, context)
        : leafTrouble(at, { blank, name, mark }, context);
    if (why)
      report.add(
        problem(why.code, why.message, {
          hint: why.hint,
          place: placeOf(source, at, at + colons.length + blank.length + name.length),
          actual: `${colons}${name}`,
        }),
      );
  }
}

interface Written {
  readonly blank: string;
  readonly name: string;
  readonly gap?: string;
  readonly mark: string | undefined;
}

interface Trouble {
  readonly code: 'lesson/inline' | 'lesson/middle-of-line';
  readonly message: string;
  readonly hint: string;
}

/** One colon and a name before a bracket or a brace. */
function inlineTrouble(
  at: number,
  length: number,
  { blank, name, gap, mark }: Written,
  context: InlineContext,
): Trouble | undefined {
  const { source, names } = context;
  const before = at === 0 ? undefined : source.text[at - 1];
  const free = mayPrecede(before);
  const whole = wholeAt(at + length, mark, source.text);
  if (!mark || (!free && (blank !== '' || gap !== ''))) return undefined;
  const meant = INLINE.find((one) => one === name.toLowerCase());
  if (meant !== undefined) {
    const write = `Write :${meant}[words]${meant === 'n' ? '{of=id}' : ''}`;
    const message = `Here :${meant} was most likely meant, and it was not read`;
    const trouble = (why: string, hint: string): Trouble => ({
      code: 'lesson/inline',
      message: `${message}: ${why}.`,
      hint,
    });
    if (!free)
      return mark === '['
        ? trouble(`it stands right after “${before}”`, `Put a blank before it. ${write}.`)
        : undefined;
    if (blank !== '' || gap !== '') return trouble('blanks stand in it', `${write} without blanks.`);
    if (mark === '{') return trouble('it has no words in brackets', `${write}.`);
    if (name !== meant) return trouble(`:${name} is not written in lower case`, `${write}.`);
    return trouble('its bracket is not closed', `${write}.`);
  }
  if (!free || blank !== '' || gap !== '') return undefined;
  if (names.get(name))
    return {
      code: 'lesson/middle-of-line',
      message: `${name} has one colon here, so it was not read.`,
      hint: 'Put it on a line of its own, with two colons, or three and a closing line where it has a body.',
    };
  // `:smile:` and `:a[b]` are text; words in brackets with attributes are surely not.
  if (!whole) return undefined;
  const near = nearest(name, INLINE)[0];
  return {
    code: 'lesson/inline',
    message: `There is no :${name}[…] in running text.`,
    hint: near
      ? `Did you mean :${near}[…]?`
      : `In running text stand ${INLINE.map((n) => `:${n}`).join(', ')}.`,
  };
}

/** Whether a label in brackets and attributes in braces follow, both closed on the line. */
function wholeAt(at: number, mark: string | undefined, text: string): boolean {
  if (mark !== '[') return false;
  const newline = text.indexOf('\n', at);
  const end = newline < 0 ? text.length : newline;
  const close = closingBracket(text, at, end);
  return close !== undefined && text[close] === '{' && text.slice(close, end).includes('}');
}

/** Two colons or more and a name, where no line begins. */
function leafTrouble(
  at: number,
  { blank, name, mark }: Written,
  context: InlineContext,
): Trouble | undefined {
  const { source, names, reported } = context;
  const before = source.text[at - 1];
  const known = names.get(name) !== undefined;
  if (blank !== '' || (!mark && !known) || (before !== undefined && /[\p{L}\p{N}]/u.test(before)))
    return undefined;
  const lines = placeOf(source, at).line;
  if (reported.has(lines)) return undefined;
  return {
    code: 'lesson/middle-of-line',
    message: `${name} stands in the middle of a line.`,
    hint: 'Put it on a line of its own that starts at the left edge.',
  };
}
