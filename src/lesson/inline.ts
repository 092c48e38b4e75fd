import type { PhrasingContent } from 'mdast';
import type { Place, Report } from '../diagnostics/index.js';
import { problem } from './codes.js';
import { type InlineContext, spanOf } from './inline-context.js';
import type { InlineNode } from './lesson.js';
import { reportLooks } from './looks.js';
import { readPiece } from './pieces.js';
import { placeAt, placeOf, pointAt, type Source } from './source.js';

/** Running text. Whatever is refused is reported and stands as its own characters. */
export function toInlineNodes(nodes: readonly PhrasingContent[], context: InlineContext): InlineNode[] {
  const out: InlineNode[] = [];
  // Attributes that the parser did not take belong to the number before them and are no text.
  let read = 0;
  for (const node of nodes) {
    const [from, to] = spanOf(node);
    if (node.type === 'text' && from < read) {
      if (read < to) out.push(...textNodes(context.source.text.slice(read, to), read, to, context));
      continue;
    }
    if (node.type === 'textDirective') {
      const piece = readPiece(node.name, from, to, context);
      out.push(...(piece?.nodes ?? asWritten(from, to, context)));
      read = piece?.end ?? read;
    } else out.push(...toInlineNode(node, context));
  }
  return out;
}

function asWritten(from: number, to: number, { source }: InlineContext): InlineNode[] {
  const quoted = /^[ \t]*>/.test(source.lines[pointAt(source, from).line - 1] ?? '');
  const written = source.text.slice(from, to).replace(quoted ? /\n[ \t>]*/g : /\n[ \t]*/g, '\n');
  return textsOf(written, from, to, source);
}

function toInlineNode(node: PhrasingContent, context: InlineContext): readonly InlineNode[] {
  const { source, report } = context;
  const [from, to] = spanOf(node);
  const place = placeOf(source, from, to);
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
      return target
        ? link(target.url, target.title, node.children, place, context)
        : asWritten(from, to, context);
    }
    case 'image':
      return [picture(node.url, node.alt, node.title, place, report)];
    case 'imageReference': {
      const target = context.targets.get(node.identifier);
      return target
        ? [picture(target.url, node.alt, target.title, place, report)]
        : asWritten(from, to, context);
    }
    case 'html':
      report.add(
        problem('lesson/html', 'Raw HTML is off; this would print as it stands.', {
          place,
          hint: 'Delete it, or write it in Markdown.',
          actual: node.value.slice(0, 60),
        }),
      );
      return asWritten(from, to, context);
    case 'footnoteReference':
      report.add(
        problem('lesson/footnote', 'Footnotes are not used.', {
          place,
          hint: 'Write the words here, or name the source with :cite[…].',
        }),
      );
      return [];
    default:
      return asWritten(from, to, context);
  }
}

function textNodes(value: string, from: number, to: number, context: InlineContext): InlineNode[] {
  reportLooks(from, to, context);
  return textsOf(value, from, to, context.source);
}

/** A text for each line of the source, the blank of the line's end at its end. */
function textsOf(value: string, from: number, to: number, source: Source): InlineNode[] {
  const start = pointAt(source, from);
  const end = pointAt(source, to);
  const lines = value.split('\n');
  // A line end written as a character reference is a blank and no line of the source.
  if (lines.length - 1 !== end.line - start.line)
    return [{ kind: 'text', text: lines.join(' '), place: placeOf(source, from, to) }];
  const quoted = /^[ \t]*>/.test(source.lines[start.line - 1] ?? '');
  return lines.map((text, index): InlineNode => {
    const line = start.line + index;
    const written = source.lines[line - 1] ?? '';
    const last = index === lines.length - 1;
    return {
      kind: 'text',
      text: last ? text : `${text} `,
      place: placeAt(
        source,
        line,
        index === 0 ? start.column : columnOf(written, quoted),
        last ? end.column : written.trimEnd().length + 1,
      ),
    };
  });
}

/** Column at which the text of a continued line begins: after its indentation and quote marks. */
function columnOf(written: string, quoted: boolean): number {
  return ((quoted ? /^[ \t>]*/ : /^[ \t]*/).exec(written)?.[0].length ?? 0) + 1;
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
